import { card } from '../judging/internal.js';
import { centistokes } from '../quantities/index.js';
import { liquidViscosity } from './domains.js';
import { thinningFinding } from './thinning.js';

/** Formula of the viscosity that an oil has lost. */
export const thinningCards = {
  thinningFinding: card({
    of: thinningFinding,
    name: 'loss of viscosity of an oil',
    gives: { symbol: 'x', meaning: 'share of the viscosity lost', dimension: 'ratio' },
    letters: {
      nu_o: {
        field: 'oil',
        meaning: 'kinematic viscosity of the clean oil',
        domain: liquidViscosity,
        usual: [6.5e-5, 2e-4],
      },
      nu_s: {
        field: 'sample',
        meaning: 'kinematic viscosity of the sample',
        domain: liquidViscosity,
        usual: [3e-5, 6e-5],
      },
    },
    read: ({ finding }) => finding.value,
    expression: '1 - nu_s / nu_o',
    example: { nu_o: centistokes(100), nu_s: centistokes(75) },
    source: 'definition',
  }),
};
