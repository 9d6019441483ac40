import { oilClearanceLimits, shellWall } from '../bearings/internal.js';
import { endPlayLimits, guardMinimumOfKind } from '../crankshaft/internal.js';
import { ringGapLimits } from '../cylinders/internal.js';
import type { SizeOrSpan, Span } from '../judging/index.js';
import { showLength, spanOf } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import type { JournalKind } from './engine-kind.js';
import type { ShellPairs } from './shell-pairs.js';
import { own, type StatedLimits } from './stated-limits.js';

type Standard = Pick<JournalKind, 'standard'>;

/** Refuses a maker's minimum that even a new journal is below. */
export function guardMinimum({ standard, minimum }: Pick<JournalKind, 'standard' | 'minimum'>) {
  guardMinimumOfKind('minimum', minimum, standard);
}

/** A housing holds the journal and two walls: thin ones, or up to a fifth of the journal each. */
export function guardHousing(housing: Span<Length>, journal: Span<Length>): void {
  const [least, most] = [journal.max + 2 * shellWall.least, journal.min * 1.4];
  if (housing.min > least && housing.max < most) return;
  throw implausible(housing, `within ${showLength(least)} … ${showLength(most)} for that journal`);
}

/**
 * A wall fills the room between the journal and some housing of its kind, within a few
 * undersizes. If no housing is known, it is at most a fifth of the journal.
 */
export function guardWall(
  { wall, undersize }: Pick<ShellPairs, 'wall' | 'undersize'>,
  housings: readonly SizeOrSpan<Length>[],
  { standard }: Standard,
): void {
  const { min, max } = spanOf(wall);
  if (housings.length === 0) {
    const most = (standard.min * 0.4 + undersize) / 2;
    if (max < most) return;
    throw implausible({ min, max }, `below ${showLength(most)}, a fifth of the journal`);
  }
  const walls = housings.map((bore) => (spanOf(bore).max - standard.max + undersize) / 2);
  const near = (left: number) => Math.abs(min - left) < 0.0015 && Math.abs(max - left) < 0.0015;
  if (walls.some(near)) return;
  const expected = [...new Set(walls.map(showLength))].slice(0, 3).join(' or ');
  throw implausible({ min, max }, `near ${expected}, the room that the housings leave`);
}

function implausible({ min, max }: Span<Length>, expected: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'size',
    value: { min, max },
    shown: min === max ? showLength(min) : `${showLength(min)} … ${showLength(max)}`,
    expected,
    hint: 'Check the digits and the unit.',
  });
}

/** Refuses limits that no oil clearance of such a journal can have. */
export function guardClearanceLimits({
  standard,
  oilClearance,
}: Pick<JournalKind, 'standard' | 'oilClearance'>): void {
  oilClearanceLimits('oilClearance', own(oilClearance), standard.max);
}

/** Refuses limits that no end play can have. */
export function guardEndPlayLimits(limits?: StatedLimits<'length'>): void {
  endPlayLimits('endPlay', own(limits));
}

/** Refuses limits that no ring gap can have. */
export function guardRingGapLimits(
  measuredIn: Length,
  limits: StatedLimits<'length'> | undefined,
): void {
  ringGapLimits('ringGap', own(limits), measuredIn);
}
