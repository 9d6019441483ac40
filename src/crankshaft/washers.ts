import type { BasedLimits, Finding, OwnLimits, SizeOrSpan, Span } from '../judging/index.js';
import {
  guardFields,
  guardList,
  guardSpan,
  judgeSpan,
  type WithTarget,
} from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { measuredEndPlay } from './domains.js';
import { endPlayLimits } from './end-play.js';
import { guardShelf, type Shim } from './pick-shims.js';
import { stacksOf } from './shim-stacks.js';

/** The end play that was measured, with what, and what may be fitted instead. */
export interface WashersToFit extends OwnLimits<'length'> {
  /** End play as measured, or the span found as the shaft was turned, as `endPlay` gives it [m]. */
  readonly measured: SizeOrSpan<Length>;
  /** The thrust washers that were in then, measured as they are, worn. A pair of halves counts as one. */
  readonly fitted: readonly Shim[];
  /** The washers that may be fitted, at most 40; those that were in only if they may go back. */
  readonly shelf: readonly Shim[];
}

/** Which washers to fit, and the end play they give. */
export interface FittedWashers {
  /** Whether the end play will lie within its limits at every turn of the shaft, as far as that is known. */
  readonly outcome: 'within' | 'undecided' | 'outside';
  /** As many as were in, nearest to what is wanted, in the order of the shelf. */
  readonly washers: readonly Shim[];
  /** Their thickness together [m]. */
  readonly total: Length;
  /** What they should be together. The end play varies by more than its limits if the least is above the most. */
  readonly wanted: {
    /** Thinner, and the end play is too much at some turn of the shaft [m]. */
    readonly least: Length;
    /** Thicker, and the end play is too little at some turn [m]. */
    readonly most: Length;
  };
  /** End play to be expected with them. Measure it again once they are in [m]. */
  readonly endPlay: Span<Length>;
  /** The worse end of it against the limits. */
  readonly finding: Finding<'length'>;
}

const FIELDS = [
  'measured',
  'fitted',
  'shelf',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

/**
 * The thrust washers to fit so that a crankshaft has its end play: what the washers gain in thickness, the play loses.
 * As many are fitted as were in, so that none of the faces is left without its washer; of all choices from the
 * shelf the one whose play is nearest the middle of its limits is taken. Choices that are alike to a nanometre
 * go by the order of the shelf.
 *
 *     wanted.least = thickness + measured.max - limits.max
 *     wanted.most = thickness + measured.min - limits.min   thickness: all that were in
 *
 * Which washer goes to which side moves the shaft along, and with it the rods: look at their side play too. The play is
 * measured with the mains torqued, and again with the new washers in.
 *
 * @param bearing - end play as measured, the washers in it then, those at hand, and the maker's limits [m]
 * @returns the washers, and the end play to expect against its limits [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, no
 * washer was in, the shelf has fewer washers than were in, the shelf is too long, or the limits lack a bound
 * @see Source: geometry; the default limits are common practice
 * @example
 * ```ts
 * const { washers, endPlay, outcome } = washersForEndPlay({
 *   measured: { min: thou(13), max: thou(14) },
 *   fitted: [{ name: 'old front', thickness: thou(91) }, { name: 'old rear', thickness: thou(92) }],
 *   shelf: [
 *     { name: 'A', thickness: thou(93) }, { name: 'B', thickness: thou(95) }, { name: 'C', thickness: thou(98) },
 *   ],
 *   limits: { min: thou(4), max: thou(10) },
 * });
 * outcome; // "within"
 * washers.map(({ name }) => name); // ["A", "B"]
 * format(endPlay.max, thou); // "9.0 thou"
 * ```
 */
export function washersForEndPlay(bearing: WashersToFit): FittedWashers {
  guardFields('bearing', bearing as WithTarget<WashersToFit>, FIELDS);
  const measured = guardSpan('measured', bearing.measured, measuredEndPlay);
  guardList('fitted', bearing.fitted, 1, 'washer');
  guardShelf('fitted', bearing.fitted);
  guardList('shelf', bearing.shelf, bearing.fitted.length, 'washers, as many as were in');
  guardShelf('shelf', bearing.shelf);
  const allowed = endPlayLimits('bearing', bearing);
  const { min, max } = bothBounds(allowed);
  const fitted = sumOf(bearing.fitted);
  const least = fitted + measured.max - max;
  const most = fitted + measured.min - min;
  const sizes = bearing.shelf.map(({ thickness }) => nanometres(thickness));
  const middle = (nanometres(least) + nanometres(most)) / 2;
  const chosen = stacksOf(sizes).nearest(bearing.fitted.length, middle);
  const washers = bearing.shelf.filter((_, i) => chosen.has(i));
  const total = sumOf(washers);
  const gained = total - fitted;
  const endPlay = { min: measured.min - gained, max: measured.max - gained } as Span<Length>;
  const finding = judgeSpan({
    feature: 'end play',
    dimension: 'length',
    value: endPlay,
    ...allowed,
  });
  return {
    outcome: outcomeOf(finding),
    washers,
    total,
    wanted: { least: least as Length, most: most as Length },
    endPlay,
    finding,
  };
}

function outcomeOf({ verdict }: Finding<'length'>): FittedWashers['outcome'] {
  return verdict === 'within' || verdict === 'undecided' ? verdict : 'outside';
}

const nanometres = (length: number) => Math.round(length * 1e9);

const sumOf = (washers: readonly Shim[]): Length =>
  washers.reduce((sum, { thickness }) => sum + thickness, 0) as Length;

/** Washers are chosen for a play that is neither too little nor too much: both must be known. */
function bothBounds({ limits }: BasedLimits<'length'>): Span<Length> {
  const { min, max } = limits;
  if (min !== undefined && max !== undefined) return { min, max };
  throw new RebuildInputError({
    parameter: `bearing.limits.${min === undefined ? 'min' : 'max'}`,
    value: undefined,
    expected: 'limits with both bounds',
    hint: 'Too little end play seizes, too much knocks: give least and most.',
  });
}
