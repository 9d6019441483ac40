import { card, defined } from '../../judging/internal.js';
import { ratio } from '../../quantities/index.js';
import { eccentricityRatio, shortLengthToDiameter } from './domains.js';
import { shortBearing } from './short-bearing.js';

const eccentricity = {
  field: 'eccentricity',
  meaning: 'eccentricity',
  domain: eccentricityRatio,
  usual: [0.05, 0.95],
} as const;
const letters = {
  e: eccentricity,
  lambda: {
    field: 'lengthToDiameter',
    meaning: 'length over diameter',
    domain: shortLengthToDiameter,
    usual: [0.05, 0.5],
  },
} as const;

const SQUARE = defined('q = 1 - e^2', 'one less the square of the eccentricity');
const INFLOW = defined('i = 1 + e - lambda^2 * e / 3', 'flow variable Q/(rcNL), over π');
const OCVIRK = 'Ocvirk, NACA TN 2808 (1952), half film';
const NET = `${OCVIRK}, less what flows back at the widest gap`;

/** Formulas of a very short bearing. */
export const shortBearingCards = {
  shortBearingSommerfeld: card({
    of: shortBearing,
    name: 'Sommerfeld number of a short bearing',
    gives: { symbol: 'S', meaning: 'Sommerfeld number', dimension: 'ratio' },
    letters,
    read: ({ sommerfeld }) => sommerfeld,
    where: [SQUARE],
    expression: 'q^2 / (pi * e * sqrt(pi^2 * q + 16 * e^2) * lambda^2)',
    source: OCVIRK,
  }),
  shortBearingAttitude: card({
    of: shortBearing,
    name: 'attitude angle of a short bearing',
    gives: { symbol: 'phi', meaning: 'attitude angle', dimension: 'angle' },
    letters: { e: eccentricity },
    call: ({ e }) => [{ eccentricity: e, lengthToDiameter: ratio(0.25) }],
    read: ({ attitude }) => attitude,
    where: [SQUARE],
    expression: 'atan(pi * sqrt(q) / (4 * e)) * 1 rad',
    source: OCVIRK,
  }),
  journalFriction: card({
    of: shortBearing,
    name: 'friction of a journal from its load and attitude',
    gives: { symbol: 'F', meaning: 'friction variable, (r/c) f', dimension: 'ratio' },
    letters,
    read: ({ friction }) => friction,
    where: [
      SQUARE,
      defined('S = q^2 / (pi * e * sqrt(pi^2 * q + 16 * e^2) * lambda^2)', 'Sommerfeld number'),
      defined('phi = atan(pi * sqrt(q) / (4 * e))', 'attitude angle, in radians'),
    ],
    expression: '2 * pi^2 * S / sqrt(q) + e / 2 * sin(phi)',
    source: 'balance of forces on the journal, oil taken to fill the whole gap',
  }),
  shortBearingFlow: card({
    of: shortBearing,
    name: 'flow through the widest gap of a short bearing',
    gives: { symbol: 'V', meaning: 'flow variable, Q/(rcNL)', dimension: 'ratio' },
    letters,
    read: ({ flow }) => flow,
    where: [INFLOW],
    expression: 'pi * i',
    source: NET,
  }),
  shortBearingSideFlow: card({
    of: shortBearing,
    name: 'share of the flow that leaves a short bearing at its ends',
    gives: {
      symbol: 'V_s',
      meaning: 'share of the flow that leaves at the ends, Qs/Q',
      dimension: 'ratio',
    },
    letters,
    read: ({ sideFlow }) => sideFlow,
    where: [INFLOW],
    expression: '(i - (1 - e)) / i',
    source: NET,
  }),
};
