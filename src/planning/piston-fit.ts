import type { Limits, Span } from '../judging/index.js';
import { leastAssignment } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { type GuardBand, gapOf, marginOf } from '../reading/index.js';

/** Which piston goes into which bore. */
export interface PistonFit {
  /** For each bore, its piston. */
  readonly order: readonly number[];
  /** For each bore, the margin of its clearance [nm]; empty if clearances have no limits. */
  readonly margins: readonly number[];
}

/**
 * The piston for each bore with the widest tightest margin, then the widest next tightest, and so on. Pistons that
 * do equally well are not swapped: the first stays in the first bore. Undefined if they do not fit.
 */
export function pistonFit(
  bores: readonly Span<Length>[],
  pistons: readonly Span<Length>[],
  limits: Limits<Length> | undefined,
  guardOf: (bore: Span<Length>) => GuardBand | undefined,
): PistonFit | undefined {
  if (pistons.length < bores.length) return undefined;
  if (limits === undefined) return { order: bores.map((_, i) => i), margins: [] };
  const all = bores.map((bore) =>
    pistons.map((piston) => marginOf(gapOf(bore, piston), limits, guardOf(bore))),
  );
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
