import { card, defined, diameter, everyStep } from '../judging/internal.js';
import { type Length, metre, mm, thou } from '../quantities/index.js';
import { ringGap } from './domains.js';
import { ringFilingNeeded } from './ring-filing.js';
import { recommendedRingGap, ringGapAlongBore, ringGapIn } from './ring-gap.js';

const SOURCE = 'geometry; TM 5-6115-593-34, p. 1-9';
const RULE = 'common practice: 0.003 to 0.004 in for each inch of bore';
const ANOTHER = 'the bores are not of one cylinder';

const bore = {
  field: 'bore',
  meaning: 'bore diameter',
  domain: diameter,
  usual: [0.05, 0.12],
} as const;
const measuredGap = {
  field: 'gap',
  meaning: 'ring gap measured',
  domain: ringGap,
  usual: [0.0001, 0.001],
} as const;
const measuredIn = {
  field: 'measuredIn',
  meaning: 'bore it was measured in',
  domain: diameter,
  usual: [0.075, 0.0751],
} as const;
const wanted = { domain: diameter, usual: [0.075, 0.0753] } as const;

/** Formulas of a ring's gap. */
export const ringGapCards = {
  recommendedRingGapLeast: card({
    of: recommendedRingGap,
    name: 'least ring gap by rule of thumb',
    gives: { symbol: 'g', meaning: 'least ring gap', dimension: 'length' },
    letters: { D: bore },
    call: ({ D }) => [D],
    read: ({ limits }) => limits.min,
    expression: '0.003 * D',
    source: RULE,
  }),
  recommendedRingGapMost: card({
    of: recommendedRingGap,
    name: 'most ring gap by rule of thumb',
    gives: { symbol: 'g', meaning: 'most ring gap', dimension: 'length' },
    letters: { D: bore },
    call: ({ D }) => [D],
    read: ({ limits }) => limits.max,
    expression: '0.004 * D',
    source: RULE,
  }),
  ringGapIn: card({
    of: ringGapIn,
    name: 'ring gap in another bore',
    gives: { symbol: 'g', meaning: 'ring gap in the bore', dimension: 'length' },
    letters: {
      g_0: measuredGap,
      D_0: measuredIn,
      D: { field: 'bore', meaning: 'bore it is wanted in', ...wanted },
    },
    expression: 'g_0 + pi * (D - D_0)',
    refuses: {
      [ANOTHER]: { with: { D: 0.08 }, names: 'bore' },
      'the gap is more than a tenth of the bore': { with: { g_0: 0.008 }, names: 'gap' },
    },
    example: { g_0: mm(0.3), D_0: mm(75), D: mm(75.08) },
    source: SOURCE,
  }),
  ringGapAlongBore: card({
    of: ringGapAlongBore,
    name: 'ring gap at a station of its bore',
    gives: { symbol: 'g', meaning: 'ring gap at the station', dimension: 'length' },
    letters: {
      g_0: measuredGap,
      D_0: measuredIn,
      D: { field: 'stations[0].mean', meaning: 'mean diameter at the station', ...wanted },
    },
    call: ({ g_0, D_0, D }) => [
      { gap: g_0, measuredIn: D_0, stations: [{ station: metre(0.02), mean: D }] },
    ],
    read: ({ gaps }) => gaps[0]?.gap,
    expression: 'g_0 + pi * (D - D_0)',
    refuses: { [ANOTHER]: { with: { D: 0.07 }, names: 'stations[0].mean' } },
    example: { g_0: mm(0.3), D_0: mm(75), D: mm(75.08) },
    source: SOURCE,
  }),
  ringFilingNeeded: card({
    of: ringFilingNeeded,
    name: 'metal to file off a ring',
    gives: { symbol: 'f', meaning: 'least to take off both ends together', dimension: 'length' },
    letters: {
      g_min: {
        field: 'ring.limits.min',
        written: 'limits.min',
        meaning: 'least ring gap allowed',
        domain: ringGap,
        usual: [0.0005, 0.0006],
        made: { inch: everyStep(thou, 10, 14, 1), metric: everyStep(mm, 0.25, 0.35, 0.05) },
      },
      g_0: { ...measuredGap, usual: [0.0001, 0.0002] },
      D_0: measuredIn,
      D: {
        field: 'smallestBore',
        meaning: 'smallest bore it will travel',
        domain: diameter,
        usual: [0.07495, 0.07505],
      },
    },
    call: ({ g_min, g_0, D_0, D }: Readonly<Record<'g_min' | 'g_0' | 'D_0' | 'D', Length>>) => [
      { gap: g_0, measuredIn: D_0, smallestBore: D, limits: { min: g_min } },
    ],
    read: (filing) => (filing.work === 'file' ? filing.remove.min : undefined),
    where: [defined('g = g_0 + pi * (D - D_0)', 'ring gap in that bore')],
    expression: 'g_min - g',
    refuses: { [ANOTHER]: { with: { D: 0.08 }, names: 'smallestBore' } },
    example: { g_min: mm(0.3), g_0: mm(0.15), D_0: mm(75), D: mm(75.01) },
    source: 'geometry',
  }),
};
