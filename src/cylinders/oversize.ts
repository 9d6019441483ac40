import { sizeSteps } from '../measuring/internal.js';
import type { Length, UnitSystem } from '../quantities/index.js';

/**
 * The steps that bores are machined to and pistons are made in, standard
 * first: 0, 10, 20, 30 thou over, or 0, 0.25, 0.50, 0.75 mm over. Common
 * practice; some engines had other steps, which their manual names.
 *
 * @param system - `'inch'` or `'metric'`, as the engine was built
 * @param largest - the last step to list; by default 30 thou or 0.75 mm [m]
 * @returns oversizes on the diameter, smallest first [m]
 * @throws {RebuildInputError} when the system is unknown, or a value is not finite or out of range
 * @see Source: common practice
 * @example
 * ```ts
 * oversizeSteps('metric').map((step) => format(step, mm, 2));
 * // ["0.00 mm", "0.25 mm", "0.50 mm", "0.75 mm"]
 * ```
 */
export function oversizeSteps(system: UnitSystem, largest?: Length): readonly Length[] {
  return sizeSteps(system, largest);
}
