import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import { guardFields, guardLength, ownLimitsOr, type WithTarget } from '../judging/internal.js';
import type { Force, Length, Pressure } from '../quantities/index.js';
import { coilBindRoom, springHeight } from './domains.js';
import { type CoilSpring, figuresOf } from './spring.js';

/** A coil spring pressed to a height, and the limits of its room before coil bind if they are known. */
export interface PressedSpring extends CoilSpring, OwnLimits<'length'> {
  /** Height when it lies free [m]. */
  readonly freeHeight: Length;
  /** Height that it is pressed to, valve closed or open [m]. */
  readonly height: Length;
}

/** A coil spring at a height. */
export interface SpringAtHeight {
  /** What it presses with [N]. */
  readonly force: Force;
  /** Shear stress at the inside of its coils, with Wahl's factor [Pa]. */
  readonly shearStress: Pressure;
  /** How much further it goes until its coils touch; negative is a height that it cannot reach [m]. */
  readonly toCoilBind: Length;
  /** That against its limits, by default a rule of thumb for the open valve. */
  readonly finding: Finding<'length'>;
}

const PRESSED = [
  'wire',
  'outside',
  'coils',
  'deadCoils',
  'ends',
  'shearModulus',
  'density',
  'freeHeight',
  'height',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

/**
 * Force, stress and room before coil bind of a valve spring at one height. Work it for the valve closed, and again for
 * the valve open, whose height is less by the lift of the valve.
 *
 *     D = outside - wire
 *     C = D / wire
 *     force = shearModulus * wire^4 / (8 * D³ * (coils - deadCoils)) * (freeHeight - height)
 *     K = (4 * C - 1) / (4 * C - 4) + 0.615 / C
 *     shearStress = K * 8 * force * D / (π * wire³)
 *     toCoilBind = height - wire * coils   of squared and ground ends
 *
 * The room is judged by the caller's limits first. Otherwise by a rule of thumb: 1 mm is left when the valve is open, since
 * coils shut unevenly and a spring that binds bends push rods. What stress a wire bears depends on its steel, its size and its peening, and no
 * verdict is given on it. Stress that was reached at coil bind has set the spring already.
 *
 * @param spring - the spring, its free height, and the height that it is pressed to
 * @returns force, shear stress and room before coil bind, with a finding on the room
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the coils do not fit the
 * wire, all coils lie dead, the ends are unknown, or the height is above the free height
 * @see Source: Shigley, Mechanical Engineering Design, sections 10-1 to 10-3, from memory; Wahl's factor in Khurmi and
 * Gupta, Machine Design, p. 1208
 * @example
 * ```ts
 * const spring = {
 *   wire: inch(0.12), outside: inch(0.97), coils: ratio(7.5), ends: 'squared and ground', freeHeight: inch(1.7),
 * } as const;
 * format(springAtHeight({ ...spring, height: inch(1.4) }).force, lbf); // "26.5 lbf"
 * const open = springAtHeight({ ...spring, height: inch(1.15) });
 * format(open.toCoilBind, inch); // "0.2500 in"
 * open.finding.verdict; // "within"
 * ```
 */
export function springAtHeight(spring: PressedSpring): SpringAtHeight {
  guardFields('spring', spring as WithTarget<PressedSpring>, PRESSED);
  const { meanDiameter, springIndex: c, rate, solidHeight } = figuresOf(spring);
  const free = springHeight('freeHeight', spring.freeHeight);
  const height = springHeight('height', spring.height);
  guardLength('height', height, [springHeight.least, free], springHeight.example);
  const allowed = ownLimitsOr('spring', spring, ROOM, coilBindRoom);
  const force = rate * (free - height);
  const wahl = (4 * c - 1) / (4 * c - 4) + 0.615 / c;
  const toCoilBind = (height - solidHeight) as Length;
  return {
    force: force as Force,
    shearStress: ((wahl * 8 * force * meanDiameter) / (Math.PI * spring.wire ** 3)) as Pressure,
    toCoilBind,
    finding: judge({
      feature: 'room before coil bind',
      dimension: 'length',
      value: toCoilBind,
      ...allowed,
    }),
  };
}

const ROOM: BasedLimits<'length'> = {
  limits: { min: 0.001 as Length },
  basis: {
    kind: 'common practice',
    rule: 'a spring has 1 mm left before its coils touch when its valve is open',
  },
};
