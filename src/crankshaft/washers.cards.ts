import { card, everyStep } from '../judging/internal.js';
import { mm, thou } from '../quantities/index.js';
import { endPlayLimit, measuredEndPlay, shimThickness } from './domains.js';
import { washersForEndPlay } from './washers.js';

const shelf = [{ name: 'A', thickness: thou(93) }];
const thickness = {
  field: 'fitted[0].thickness',
  meaning: 'thickness of the washers taken out, together',
  domain: shimThickness,
  usual: [0.002, 0.003],
} as const;

/** Formulas of thrust washers. */
export const washerCards = {
  leastWashers: card({
    of: washersForEndPlay,
    name: 'least thickness of thrust washers',
    gives: {
      symbol: 't_least',
      meaning: 'least thickness of the washers together',
      dimension: 'length',
    },
    letters: {
      t: thickness,
      e: {
        field: 'measured.max',
        written: 'measured.max',
        meaning: 'most end play measured',
        domain: measuredEndPlay,
        usual: [0.0002, 0.0005],
      },
      e_most: {
        field: 'bearing.limits.max',
        written: 'limits.max',
        meaning: 'most end play allowed',
        domain: endPlayLimit,
        usual: [0.0002, 0.0003],
        made: { inch: everyStep(thou, 8, 12, 1), metric: everyStep(mm, 0.2, 0.3, 0.05) },
      },
    },
    call: ({ t, e, e_most }) => [
      {
        measured: { min: thou(0), max: e },
        fitted: [{ name: 'in', thickness: t }],
        shelf,
        limits: { min: thou(0), max: e_most },
      },
    ],
    read: ({ wanted }) => wanted.least,
    expression: 't + e - e_most',
    source: 'geometry',
  }),
  mostWashers: card({
    of: washersForEndPlay,
    name: 'most thickness of thrust washers',
    gives: {
      symbol: 't_most',
      meaning: 'most thickness of the washers together',
      dimension: 'length',
    },
    letters: {
      t: thickness,
      e: {
        field: 'measured.min',
        written: 'measured.min',
        meaning: 'least end play measured',
        domain: measuredEndPlay,
        usual: [0.0002, 0.0005],
      },
      e_least: {
        field: 'bearing.limits.min',
        written: 'limits.min',
        meaning: 'least end play allowed',
        domain: endPlayLimit,
        usual: [0.00005, 0.0001],
        made: { inch: everyStep(thou, 2, 4, 1), metric: everyStep(mm, 0.05, 0.1, 0.05) },
      },
    },
    call: ({ t, e, e_least }) => [
      {
        measured: { min: e, max: thou(393) },
        fitted: [{ name: 'in', thickness: t }],
        shelf,
        limits: { min: e_least, max: thou(118) },
      },
    ],
    read: ({ wanted }) => wanted.most,
    expression: 't + e - e_least',
    source: 'geometry',
  }),
};
