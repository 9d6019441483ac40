import { governingLimit } from '../bearings/internal.js';
import type { Basis } from '../judging/index.js';
import { namedFrom, showIn } from '../judging/internal.js';
import {
  type DilutionFinding,
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

/** What was found of the oil. */
export interface OilReport {
  /** The used oil, if a sample was measured. */
  readonly sample?: {
    /** Temperature it was measured at [K]. */
    readonly temperature: Temperature;
    /** What it measured [m²/s]. */
    readonly viscosity: KinematicViscosity;
    /** What clean oil would measure there [m²/s]. */
    readonly clean: KinematicViscosity;
    /** Fuel in it by volume, by the law of ASTM D7152; below none if it is thicker than clean oil [-]. */
    readonly fuel: VolumeFraction;
    /** Fuel by every blending law: the laws disagree, and that is how well it is known. Absent where dilution is. */
    readonly byLaw?: FuelFractionSpan;
    /** The oil hot, clean and as it is now. Absent where dilution is, and where the fuel is known cold only. */
    readonly hot?: {
      /** Clean oil. */
      readonly clean: HotOil;
      /** The oil with that fuel in it. */
      readonly now: HotOil;
    };
    /**
     * How that stands. Up to 5 % thicker than clean oil is what measuring leaves open, and counts as
     * no fuel; absent beyond, for then fuel cannot be told from the viscosity.
     */
    readonly dilution?: DilutionFinding;
    /** The fuel's viscosity that was reckoned with, and who says so. */
    readonly fuelViscosity: {
      /** Kinematic viscosity of the fuel [m²/s]. */
      readonly value: KinematicViscosity;
      /** Who says so. */
      readonly basis: Basis;
    };
  };
  /** The leak, if one was measured. */
  readonly leak?: {
    /** Fuel that runs into the oil in a time [m³/s]. */
    readonly flow: Flow;
    /** The size of a drop that was reckoned with, where drops were counted. */
    readonly basis: Basis;
    /** How long the oil as it is now lasts, and what ends it: the film of the bearing, or the limit. */
    readonly left: {
      /** Time until it must not run. */
      readonly until: TimeToDilution;
      /** The fuel fraction that ends it [-]. */
      readonly fraction: VolumeFraction;
      /** What sets that fraction. */
      readonly setBy: 'film' | 'limit';
    };
    /** How long clean oil lasts until action is due. */
    readonly untilAct: TimeToDilution;
    /** How long clean oil lasts until the engine must not run, by its film or by the limit. */
    readonly untilCritical: TimeToDilution;
  };
  /** The film of the bearing that the oil must carry, if the sheet names one. */
  readonly film?: FilmReport;
  /** Who says how dense the oil is. */
  readonly densityBasis: Basis;
}

/** How much thicker than clean oil a sample is before it says more than a measurement does. */
const THICKENED = 1.05;
const PETROL: Basis = {
  kind: 'common practice',
  rule: 'petrol of 0.55 mm²/s at 20 °C (0.5 to 0.6)',
};

/** Inspects the oil and the leak into it; what is refused is named from the oil on. */
export function inspectOil(oil: OilSheet): OilReport {
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
  const film = bearing && named('bearing', () => inspectFilm(oil, bearing, fuel));
  return {
    ...(sample && { sample }),
    ...(leak && { leak: named('leak', () => leakOf(oil, leak, fuel, film, options)) }),
    ...(film && { film }),
    densityBasis: densityBasis(oil),
  };
}

type DilutionOptions = NonNullable<Parameters<typeof dilutionFinding>[1]>;

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
  // Of a fuel that is told at one temperature only, nothing is known at 100 °C.
  const known = oil.fuelViscosity === undefined || oil.fuel !== undefined;
  return {
    ...found,
    byLaw: fuelFractionSpan({ ...viscosities, ...densities }),
    ...(known && { hot: { clean: hotOil(cleanOil(oil)), now: hotOil(oilNow(oil, inIt)) } }),
    dilution: dilutionFinding(inIt, options),
  };
}

/** The fuel's viscosity as the sheet gives it; near 20 °C petrol has a default. */
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
    hint: 'There is a default for petrol from 15 to 25 °C only; measure the sample there or give it.',
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
