import type { Angle, Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { guardShown } from './harmonics.js';
import { type DialReading, guardDial } from './trace.js';
import { wavesIn } from './waves.js';

/** How a round surface runs under a dial. */
export interface Runout {
  /** Full indicator reading: largest less smallest of the readings [m]. */
  readonly total: Length;
  /**
   * How far the surface stands off the axis it turned on, on the radius: half of what that adds to the reading [m].
   */
  readonly eccentricity: Length;
  /** Which way it stands off: where the dial would read most, counted from the mark on the part [rad]. */
  readonly direction: Angle;
  /**
   * Largest less smallest of what the eccentricity leaves: the radial out-of-round under the dial, as far as the
   * readings show it. Absent of three readings, which leave nothing to tell it by [m].
   */
  readonly outOfRound?: Length;
  /**
   * Whether the eccentricity may be lobes: it was read at fewer than six angles. Four a quarter turn apart take three
   * lobes for it, three angles an oval.
   */
  readonly mayBeLobes?: true;
  /**
   * The full indicator reading that `grindPlan` takes as the runout of a journal: the total, or twice the
   * eccentricity where the readings missed its highest or lowest place [m].
   */
  readonly toGrind: Length;
}

/**
 * Runout of a round surface from dial readings around it, told apart into standing off its axis and being out of
 * round. The eccentricity is that of the one wave round the part that comes nearest to the readings by least
 * squares, at equal angles or not.
 *
 *     eccentricity = sqrt((reading_1 - reading_3)² + (reading_2 - reading_4)²) / 2   of four readings a quarter turn apart
 *     total = 2 * eccentricity   of a round surface, read at its highest and its lowest place
 *
 * Turn the shaft by hand, never under power with a dial or a hand near it, and stop for each reading. On V-blocks
 * or rollers the journals it rests on lift the shaft by their own out-of-round, and a dial against a worn centre
 * hole reads the hole. Four readings a quarter turn apart may miss an oval altogether, and take three lobes for an
 * eccentricity; eight at equal steps show both. With fewer than six, `mayBeLobes` says so.
 *
 * @param readings - at least three angles with no gap of half a turn, best eight at equal steps
 * @returns total, eccentricity and its direction, out-of-round, and what a grinder counts with
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are fewer than
 * three readings, an angle was read twice, or the readings leave half a turn out
 * @see Source: least squares; half the reading: TM 10-3930-653-14&P; worked checks in
 * tests/published/roundness.test.ts
 * @example
 * ```ts
 * const read = runout([
 *   { angle: degree(0), reading: thou(4) }, { angle: degree(90), reading: thou(2) },
 *   { angle: degree(180), reading: thou(0) }, { angle: degree(270), reading: thou(2) },
 * ]);
 * format(read.total, thou); // "4.0 thou"
 * format(read.eccentricity, thou); // "2.0 thou"
 * format(read.direction, degree); // "0.0 deg"
 * ```
 */
export function runout(readings: readonly DialReading[]): Runout {
  guardDial('readings', readings, 3, 'readings, all round the part');
  guardShown('readings', readings, 'Eccentricity');
  const { total, eccentricity, direction, outOfRound, mayBeLobes } = turnOf(readings);
  return {
    total,
    eccentricity,
    direction,
    ...(outOfRound !== undefined && { outOfRound }),
    ...(mayBeLobes && { mayBeLobes }),
    toGrind: Math.max(total, 2 * eccentricity) as Length,
  };
}

/** From so many angles on, lobes of a few are told from an eccentricity. */
export const ENOUGH_ANGLES = 6;

/** What sound readings of a turn tell, and how well the eccentricity is known, one standard deviation. */
export function turnOf(readings: readonly DialReading[]) {
  const shown = readings.map(({ reading }) => reading);
  const { waves, left, scatter } = wavesIn(readings, 1);
  const [wave] = waves as [(typeof waves)[number]];
  return {
    total: (largestOf(shown) - smallestOf(shown)) as Length,
    eccentricity: wave.amplitude,
    direction: wave.crest as Angle,
    outOfRound: scatter === undefined ? undefined : left,
    mayBeLobes: readings.length < ENOUGH_ANGLES ? (true as const) : undefined,
    uncertainty: (scatter ?? 0) * Math.sqrt(2 / readings.length),
  };
}
