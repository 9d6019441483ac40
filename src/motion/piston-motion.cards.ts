import { card, defined } from '../judging/internal.js';
import { radianPerSecond } from '../quantities/index.js';
import {
  ACCELERATION,
  CRANK,
  KHURMI,
  LEAN,
  NO_ROD,
  omega,
  SWING,
  TURNING,
  theta,
} from './card-letters.js';
import { pistonMotion } from './piston-motion.js';

/** Formulas of the piston and its rod. */
export const pistonMotionCards = {
  rodLean: card({
    of: pistonMotion,
    name: 'lean of the rod',
    gives: { symbol: 'phi', meaning: 'lean from the axis of the cylinder', dimension: 'angle' },
    letters: { ...CRANK, theta },
    call: (v) => [{ stroke: v.s, rodLength: v.l, crankAngle: v.theta, speed: radianPerSecond(0) }],
    read: ({ rodAngle }) => rodAngle,
    where: [defined('r = s / 2', 'radius of the crank')],
    expression: 'asin(r / l * sin(theta)) * 1 rad',
    refuses: NO_ROD,
    source: 'geometry of the slider-crank',
  }),
  pistonPosition: card({
    of: pistonMotion,
    name: 'position of the piston',
    gives: { symbol: 'x', meaning: 'piston below top dead centre', dimension: 'length' },
    letters: { ...CRANK, theta },
    call: (v) => [{ stroke: v.s, rodLength: v.l, crankAngle: v.theta, speed: radianPerSecond(0) }],
    read: ({ position }) => position,
    where: LEAN,
    expression: 'r * (1 - cos(theta)) + l * (1 - cos(phi))',
    refuses: NO_ROD,
    source: 'geometry of the slider-crank',
  }),
  pistonVelocity: card({
    of: pistonMotion,
    name: 'speed of the piston',
    gives: { symbol: 'v', meaning: 'speed away from top dead centre', dimension: 'speed' },
    letters: { ...CRANK, omega, theta },
    read: ({ velocity }) => velocity,
    where: LEAN,
    expression: `${TURNING} * r * (sin(theta) + cos(theta) * tan(phi))`,
    refuses: NO_ROD,
    source: KHURMI,
  }),
  pistonAcceleration: card({
    of: pistonMotion,
    name: 'acceleration of the piston',
    gives: {
      symbol: 'a',
      meaning: 'acceleration away from top dead centre',
      dimension: 'acceleration',
    },
    letters: { ...CRANK, omega, theta },
    read: ({ acceleration }) => acceleration,
    where: [...LEAN, SWING],
    expression: ACCELERATION,
    refuses: NO_ROD,
    source: KHURMI,
  }),
  rodSpeed: card({
    of: pistonMotion,
    name: 'swing of the rod',
    gives: {
      symbol: 'omega_r',
      meaning: 'angular speed of the rod',
      dimension: 'rotationalSpeed',
    },
    letters: { ...CRANK, omega, theta },
    read: ({ rodSpeed }) => rodSpeed,
    where: LEAN,
    expression: 'omega * r / l * cos(theta) / cos(phi)',
    refuses: NO_ROD,
    source: KHURMI,
  }),
};
