import { coherentUnit, type Dimension } from './dimensions.js';
import { RebuildInputError } from './error.js';
import type { Unit } from './unit.js';
import * as u from './units.js';

/** The two families of units that the trade reads in. */
export type UnitSystem = 'inch' | 'metric';

const tradeUnits: { readonly [D in Dimension]: Readonly<Record<UnitSystem, Unit<D>>> } = {
  length: { inch: u.inch, metric: u.mm },
  area: { inch: u.squareInch, metric: u.squareMm },
  volume: { inch: u.quartUS, metric: u.litre },
  angle: { inch: u.degree, metric: u.degree },
  mass: { inch: u.pound, metric: u.kilogram },
  density: { inch: u.gramPerCubicCm, metric: u.gramPerCubicCm },
  time: { inch: u.hour, metric: u.hour },
  rate: { inch: u.perMinute, metric: u.perMinute },
  force: { inch: u.lbf, metric: u.newton },
  pressure: { inch: u.psi, metric: u.kPa },
  gaugePressure: { inch: u.psiGauge, metric: u.kPaGauge },
  torque: { inch: u.lbfFoot, metric: u.newtonMetre },
  energy: { inch: u.footLbf, metric: u.joule },
  power: { inch: u.horsepowerMechanical, metric: u.kilowatt },
  speed: { inch: u.footPerMinute, metric: u.metrePerSecond },
  acceleration: { inch: u.footPerSecondSquared, metric: u.metrePerSecondSquared },
  rotationalSpeed: { inch: u.rpm, metric: u.rpm },
  flow: { inch: u.mLPerHour, metric: u.mLPerHour },
  dynamicViscosity: { inch: u.centipoise, metric: u.millipascalSecond },
  kinematicViscosity: { inch: u.centistokes, metric: u.centistokes },
  temperature: { inch: u.fahrenheit, metric: u.celsius },
  temperatureDifference: { inch: u.fahrenheitDifference, metric: u.celsiusDifference },
  stiffness: { inch: u.lbfPerInch, metric: u.newtonPerMm },
  thermalExpansion: { inch: u.ppmPerFahrenheit, metric: u.ppmPerKelvin },
  specificHeat: { inch: u.btuPerPoundFahrenheit, metric: u.joulePerKilogramKelvin },
  ratio: { inch: u.percent, metric: u.percent },
  volumeFraction: { inch: u.percentByVolume, metric: u.percentByVolume },
  massFraction: { inch: u.percentByMass, metric: u.percentByMass },
};

/**
 * The unit that an inch shop or a metric shop reads a dimension in.
 *
 * @param dimension - name of the dimension
 * @param system - `'inch'` or `'metric'`
 * @returns the unit
 * @throws {RebuildInputError} when the dimension is unknown or the unit system is unknown
 * @example
 * ```ts
 * tradeUnit('length', 'inch').symbol; // "in"
 * ```
 */
export function tradeUnit<D extends Dimension>(dimension: D, system: UnitSystem): Unit<D> {
  guardDimension(dimension);
  guardSystem('system', system);
  return tradeUnits[dimension][system];
}

/** The unit that a shop reads oil films and the roughness of surfaces in. */
export const filmUnit = (system: UnitSystem): Unit<'length'> =>
  system === 'inch' ? u.microinch : u.micrometre;

/**
 * The unit that a flow is read in by its size: a leak by the hour, one under way by the minute, and what a pump gives in
 * litres.
 */
export function flowUnit(flow: number): Unit<'flow'> {
  const size = Math.abs(flow);
  if (size < u.mLPerHour(1000)) return u.mLPerHour;
  return size < u.mLPerMinute(1000) ? u.mLPerMinute : u.litrePerMinute;
}

/** Refuses anything but the two unit systems. */
export function guardSystem(parameter: string, system: unknown): void {
  if (system === 'inch' || system === 'metric') return;
  throw new RebuildInputError({
    parameter,
    value: system,
    expected: "'inch' or 'metric'",
    hint: 'It says which units the shop reads.',
  });
}

/** Refuses anything but the name of a dimension. */
export function guardDimension<D extends Dimension>(dimension: D, parameter = 'dimension'): D {
  if (typeof dimension === 'string' && Object.hasOwn(coherentUnit, dimension)) return dimension;
  throw new RebuildInputError({
    parameter,
    value: dimension,
    expected: 'the name of a dimension',
    hint: `One of: ${Object.keys(coherentUnit).join(', ')}.`,
  });
}
