import { governingLimit } from '../bearings/internal.js';
import type { Basis } from '../judging/index.js';
import { namedFrom, showIn } from '../judging/internal.js';
import {
  type DilutionFinding,
  type DilutionOptions,
  dilutionFinding,
  type FuelFractionSpan,
  fuelFraction,
  fuelFractionSpan,
  petrolAt20C,
  type TimeToDilution,
  timeToDilution,
  viscosityAt,
} from '../oil/index.js';
import { dilutionThresholds, flowOfDrops } from '../oil/internal.js';
import {
  celsius,
  type Flow,
  type KinematicViscosity,
  RebuildInputError,
  type Temperature,
  type Time,
  type Volume,
  type VolumeFraction,
} from '../quantities/index.js';
import type { MeasuredBearing } from './film-sizes.js';
import {
  cleanOil,
  densityBasis,
  type FilmReport,
  type HotOil,
  hotOil,
  inspectFilm,
  oilNow,
} from './inspect-film.js';
import { oilNames } from './oil-names.js';
import type { OilSheet } from './sheet.js';

/** Findings on the oil. */
export interface OilReport {
  /** The used oil, if a sample was measured. */
  readonly sample?: {
    /** Temperature of the measurement [K]. */
    readonly temperature: Temperature;
    /** Its viscosity [m²/s]. */
    readonly viscosity: KinematicViscosity;
    /** Viscosity of clean oil at that temperature [m²/s]. */
    readonly clean: KinematicViscosity;
    /** Fuel in it by volume, by ASTM D7152; negative if it is thicker than clean oil [-]. */
    readonly fuel: VolumeFraction;
    /** Fuel by every blending law. The laws disagree: their span is the uncertainty. Absent if `dilution` is. */
    readonly byLaw?: FuelFractionSpan;
    /** The oil when hot, clean and now. Absent if `dilution` is, or if the fuel's viscosity is known only cold. */
    readonly hot?: {
      /** Clean oil. */
      readonly clean: HotOil;
      /** The oil with this fuel in it. */
      readonly now: HotOil;
    };
    /**
     * The fuel fraction against its limit. A sample up to 5 % thicker than clean oil is within the error of
     * measurement and counts as no fuel. Absent beyond that: the viscosity then shows nothing about fuel.
     */
    readonly dilution?: DilutionFinding;
    /** The viscosity of the fuel that was used, and who set it. */
    readonly fuelViscosity: {
      /** Kinematic viscosity of the fuel [m²/s]. */
      readonly value: KinematicViscosity;
      /** Who set it. */
      readonly basis: Basis;
    };
  };
  /** The leak, if one was measured. */
  readonly leak?: {
    /** Fuel that leaks into the oil [m³/s]. */
    readonly flow: Flow;
    /** Who set the flow, or the size of a drop if drops were counted. */
    readonly basis: Basis;
    /**
     * How long the oil as it is now lasts, and what ends it: the film of the bearing, or the limit. Without
     * a sample that shows its fuel, the oil is taken as clean.
     */
    readonly left: {
      /** Time until the engine must not run. */
      readonly until: TimeToDilution;
      /** The fuel fraction that ends it [-]. */
      readonly fraction: VolumeFraction;
      /** What sets that fraction. */
      readonly setBy: 'film' | 'limit';
    };
    /** Time until action is due, from clean oil. */
    readonly untilAct: TimeToDilution;
    /** Time until the engine must not run, by the film or by the limit, from clean oil. */
    readonly untilCritical: TimeToDilution;
  };
  /** The film of the bearing that the sheet names, if it names one. */
  readonly film?: FilmReport;
  /** Who set the density of the oil. */
  readonly densityBasis: Basis;
}

/** A sample thicker than this many times clean oil is beyond the error of measurement. */
const THICKENED = 1.05;
const PETROL: Basis = {
  kind: 'common practice',
  rule: 'petrol of 0.55 mm²/s at 20 °C (0.5 to 0.6)',
};

