import { guardFields, guardLength, ROUNDING } from '../judging/internal.js';
import type { CrankTrain } from '../motion/index.js';
import { guardCrankTrain, positionAt } from '../motion/internal.js';
import type { Angle, Length } from '../quantities/index.js';
import { turnFromCentre } from './domains.js';

const AT_ANGLE = ['stroke', 'rodLength', 'angle'] as const;
const AT_TRAVEL = ['stroke', 'rodLength', 'travel'] as const;

/**
 * How far the piston is below top dead centre at an angle of the crank from it, before or after: exact, with the rod's
 * lean.
 *
 *     r = stroke / 2
 *     travel = r * (1 - cos(angle)) + rodLength - √(rodLength² - (r * sin(angle))²)
 *
 * A depth gauge or a stick through the plug hole measures this only along the cylinder's axis: a plug hole at a slant
 * reads too much. Where the piston pin or the cylinder stands to one side of the crankshaft's centre, before and after
 * differ, and this does not hold. Near the top a piston hardly moves, so that its travel tells an early spark much
 * better than a top dead centre.
 *
 * Before a crank is turned by hand, switch the ignition off and earth the magneto lead, and take the plugs out.
 *
 * @param crank - stroke, rod, and the angle from top dead centre
 * @returns how far the piston is below top dead centre [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the rod cannot
 * belong to the stroke
 * @see Source: geometry of the slider-crank, as `pistonMotion`
 * @example
 * ```ts
 * const travel = pistonTravel({ stroke: inch(3.25), rodLength: inch(6), angle: degree(18) });
 * format(travel, inch, 3); // "0.101 in"
 * ```
 */
export function pistonTravel(
  crank: CrankTrain & {
    /** How far the crank is from top dead centre, before or after, up to half a turn [rad]. */
    readonly angle: Angle;
  },
): Length {
  guardFields('crank', crank, AT_ANGLE);
  guardCrankTrain(crank);
  return positionAt(crank, turnFromCentre('angle', crank.angle));
}

/**
 * The angle of the crank from top dead centre at which the piston is so far below it: `pistonTravel` turned round, in
 * closed form by the law of cosines, exact near both dead centres.
 *
 *     angle = 2 * atan(√(travel * (2 * rodLength - travel) / ((stroke - travel) * (stroke + 2 * rodLength - travel))))
 *
 * Near the top a small error of the travel is a large one of the angle: with a stroke of 3.25 in, 5 thou are 4° there.
 *
 * @param crank - stroke, rod, and how far the piston is below top dead centre
 * @returns the angle from top dead centre, before or after it [rad]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the rod cannot
 * belong to the stroke, or the travel is more than the stroke
 * @see Source: law of cosines
 * @example
 * ```ts
 * const angle = angleAtTravel({ stroke: inch(3.25), rodLength: inch(6), travel: inch(0.101) });
 * format(angle, degree); // "18.0 deg"
 * ```
 */
export function angleAtTravel(
  crank: CrankTrain & {
    /** How far the piston is below top dead centre [m]. */
    readonly travel: Length;
  },
): Angle {
  guardFields('crank', crank, AT_TRAVEL);
  guardCrankTrain(crank);
  const { stroke, rodLength } = crank;
  const travel = guardLength('travel', crank.travel, [0, stroke * (1 + ROUNDING)], 'inch(0.1)');
  const twoRods = 2 * rodLength;
  const left = Math.max(stroke - travel, 0);
  return (2 *
    Math.atan2(
      Math.sqrt(travel * (twoRods - travel)),
      Math.sqrt(left * (stroke + twoRods - travel)),
    )) as Angle;
}
