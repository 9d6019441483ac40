import { card, diameter, downFrom, sizeStep, upFrom } from '../judging/internal.js';
import { mm } from '../quantities/index.js';
import {
  oilClearance,
  oilClearanceSpan,
  recommendedOilClearance,
  shellWallFor,
} from './clearance.js';
import { shellWall } from './domains.js';

const NEVER_ONE = 'the three were never one bearing';
const RULE = 'common practice: 0.00075 to 0.0015 in for each inch of journal, 0.001 in to aim at';

const journal = {
  field: 'journal',
  meaning: 'journal diameter',
  domain: diameter,
  usual: [0.02, 0.09],
} as const;

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
    refuses: { [NEVER_ONE]: { with: { D_j: 0.045 }, names: 'journal' } },
    example: { D_h: mm(57.15), t: mm(1.55), D_j: mm(54) },
    source: 'geometry',
  }),
  leastOilClearance: card({
    of: oilClearanceSpan,
    name: 'least oil clearance of toleranced sizes',
    gives: { symbol: 'c_min', meaning: 'least diametral oil clearance', dimension: 'length' },
    letters: {
      D_h: {
        field: 'housingBore.min',
        written: 'housingBore.min',
        meaning: 'smallest housing bore, cap torqued, no shells',
        domain: diameter,
        usual: [0.057, 0.0572],
      },
      t: {
        field: 'shellWall.max',
        written: 'shellWall.max',
        meaning: 'thickest wall of one half shell at its crown',
        domain: shellWall,
        usual: [0.0015, 0.0016],
      },
      D_j: {
        field: 'journal.max',
        written: 'journal.max',
        meaning: 'largest journal diameter',
        domain: diameter,
        usual: [0.0539, 0.0541],
      },
    },
    call: ({ D_h, t, D_j }) => [
      {
        housingBore: upFrom(diameter, D_h),
        shellWall: downFrom(shellWall, t),
        journal: downFrom(diameter, D_j),
      },
    ],
    read: ({ min }) => min,
    expression: 'D_h - 2 * t - D_j',
    refuses: { [NEVER_ONE]: { with: { D_j: 0.0565 }, names: 'journal' } },
    example: { D_h: mm(57.15), t: mm(1.55), D_j: mm(54.01) },
    source: 'geometry',
  }),
  mostOilClearance: card({
    of: oilClearanceSpan,
    name: 'most oil clearance of toleranced sizes',
    gives: { symbol: 'c_max', meaning: 'most diametral oil clearance', dimension: 'length' },
    letters: {
      D_h: {
        field: 'housingBore.max',
        written: 'housingBore.max',
        meaning: 'largest housing bore, cap torqued, no shells',
        domain: diameter,
        usual: [0.0571, 0.0573],
      },
      t: {
        field: 'shellWall.min',
        written: 'shellWall.min',
        meaning: 'thinnest wall of one half shell at its crown',
        domain: shellWall,
        usual: [0.0015, 0.0016],
      },
      D_j: {
        field: 'journal.min',
        written: 'journal.min',
        meaning: 'smallest journal diameter',
        domain: diameter,
        usual: [0.0538, 0.054],
      },
    },
    call: ({ D_h, t, D_j }) => [
      {
        housingBore: downFrom(diameter, D_h),
        shellWall: upFrom(shellWall, t),
        journal: upFrom(diameter, D_j),
      },
    ],
    read: ({ max }) => max,
    expression: 'D_h - 2 * t - D_j',
    refuses: { [NEVER_ONE]: { with: { D_j: 0.0515 }, names: 'journal' } },
    example: { D_h: mm(57.16), t: mm(1.545), D_j: mm(53.99) },
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
    letters: { D_j: journal },
    call: ({ D_j }) => [D_j],
    read: ({ target }) => target,
    expression: '0.001 * D_j',
    source: RULE,
  }),
  recommendedLeastOilClearance: card({
    of: recommendedOilClearance,
    name: 'least oil clearance by rule of thumb',
    gives: { symbol: 'c_min', meaning: 'least diametral oil clearance', dimension: 'length' },
    letters: { D_j: journal },
    call: ({ D_j }) => [D_j],
    read: ({ limits }) => limits.min,
    expression: '0.00075 * D_j',
    source: RULE,
  }),
  recommendedMostOilClearance: card({
    of: recommendedOilClearance,
    name: 'most oil clearance by rule of thumb',
    gives: { symbol: 'c_max', meaning: 'most diametral oil clearance', dimension: 'length' },
    letters: { D_j: journal },
    call: ({ D_j }) => [D_j],
    read: ({ limits }) => limits.max,
    expression: '0.0015 * D_j',
    source: RULE,
  }),
};
