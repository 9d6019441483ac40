import {
  type DilutedBearing,
  type MaxDilutionSpan,
  maxFuelDilution,
  maxFuelDilutionSpan,
} from '../bearings/index.js';
import type { Basis } from '../judging/index.js';
import { namedFrom } from '../judging/internal.js';
import type { Length, VolumeFraction } from '../quantities/index.js';
import type { MeasuredBearing } from './film-sizes.js';
import { cleanOil, densityBasis, type FilmReport, inspectFilm } from './inspect-film.js';
import { inspectLeak, type LeakReport } from './inspect-leak.js';
import { inspectSample, optionsOf, type SampleReport } from './inspect-sample.js';
import { oilNames } from './oil-names.js';
import type { FilmSheet, LeakAlone, OilSheet } from './oil-sheet.js';

/** Findings on the oil. */
export interface OilReport {
  /** The used oil, if a sample was measured. */
  readonly sample?: SampleReport;
  /** The leak, if one was measured. */
  readonly leak?: LeakReport;
  /** How much fuel the film of the bearing tolerates, as a span, if the sheet names a bearing. */
  readonly tolerance?: MaxDilutionSpan;
  /** The film of the bearing that the sheet names, if it names one. */
  readonly film?: FilmReport;
  /** Who set the density of the oil. */
  readonly densityBasis: Basis;
}

/** Inspects the oil and its leak. A refusal names the field below `oil`. */
export function inspectOil(
  oil: OilSheet | LeakAlone,
  measured: readonly MeasuredBearing[] = [],
): OilReport {
  if (!('line' in oil)) return inspectLeakAlone(oil);
  return inspectWith(oil, measured, (bearing) => maxFuelDilutionSpan(bearing, oil.doubt ?? {}));
}

/** Refuses what `inspectOil` refuses, without its search of the fuel that the film tolerates at each doubt. */
export function guardOilSheet(oil: OilSheet | LeakAlone): void {
  if (!('line' in oil)) inspectLeakAlone(oil);
  else {
    inspectWith(oil, [], (bearing) => {
      maxFuelDilution(bearing);
      return undefined;
    });
  }
}

/** The leak, where nothing is known of the oil: it is judged by itself, and no time is told. */
function inspectLeakAlone(oil: LeakAlone): OilReport {
  const known = { sample: undefined, tolerance: undefined };
  return {
    leak: namedFrom(
      () => oilNames('leak', oil),
      () => inspectLeak(oil, oil.leak, known, {}),
    ),
    densityBasis: densityBasis(oil),
  };
}

function inspectWith(
  oil: OilSheet,
  measured: readonly MeasuredBearing[],
  tolerated: (bearing: DilutedBearing) => MaxDilutionSpan | undefined,
): OilReport {
  const options = optionsOf(oil.thresholds);
  const { sample: taken, bearing, leak } = oil;
  const named = <T>(part: 'sample' | 'bearing' | 'leak', run: () => T): T =>
    namedFrom(() => oilNames(part, oil), run);
  const sample = taken && named('sample', () => inspectSample(oil, taken, options));
  const fuel = Math.max(0, sample?.dilution ? sample.fuel : 0) as VolumeFraction;
  const film = bearing && named('bearing', () => inspectFilm(oil, bearing, fuel, measured));
  const tolerance =
    bearing && film && named('bearing', () => tolerated(fedBearing(oil, bearing, film.clearance)));
  return {
    ...(sample && { sample }),
    ...(leak && {
      leak: named('leak', () => inspectLeak(oil, leak, { sample, tolerance }, options)),
    }),
    ...(tolerance && { tolerance }),
    ...(film && { film }),
    densityBasis: densityBasis(oil),
  };
}

/** The bearing with clean oil, at a clearance. */
function fedBearing(oil: OilSheet, bearing: FilmSheet, clearance: Length): DilutedBearing {
  const { journal, length, speed, load, inlet, roughness, filmRatio } = bearing;
  return {
    ...{ journal, length, clearance, speed, load, inlet, roughness, oil: cleanOil(oil) },
    ...(filmRatio !== undefined && { filmRatio }),
    ...(oil.fuel && { fuel: oil.fuel }),
  };
}
