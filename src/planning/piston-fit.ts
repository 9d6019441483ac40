import type { Limits } from '../judging/index.js';
import { leastAssignment } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { canHold, type GuardBand, gapOf, type Known, marginOf, widthOf } from '../reading/index.js';

/** Which piston goes into which bore. */
export interface PistonFit {
  /** For each bore, its piston. */
  readonly order: readonly number[];
  /** For each bore, the margin of its clearance [nm]; empty if clearances have no limits. */
  readonly margins: readonly number[];
}

/**
 * The piston for each bore with the widest tightest margin, then the widest next tightest, and so on. Pistons that
 * do equally well are not swapped: the first stays in the first bore. A size that is not
 * known fits whatever can be held at all. Undefined if they do not fit.
 */
export function pistonFit(
  bores: readonly Known[],
  pistons: readonly Known[],
  limits: Limits<Length> | undefined,
  guardOf: (bore: Known) => GuardBand | undefined,
): PistonFit | undefined {
  if (pistons.length < bores.length) return undefined;
  if (limits === undefined) return { order: bores.map((_, i) => i), margins: [] };
  const all = bores.map((bore) => {
    const guard = guardOf(bore);
    return pistons.map((piston) => {
      if (bore && piston) return marginOf(gapOf(bore, piston), limits, guard);
      return canHold(widthOf(bore) + widthOf(piston), limits, guard) ? Infinity : undefined;
    });
  });
  const margins = [...new Set(all.flat().filter((margin) => margin !== undefined))];
  margins.sort((a, b) => b - a);
  // One tighter clearance weighs more than all the others may be wider; last, one swap more than none.
  const base = BigInt(bores.length + 1);
  const weight = (margin: number | undefined): bigint =>
    base ** BigInt(margin === undefined ? margins.length + 1 : margins.indexOf(margin) + 1);
  const order = leastAssignment(
    all.map((row, bore) =>
      row.map((margin, piston) => weight(margin) + (bore === piston ? 0n : 1n)),
    ),
  );
  const kept = order.flatMap((piston, bore) => all[bore]?.[piston] ?? []);
  return kept.length === bores.length ? { order, margins: kept } : undefined;
}
