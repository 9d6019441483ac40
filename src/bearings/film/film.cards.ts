import { card, defined, diameter, diametralClearance } from '../../judging/internal.js';
import { bearingLoad, crankSpeed } from '../../motion/internal.js';
import { filmViscosity } from './domains.js';
import { petroff } from './petroff.js';
import { sommerfeldNumber } from './sommerfeld.js';

const turning = {
  D: { field: 'journal', meaning: 'journal diameter', domain: diameter, usual: [0.02, 0.09] },
  // It goes by the journal besides, as the clearance does.
  L: {
    field: 'length',
    meaning: 'length of the bearing',
    domain: diameter,
    usual: [0.015, 0.06],
  },
  C: {
    field: 'clearance',
    meaning: 'diametral clearance',
    domain: diametralClearance,
    usual: [2e-5, 1e-4],
  },
  mu: {
    field: 'viscosity',
    meaning: 'viscosity of the oil in the film',
    domain: filmViscosity,
    usual: [0.003, 0.1],
  },
  omega: {
    field: 'speed',
    meaning: 'speed of the journal',
    domain: crankSpeed,
    usual: [50, 400],
  },
} as const;

const refuses = {
  'the bearing is too short for its journal': { with: { L: 0.004 }, names: 'length' },
  'the clearance leaves no room to turn': { with: { C: 0 }, names: 'clearance' },
} as const;
const PETROFF = "Petroff's equation";

/** Formulas of a bearing's oil film. */
export const filmCards = {
  sommerfeldNumber: card({
    of: sommerfeldNumber,
    name: 'Sommerfeld number',
    gives: { symbol: 'S', meaning: 'Sommerfeld number', dimension: 'ratio' },
    letters: {
      ...turning,
      W: {
        field: 'load',
        meaning: 'load across the shaft',
        domain: bearingLoad,
        usual: [100, 5000],
      },
    },
    where: [
      defined('N = omega / (2 * pi * 1 rad)', 'turns of the journal in unit time'),
      defined('P = W / (D * L)', 'load over projected area'),
    ],
    expression: '(D / C)^2 * mu * N / P',
    refuses: { ...refuses, 'there is no load': { with: { W: 0 }, names: 'load' } },
    source: 'Raimondi and Boyd, Trans. ASLE 1 (1958)',
  }),
  petroffTorque: card({
    of: petroff,
    name: 'drag torque of a centred journal',
    gives: { symbol: 'T', meaning: 'drag torque', dimension: 'torque' },
    letters: turning,
    read: ({ torque }) => torque,
    expression: 'pi * mu * (omega / (1 rad)) * D^3 * L / (2 * C)',
    refuses,
    source: PETROFF,
  }),
  petroffPower: card({
    of: petroff,
    name: 'power lost to the drag of a centred journal',
    gives: { symbol: 'P', meaning: 'power lost, all of it heat in the oil', dimension: 'power' },
    letters: turning,
    read: ({ power }) => power,
    where: [defined('T = pi * mu * (omega / (1 rad)) * D^3 * L / (2 * C)', 'drag torque')],
    expression: 'T * (omega / (1 rad))',
    source: PETROFF,
  }),
};
