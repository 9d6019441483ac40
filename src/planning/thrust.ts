import type { Limits, Span } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import { type GuardBand, marginOf } from '../reading/index.js';

/** The most washers stacked in one engine: common practice. */
export const MOST_WASHERS = 3;

/**
 * The packs of washers that bring an end play within its limits, by more than the guard band, each as the indices
 * of its washers.
 * A pack with more washers than needed is left out.
 */
export function packsFor(
  without: Length,
  thicknesses: readonly Length[],
  counts: readonly number[],
  { min = 0 as Length, ...limits }: Limits<Length>,
  guard?: GuardBand,
): readonly (readonly number[])[] {
  const packs: (readonly number[])[] = [];
  const fits = (play: number) =>
    marginOf({ min: play, max: play } as Span<Length>, { min, ...limits }, guard) !== undefined;
  const extend = (pack: readonly number[], total: number): void => {
    const play = without - total;
    if (play < min - NANOMETRE) return;
    if (fits(play)) {
      // If the play is within limits without its thinnest washer, that washer is not needed.
      const thinnest = smallestOf(pack.map((i) => thicknesses[i] ?? 0));
      if (pack.length === 0 || !fits(play + thinnest)) packs.push(pack);
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
