import { guardFields, guardLength, ROUNDING } from '../judging/internal.js';
import { type Angle, type Length, RebuildInputError } from '../quantities/index.js';
import { rimDiameter, turnFromCentre } from './domains.js';

/** How far two marks on a rim are apart. */
export interface RimDistance {
  /** Along the rim, as a tape lies on it [m]. */
  readonly arc: Length;
  /** Straight across, as a rule or dividers measure it [m]. */
  readonly chord: Length;
}

/** Half the way around a rim over its diameter, with what rounding may add. */
const HALF_ROUND = 1.5707963283;
const TURN = ['diameter', 'angle'] as const;
const MARKS = ['diameter', 'arc', 'chord'] as const;

/**
 * How far to set two marks apart on the rim of a flywheel or a pulley for an angle of the crank.
 *
 *     arc = diameter / 2 * angle
 *     chord = diameter * sin(angle / 2)
 *
 * A tape laid on the rim measures the arc, dividers or a rule the chord, which is shorter: by 1 in 200 at 20°, by a
 * tenth at 90°. A tape or strip of paper has a thickness, and measures on a circle that much larger. Measure the
 * diameter where the marks go: a rim with a crown or a draft is not the same all over.
 *
 * Before a crank is turned by hand, switch the ignition off and earth the magneto lead, and take the plugs out.
 *
 * @param turn - diameter of the rim, and how far the crank turns
 * @returns the distance along the rim and straight across [m]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: geometry; TM 5-3895-382-24, table 13, for the arc
 * @example
 * ```ts
 * // A rim of 10 in has 31.416 in around it; 18 of 360 degrees are 1.571 in.
 * const marks = rimDistance({ diameter: inch(10), angle: degree(18) });
 * format(marks.arc, inch, 3); // "1.571 in"
 * format(marks.chord, inch, 3); // "1.564 in"
 * ```
 */
export function rimDistance(turn: {
  /** Diameter of the rim where the marks are [m]. */
  readonly diameter: Length;
  /** Turn of the crank, up to half a turn [rad]. */
  readonly angle: Angle;
}): RimDistance {
  guardFields('turn', turn, TURN);
  const diameter = rimDiameter('diameter', turn.diameter);
  const angle = turnFromCentre('angle', turn.angle);
  return rimDistanceAt(diameter, angle);
}

/** The same without guards. */
export const rimDistanceAt = (diameter: number, angle: number): RimDistance => ({
  arc: ((diameter / 2) * angle) as Length,
  chord: (diameter * Math.sin(angle / 2)) as Length,
});

/** Two marks on a rim, with the distance measured in one way or the other. */
export interface RimMarks {
  /** Diameter of the rim where the marks are [m]. */
  readonly diameter: Length;
  /** Distance along the rim, as a tape lies on it [m]. */
  readonly arc?: Length;
  /** Distance straight across, as a rule or dividers measure it [m]. */
  readonly chord?: Length;
}

/**
 * The angle of the crank between two marks on a rim, from the distance along the rim or straight across: give one.
 *
 *     angleByArc = 2 * arc / diameter
 *     angleByChord = 2 * asin(chord / diameter)
 *
 * A mark is read to half a millimetre at best. On a small pulley that is a degree: use the largest rim.
 *
 * @param marks - diameter of the rim, and the distance in one way
 * @returns how far the crank turns from one mark to the other [rad]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, neither distance or both
 * are given, the arc is longer than half the rim, or the chord is longer than the diameter
 * @see Source: geometry
 * @example
 * ```ts
 * format(rimAngle({ diameter: inch(10), chord: inch(1.564) }), degree); // "18.0 deg"
 * format(rimAngle({ diameter: mm(203), arc: mm(23) }), degree); // "13.0 deg"
 * ```
 */
export function rimAngle(marks: RimMarks): Angle {
  guardFields('marks', marks, MARKS);
  const diameter = rimDiameter('diameter', marks.diameter);
  const { arc, chord } = marks;
  if (arc !== undefined && chord !== undefined) {
    throw new RebuildInputError({
      parameter: 'chord',
      value: chord,
      expected: 'one distance: along the rim, or straight across',
      hint: 'Give the arc or the chord, whichever was measured, not both.',
    });
  }
  if (chord !== undefined) {
    guardLength('chord', chord, [0, diameter * (1 + ROUNDING)], 'inch(1.5)');
    return (2 * Math.asin(Math.min(chord / diameter, 1))) as Angle;
  }
  const along = guardLength('arc', arc as Length, [0, HALF_ROUND * diameter], 'inch(1.5)');
  return ((2 * along) / diameter) as Angle;
}
