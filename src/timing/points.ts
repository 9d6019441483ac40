import { guardBetween, guardFields, guardWhole } from '../judging/internal.js';
import { type Angle, degree, type Ratio, RebuildInputError } from '../quantities/index.js';
import { breakerSpeedRatio, pointsAngle, pointsShare } from './domains.js';
import { WHOLE } from './turns.js';

/** How long points stay closed, told in one way. */
export interface PointsReading {
  /** Lobes of the breaker cam: how often the points open in a turn of it. */
  readonly lobes: number;
  /** Turn of the cam for which they stay closed [rad]. */
  readonly dwell?: Angle;
  /** The same as a share of the turn from one opening to the next [-]. */
  readonly share?: Ratio;
}

/** How long points stay closed and open, for each lobe. */
export interface PointsDwell {
  /** Turn of the cam for which they stay closed [rad]. */
  readonly dwell: Angle;
  /** Turn for which they are open [rad]. */
  readonly open: Angle;
  /** Share of the turn from one opening to the next for which they stay closed [-]. */
  readonly share: Ratio;
}

const READING = ['lobes', 'dwell', 'share'] as const;
const CHANGE = ['from', 'to', 'speedRatio'] as const;

/**
 * Dwell of breaker points as an angle and as a share: give one. A meter tells the share; some are marked in degrees for
 * an engine of four, six or eight lobes and read wrong on one of another number.
 *
 *     dwell = share * 2 * π / lobes
 *     dwellShare = dwell * lobes / (2 * π)
 *
 * @param reading - lobes of the breaker cam, and dwell in one way
 * @returns dwell and opening of the points in turn of the cam, and the share
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the lobes are no whole
 * number from 1 to 12, the points would never open, neither dwell nor share is given, or both are
 * @see Source: definition
 * @example
 * ```ts
 * const { share, open } = pointsDwell({ lobes: 4, dwell: degree(45) });
 * format(share, percent); // "50.00 %"
 * format(open, degree); // "45.0 deg"
 * ```
 */
export function pointsDwell(reading: PointsReading): PointsDwell {
  guardFields('reading', reading, READING);
  const { lobes, dwell, share } = reading;
  guardWhole('lobes', lobes, [1, 12], 'Count how often the points open in one turn of the cam.');
  const turn = WHOLE / lobes;
  if (dwell === undefined) {
    const closed = pointsShare('share', share as Ratio);
    return resultOf(closed * turn, turn, closed);
  }
  if (share !== undefined) {
    throw new RebuildInputError({
      parameter: 'share',
      value: share,
      expected: 'dwell in one way: as an angle, or as a share',
      hint: 'Give the one that was measured, not both.',
    });
  }
  pointsAngle('dwell', dwell);
  guardBetween('dwell', dwell, degree, [0, 0.99 * turn], 'degree(45)');
  return resultOf(dwell, turn, dwell / turn);
}

const resultOf = (dwell: number, turn: number, share: number): PointsDwell => ({
  dwell: dwell as Angle,
  open: (turn - dwell) as Angle,
  share: share as Ratio,
});

/**
 * How much later the spark comes after the points were set to another dwell, in turn of the crank; negative is earlier.
 * The opening of the points moves by half of the change, their closing by the other half:
 *
 *     later = (to - from) / 2 / speedRatio
 *
 * That holds for a cam whose lobes are alike on both sides, with the breaker plate where it was. On a cam that turns at
 * half the crank's speed a degree of dwell is a degree of timing. A wider gap is less dwell and an earlier spark, and
 * an earlier spark **throws the starting handle back**: set the gap first and time the spark afterwards, always. How
 * much dwell a gap gives is the shape of the cam, and no formula tells it: measure the dwell, or time the spark again.
 *
 * @param change - dwell before and after, in turn of the cam, and how fast the cam turns
 * @returns how much later the spark comes, in turn of the crank [rad]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: geometry of a symmetrical lobe; common practice
 * @example
 * ```ts
 * const later = sparkLaterByDwell({ from: degree(50), to: degree(46), speedRatio: ratio(0.5) });
 * format(later, degree); // "-4.0 deg"
 * ```
 */
export function sparkLaterByDwell(change: {
  /** Dwell when the spark was timed, in turn of the cam [rad]. */
  readonly from: Angle;
  /** Dwell that was set since [rad]. */
  readonly to: Angle;
  /** Turns of the breaker cam for one turn of the crank: 0.5 where it turns with the camshaft [-]. */
  readonly speedRatio: Ratio;
}): Angle {
  guardFields('change', change, CHANGE);
  const from = pointsAngle('from', change.from);
  const to = pointsAngle('to', change.to);
  const speedRatio = breakerSpeedRatio('speedRatio', change.speedRatio);
  return ((to - from) / 2 / speedRatio) as Angle;
}
