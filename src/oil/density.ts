import { guardBetween, guardFields, ROUNDING } from '../judging/internal.js';
import {
  type Density,
  kilogramPerCubicMetre,
  type Ratio,
  RebuildInputError,
  type Temperature,
  type ThermalExpansion,
} from '../quantities/index.js';
import { apiDegrees, densityTemperature, liquidDensity, liquidExpansion } from './domains.js';

/** Water at 60 °F, kg/m³. source: API MPMS chapter 11.1 (2004). */
const WATER = 999.016;
/** What a lubricating oil loses by warming, kg/m³ for a kelvin. source: ASTM D1250 (1980), table 54D. */
const LUBRICATING = 0.6278;

/** The temperature that densities of oil are stated at, 15 °C. */
export const BASE = 288.15 as Temperature;

/**
 * Density of an oil at 60 °F (15.56 °C) from its API gravity.
 *
 *     density = 999.016 * 141.5 / (gravity + 131.5)   kg/m³
 *
 * @param gravity - API gravity, in degrees: 10 is water, lighter oils have more [-]
 * @returns density at 60 °F [kg/m³]
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: API MPMS chapter 11.1 (2004), with water of 999.016 kg/m³ at 60 °F
 * @example
 * ```ts
 * format(densityFromApiGravity(ratio(28)), kilogramPerCubicMetre); // "886.3 kg/m³"
 * ```
 */
export function densityFromApiGravity(gravity: Ratio): Density {
  apiDegrees('gravity', gravity);
  return densityOf(gravity);
}

const densityOf = (gravity: number) => ((WATER * 141.5) / (gravity + 131.5)) as Density;

/**
 * API gravity of an oil from its density at 60 °F (15.56 °C); `densityAt`
 * takes a density from another temperature there.
 *
 *     gravity = 141.5 * 999.016 / density - 131.5   density in kg/m³
 *
 * @param density - density at 60 °F [kg/m³]
 * @returns API gravity in degrees [-]
 * @throws {RebuildInputError} when a value is not finite or out of range, or the gravity of the density is out of
 * range
 * @see Source: API MPMS chapter 11.1 (2004), with water of 999.016 kg/m³ at 60 °F
 * @example
 * ```ts
 * apiGravity(kilogramPerCubicMetre(886.3)).toFixed(1); // "28.0"
 * ```
 */
export function apiGravity(density: Density): Ratio {
  const ends = [densityOf(apiDegrees.most), densityOf(apiDegrees.least)] as const;
  guardBetween('density', density, kilogramPerCubicMetre, ends, liquidDensity.example);
  return ((141.5 * WATER) / density - 131.5) as Ratio;
}

/** A density that is known at one temperature and wanted at another. */
export interface KnownDensity {
  /** The density that is known [kg/m³]. */
  readonly density: Density;
  /** Temperature that it is known at [K]. */
  readonly at: Temperature;
  /** Temperature that it is wanted at [K]. */
  readonly temperature: Temperature;
  /**
   * Share by which the volume grows for a kelvin, about the temperature that the density is known
   * at. By default that of lubricating oils: 0.6278 kg/m³ for a kelvin over the density at 15 °C [1/K].
   */
  readonly expansion?: ThermalExpansion;
}

const KNOWN = ['density', 'at', 'temperature', 'expansion'] as const;

/**
 * Density of an oil at another temperature, by the form that petroleum is
 * measured with, at the pressure of the air.
 *
 *     x = expansion * (temperature - at)
 *     warmed = density * exp(-x * (1 + 0.8 * x))
 *     a = 0.6278 / density   of lubricating oils, from their density in kg/m³ at 15 °C
 *     x = a * (temperature - 288.15)   by default
 *
 * By default the density is taken to 15 °C first and from there to where it is
 * wanted, so that a lubricating oil has the same density at a temperature by whichever way it came
 * there. Petrol grows half as much again as oil: give its own expansion. Densities, those given as those
 * that come out, are from 600 to 1250 kg/m³: what this function gives it takes.
 *
 * @param known - density, its temperature and the one wanted, from -50 to 150 °C
 * @returns density at the temperature wanted [kg/m³]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the expansion given
 * leaves no liquid, or what has no expansion given is no lubricating oil
 * @see Source: ASTM D1250 (1980) and API MPMS chapter 11.1, table 54D, lubricating oils
 * @example
 * ```ts
 * const hot = densityAt({
 *   density: kilogramPerCubicMetre(880), at: celsius(15), temperature: celsius(100),
 * });
 * format(hot, kilogramPerCubicMetre); // "825.8 kg/m³"
 * ```
 */
export function densityAt(known: KnownDensity): Density {
  guardFields('known', known, KNOWN);
  const { density, at, temperature, expansion } = known;
  liquidDensity('density', density);
  densityTemperature('at', at);
  densityTemperature('temperature', temperature);
  if (expansion !== undefined) {
    liquidExpansion('expansion', expansion);
    return guardWarmed(warmed(density, expansion, temperature - at), temperature);
  }
  const base = densityAtBase(density, at);
  return warmed(base, expansionOfLubricating('density', base), temperature - BASE);
}

/** A density after warming, by the form of table 54D. */
export function warmed(density: Density, expansion: ThermalExpansion, by: number): Density {
  const x = expansion * by;
  return (density * Math.exp(-x * (1 + 0.8 * x))) as Density;
}

/** Refuses a temperature that leaves a liquid with a density that could not be given back. */
export function guardWarmed(density: Density, temperature: Temperature): Density {
  const { least, most } = liquidDensity;
  if (density >= least && density <= most) return density;
  const range = `${least} … ${most} kg/m³`;
  throw new RebuildInputError({
    parameter: 'temperature',
    value: temperature,
    shown: `${Number(temperature.toPrecision(6))} K`,
    expected: `where the liquid has ${range}`,
    problem: `leaves the liquid with ${Number(density.toPrecision(4))} kg/m³, outside ${range}`,
    hint: 'Is the expansion its own, and is it still a liquid there?',
  });
}

/** Expansion of a lubricating oil; refuses a density at 15 °C that is not one's. */
export function expansionOfLubricating(parameter: string, density: Density): ThermalExpansion {
  // The rounding is of a density that was measured elsewhere and comes back to 15 °C rounded.
  if (density >= 800 * (1 - ROUNDING) && density <= 1164 * (1 + ROUNDING)) {
    return (LUBRICATING / density) as ThermalExpansion;
  }
  throw new RebuildInputError({
    parameter,
    value: density,
    shown: `${Number(density.toPrecision(6))} kg/m³ at 15 °C`,
    expected: 'from 800 to 1164 kg/m³ at 15 °C, where no expansion is given',
    problem: 'is outside 800 … 1164 kg/m³, where the expansion of lubricating oils is known',
    hint: 'Give the expansion of what it is, e.g. ppmPerKelvin(1200) for petrol.',
  });
}

/** The density at 15 °C of a lubricating oil that is measured elsewhere: the form turned round, step by step. */
function densityAtBase(density: Density, at: Temperature): Density {
  let base = density;
  // Each step leaves at most a fifth of the error of the one before.
  for (let step = 0; step < 40; step++) {
    const x = (LUBRICATING * (at - BASE)) / base;
    const next = (density * Math.exp(x * (1 + 0.8 * x))) as Density;
    if (next === base) break;
    base = next;
  }
  return base;
}
