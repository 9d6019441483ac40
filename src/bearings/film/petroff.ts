import { guardFields } from '../../judging/internal.js';
import { crankSpeed } from '../../motion/internal.js';
import type { DynamicViscosity, Power, RotationalSpeed, Torque } from '../../quantities/index.js';
import { filmViscosity } from './domains.js';
import { guardBearing, type JournalBearing } from './journal-bearing.js';

/** What it takes to turn a journal. */
export interface Drag {
  /** Torque against the turning [N·m]. */
  readonly torque: Torque;
  /** Power that it takes, all of it heat in the oil [W]. */
  readonly power: Power;
}

/** A bearing that turns in oil, its load left out. */
export interface TurningBearing extends JournalBearing {
  /** Viscosity of the oil in the gap [Pa·s]. */
  readonly viscosity: DynamicViscosity;
  /** Speed of the journal in the bearing [rad/s]. */
  readonly speed: RotationalSpeed;
}

const TURNING = ['journal', 'length', 'clearance', 'viscosity', 'speed'] as const;

/**
 * Drag of a journal that runs in the middle of its bearing: light load, high speed. Under load it is more.
 *
 *     torque = π µ ω D³ L / (4 c)       D the journal, c the radial clearance
 *
 * @param bearing - sizes, viscosity and speed
 * @returns torque and power
 * @throws {RebuildInputError} when a field is misspelt, a value cannot belong to a bearing, or the clearance
 * leaves no room to turn
 * @see Source: Petroff's equation, from shear of an even film; worked check in tests/published/film.test.ts
 * @example
 * ```ts
 * const drag = petroff({
 *   journal: inch(1.5), length: inch(1.5), clearance: inch(0.003),
 *   viscosity: reyn(4e-6), speed: rpm(1800),
 * });
 * format(drag.torque, lbfInch, 2); // "2.00 lbf·in"
 * ```
 */
export function petroff(bearing: TurningBearing): Drag {
  guardFields('bearing', bearing, TURNING);
  return centredDrag({
    ...guardBearing(bearing),
    viscosity: filmViscosity('viscosity', bearing.viscosity),
    speed: crankSpeed('speed', bearing.speed),
  });
}

/** The same of a bearing that was checked. */
export function centredDrag(bearing: TurningBearing): Drag {
  const { journal, length, clearance, viscosity, speed } = bearing;
  const torque = (Math.PI * viscosity * speed * journal ** 3 * length) / (2 * clearance);
  return { torque: torque as Torque, power: (torque * speed) as Power };
}
