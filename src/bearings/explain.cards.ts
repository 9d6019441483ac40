import { card, diametralClearance, sizeStep } from '../judging/internal.js';
import { type Length, metre } from '../quantities/index.js';
import { type ClearanceExplanation, explainClearance } from './explain.js';

const gives = {
  symbol: 'c_m',
  meaning: 'clearance with matching shells',
  dimension: 'length',
} as const;

const step = {
  field: 'steps[0]',
  written: 'step',
  meaning: 'undersize that journal and shells differ by',
  domain: sizeStep,
  usual: [0.000508, 0.000508],
} as const;

const call = ({ c, s }: Readonly<Record<'c' | 's', Length>>) =>
  [
    {
      clearance: c,
      journal: metre(0.05),
      limits: { min: metre(1e-5), max: metre(1e-4) },
      steps: [s],
    },
  ] as const;
const read = (why: ClearanceExplanation) => ('matched' in why ? why.matched.value : undefined);

/** Formulas of a clearance that an undersize explains. */
export const explainCards = {
  explainClearance: card({
    of: explainClearance,
    name: 'clearance of a ground journal with matching shells',
    gives,
    letters: {
      c: {
        field: 'clearance',
        meaning: 'diametral clearance found, with standard shells',
        domain: diametralClearance,
        usual: [0.00052, 0.0006],
      },
      s: step,
    },
    call,
    read,
    expression: 'c - s',
    refuses: { 'no step is more than standard': { with: { s: 0 }, names: 'steps' } },
    source: 'geometry',
  }),
  explainTightClearance: card({
    of: explainClearance,
    name: 'clearance of a standard journal with matching shells',
    gives,
    letters: {
      c: {
        field: 'clearance',
        meaning: 'diametral clearance found, with undersize shells; below zero, they do not go on',
        domain: diametralClearance,
        usual: [-0.00049, -0.00041],
      },
      s: step,
    },
    call,
    read,
    expression: 'c + s',
    source: 'geometry',
  }),
};
