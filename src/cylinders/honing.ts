import { diameter, guardFields, pistonStroke } from '../judging/internal.js';
import type { Angle, Length, Rate, RotationalSpeed } from '../quantities/index.js';
import { honeSpeed, honeStrokeRate, includedAngle } from './domains.js';

/** How a hone moves in its bore, without how often it goes down and up. */
export interface HoneMotion {
  /** How far the hone travels one way, which is more than a ring travels and less than the bore is deep [m]. */
  readonly strokeLength: Length;
  /** How fast the hone turns [rad/s]. */
  readonly spindleSpeed: RotationalSpeed;
  /** Bore diameter [m]. */
  readonly bore: Length;
}

const STROKING = ['strokeRate', 'strokeLength', 'spindleSpeed', 'bore'] as const;
const TO_ANGLE = ['includedAngle', 'strokeLength', 'spindleSpeed', 'bore'] as const;

/**
 * The crosshatch that a hone leaves: the included angle between its up and its down scratches, as it opens about the
 * plane of rotation. Each scratch stands at half of it to that plane. Some measure the other angle between the same
 * scratches, which opens about the axis of the bore and is 180° less this one: ask which is meant.
 *
 *     crosshatchAngle = 2 * atan(4 * strokeLength * strokeRate / (spindleSpeed * bore))
 *
 * It is the mean over the stroke, with the hone at a steady speed up and down; at the ends, where it turns back, the
 * scratches lie flat. A count of strokes that takes down and up as two must be halved first.
 *
 * A spinning hone throws its stones and breaks its arms if it leaves the bore: it is stopped before it is drawn out, kept
 * off the mains webs below, and turned slowly. Eyes are covered, and no glove, sleeve or rag is near it.
 *
 * @param hone - how often it goes down and up, its travel, its speed, and the bore
 * @returns the included angle about the plane of rotation [rad]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: kinematics; docs/honing.md works one by hand
 * @example
 * ```ts
 * const angle = crosshatchAngle({
 *   strokeRate: perMinute(60), strokeLength: mm(100), spindleSpeed: rpm(120), bore: mm(80),
 * });
 * format(angle, degree); // "43.4 deg"
 * ```
 */
export function crosshatchAngle(
  hone: HoneMotion & {
    /** How often the hone goes down and up again, both together one stroke [1/s]. */
    readonly strokeRate: Rate;
  },
): Angle {
  guardFields('hone', hone, STROKING);
  const rate = honeStrokeRate('strokeRate', hone.strokeRate);
  return (2 * Math.atan((rate * travelOf(hone)) / aroundIn(hone))) as Angle;
}

/**
 * How often a hone must go down and up for a crosshatch: `crosshatchAngle` turned round. Which angle rings want is the
 * maker's to say; about 45° included is common practice, and others differ.
 *
 *     strokeRateForCrosshatch = spindleSpeed * bore * tan(includedAngle / 2) / (4 * strokeLength)
 *
 * @param hone - the included angle about the plane of rotation, travel and speed of the hone, and the bore
 * @returns strokes, down and up together, in a second [1/s]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: kinematics; see {@link crosshatchAngle}
 * @example
 * ```ts
 * const rate = strokeRateForCrosshatch({
 *   includedAngle: degree(45), strokeLength: mm(100), spindleSpeed: rpm(120), bore: mm(80),
 * });
 * format(rate, perMinute); // "62.5 1/min"
 * ```
 */
export function strokeRateForCrosshatch(
  hone: HoneMotion & {
    /** The angle between up and down scratches, about the plane of rotation [rad]. */
    readonly includedAngle: Angle;
  },
): Rate {
  guardFields('hone', hone, TO_ANGLE);
  const included = includedAngle('includedAngle', hone.includedAngle);
  return ((aroundIn(hone) * Math.tan(included / 2)) / travelOf(hone)) as Rate;
}

/** How far the hone goes along the bore in one stroke, down and up. */
const travelOf = ({ strokeLength }: HoneMotion) => 2 * pistonStroke('strokeLength', strokeLength);

/** How fast its stones go around. */
const aroundIn = ({ spindleSpeed, bore }: HoneMotion) =>
  (honeSpeed('spindleSpeed', spindleSpeed) * diameter('bore', bore)) / 2;
