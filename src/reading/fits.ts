import { recommendedOilClearance } from '../bearings/index.js';
import { type MeasuredRingGap, ringGapIn } from '../cylinders/index.js';
import type { Limits, Span } from '../judging/index.js';
import { NANOMETRE, namedFrom } from '../judging/internal.js';
import { gapOf } from '../measuring/internal.js';
import { maximumMatching } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import type { EngineKind, JournalKind } from './engine-kind.js';

/**
 * How far a clearance is inside its limits, in whole nanometres, to make equal margins compare as
 * equal; undefined if it is outside.
 */
export function marginOf(clearance: Span<Length>, limits: Limits<Length>): number | undefined {
  const { min = -Infinity, max = Infinity } = limits;
  const margin = Math.min(clearance.min - min, max - clearance.max);
  return margin >= -NANOMETRE ? Math.round(margin / NANOMETRE) : undefined;
}

/** The limits of an oil clearance: the maker's, or the rule of thumb for that journal. */
export function oilLimits(journals: JournalKind, journal: Span<Length>): Limits<Length> {
  return journals.oilClearance ?? recommendedOilClearance(journal.max).limits;
}

/** Whether two steps are the same. Steps are at least a tenth of a millimetre apart. */
export const sameStep = (a: Length, b: Length): boolean => Math.abs(a - b) < 1e-5;

/** The piston for each bore that keeps every margin at `least` or more; undefined if there is no such choice. */
export function pistonsInBores(
  bores: readonly Span<Length>[],
  pistons: readonly Span<Length>[],
  limits: Limits<Length> | undefined,
  least: number,
): readonly number[] | undefined {
  const wanted = bores.map((bore) =>
    pistons
      .map((piston, i) => ({ i, margin: limits ? marginOf(gapOf(bore, piston), limits) : 0 }))
      .filter(({ margin }) => margin !== undefined && (!limits || margin >= least))
      .sort((a, b) => (b.margin as number) - (a.margin as number)),
  );
  const each = new Map(pistons.map((_, i) => [String(i), 1]));
  const given = maximumMatching(wanted, ({ i }) => String(i), each);
  const all = given.flatMap((piston) => piston?.i ?? []);
  return all.length === bores.length ? all : undefined;
}

/** Whether every ring of a set has a gap that is not too wide. A tight one can be filed. */
export function ringsFit(
  rings: readonly MeasuredRingGap[],
  bores: readonly Span<Length>[],
  { bores: { ringGap } }: EngineKind,
): boolean {
  const most = ringGap?.max;
  if (most === undefined) return true;
  const smallest = smallestOf(bores.map(({ min }) => min));
  return rings.every(({ gap, measuredIn }, i) => {
    const there = namedFrom(
      () => ({ '': `part.rings[${i}]`, bore: `part.rings[${i}].measuredIn` }),
      () => ringGapIn({ gap, measuredIn, bore: smallest }),
    );
    return there <= most + NANOMETRE;
  });
}
