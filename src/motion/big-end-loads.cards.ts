import { card, defined, diameter } from '../judging/internal.js';
import {
  type Angle,
  degree,
  type GaugePressure,
  kilogram,
  kPaGauge,
  type Length,
  type Mass,
  metre,
  type RotationalSpeed,
} from '../quantities/index.js';
import { type BigEndEngine, bigEndLoads } from './big-end-loads.js';
import { ACCELERATION, CRANK, KHURMI, LEAN, omega, SWING, TURNING, theta } from './card-letters.js';
import { cycleAngle, gasGauge, movingMass } from './domains.js';

const mass = (field: string, meaning: string, least: number, most: number) =>
  ({ field, meaning, domain: movingMass, usual: [least, most] }) as const;

// Not so fast and not so narrow that gas and masses balance: no digits would be left to compare.
const thrown = {
  ...CRANK,
  omega: { ...omega, usual: [50, 200] },
  theta: { ...theta, field: 'gas[0].crankAngle', domain: cycleAngle },
} as const;
const pushed = {
  ...thrown,
  D: { field: 'bore', meaning: 'bore', domain: diameter, usual: [0.07, 0.1] },
  p: {
    field: 'gas[0].gauge',
    meaning: 'gas pressure above the air',
    domain: gasGauge,
    usual: [2e6, 4e6],
  },
  m_p: mass('pistonMass', 'mass of the piston with rings and pin', 0.2, 1),
  m_s: mass('smallEndMass', 'mass of the small end of the rod', 0.1, 0.4),
} as const;
const m_b = mass('bigEndMass', 'mass of the big end of the rod', 0.2, 0.8);

const CRANK_TO_ROD = defined(
  'beta = theta / (1 rad) + phi',
  'angle between crank and rod, in radians',
  'crankToRod',
);
const THRUST = defined(
  'F_r = (p * pi / 4 * D^2 - (m_p + m_s) * a) / cos(phi)',
  'force along the rod at its small end',
  'thrust',
);
const push = [
  ...LEAN,
  SWING,
  defined(`a = ${ACCELERATION}`, 'acceleration of the piston', 'acceleration'),
  THRUST,
];

/** The cycle at 24 places, the first of them at the angle, below 30 degrees. */
const around = (first: Angle, gauge: GaugePressure): BigEndEngine['gas'] =>
  Array.from({ length: 24 }, (_, i) => ({
    crankAngle: i === 0 ? first : ((first + degree(30 * i)) as Angle),
    gauge,
  }));

/** An engine by the letters of a formula. What the formula does not name adds nothing to the force. */
const engineOf = ({
  s,
  l,
  omega,
  theta,
  D = metre(0.08),
  p = kPaGauge(0),
  m_p = kilogram(0),
  m_s = kilogram(0),
  m_b = kilogram(0),
}: {
  readonly s: Length;
  readonly l: Length;
  readonly omega: RotationalSpeed;
  readonly theta: Angle;
  readonly D?: Length;
  readonly p?: GaugePressure;
  readonly m_p?: Mass;
  readonly m_s?: Mass;
  readonly m_b?: Mass;
}): BigEndEngine => ({
  stroke: s,
  rodLength: l,
  speed: omega,
  bore: D,
  pistonMass: m_p,
  smallEndMass: m_s,
  bigEndMass: m_b,
  gas: around(theta, p),
});

const atFirst = ({ loads: [first] }: ReturnType<typeof bigEndLoads>) => first;

/** Formulas of the forces on a big end. */
export const bigEndLoadCards = {
  loadAlong: card({
    of: bigEndLoads,
    name: 'force of the crankpin along the rod',
    gives: { symbol: 'F', meaning: 'force on the shell in the rod', dimension: 'force' },
    letters: { ...pushed, m_b },
    call: (letters) => [engineOf(letters)],
    read: (loads) => atFirst(loads)?.along,
    where: [...push, CRANK_TO_ROD],
    expression: `F_r - m_b * ${TURNING}^2 * r * cos(beta)`,
    refuses: {
      'the rod cannot belong to the stroke': { with: { l: 0.03 }, names: 'rodLength' },
      'a force is more than any big end carries': {
        with: { m_b: 2000, omega: 4000 },
        names: 'result',
      },
    },
    source: KHURMI,
  }),
  loadAcross: card({
    of: bigEndLoads,
    name: 'force of the crankpin across the rod',
    gives: {
      symbol: 'F',
      meaning: 'force across the rod, above zero the way the crank turns at the top',
      dimension: 'force',
    },
    letters: { ...thrown, m_b },
    call: (letters) => [engineOf(letters)],
    read: (loads) => atFirst(loads)?.across,
    where: [...LEAN, CRANK_TO_ROD],
    expression: `-m_b * ${TURNING}^2 * r * sin(beta)`,
    source: KHURMI,
  }),
  crankTorque: card({
    of: bigEndLoads,
    name: 'torque on the crank',
    gives: { symbol: 'T', meaning: 'torque on the crank', dimension: 'torque' },
    letters: pushed,
    call: (letters) => [engineOf(letters)],
    read: (loads) => atFirst(loads)?.torque,
    where: [...push, CRANK_TO_ROD],
    expression: 'F_r * r * sin(beta)',
    source: KHURMI,
  }),
};
