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
  if (min === undefined || max === undefined) return true;
  const low = (min + max - width) / 2;
  return (
    marginOf({ min: low, max: low + width } as Span<Length>, { min, max }, guard) !== undefined
  );
}

/** The limits of an oil clearance: the maker's, or the rule of thumb for a journal of that size. */
export function oilLimits(journals: JournalKind, largest: Length): Limits<Length> {
  return journals.oilClearance ?? recommendedOilClearance(largest).limits;
}

/** Whether two steps are the same. Steps are at least a tenth of a millimetre apart. */
export const sameStep = (a: Length, b: Length): boolean => Math.abs(a - b) < 1e-5;

/** A size, or undefined where it is not known: it may then be any. */
export type Known = Span<Length> | undefined;

/**
 * The piston for each bore that keeps every margin at `least` or more; undefined if there is no such choice. A size
 * that is not known fits whatever can be held at all.
 */
export function pistonsInBores(
  bores: readonly Known[],
  pistons: readonly Known[],
  limits: Limits<Length> | undefined,
  least: number,
  guardOf: (bore: Known) => GuardBand | undefined = () => undefined,
): readonly number[] | undefined {
  const wanted = bores.map((bore) => {
    const guard = guardOf(bore);
    const marginTo = (piston: Known) => {
      if (bore && piston) return limits ? marginOf(gapOf(bore, piston), limits, guard) : 0;
      return canHold(widthOf(bore) + widthOf(piston), limits, guard) ? Infinity : undefined;
    };
    return pistons
      .map((piston, i) => ({ i, margin: marginTo(piston) }))
      .filter(({ margin }) => margin !== undefined && (!limits || margin >= least))
      .sort((a, b) => Number(a.margin !== b.margin) && (b.margin as number) - (a.margin as number));
  });
  const each = new Map(pistons.map((_, i) => [String(i), 1]));
  const given = maximumMatching(wanted, ({ i }) => String(i), each);
  const all = given.flatMap((piston) => piston?.i ?? []);
  return all.length === bores.length ? all : undefined;
}

/** How far apart the ends of a size lie; nothing where it is not known. */
export const widthOf = (size: Known): number => (size ? size.max - size.min : 0);

/**
 * Whether every ring of a set has a gap that is not too wide. A tight one can be filed, and a bore that is not known
 * may be small enough.
 */
export function ringsFit(
  rings: readonly MeasuredRingGap[],
  bores: readonly Known[],
  { bores: { ringGap } }: EngineKind,
): boolean {
  const most = ringGap?.max;
  const known = bores.flatMap((bore) => bore ?? []);
  if (most === undefined || known.length < bores.length) return true;
  const smallest = smallestOf(known.map(({ min }) => min));
  return rings.every(({ gap, measuredIn }, i) => {
    const there = namedFrom(
      () => ({ '': `part.rings[${i}]`, bore: `part.rings[${i}].measuredIn` }),
      () => ringGapIn({ gap, measuredIn, bore: smallest }),
    );
    return there <= most + NANOMETRE;
  });
}
