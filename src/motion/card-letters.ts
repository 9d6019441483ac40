import { angleAround, defined, pistonStroke } from '../judging/internal.js';
import { crankSpeed, rodCentres } from './domains.js';

// What several cards of this room write alike.

export const KHURMI = 'Khurmi and Gupta, Theory of Machines, chapter 15, in the exact form';

/** The crank and its rod. */
export const CRANK = {
  s: { field: 'stroke', meaning: 'stroke', domain: pistonStroke, usual: [0.05, 0.1] },
  l: {
    field: 'rodLength',
    meaning: 'rod from centre to centre',
    domain: rodCentres,
    usual: [0.15, 0.25],
  },
} as const;
export const omega = {
  field: 'speed',
  meaning: 'speed of the crankshaft',
  domain: crankSpeed,
  usual: [50, 400],
} as const;
/** Before the piston's acceleration passes through zero, where no digits are left to compare. */
export const theta = {
  field: 'crankAngle',
  meaning: 'crank past top dead centre',
  domain: angleAround,
  usual: [0.05, 0.5],
} as const;

/** The speed where it is multiplied with a length. */
export const TURNING = '(omega / (1 rad))';
export const LEAN = [
  defined('r = s / 2', 'radius of the crank'),
  defined('phi = asin(r / l * sin(theta))', 'lean of the rod, in radians', 'rodAngle'),
] as const;
export const SWING = defined(
  `omega_r = ${TURNING} * r / l * cos(theta) / cos(phi)`,
  'swing of the rod',
  'rodSpeed',
);
export const ACCELERATION = `${TURNING}^2 * r * (cos(theta) - sin(theta) * tan(phi)) + l * omega_r^2 / cos(phi)`;

/** A rod that no crank of this stroke could have. */
export const NO_ROD = {
  'the rod cannot belong to the stroke': { with: { l: 0.03 }, names: 'rodLength' },
  'the rod is far too long for the stroke': { with: { l: 9 }, names: 'rodLength' },
};
