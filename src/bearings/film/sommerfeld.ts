import { type Ratio, RebuildInputError } from '../../quantities/index.js';
import { guardOiledBearing, type OiledBearing } from './journal-bearing.js';

/**
 * Sommerfeld number of a bearing: how well its film is fed and turned for its load. The greater,
 * the more nearly the journal runs in the middle.
 *
 *     N = speed / (2 * π)   turns in a second
 *     P = load / (journal * length)
 *     S = (journal / clearance)² * viscosity * N / P
 *
 * @param bearing - sizes, viscosity, speed and load
 * @returns Sommerfeld number; zero for a journal that stands still [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, the clearance leaves no room to turn, or there is no load
 * @see Source: Raimondi and Boyd, Trans. ASLE 1 (1958)
 * @example
 * ```ts
 * const bearing = {
 *   journal: inch(1.5), length: inch(1.5), clearance: inch(0.003),
 *   viscosity: reyn(4e-6), speed: rpm(1800), load: lbf(500),
 * };
 * format(sommerfeldNumber(bearing), ratio, 3); // "0.135 -"
 * ```
 */
export function sommerfeldNumber(bearing: OiledBearing): Ratio {
  const { load, ...rest } = guardOiledBearing(bearing);
  if (load > 0) return sommerfeldOf({ load, ...rest });
  throw new RebuildInputError({
    parameter: 'load',
    value: load,
    expected: 'a load',
    problem: 'makes the Sommerfeld number infinite',
    hint: 'filmThickness takes a bearing without a load.',
  });
}

/** The same of a bearing that was checked and has a load. */
export function sommerfeldOf(bearing: OiledBearing): Ratio {
  const { journal, length, clearance, viscosity, speed, load } = bearing;
  const turns = speed / (2 * Math.PI);
  const pressure = load / (journal * length);
  return (((journal / clearance) ** 2 * viscosity * turns) / pressure) as Ratio;
}
