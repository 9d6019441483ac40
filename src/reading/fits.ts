import { recommendedOilClearance } from '../bearings/index.js';
import { type MeasuredRingGap, ringGapIn } from '../cylinders/index.js';
import type { Limits, Span } from '../judging/index.js';
import { NANOMETRE, namedFrom } from '../judging/internal.js';
import { gapOf } from '../measuring/internal.js';
import { maximumMatching, normalTail } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import type { EngineKind, JournalKind } from './engine-kind.js';

/** What a clearance must keep from its limits because it is not known exactly. */
export interface GuardBand {
  /** How far inside a limit it must stay [m]. */
  readonly band: Length;
  /** Its standard uncertainty [m]. */
  readonly uncertainty: Length;
  /** The most chance that it is outside its limits [-]. */
  readonly mayFail: number;
}

/**
 * How far a clearance is inside its limits, less the guard band, in whole nanometres, to make equal margins
 * compare as equal; undefined if it is outside, or too likely to be. Where it is near both its limits, it must hold
 * against both at once.
 */
export function marginOf(
  { min: low, max: high }: Span<Length>,
  limits: Limits<Length>,
  guard?: GuardBand,
): number | undefined {
  const { min = -Infinity, max = Infinity } = limits;
  const margin = Math.min(low - min, max - high) - (guard?.band ?? 0);
  if (!(margin >= -NANOMETRE)) return undefined;
  // As much past its limits as counts as within them.
  const spared = { min: low + NANOMETRE, max: high - NANOMETRE } as Span<Length>;
  if (guard && chanceOutside(spared, limits, guard.uncertainty) > guard.mayFail) return undefined;
  return Math.round(margin / NANOMETRE);
}

/**
 * The chance that a clearance is below its limits at its low end, or above them at its high end. It is no less
 * than that, whether or not the two ends are off together.
 */
export function chanceOutside(
  { min: low, max: high }: Span<Length>,
  { min = -Infinity as Length, max = Infinity as Length }: Limits<Length>,
  standardUncertainty: Length,
): number {
  const past = (room: number) => {
    if (room === Infinity) return 0;
    if (standardUncertainty === 0) return room < -NANOMETRE ? 1 : 0;
    return normalTail(room / standardUncertainty);
  };
  return Math.min(1, past(low - min) + past(max - high));
}

/** Whether a clearance that varies by so much can be within its limits at all, with the right parts. */
export function canHold(
  width: number,
  limits: Limits<Length> | undefined,
  guard: GuardBand | undefined,
): boolean {
  const { min, max } = limits ?? {};
  if (guard === undefined || min === undefined || max === undefined) return true;
  const low = (min + max - width) / 2;
  return (
    marginOf({ min: low, max: low + width } as Span<Length>, { min, max }, guard) !== undefined
  );
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
  guardOf: (bore: Span<Length>) => GuardBand | undefined = () => undefined,
): readonly number[] | undefined {
  const wanted = bores.map((bore) => {
    const guard = guardOf(bore);
    return pistons
      .map((piston, i) => ({
        i,
        margin: limits ? marginOf(gapOf(bore, piston), limits, guard) : 0,
      }))
      .filter(({ margin }) => margin !== undefined && (!limits || margin >= least))
      .sort((a, b) => (b.margin as number) - (a.margin as number));
  });
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
