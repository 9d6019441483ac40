import { guardFields } from '../judging/internal.js';
import { type KinematicViscosity, type Ratio, RebuildInputError } from '../quantities/index.js';
import { rounded } from '../quantities/internal.js';
import { liquidViscosity } from './domains.js';
import { referenceOils } from './viscosity-index-table.js';

/** What `viscosityIndex` compares. */
export interface ViscosityPair {
  /** Kinematic viscosity at 40 °C [m²/s]. */
  readonly at40C: KinematicViscosity;
  /** Kinematic viscosity at 100 °C, at least 2 mm²/s [m²/s]. */
  readonly at100C: KinematicViscosity;
}

const VISCOSITIES = ['at40C', 'at100C'] as const;

/**
 * Viscosity index: how little an oil thins between 40 and 100 °C. Common
 * mineral oils have 90 to 105, multigrades 130 to 180; a poor oil can have
 * less than nothing.
 *
 *     VI = 100 * (L - at40C) / (L - H)   procedure A, up to 100
 *     N = ln(H / at40C) / ln(at100C)
 *     VI = 100 + (10^N - 1) / 0.00715   procedure B, above 100
 *     L = 0.8353 * at100C² + 14.67 * at100C - 216   above 70 mm²/s
 *     H = 0.1684 * at100C² + 11.85 * at100C - 97   above 70 mm²/s
 *
 * L and H are the viscosities at 40 °C of the oils of index 0 and 100 that have the same viscosity at
 * 100 °C, all in mm²/s. Up to 70 mm²/s they are interpolated linearly between the rows of the standard's
 * table, above they are its parabolas. At 70 the two differ by at most 0.04 of an index from 0 to 200. The result is not rounded; the standard
 * reports whole numbers, and where an index is midway between two of them the even one.
 *
 * @param viscosities - kinematic viscosity at 40 °C and at 100 °C [m²/s]
 * @returns viscosity index, not rounded [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the index is not
 * defined for so thin an oil, or the oil does not thin by warming
 * @see Source: ASTM D2270-10(2016), procedures A and B
 * @example
 * ```ts
 * const index = viscosityIndex({ at40C: centistokes(73.3), at100C: centistokes(8.86) });
 * index.toFixed(0); // "92"
 * ```
 */
export function viscosityIndex(viscosities: ViscosityPair): Ratio {
  guardFields('viscosities', viscosities, VISCOSITIES);
  const u = liquidViscosity('at40C', viscosities.at40C) * 1e6;
  const y = guardIndexed(viscosities.at100C) * 1e6;
  if (u <= y) {
    throw new RebuildInputError({
      parameter: 'at40C',
      value: viscosities.at40C,
      shown: `${rounded(u)} mm²/s`,
      expected: `thicker than the ${rounded(y)} mm²/s at 100 °C`,
      hint: 'Oil thins as it warms: are the two viscosities swapped?',
    });
  }
  const { low, high } = referenceOils(y);
  if (u >= high) return ((100 * (low - u)) / (low - high)) as Ratio;
  const n = Math.log(high / u) / Math.log(y);
  return (100 + (10 ** n - 1) / 0.00715) as Ratio;
}

/** Refuses a viscosity at 100 °C that the index is not defined for. */
function guardIndexed(viscosity: KinematicViscosity): KinematicViscosity {
  if (liquidViscosity('at100C', viscosity) >= 2e-6) return viscosity;
  throw new RebuildInputError({
    parameter: 'at100C',
    value: viscosity,
    shown: `${rounded(viscosity * 1e6)} mm²/s`,
    expected: 'at least 2 mm²/s',
    problem: 'is below 2 mm²/s, where no viscosity index is defined',
    hint: 'Wrap the reading in its unit, e.g. centistokes(5.4).',
  });
}
