import type { GaugePressure, Pressure } from './dimensions.js';
import { RebuildInputError, rounded } from './error.js';

/** The pressure of the air at sea level: one standard atmosphere, 101325 Pa exactly. Source: NIST SP 811 (2008), appendix B.8 [Pa]. */
export const standardAtmosphere = 101_325 as Pressure;

/**
 * The absolute pressure behind a gauge reading.
 *
 * @param reading - what the gauge shows [Pa]
 * @param atmosphere - absolute pressure of the surrounding air; by default the standard one, which a hill or a low is
 * below [Pa]
 * @returns absolute pressure [Pa]
 * @throws {RebuildInputError} when a value is not finite or out of range, or the result would be below a perfect
 * vacuum
 * @see Source: definition of gauge pressure
 * @example
 * ```ts
 * format(absolutePressure(psiGauge(120)), psi); // "134.7 psi"
 * ```
 */
export function absolutePressure(
  reading: GaugePressure,
  atmosphere: Pressure = standardAtmosphere,
): Pressure {
  const surrounding = guardPressure('atmosphere', atmosphere, 0);
  return (guardPressure('reading', reading, -surrounding) + surrounding) as Pressure;
}

/**
 * What a gauge shows at an absolute pressure.
 *
 * @param absolute - absolute pressure [Pa]
 * @param atmosphere - absolute pressure of the surrounding air; by default the standard one [Pa]
 * @returns gauge reading, negative for a vacuum [Pa]
 * @throws {RebuildInputError} when a value is not finite or out of range, or a pressure is below a perfect vacuum
 * @see Source: definition of gauge pressure
 * @example
 * ```ts
 * format(gaugePressure(kPa(150)), kPaGauge); // "48.7 kPa gauge"
 * ```
 */
export function gaugePressure(
  absolute: Pressure,
  atmosphere: Pressure = standardAtmosphere,
): GaugePressure {
  const surrounding = guardPressure('atmosphere', atmosphere, 0);
  return (guardPressure('absolute', absolute, 0) - surrounding) as GaugePressure;
}

/** From a perfect vacuum, given as absolute or as gauge, to more than any engine holds. */
function guardPressure(parameter: string, value: number, vacuum: number): number {
  if (Number.isFinite(value) && value >= vacuum && value <= 1e12) return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a pressure from ${rounded(vacuum / 1000)} kPa, a perfect vacuum, to a million MPa`,
    hint: 'Pressures are pascals here; wrap it in its unit, e.g. psiGauge(120) or kPa(101.3).',
  });
}
