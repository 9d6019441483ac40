import { card, diameter, downFrom, everyStep, lengthDomain, upFrom } from '../judging/internal.js';
import { type Length, mm, thou } from '../quantities/index.js';
import { shellWallToSuit } from './shell-wall-to-suit.js';

/** Limits of a clearance are at most a hundredth of the journal, and no journal is larger than these. */
const clearanceLimit = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: diameter.most / 100,
  example: 'thou(2)',
});
const NO_ROOM = 'housing and journal leave no room for shells';

const wallOf = (which: 'min' | 'max') => (suit: ReturnType<typeof shellWallToSuit>) =>
  suit.outcome === 'wall' ? suit.wall[which] : undefined;

/** Formulas of the wall that shells are to be made with. */
export const shellWallToSuitCards = {
  leastShellWallToSuit: card({
    of: shellWallToSuit,
    name: 'least wall of shells made to suit',
    gives: { symbol: 't_min', meaning: 'thinnest wall of one half shell', dimension: 'length' },
    letters: {
      D_h: {
        field: 'housingBore.max',
        written: 'housingBore.max',
        meaning: 'largest housing bore, cap torqued, no shells',
        domain: diameter,
        usual: [0.05705, 0.0571],
      },
      D_j: {
        field: 'journal.min',
        written: 'journal.min',
        meaning: 'smallest journal diameter',
        domain: diameter,
        usual: [0.05395, 0.054],
      },
      c: {
        field: 'bearing.limits.max',
        written: 'limits.max',
        meaning: 'most diametral oil clearance',
        domain: clearanceLimit,
        usual: [0.00005, 0.0001],
        made: { inch: everyStep(thou, 2, 4, 0.5), metric: everyStep(mm, 0.05, 0.1, 0.01) },
      },
    },
    call: ({ D_h, D_j, c }) => [
      {
        housingBore: downFrom(diameter, D_h),
        journal: upFrom(diameter, D_j),
        limits: { min: 0 as Length, max: c },
      },
    ],
    read: wallOf('min'),
    expression: '(D_h - D_j - c) / 2',
    refuses: { [NO_ROOM]: { with: { D_h: 0.2 }, names: 'journal' } },
    example: { D_h: mm(57.03), D_j: mm(53.99), c: mm(0.08) },
    source: 'geometry',
  }),
  mostShellWallToSuit: card({
    of: shellWallToSuit,
    name: 'most wall of shells made to suit',
    gives: { symbol: 't_max', meaning: 'thickest wall of one half shell', dimension: 'length' },
    letters: {
      D_h: {
        field: 'housingBore.min',
        written: 'housingBore.min',
        meaning: 'smallest housing bore, cap torqued, no shells',
        domain: diameter,
        usual: [0.05705, 0.0571],
      },
      D_j: {
        field: 'journal.max',
        written: 'journal.max',
        meaning: 'largest journal diameter',
        domain: diameter,
        usual: [0.05395, 0.054],
      },
      c: {
        field: 'bearing.limits.min',
        written: 'limits.min',
        meaning: 'least diametral oil clearance',
        domain: clearanceLimit,
        usual: [0.00002, 0.00005],
        made: { inch: everyStep(thou, 1, 2, 0.5), metric: everyStep(mm, 0.02, 0.05, 0.01) },
      },
    },
    call: ({ D_h, D_j, c }) => [
      {
        housingBore: upFrom(diameter, D_h),
        journal: downFrom(diameter, D_j),
        limits: { min: c },
      },
    ],
    read: wallOf('max'),
    expression: '(D_h - D_j - c) / 2',
    refuses: { [NO_ROOM]: { with: { D_j: 0.0568 }, names: 'journal' } },
    example: { D_h: mm(57.075), D_j: mm(54), c: mm(0.03) },
    source: 'geometry',
  }),
};
