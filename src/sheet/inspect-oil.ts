import { type MaxDilutionSpan, maxFuelDilutionSpan } from '../bearings/index.js';
import type { Basis } from '../judging/index.js';
import { namedFrom } from '../judging/internal.js';
import type { Length, VolumeFraction } from '../quantities/index.js';
import type { MeasuredBearing } from './film-sizes.js';
import { cleanOil, densityBasis, type FilmReport, inspectFilm } from './inspect-film.js';
import { inspectLeak, type LeakReport } from './inspect-leak.js';
import { inspectSample, optionsOf, type SampleReport } from './inspect-sample.js';
import { oilNames } from './oil-names.js';
import type { FilmSheet, OilSheet } from './sheet.js';

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
export function inspectOil(oil: OilSheet, measured: readonly MeasuredBearing[] = []): OilReport {
  const options = optionsOf(oil.thresholds);
  const { sample: taken, bearing, leak } = oil;
  const named = <T>(part: 'sample' | 'bearing' | 'leak', run: () => T): T =>
    namedFrom(() => oilNames(part, oil), run);
  const sample = taken && named('sample', () => inspectSample(oil, taken, options));
  const fuel = Math.max(0, sample?.dilution ? sample.fuel : 0) as VolumeFraction;
  const film = bearing && named('bearing', () => inspectFilm(oil, bearing, fuel, measured));
  const tolerance =
    bearing && film && named('bearing', () => toleranceOf(oil, bearing, film.clearance));
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

/** How much fuel the film of the bearing tolerates, with the doubts of the sheet. */
function toleranceOf(oil: OilSheet, bearing: FilmSheet, clearance: Length): MaxDilutionSpan {
  const { journal, length, speed, load, inlet, roughness, filmRatio } = bearing;
  return maxFuelDilutionSpan(
    {
      ...{ journal, length, clearance, speed, load, inlet, roughness, oil: cleanOil(oil) },
      ...(filmRatio !== undefined && { filmRatio }),
      ...(oil.fuel && { fuel: oil.fuel }),
    },
    oil.doubt ?? {},
  );
}
