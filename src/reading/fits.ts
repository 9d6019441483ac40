import { recommendedOilClearance } from '../bearings/index.js';
import { type MeasuredRingGap, ringGapIn } from '../cylinders/index.js';
import type { Limits, Span } from '../judging/index.js';
import { NANOMETRE, namedFrom } from '../judging/internal.js';
import { maximumMatching } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import type { EngineKind, JournalKind } from './engine-kind.js';

/**
 * How far a clearance stays inside its limits, in whole nanometres, so that
 * margins which are alike are equal; undefined where it is outside.
 */
export function marginOf(clearance: Span<Length>, limits: Limits<Length>): number | undefined {
  const { min = -Infinity, max = Infinity } = limits;
  const margin = Math.min(clearance.min - min, max - clearance.max);
  return margin >= -NANOMETRE ? Math.round(margin / NANOMETRE) : undefined;
}

/** What an oil clearance must lie between: the maker's limits, or the rule of thumb for that journal. */
export function oilLimits(journals: JournalKind, journal: Span<Length>): Limits<Length> {
  return journals.oilClearance ?? recommendedOilClearance(journal.max).limits;
}

/** What two sizes leave: a piston in its bore, a stem in its guide. */
export function gapOf(outer: Span<Length>, inner: Span<Length>): Span<Length> {
  return { min: (outer.min - inner.max) as Length, max: (outer.max - inner.min) as Length };
}

/** Steps are a tenth of a millimetre apart at the least; what is stamped is not measured closer. */
export const sameStep = (a: Length, b: Length): boolean => Math.abs(a - b) < 1e-5;

/** Which piston goes into which bore so that every margin is at least so much; undefined if none does. */
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

/** Whether no ring of a set has too wide a gap for a bore; one that is too tight is filed. */
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