/** Inspects the oil and its leak. A refusal names the field below `oil`. */
export function inspectOil(oil: OilSheet, measured: readonly MeasuredBearing[] = []): OilReport {
  const { act, critical, source } = oil.thresholds ?? {};
  const options =
    act === undefined || critical === undefined
      ? {}
      : {
          thresholds: { act, critical },
          basis: { kind: 'specified' as const, ...(source !== undefined && { by: source }) },
        };
  const { sample: taken, bearing, leak } = oil;
  const named = <T>(part: 'sample' | 'bearing' | 'leak', run: () => T): T =>
    namedFrom(() => oilNames(part, oil), run);
  const sample = taken && named('sample', () => sampleOf(oil, taken, options));
  const fuel = Math.max(0, sample?.dilution ? sample.fuel : 0) as VolumeFraction;
  const film = bearing && named('bearing', () => inspectFilm(oil, bearing, fuel, measured));
  return {
    ...(sample && { sample }),
    ...(leak && { leak: named('leak', () => leakOf(oil, leak, fuel, film, options)) }),
    ...(film && { film }),
    densityBasis: densityBasis(oil),
  };
}

function sampleOf(
  oil: OilSheet,
  { temperature, viscosity }: NonNullable<OilSheet['sample']>,
  options: DilutionOptions,
): NonNullable<OilReport['sample']> {
  const clean = viscosityAt(oil.line, temperature);
  const fuelViscosity = fuelOf(oil, temperature);
  const viscosities = { oil: clean, fuel: fuelViscosity.value, sample: viscosity };
  const fuel = fuelFraction({ law: 'ASTM D7152', ...viscosities });
  const found = { temperature, viscosity, clean, fuel, fuelViscosity };
  if (viscosity > THICKENED * clean) return found;
  const inIt = Math.max(0, fuel) as VolumeFraction;
  const densities = {
    oilDensity: cleanOil(oil).density,
    ...(oil.fuel && { fuelDensity: oil.fuel.density }),
  };
  // A fuel with a viscosity at one temperature only has none at 100 °C.
  const known = oil.fuelViscosity === undefined || oil.fuel !== undefined;
  return {
    ...found,
    byLaw: fuelFractionSpan({ ...viscosities, ...densities }),
    ...(known && { hot: { clean: hotOil(cleanOil(oil)), now: hotOil(oilNow(oil, inIt)) } }),
    dilution: dilutionFinding(inIt, options),
  };
}

/** The fuel's viscosity from the sheet; petrol has a default near 20 °C. */
function fuelOf(
  { fuelViscosity, fuel }: OilSheet,
  temperature: Temperature,
): NonNullable<OilReport['sample']>['fuelViscosity'] {
  if (fuelViscosity !== undefined) return { value: fuelViscosity, basis: { kind: 'specified' } };
  if (fuel !== undefined) {
    const value = namedFrom(
      () => ({ line: 'fuel.line' }),
      () => viscosityAt(fuel.line, temperature),
    );
    return { value, basis: { kind: 'specified' } };
  }
  if (Math.abs(temperature - 293.15) <= 5) return { value: petrolAt20C, basis: PETROL };
  throw new RebuildInputError({
    parameter: 'fuelViscosity',
    value: undefined,
    shown: `the viscosity of the fuel at ${showIn(temperature, celsius)}`,
    expected: 'a viscosity',
    problem: 'is missing',
    hint: 'Only petrol from 15 to 25 °C has a default. Measure the sample there, or give fuelViscosity.',
  });
}

function leakOf(
  oil: OilSheet,
  leak: NonNullable<OilSheet['leak']>,
  fuel: VolumeFraction,
  film: FilmReport | undefined,
  options: DilutionOptions,
): NonNullable<OilReport['leak']> {
  const flow = 'flow' in leak ? leak.flow : flowOfDrops(leak.drops, leak.dropVolume);
  const measured = 'flow' in leak || leak.dropVolume !== undefined;
  const { act, critical } = dilutionThresholds(options).thresholds;
  const until = (fraction: VolumeFraction, inIt = 0) =>
    timeToDilution({ leak: flow, oil: oil.sump, fuel: inIt as Volume, fraction });
  const { fraction, setBy } = film
    ? governingLimit(film.stand, critical)
    : { fraction: critical, setBy: 'limit' as const };
  const past = fuel >= fraction;
  const inIt = past ? 0 : (oil.sump * fuel) / (1 - fuel);
  return {
    flow,
    basis: measured
      ? { kind: 'specified' }
      : { kind: 'common practice', rule: 'a drop of 0.05 mL, 20 to the millilitre' },
    left: {
      until: past ? { reached: true, time: 0 as Time } : until(fraction, inIt),
      fraction,
      setBy,
    },
    untilAct: until(act),
    untilCritical: until(fraction),
  };
}
