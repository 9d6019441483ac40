import type { Limits } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';

/** More washers than this are not stacked in one engine: common practice. */
export const MOST_WASHERS = 3;

/**
 * The packs of washers that bring an end play within its limits, each as the
 * indices of its washers. Only packs that no smaller one is part of: more
 * washers than are needed are never wanted.
 */
export function packsFor(
  without: Length,
  thicknesses: readonly Length[],
  counts: readonly number[],
  { min = 0 as Length, max = Infinity as Length }: Limits<Length>,
): readonly (readonly number[])[] {
  const packs: (readonly number[])[] = [];
  const extend = (pack: readonly number[], total: number): void => {
    const play = without - total;
    if (play < min - NANOMETRE) return;
    if (play <= max + NANOMETRE) {
      // Without its thinnest washer the play must be too much, or that is not needed.
      const thinnest = smallestOf(pack.map((i) => thicknesses[i] ?? 0));
      if (pack.length === 0 || play + thinnest > max + NANOMETRE) packs.push(pack);
      return;
    }
    if (pack.length === MOST_WASHERS) return;
    for (let i = pack.at(-1) ?? 0; i < thicknesses.length; i++) {
      const used = pack.filter((each) => each === i).length;
      if (used < (counts[i] ?? 0)) extend([...pack, i], total + (thicknesses[i] ?? 0));
    }
  };
  extend([], 0);
  return packs;
}
