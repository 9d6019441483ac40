import type {
  BasedLimits,
  Certainty,
  Limits,
  OwnLimits,
  SizeOrSpan,
  Span,
} from '../judging/index.js';
import {
  diameter,
  guardFields,
  guardSpan,
  NANOMETRE,
  outsideLength,
  type WithTarget,
} from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { oilClearanceLimits } from './clearance.js';
import { shellWall } from './domains.js';

/** The bearing that shells are to be made for. */
export interface ShellsToMake extends Omit<OwnLimits<'length'>, keyof Certainty<'length'>> {
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: SizeOrSpan<Length>;
  /** The journal, as it is or as it will be ground [m]. */
  readonly journal: SizeOrSpan<Length>;
}

/** What wall shells must have: a wall to order, or that none will do. */
export type ShellWallToSuit = BasedLimits<'length'> &
  (
    | {
        /** Some wall keeps the clearance within its limits, whatever the sizes in their spans. */
        readonly outcome: 'wall';
        /** What the wall of every half must lie between; a bound is absent if the clearance has none there [m]. */
        readonly wall: Limits<Length>;
        /** The order as a wall and a tolerance; absent if the wall has one bound alone. */
        readonly order?: {
          /** The middle of the span [m]. */
          readonly wall: Length;
          /** How far a wall may be off the middle, either way [m]. */
          readonly tolerance: Length;
        };
      }
    | {
        /** Housing and journal vary by more than the clearance may, so that no wall does for all of them. */
        readonly outcome: 'none';
        /** How far the clearance varies with housing and journal, before the wall varies at all [m]. */
        readonly sizesVary: Length;
        /** How far the clearance may vary [m]. */
        readonly limitsLeave: Length;
      }
  );

const FIELDS = ['housingBore', 'journal', 'limits', 'basis', 'service', 'target'] as const;

/**
 * The wall to order for shells that are to be made: what every half must measure at its crown so
 * that the clearance stays within its limits, whatever the sizes of housing and journal are in
 * their spans. It is thickest where the smallest housing holds the largest journal.
 *
 *     min = (housingBore.max - journal.min - limits.max) / 2
 *     max = (housingBore.min - journal.max - limits.min) / 2
 *
 * If the least is above the most, no wall does: measure closer, or make the shells to one bearing.
 * The wall is that of the finished half, as it stands in its housing. How much a half must
 * stand proud at the joint to be gripped is a matter of its length, not its wall: see `shellNip`.
 *
 * @param bearing - housing bore and journal, and the limits of the clearance if they are known [m]
 * @returns the span of walls, with the limits it keeps; or by how much the sizes vary too far [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, or housing and journal leave no room for shells
 * @see Source: geometry; the default limits are common practice
 * @example
 * ```ts
 * const suit = shellWallToSuit({
 *   housingBore: { min: inch(1.7506), max: inch(1.7508) },
 *   journal: { min: inch(1.6047), max: inch(1.6049) },
 *   limits: { min: thou(1.2), max: thou(2.8) },
 * });
 * // Hand-computed: (1.7508 - 1.6047 - 0.0028) / 2 to (1.7506 - 1.6049 - 0.0012) / 2.
 * suit.outcome === 'wall' && suit.order && format(suit.order.wall, inch); // "0.0720 in"
 * suit.outcome === 'wall' && suit.order && format(suit.order.tolerance, thou); // "0.3 thou"
 * ```
 */
export function shellWallToSuit(bearing: ShellsToMake): ShellWallToSuit {
  guardFields('bearing', bearing as WithTarget<ShellsToMake>, FIELDS);
  const bore = guardSpan('housingBore', bearing.housingBore, diameter);
  const journal = guardSpan('journal', bearing.journal, diameter);
  const allowed = oilClearanceLimits('bearing', bearing, journal.max);
  const { limits } = allowed;
  guardRoom(bore, journal, limits.min ?? (0 as Length));
  const wall = wallsToSuit(bore, journal, limits);
  const { min, max } = wall;
  if (min === undefined || max === undefined) return { outcome: 'wall', wall, ...allowed };
  if (min > max + NANOMETRE) {
    return {
      outcome: 'none',
      sizesVary: (bore.max - bore.min + journal.max - journal.min) as Length,
      limitsLeave: ((limits.max as Length) - (limits.min as Length)) as Length,
      ...allowed,
    };
  }
  const order = { wall: (min + max) / 2, tolerance: Math.max(0, max - min) / 2 };
  return {
    outcome: 'wall',
    wall,
    order: { wall: order.wall as Length, tolerance: order.tolerance as Length },
    ...allowed,
  };
}

/** The same span of sizes that were checked; its ends cross where no wall does. */
export function wallsToSuit(
  housingBore: Span<Length>,
  journal: Span<Length>,
  { min, max }: Limits<Length>,
): Limits<Length> {
  return {
    ...(max !== undefined && { min: ((housingBore.max - journal.min - max) / 2) as Length }),
    ...(min !== undefined && { max: ((housingBore.min - journal.max - min) / 2) as Length }),
  };
}

/** Refuses a journal that shells of no wall would be needed for, or of one that no shell has. */
function guardRoom(bore: Span<Length>, journal: Span<Length>, clearance: Length): void {
  const least = bore.max - 2 * shellWall.most;
  const most = bore.min - clearance - 2 * shellWall.least;
  if (journal.min >= least && journal.max <= most) return;
  const value = journal.max > most ? journal.max : journal.min;
  throw outsideLength('journal', value, { least, most }, 'Check digits, units and bearings.');
}
