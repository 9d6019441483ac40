import { guardFields } from '../judging/internal.js';
import { type Angle, type Length, RebuildInputError, type Torque } from '../quantities/index.js';
import {
  adapterAngle,
  adapterLength,
  fastenerTorque,
  runningTorque,
  wrenchLength,
} from './domains.js';

/** An adapter that stands off the square of a torque wrench: a crow's foot or an extension. */
export interface WrenchAdapter {
  /** From the middle of the grip to the middle of the square [m]. */
  readonly wrench: Length;
  /** From the middle of the square to the middle of the fastener [m]. */
  readonly adapter: Length;
  /** Between the adapter and the wrench drawn out beyond its square: 0 straight on, 90° sideways [rad]. */
  readonly angle?: Angle;
}

const WRENCH = ['torque', 'prevailing', 'adapter'] as const;
const ADAPTER = ['wrench', 'adapter', 'angle'] as const;

/**
 * What to set a torque wrench to, so that the fastener gets its torque: what turns a locking nut before it meets its
 * seat is added, and an adapter that stands off the square is allowed for.
 *
 *     wrenchSetting = (torque + prevailing) * wrench / (wrench + adapter * cos(angle))
 *
 * Straight on, an adapter makes the arm longer and the setting less. Sideways, at 90°, it changes nothing; backward
 * it makes the setting more. The hand pulls at the middle of the grip, at right angles to the wrench: elsewhere the
 * formula does not hold, and never with a pipe on the handle. A socket extension along the axis changes nothing. Measure
 * the prevailing torque on each nut, over its last turn before it seats.
 *
 * @param wanted - torque at the fastener, prevailing torque of a locking nut, and the adapter
 * @returns the setting [N·m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the adapter takes all
 * of the arm
 * @see Source: TM 5-3810-305-23, TM 9-254 and TM 1-1500-204-23-9 for adapters; AC 43.13-1B, paragraph 7-40, for nuts
 * @example
 * ```ts
 * const setting = wrenchSetting({
 *   torque: lbfFoot(300), adapter: { wrench: inch(18), adapter: inch(6) },
 * });
 * format(setting, lbfFoot); // "225.0 lbf·ft"
 * ```
 */
export function wrenchSetting(wanted: {
  /** Torque that the fastener is to get, over what turns a locking nut [N·m]. */
  readonly torque: Torque;
  /** Torque that turns a locking nut before it meets its seat; by default none [N·m]. */
  readonly prevailing?: Torque;
  /** The adapter, if there is one. */
  readonly adapter?: WrenchAdapter;
}): Torque {
  guardFields('wanted', wanted, WRENCH);
  const torque = fastenerTorque('torque', wanted.torque);
  const { prevailing: running = 0 as Torque } = wanted;
  const prevailing = runningTorque('prevailing', running);
  const total = torque + prevailing;
  if (wanted.adapter === undefined) return total as Torque;
  guardFields('adapter', wanted.adapter, ADAPTER);
  const wrench = wrenchLength('adapter.wrench', wanted.adapter.wrench);
  const adapter = adapterLength('adapter.adapter', wanted.adapter.adapter);
  const { angle: turned = 0 as Angle } = wanted.adapter;
  const angle = adapterAngle('adapter.angle', turned);
  const arm = wrench + adapter * Math.cos(angle);
  // Less than a tenth of the arm, and nobody can hold the wrench by it.
  if (arm < 0.1 * wrench) {
    throw new RebuildInputError({
      parameter: 'adapter.adapter',
      value: adapter,
      expected: 'an adapter that leaves a tenth of the arm',
      hint: 'It points back along the wrench: turn it forward or sideways.',
    });
  }
  return ((total * wrench) / arm) as Torque;
}
