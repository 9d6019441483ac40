import { type FormulaCard, input } from '../card.js';

const journal = input('D_j', 'journal diameter', 'length', 0.02, 0.09);

/** Formulas of the bearings room. */
export const bearingCards = {
  oilClearance: {
    name: 'oil clearance',
    computedBy: 'oilClearance',
    result: { symbol: 'c', meaning: 'diametral oil clearance', dimension: 'length' },
    inputs: [
      // Together they make a bearing: from half a millimetre too tight to as much too loose.
      input('D_h', 'housing bore, cap torqued, no shells', 'length', 0.057, 0.0573),
      input('t', 'wall of one half shell at its crown', 'length', 0.0015, 0.0016),
      input('D_j', 'journal diameter', 'length', 0.0538, 0.0541),
    ],
    where: [],
    expression: 'D_h - 2 * t - D_j',
    source: 'geometry',
  },
  shellWallFor: {
    name: 'wall of an undersize shell',
    computedBy: 'shellWallFor',
    result: { symbol: 't_u', meaning: 'wall of one undersize half shell', dimension: 'length' },
    inputs: [
      input('t', 'wall of one standard half shell', 'length', 0.001, 0.003),
      input('u', 'undersize, on the diameter', 'length', 0, 0.001),
    ],
    where: [],
    expression: 't + u / 2',
    source: 'geometry; TM 5-4320-302-14, p. 6-181',
  },
  recommendedOilClearance: {
    name: 'oil clearance by rule of thumb',
    computedBy: 'recommendedOilClearance',
    result: { symbol: 'c', meaning: 'diametral oil clearance to aim at', dimension: 'length' },
    inputs: [journal],
    where: [],
    expression: '0.001 * D_j',
    source: 'common practice: 0.001 in for each inch of journal',
  },
  explainClearance: {
    name: 'clearance that matching shells would leave',
    computedBy: 'explainClearance',
    result: { symbol: 'c_m', meaning: 'clearance with matching shells', dimension: 'length' },
    inputs: [
      input('c', 'diametral clearance found', 'length', 0.00052, 0.0006),
      input('s', 'undersize step between journal and shells', 'length', 0.000508, 0.000508),
    ],
    where: [],
    expression: 'c - s',
    source: 'geometry',
  },
  flattenedThreadGap: {
    name: 'gap that crushed a gauging thread',
    computedBy: 'flattenedThreadGap',
    result: { symbol: 'h', meaning: 'gap where the thread lay', dimension: 'length' },
    inputs: [
      input('d', 'thread diameter before', 'length', 0.0001, 0.0003),
      input('w', 'width of the stripe after', 'length', 0.0004, 0.004),
    ],
    where: [],
    expression: 'pi * d^2 / (4 * w)',
    source: 'conservation of area, the flattened section taken as a rectangle',
  },
} as const satisfies Record<string, FormulaCard>;
