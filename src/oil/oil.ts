import { guardFields } from '../judging/internal.js';
import type {
  Density,
  DynamicViscosity,
  Temperature,
  ThermalExpansion,
} from '../quantities/index.js';
import { BASE, expansionOfLubricating, guardWarmed, warmed } from './density.js';
import { liquidDensity, liquidExpansion, oilTemperature } from './domains.js';
import {
  alongLine,
  guardLine,
  guardOnLine,
  type LineRange,
  lineRangeOf,
  type ViscosityLine,
} from './viscosity.js';

/** An oil as its data sheet tells of it. */
export interface Oil {
  /** Two points of its viscosity line, usually at 40 and 100 °C. */
  readonly line: ViscosityLine;
  /** Density at 15 °C [kg/m³]. */
  readonly density: Density;
  /** Share by which its volume grows for a kelvin at 15 °C; by default that of lubricating oils, as in `densityAt` [1/K]. */
  readonly expansion?: ThermalExpansion;
}

/** An oil in a film. */
export interface FilmOil {
  /** Dynamic viscosity [Pa·s]. */
  readonly viscosity: DynamicViscosity;
  /** Density [kg/m³]. */
  readonly density: Density;
  /** Within -40 to 150 °C, or below or above it: then an estimate. */
  readonly range: LineRange;
}

/**
 * Dynamic viscosity of an oil at a temperature: its kinematic viscosity on the
 * line of `viscosityAt` times its density by `densityAt`.
 *
 *     viscosity = V(Y(w_1 + B * (log10(temperature) - log10(temperature_1)))) * density * exp(-x * (1 + 0.8 * x))
 *
 * The line is that of {@link viscosityAt}, with viscosities in mm²/s; a and x are those of {@link densityAt}.
 *
 * @param oil - viscosity line, density at 15 °C and, where it is known, expansion
 * @param temperature - where the viscosity is wanted, from -40 to 150 °C [K]
 * @returns dynamic viscosity [Pa·s]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the two
 * temperatures are equal, the oil would thicken when heated, what has no expansion given is no lubricating oil,
 * the line would have to be taken too far, or the result is outside the range of the equation
 * @see Source: ASTM D341; ASTM D1250 (1980), table 54D
 * @example
 * ```ts
 * const oil = {
 *   line: [
 *     { temperature: celsius(40), viscosity: centistokes(100) },
 *     { temperature: celsius(100), viscosity: centistokes(11) },
 *   ],
 *   density: kilogramPerCubicMetre(885),
 * } as const;
 * format(dynamicViscosityAt(oil, celsius(100)), millipascalSecond); // "9.14 mPa·s"
 * ```
 */
export function dynamicViscosityAt(oil: Oil, temperature: Temperature): DynamicViscosity {
  guardOil('oil', oil);
  oilTemperature('temperature', temperature);
  guardOnLine(temperature);
  return filmOilAt(oil, temperature).viscosity;
}

/**
 * Dynamic viscosity and density of an oil, its line taken further where the
 * temperature is outside -40 to 150 °C, and flagged there.
 *
 *     viscosity = V(Y(w_1 + B * (log10(temperature) - log10(temperature_1)))) * density * exp(-x * (1 + 0.8 * x))
 *
 * The line is that of {@link viscosityAt}, with viscosities in mm²/s; a and x are those of {@link densityAt}.
 *
 * @param oil - viscosity line, density at 15 °C and, where it is known, expansion
 * @param temperature - where they are wanted, from -73 to 227 °C [K]
 * @returns dynamic viscosity, density, and whether the temperature is within -40 to 150 °C
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the two
 * temperatures are equal, the oil would thicken when heated, what has no expansion given is no lubricating oil,
 * the expansion given leaves no liquid, or the result is outside the range of the equation
 * @see Source: ASTM D341; ASTM D1250 (1980), table 54D
 * @example
 * ```ts
 * const oil = {
 *   line: [
 *     { temperature: celsius(40), viscosity: centistokes(100) },
 *     { temperature: celsius(100), viscosity: centistokes(11) },
 *   ],
 *   density: kilogramPerCubicMetre(885),
 * } as const;
 * extrapolatedDynamicViscosity(oil, celsius(170)).range; // "above"
 * ```
 */
export function extrapolatedDynamicViscosity(oil: Oil, temperature: Temperature): FilmOil {
  guardOil('oil', oil);
  oilTemperature('temperature', temperature);
  const there = filmOilAt(oil, temperature);
  guardWarmed(there.density, temperature);
  return there;
}

/** The fields of {@link Oil}. */
export const OIL = ['line', 'density', 'expansion'] as const;

/** Refuses what is not an oil. */
export function guardOil(parameter: string, oil: Oil): Oil {
  guardFields(parameter, oil, OIL);
  guardLine(`${parameter}.line`, oil.line);
  liquidDensity(`${parameter}.density`, oil.density);
  if (oil.expansion === undefined) expansionOfLubricating(`${parameter}.density`, oil.density);
  else liquidExpansion(`${parameter}.expansion`, oil.expansion);
  return oil;
}

/** Expansion of a sound oil, its own or that of lubricating oils. */
export const expansionOf = (oil: Oil): ThermalExpansion =>
  oil.expansion ?? expansionOfLubricating('oil.density', oil.density);

/** Viscosity and density of a sound oil, the line taken further where it must be: for use in a loop. */
export function filmOilAt(oil: Oil, temperature: Temperature): FilmOil {
  const kinematic = alongLine(oil.line, temperature);
  const density = warmed(oil.density, expansionOf(oil), temperature - BASE);
  const viscosity = (kinematic * density) as DynamicViscosity;
  return { viscosity, density, range: lineRangeOf(temperature) };
}
