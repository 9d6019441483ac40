import {
  type BasedLimits,
  type Finding,
  judge,
  type OwnLimits,
  type SizeOrSpan,
  type Span,
} from '../judging/index.js';
import {
  diametralClearance,
  guardFields,
  guardLength,
  guardSpan,
  judgeSpan,
  ownLimitsOr,
  type WithTarget,
} from '../judging/internal.js';
import { gapOf } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { guideReach, stemDiameter, valveRock } from './domains.js';

/** A stem in its guide, each as one size or as the span that it lies in, and the limits if they are known. */
export interface StemInGuide extends OwnLimits<'length'> {
  /** Bore of the guide [m]. */
  readonly guide: SizeOrSpan<Length>;
  /** Diameter of the stem where it runs in the guide [m]. */
  readonly stem: SizeOrSpan<Length>;
}

/** Clearance of a stem in its guide. */
export interface GuideClearance {
  /** From the smallest guide on the largest stem to the largest on the smallest; negative is an interference [m]. */
  readonly clearance: Span<Length>;
  /** The worse end against the caller's limits; absent if there are none. */
  readonly finding?: Finding<'length'>;
}

const PAIR = [
  'guide',
  'stem',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;
const ROCKED = [
  'rock',
  'guideLength',
  'overhang',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;
const NONE: BasedLimits<'length'> = { limits: {}, basis: { kind: 'specified' } };
const FEATURE = 'guide clearance';

/**
 * Clearance of a valve's stem in its guide, at the worst of both.
 *
 *     least = smallestGuide - largestStem
 *     most = largestGuide - smallestStem
 *
 * Read a worn guide at several heights and angles (`guideWear`) and the stem where it runs, at three heights. It is judged by
 * the caller's limits alone: an exhaust stem needs more than an inlet stem, and manuals differ by a factor of two (docs/valves.md).
 *
 * @param pair - guide and stem, and the limits if they are known [m]
 * @returns the clearance, with a finding if limits were given [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or
 * the stem was never of the guide
 * @see Source: geometry; TM 9-4310-397-14, p. 6-28
 * @example
 * ```ts
 * const { clearance, finding } = guideClearance({
 *   guide: { min: inch(0.3125), max: inch(0.3145) }, stem: inch(0.3105), limits: { min: thou(1.5), max: thou(4.5) },
 * });
 * format(clearance.max, thou); // "4.0 thou"
 * finding?.verdict; // "within"
 * ```
 */
export function guideClearance(pair: StemInGuide): GuideClearance {
  guardFields('pair', pair as WithTarget<StemInGuide>, PAIR);
  const guide = guardSpan('guide', pair.guide, stemDiameter);
  const stem = guardSpan('stem', pair.stem, stemDiameter);
  for (const end of ['min', 'max'] as const) {
    const at = typeof pair.stem === 'object' ? `stem.${end}` : 'stem';
    guardLength(at, stem[end], [0.9 * guide.min, 1.1 * guide.max], stemDiameter.example);
  }
  const allowed = ownLimitsOr('pair', pair, NONE, diametralClearance);
  const clearance = gapOf(guide, stem);
  if (allowed.limits === NONE.limits) return { clearance };
  return {
    clearance,
    finding: judgeSpan({ feature: FEATURE, dimension: 'length', value: clearance, ...allowed }),
  };
}

/** A valve rocked in its guide under a dial, and the limits of its clearance if they are known. */
export interface RockedValve extends OwnLimits<'length'> {
  /** What the dial shows from one side to the other [m]. */
  readonly rock: Length;
  /** Length of the guide [m]. */
  readonly guideLength: Length;
  /** From the guide's end to where the dial touches, along the stem, with the valve as it was rocked [m]. */
  readonly overhang: Length;
}

/** Clearance of a guide, as a rocking valve tells it. */
export interface RockClearance {
  /** Clearance of a guide that is worn alike at both its ends [m]. */
  readonly clearance: Length;
  /** The most that it can be at the end by the dial: all of the wear there and none at the other end [m]. */
  readonly most: Length;
  /** That against the caller's limits; undecided where the shape of the wear decides. Absent if there are none. */
  readonly finding?: Finding<'length'>;
}

/**
 * Clearance of a valve's guide from how far the valve rocks at its head: lifted off its seat, pushed from side to side
 * and read with a dial. It needs no gauge that goes into the guide.
 *
 *     clearance = rock / (1 + 2 * overhang / guideLength)
 *     most = rock / (1 + overhang / guideLength)
 *
 * A dial at half the guide's length past its end shows double the clearance. A bell-mouthed guide rocks by what both its
 * ends leave together, so the rock alone does not tell its worst end: `most` is what that can be. The stem's wear is
 * in the reading: a new stem in the same guide tells them apart. Push lightly, across and along the way
 * the rocker or the cam pushes; a bent stem or a hand that springs the head reads as clearance.
 *
 * @param rocked - what the dial shows, the guide's length and how far past it the dial stands, and the limits if they are known [m]
 * @returns the clearance and the most it can be at one end, with a finding if limits were given [m]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: geometry of a straight stem that touches its guide at both ends
 * @example
 * ```ts
 * const { clearance, most } = clearanceFromRock({
 *   rock: thou(12), guideLength: inch(2), overhang: inch(1.5),
 * });
 * format(clearance, thou); // "4.8 thou"
 * format(most, thou); // "6.9 thou"
 * ```
 */
export function clearanceFromRock(rocked: RockedValve): RockClearance {
  guardFields('rocked', rocked as WithTarget<RockedValve>, ROCKED);
  const rock = valveRock('rock', rocked.rock);
  const length = guideReach('guideLength', rocked.guideLength);
  const over = guideReach('overhang', rocked.overhang) / length;
  const allowed = ownLimitsOr('rocked', rocked, NONE, diametralClearance);
  const clearance = (rock / (1 + 2 * over)) as Length;
  const most = (rock / (1 + over)) as Length;
  if (allowed.limits === NONE.limits) return { clearance, most };
  const uncertainty = ((allowed.uncertainty ?? 0) + most - clearance) as Length;
  const finding = judge({
    feature: FEATURE,
    dimension: 'length',
    value: clearance,
    ...allowed,
    uncertainty,
  });
  return { clearance, most, finding };
}
