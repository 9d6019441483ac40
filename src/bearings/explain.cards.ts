import { card, diametralClearance, sizeStep } from '../judging/internal.js';
import { type Length, metre, mm, thou } from '../quantities/index.js';
import { type ClearanceExplanation, explainClearance } from './explain.js';

const gives = {
  symbol: 'c_m',
  meaning: 'clearance with matching shells',
  dimension: 'length',
} as const;

const undersize = {
  field: 'steps[0]',
  written: 'step',
  meaning: 'undersize by which journal and shells differ',
  domain: sizeStep,
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
        usual: [0.00053, 0.00059],
      },
      s: { ...undersize, usual: [0.0005, 0.000508], made: { inch: [thou(20)], metric: [mm(0.5)] } },
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
        meaning: 'diametral clearance found, with undersize shells; below zero is interference',
        domain: diametralClearance,
        usual: [-0.00023, -0.00016],
      },
      s: {
        ...undersize,
        usual: [0.00025, 0.000254],
        made: { inch: [thou(10)], metric: [mm(0.25)] },
      },
    },
    call,
    read,
    expression: 'c + s',
    source: 'geometry',
  }),
};
