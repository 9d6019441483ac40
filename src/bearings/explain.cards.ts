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
  meaning: 'undersize step between journal and shells',
  domain: sizeStep,
  usual: [0.0005, 0.000508],
  made: { metric: [0.0005], inch: [0.000508] },
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
    name: 'clearance that matching shells would leave',
    gives,
    letters: {
      c: {
        field: 'clearance',
        meaning: 'diametral clearance by the readings, too loose',
        domain: diametralClearance,
        usual: [0.00053, 0.00058],
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
    name: 'clearance that matching shells would leave on a journal that is standard',
    gives,
    letters: {
      c: {
        field: 'clearance',
        meaning: 'diametral clearance by the readings, less than none',
        domain: diametralClearance,
        usual: [-0.00048, -0.00042],
      },
      s: step,
    },
    call,
    read,
    expression: 'c + s',
    source: 'geometry',
  }),
};
