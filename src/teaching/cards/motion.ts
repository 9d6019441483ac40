import { type FormulaCard, input } from '../card.js';

const KHURMI = 'Khurmi and Gupta, Theory of Machines, chapter 15, in the exact form';
const stroke = input('s', 'stroke', 'length', 0.05, 0.1);
const rod = input('l', 'rod from centre to centre', 'length', 0.15, 0.25);
const speed = input('omega', 'speed of the crankshaft', 'rotationalSpeed', 50, 400);
/** Before the piston's acceleration passes through zero, where no digits are left to compare. */
const angle = input('theta', 'crank past top dead centre', 'angle', 0.05, 0.5);
const piston = input('m_p', 'piston with its rings and pin', 'mass', 0.2, 1);
const smallEnd = input('m_s', 'small end of the rod', 'mass', 0.1, 0.4);
const bigEnd = input('m_b', 'big end of the rod', 'mass', 0.2, 0.8);
const bore = input('D', 'bore', 'length', 0.05, 0.1);
const gauge = input('p', 'gas pressure above the air', 'gaugePressure', 2e6, 4e6);

const R = 'r = s / 2';
const PHI = 'phi = asin(r / l * sin(theta))';
const W = 'w = omega / (1 rad)';
const ROD = 'w_r = w * r / l * cos(theta) / cos(phi)';
const PISTON = 'a = w^2 * r * (cos(theta) - sin(theta) * tan(phi)) + l * w_r^2 / cos(phi)';
const THRUST = 'F_r = (p * pi / 4 * D^2 - (m_p + m_s) * a) / cos(phi)';
const thrown = [R, PHI, W, 'u = theta / (1 rad) + phi'];
const thrusted = [...thrown, ROD, PISTON, THRUST];
const forced = [stroke, rod, speed, angle, bore, gauge, piston, smallEnd];

/** Formulas of the motion room. */
export const motionCards = {
  pistonPosition: {
    name: 'position of the piston',
    computedBy: 'pistonMotion',
    result: { symbol: 'x', meaning: 'piston below top dead centre', dimension: 'length' },
    inputs: [stroke, rod, angle],
    where: [R, PHI],
    expression: 'r * (1 - cos(theta)) + l * (1 - cos(phi))',
    source: 'geometry of the slider-crank',
  },
  pistonVelocity: {
    name: 'speed of the piston',
    computedBy: 'pistonMotion',
    result: { symbol: 'v', meaning: 'speed away from top dead centre', dimension: 'speed' },
    inputs: [stroke, rod, speed, angle],
    where: [R, PHI, W],
    expression: 'w * r * (sin(theta) + cos(theta) * tan(phi))',
    source: KHURMI,
  },
  pistonAcceleration: {
    name: 'acceleration of the piston',
    computedBy: 'pistonMotion',
    result: {
      symbol: 'a',
      meaning: 'acceleration away from top dead centre',
      dimension: 'acceleration',
    },
    inputs: [stroke, rod, speed, angle],
    where: [R, PHI, W, ROD],
    expression: 'w^2 * r * (cos(theta) - sin(theta) * tan(phi)) + l * w_r^2 / cos(phi)',
    source: KHURMI,
  },
  rodSpeed: {
    name: 'swing of the rod',
    computedBy: 'pistonMotion',
    result: {
      symbol: 'omega_r',
      meaning: 'how fast the lean of the rod grows',
      dimension: 'rotationalSpeed',
    },
    inputs: [stroke, rod, speed, angle],
    where: [R, PHI],
    expression: 'omega * r / l * cos(theta) / cos(phi)',
    source: KHURMI,
  },
  compressionPressure: {
    name: 'pressure at the end of compression',
    computedBy: 'gasTrace',
    result: { symbol: 'p_c', meaning: 'absolute pressure', dimension: 'pressure' },
    inputs: [
      input('p_i', 'absolute pressure over the intake', 'pressure', 5e4, 1.2e5),
      input('epsilon', 'compression ratio', 'ratio', 5, 10),
      input('n', 'polytropic exponent', 'ratio', 1.2, 1.4),
    ],
    where: [],
    expression: 'p_i * epsilon^n',
    source: 'polytropic law',
  },
  loadAlong: {
    name: 'force of the crankpin along the rod',
    computedBy: 'bigEndLoads',
    result: { symbol: 'F', meaning: 'force on the shell in the rod', dimension: 'force' },
    inputs: [...forced, bigEnd],
    where: thrusted,
    expression: 'F_r - m_b * w^2 * r * cos(u)',
    source: KHURMI,
  },
  loadAcross: {
    name: 'force of the crankpin across the rod',
    computedBy: 'bigEndLoads',
    result: {
      symbol: 'F',
      meaning: 'force towards where the crank turns at the top',
      dimension: 'force',
    },
    inputs: [stroke, rod, speed, angle, bigEnd],
    where: thrown,
    expression: '-m_b * w^2 * r * sin(u)',
    source: KHURMI,
  },
  crankTorque: {
    name: 'torque on the crank',
    computedBy: 'bigEndLoads',
    result: { symbol: 'T', meaning: 'torque on the crank', dimension: 'torque' },
    inputs: forced,
    where: thrusted,
    expression: 'F_r * r * sin(u)',
    source: KHURMI,
  },
} as const satisfies Record<string, FormulaCard>;
