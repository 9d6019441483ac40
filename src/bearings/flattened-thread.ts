import { guardFields, showLength } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { flattenedStripe, gaugingThread } from './domains.js';

const THREAD = ['threadDiameter', 'flattenedWidth'] as const;

/**
 * The gap that crushed a soft gauging thread: its section keeps its area, so
 * the wider it was flattened, the thinner the gap.
 *
 *     gap = π * threadDiameter² / (4 * flattenedWidth)
 *
 * The flattened section is taken as a rectangle. Rounded edges would make the gap
 * larger, by less than 0.22 of it for each gap in the width: about 2 % where the
 * stripe is ten gaps wide.
 * Where the packet has a printed scale for its own thread, that scale wins.
 *
 * @param thread - diameter of the thread before, width of the stripe after [m]
 * @returns gap where the thread lay, the diametral clearance there [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the stripe is
 * narrower than the thread
 * @see Source: conservation of area
 * @example
 * ```ts
 * const gap = flattenedThreadGap({ threadDiameter: mm(0.2), flattenedWidth: mm(0.6) });
 * format(gap, mm); // "0.052 mm"
 * ```
 */
export function flattenedThreadGap(thread: {
  /** Diameter of the thread before it was crushed [m]. */
  readonly threadDiameter: Length;
  /** Width of the stripe it was flattened to [m]. */
  readonly flattenedWidth: Length;
}): Length {
  guardFields('thread', thread, THREAD);
  const diameter = gaugingThread('threadDiameter', thread.threadDiameter);
  const width = flattenedStripe('flattenedWidth', thread.flattenedWidth);
  if (width < diameter) {
    throw new RebuildInputError({
      parameter: 'flattenedWidth',
      value: width,
      shown: showLength(width),
      expected: `at least as wide as the thread was, ${showLength(diameter)}`,
      hint: 'A crushed thread is wider than it was; is diameter swapped with width?',
    });
  }
  return ((Math.PI * diameter * diameter) / (4 * width)) as Length;
}
