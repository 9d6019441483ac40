import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';

/** A size in a stack, and how often it counts: negative where the stack shrinks as it grows. */
export type Stacked = readonly [sensitivity: number, size: Span<Length>];

/** What a stack of sizes can come to at the worst ends of all of them. Added in the order given. */
export function worstCase(stack: readonly Stacked[]): Span<Length> {
  let [min, max] = [0, 0];
  for (const [sensitivity, size] of stack) {
    const grows = sensitivity >= 0;
    min += sensitivity * (grows ? size.min : size.max);
    max += sensitivity * (grows ? size.max : size.min);
  }
  return { min, max } as Span<Length>;
}

/** The clearance between two sizes: a piston in its bore, a stem in its guide. */
export const gapOf = (outer: Span<Length>, inner: Span<Length>): Span<Length> =>
  worstCase([
    [1, outer],
    [-1, inner],
  ]);
