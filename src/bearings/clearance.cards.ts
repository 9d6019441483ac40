import { card, diameter, sizeStep } from '../judging/internal.js';
import { oilClearance, recommendedOilClearance, shellWallFor } from './clearance.js';
import { shellWall } from './domains.js';

/** Formulas of a shell bearing's clearance. */
export const clearanceCards = {
  oilClearance: card({
    of: oilClearance,
    name: 'oil clearance',
    gives: { symbol: 'c', meaning: 'diametral oil clearance', dimension: 'length' },
    letters: {
      // Together they make a bearing: from half a millimetre too tight to as much too loose.
      D_h: {
        field: 'housingBore',
        meaning: 'housing bore, cap torqued, no shells',
        domain: diameter,
        usual: [0.057, 0.0573],
      },
      t: {
        field: 'shellWall',
        meaning: 'wall of one half shell at its crown',
        domain: shellWall,
        usual: [0.0015, 0.0016],
      },
      D_j: {
        field: 'journal',
        meaning: 'journal diameter',
        domain: diameter,
        usual: [0.0538, 0.0541],
      },
    },
    expression: 'D_h - 2 * t - D_j',
    refuses: { 'the three were never one bearing': { with: { D_j: 0.045 }, names: 'journal' } },
    source: 'geometry',
  }),
  shellWallFor: card({
    of: shellWallFor,
    name: 'wall of an undersize shell',
    gives: { symbol: 't_u', meaning: 'wall of one undersize half shell', dimension: 'length' },
    letters: {
      t: {
        field: 'standardWall',
        meaning: 'wall of one standard half shell',
        domain: shellWall,
        usual: [0.001, 0.003],
      },
      u: {
        field: 'undersize',
        meaning: 'undersize, on the diameter',
        domain: sizeStep,
        usual: [0, 0.001],
      },
    },
    expression: 't + u / 2',
    source: 'geometry; TM 5-4320-302-14, p. 6-181',
  }),
  recommendedOilClearance: card({
    of: recommendedOilClearance,
    name: 'oil clearance by rule of thumb',
    gives: { symbol: 'c', meaning: 'diametral oil clearance to aim at', dimension: 'length' },
    letters: {
      D_j: { field: 'journal', meaning: 'journal diameter', domain: diameter, usual: [0.02, 0.09] },
    },
    call: ({ D_j }) => [D_j],
    read: ({ target }) => target,
    expression: '0.001 * D_j',
    source: 'common practice: 0.001 in for each inch of journal',
  }),
};
