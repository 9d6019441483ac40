import { angleAround, guardFields, pistonStroke } from '../judging/internal.js';
import type { Acceleration, Angle, Length, RotationalSpeed, Speed } from '../quantities/index.js';
import { crankSpeed } from './domains.js';
import { guardRodLength } from './guards.js';

/** A crank and its rod, the piston pin in line with the crankshaft. */
export interface CrankTrain {
  /** Stroke of the piston, twice the throw of the crank [m]. */
  readonly stroke: Length;
  /** Rod from centre to centre [m]. */
  readonly rodLength: Length;
}

/** How piston and rod move at one angle of the crank. */
export interface PistonMotion {
  /** How far the piston is below top dead centre [m]. */
  readonly position: Length;
  /** Its speed, positive away from top dead centre [m/s]. */
  readonly velocity: Speed;
  /** Its acceleration, positive away from top dead centre [m/s²]. */
  readonly acceleration: Acceleration;
  /** Lean of the rod from the cylinder's axis, positive over the first half turn [rad]. */
  readonly rodAngle: Angle;
  /** How fast that lean grows. The rod then swings against the crank: the crankpin turns in the rod at both speeds together [rad/s]. */
  readonly rodSpeed: RotationalSpeed;
}

const CRANK = ['stroke', 'rodLength', 'speed', 'crankAngle'] as const;

/**
 * Piston and rod at one angle of the crank, at constant speed. This is the exact form of
 * the slider-crank. The usual two terms are off by about a hundredth of the greatest acceleration
 * where the rod is short.
 *
 *     r = stroke / 2
 *     rodAngle = asin(r / rodLength * sin(crankAngle))
 *     position = r * (1 - cos(crankAngle)) + rodLength * (1 - cos(rodAngle))
 *     velocity = speed * r * (sin(crankAngle) + cos(crankAngle) * tan(rodAngle))
 *     rodSpeed = speed * r / rodLength * cos(crankAngle) / cos(rodAngle)
 *     acceleration = speed² * r * (cos(crankAngle) - sin(crankAngle) * tan(rodAngle)) + rodLength * rodSpeed² / cos(rodAngle)
 *
 * @param crank - stroke, rod, speed and the angle of the crank past top dead centre
 * @returns position, velocity and acceleration of the piston, lean and swing of the rod
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the rod cannot
 * belong to the stroke
 * @see Source: geometry; Khurmi and Gupta, Theory of Machines, chapter 15, for the two-term form
 * @example
 * ```ts
 * const motion = pistonMotion({
 *   stroke: mm(600), rodLength: mm(1500), speed: rpm(180), crankAngle: degree(40),
 * });
 * format(motion.velocity, metrePerSecond); // "4.20 m/s"
 * format(motion.acceleration, metrePerSecondSquared); // "85.6 m/s²"
 * ```
 */
export function pistonMotion(
  crank: CrankTrain & {
    /** Speed of the crankshaft [rad/s]. */
    readonly speed: RotationalSpeed;
    /** How far the crank is past top dead centre [rad]. */
    readonly crankAngle: Angle;
  },
): PistonMotion {
  guardFields('crank', crank, CRANK);
  guardCrankTrain(crank);
  const speed = crankSpeed('speed', crank.speed);
  const crankAngle = angleAround('crankAngle', crank.crankAngle);
  return motionAt(crank, speed, crankAngle);
}

/** Refuses what is not a crank and its rod; `at` is put before the names of its fields. */
export function guardCrankTrain({ stroke, rodLength }: CrankTrain, at = ''): void {
  pistonStroke(`${at}stroke`, stroke);
  guardRodLength(`${at}rodLength`, rodLength, stroke);
}

/** The same without guards. */
export function motionAt(
  { stroke, rodLength }: CrankTrain,
  speed: number,
  crankAngle: number,
): PistonMotion {
  const r = stroke / 2;
  const sinCrank = Math.sin(crankAngle);
  const cosCrank = Math.cos(crankAngle);
  const sinRod = (r / rodLength) * sinCrank;
  const cosRod = Math.sqrt((1 - sinRod) * (1 + sinRod));
  const tanRod = sinRod / cosRod;
  const rodSpeed = (((speed * r) / rodLength) * cosCrank) / cosRod;
  return {
    position: positionAt({ stroke, rodLength }, crankAngle),
    velocity: (speed * r * (sinCrank + cosCrank * tanRod)) as Speed,
    acceleration: (speed * speed * r * (cosCrank - sinCrank * tanRod) +
      (rodLength * rodSpeed * rodSpeed) / cosRod) as Acceleration,
    rodAngle: Math.asin(sinRod) as Angle,
    rodSpeed: rodSpeed as RotationalSpeed,
  };
}

/** How far the piston is below top dead centre, to the last digits near it too. */
export function positionAt({ stroke, rodLength }: CrankTrain, crankAngle: number): Length {
  const r = stroke / 2;
  const half = Math.sin(crankAngle / 2);
  const sinRod = (r / rodLength) * Math.sin(crankAngle);
  const cosRod = Math.sqrt((1 - sinRod) * (1 + sinRod));
  return (2 * r * half * half + (rodLength * sinRod * sinRod) / (1 + cosRod)) as Length;
}
