import { guardFields } from '../judging/internal.js';
import {
  type Angle,
  type Force,
  type Length,
  RebuildInputError,
  type Stiffness,
} from '../quantities/index.js';
import { boltLoad, clampStiffness, snugLoad, threadPitch } from './domains.js';

/** A bolt that is tightened by an angle. */
export interface TurnedNut {
  /** The pull that is wanted [N]. */
  readonly preload: Force;
  /** The pull at snug, where all faces lie tight and the turn is counted from [N]. */
  readonly snug: Force;
  /** Pitch of the thread [m]. */
  readonly pitch: Length;
  /** Stiffness of the bolt, as `boltStretch` gives it [N/m]. */
  readonly boltStiffness: Stiffness;
  /** Stiffness of what it clamps, as `memberStiffness` gives it [N/m]. */
  readonly memberStiffness: Stiffness;
}

const TURNED = ['preload', 'snug', 'pitch', 'boltStiffness', 'memberStiffness'] as const;

/**
 * How far to turn a nut from snug to a preload: it takes up what the bolt stretches and what the parts are pressed.
 *
 *     turnOfNut = 2 * π * (preload - snug) / pitch * (1 / boltStiffness + 1 / memberStiffness)
 *
 * It is no better than the snug that it is counted from: faces that do not lie flat, paint and gaskets take turns that
 * pull nothing. Mark nut and part, and turn in one go. The bolt's twist under the wrench is left out. The maker's angle
 * wins, and is given for his own bolts alone; some of those are pulled past yield and used once.
 *
 * @param nut - preload and snug, pitch, and both stiffnesses
 * @returns the turn [rad]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or snug is above the preload
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-8; Hooke's law
 * @example
 * ```ts
 * const turn = turnOfNut({
 *   preload: lbf(5600), snug: lbf(600), pitch: inch(1 / 24),
 *   boltStiffness: lbfPerInch(1_750_000), memberStiffness: lbfPerInch(7_000_000),
 * });
 * format(turn, degree, 0); // "31 deg"
 * ```
 */
export function turnOfNut(nut: TurnedNut): Angle {
  guardFields('nut', nut, TURNED);
  const preload = boltLoad('preload', nut.preload);
  const snug = snugLoad('snug', nut.snug);
  const pitch = threadPitch('pitch', nut.pitch);
  const bolt = clampStiffness('boltStiffness', nut.boltStiffness);
  const members = clampStiffness('memberStiffness', nut.memberStiffness);
  if (snug > preload) {
    throw new RebuildInputError({
      parameter: 'snug',
      value: snug,
      expected: 'at most the preload',
      hint: 'Snug is where the turn begins. Are the two swapped?',
    });
  }
  return (((2 * Math.PI * (preload - snug)) / pitch) * (1 / bolt + 1 / members)) as Angle;
}
