import { card, diameter, downFrom, upFrom } from '../judging/internal.js';
import { type Angle, type Length, metre, mm, radian } from '../quantities/index.js';
import { guideReach, stemDiameter, valveRock } from './domains.js';
import { clearanceFromRock, guideClearance } from './guide.js';
import { guideWear } from './guide-wear.js';

const guide = { domain: stemDiameter, usual: [0.008, 0.00805] } as const;
const stem = { domain: stemDiameter, usual: [0.0079, 0.00795] } as const;
const rocked = {
  R: {
    field: 'rock',
    meaning: 'dial swing from side to side',
    domain: valveRock,
    usual: [0.0001, 0.0006],
  },
  L: {
    field: 'guideLength',
    meaning: 'length of the guide',
    domain: guideReach,
    usual: [0.03, 0.06],
  },
  h: {
    field: 'overhang',
    meaning: 'from the end of the guide to the dial',
    domain: guideReach,
    usual: [0.02, 0.05],
  },
} as const;
const [first, middle, last] = [metre(0), metre(0.02), metre(0.04)];
const [along, across] = [radian(0), radian(1)];
const read = (station: Length, angle: Angle, diameter: Length) => ({ station, angle, diameter });
/** A guide of so much at its ends and in its middle, alike both ways. */
const readings = (top: Length, waist: Length, bottom: Length) =>
  [
    [first, top],
    [middle, waist],
    [last, bottom],
  ].flatMap(([station, bore]) =>
    [along, across].map((angle) => read(station as Length, angle, bore as Length)),
  );
const mean = { domain: diameter, usual: [0.00805, 0.0081] } as const;
const least = {
  field: 'readings[2].diameter',
  written: 'meanLeast',
  meaning: 'mean bore where it is least',
  domain: diameter,
  usual: [0.008, 0.00803],
} as const;
const SLIPPED = 'a reading stands out against the others';
const source = 'geometry of a straight stem that touches its guide at both ends';
const trade = 'definition of the trade';

/** Formulas of guides. */
export const guideCards = {
  leastGuideClearance: card({
    of: guideClearance,
    name: 'least clearance of a stem',
    gives: {
      symbol: 'c_min',
      meaning: 'least clearance of the stem in its guide',
      dimension: 'length',
    },
    letters: {
      G: { field: 'guide.min', written: 'smallestGuide', meaning: 'smallest guide', ...guide },
      S: { field: 'stem.max', written: 'largestStem', meaning: 'largest stem', ...stem },
    },
    call: ({ G, S }) => [
      {
        guide: upFrom(stemDiameter, G, 1e-5),
        stem: downFrom(stemDiameter, S, 1e-5),
      },
    ],
    read: ({ clearance }) => clearance.min,
    expression: 'G - S',
    example: { G: mm(8.02), S: mm(7.97) },
    source: trade,
  }),
  clearanceFromRock: card({
    of: clearanceFromRock,
    name: 'clearance of a guide from the rock of its valve',
    gives: { symbol: 'c', meaning: 'clearance of an evenly worn guide', dimension: 'length' },
    letters: rocked,
    read: ({ clearance }) => clearance,
    expression: 'R / (1 + 2 * h / L)',
    source,
  }),
  mostFromRock: card({
    of: clearanceFromRock,
    name: 'most clearance at one end of a guide from the rock of its valve',
    gives: { symbol: 'c_1', meaning: 'most clearance at the end by the dial', dimension: 'length' },
    letters: rocked,
    read: ({ most }) => most,
    expression: 'R / (1 + h / L)',
    source,
  }),
  bellMouthFirst: card({
    of: guideWear,
    name: 'bell-mouth of a guide at its first station',
    gives: { symbol: 'b', meaning: 'bell-mouth', dimension: 'length' },
    letters: {
      G_1: {
        field: 'readings[0].diameter',
        written: 'meanFirst',
        meaning: 'mean bore at the first station',
        ...mean,
      },
      G_0: least,
    },
    call: ({ G_1, G_0 }) => [readings(G_1, G_0, G_0)],
    read: ({ bellMouthFirst }) => bellMouthFirst,
    expression: 'G_1 - G_0',
    refuses: { [SLIPPED]: { with: { G_1: 0.009 }, names: 'readings[0].diameter' } },
    source: trade,
  }),
  bellMouthLast: card({
    of: guideWear,
    name: 'bell-mouth of a guide at its last station',
    gives: { symbol: 'b', meaning: 'bell-mouth', dimension: 'length' },
    letters: {
      G_2: {
        field: 'readings[4].diameter',
        written: 'meanLast',
        meaning: 'mean bore at the last station',
        ...mean,
      },
      G_0: { ...least, field: 'readings[0].diameter' },
    },
    call: ({ G_2, G_0 }) => [readings(G_0, G_0, G_2)],
    read: ({ bellMouthLast }) => bellMouthLast,
    expression: 'G_2 - G_0',
    source: trade,
  }),
};
