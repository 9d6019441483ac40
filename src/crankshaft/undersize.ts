import { sizeSteps } from '../measuring/internal.js';
import type { Length, UnitSystem } from '../quantities/index.js';

/**
 * The steps that journals are ground to and shells are made in, standard
 * first: 0, 10, 20, 30 thou under, or 0, 0.25, 0.50, 0.75 mm under. Common
 * practice; some engines had other steps, which their manual names.
 *
 * @param system - `'inch'` or `'metric'`, as the engine was built
 * @param largest - the last step to list; by default 30 thou or 0.75 mm [m]
 * @returns undersizes on the diameter, smallest first [m]
 * @throws {RebuildInputError} when the system is unknown, or a value is not finite or out of range
 * @see Source: common practice
 * @example
 * ```ts
 * undersizeSteps('inch').map((step) => format(step, thou));
 * // ["0.0 thou", "10.0 thou", "20.0 thou", "30.0 thou"]
 * ```
 */
export function undersizeSteps(system: UnitSystem, largest?: Length): readonly Length[] {
  return sizeSteps(system, largest);
}
