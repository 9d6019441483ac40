import { oilClearanceLimits, shellWall } from '../bearings/internal.js';
import { endPlayLimits, guardMinimumOfKind, sizesOfKind } from '../crankshaft/internal.js';
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

/** Refuses a housing that cannot hold the journal and two walls. */
export function guardHousing(housing: Span<Length>, journal: Span<Length>): void {
  const { min: least, max: most } = roomOf(journal);
  if (housing.min > least && housing.max < most) return;
  throw implausible(
    housing,
    `within ${showLength(least)} … ${showLength(most)} for that journal`,
    housing.max < least
      ? 'A housing is larger than its journal by two walls: were the journal and the housing swapped?'
      : undefined,
  );
}

/** Whether a journal and its housing were written in each other's place: as they stand they cannot be, the other way they can. */
export function areSwapped(
  housing: Span<Length>,
  journal: Span<Length>,
  { standard }: Standard,
): boolean {
  const { min, max } = sizesOfKind(standard);
  const room = roomOf(housing);
  return (
    housing.min >= min && housing.max <= max && journal.min > room.min && journal.max < room.max
  );
}

/** Refuses a journal and a housing that are swapped. */
export function refuseSwapped(housing: Span<Length>, journal: Span<Length>): void {
  throw new RebuildInputError({
    parameter: 'journal',
    value: journal,
    shown: `journal ${showSpan(journal)}, housing ${showSpan(housing)}:`,
    expected: 'a housing that is larger than its journal',
    problem: 'these look swapped',
    hint: 'A housing is larger than its journal by two walls; change the two over.',
  });
}

/** The sizes between which a housing of such a journal lies: it holds two walls, thin ones, or up to a fifth of the journal. */
const roomOf = (journal: Span<Length>): Span<Length> => ({
  min: (journal.max + 2 * shellWall.least) as Length,
  max: (journal.min * 1.4) as Length,
});

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
  const isNear = (wall: number, left: number) => Math.abs(wall - left) < 0.0015;
  if (walls.some((left) => isNear(min, left) && isNear(max, left))) return;
  const expected = [...new Set(walls.map(showLength))].slice(0, 3).join(' or ');
  const isOfPair = walls.some((left) => isNear(min / 2, left) && isNear(max / 2, left));
  throw implausible(
    { min, max },
    `near ${expected}, the room that the housings leave`,
    isOfPair ? `That is two walls: give one, half of ${showSpan({ min, max })}.` : undefined,
  );
}

const showSpan = ({ min, max }: Span<Length>): string =>
  min === max ? showLength(min) : `${showLength(min)} … ${showLength(max)}`;

function implausible(
  { min, max }: Span<Length>,
  expected: string,
  hint = 'Check the digits and the unit.',
): RebuildInputError {
  return new RebuildInputError({
    parameter: 'size',
    value: { min, max },
    shown: showSpan({ min, max }),
    expected,
    hint,
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
