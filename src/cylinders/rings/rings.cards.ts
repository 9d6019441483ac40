import { card, defined, diameter } from '../../judging/internal.js';
import { mm } from '../../quantities/index.js';
import { landClearance, ringGap, ringThickness, ringWidth } from '../domains.js';
import { ringBackClearance } from './back-clearance.js';
import { ringLeakArea } from './leak-area.js';
import { ringSideClearance } from './side-clearance.js';

const bore = {
  field: 'bore',
  meaning: 'bore diameter',
  domain: diameter,
  usual: [0.078, 0.082],
} as const;
const thickness = {
  field: 'radialThickness',
  meaning: 'radial thickness of the ring',
  domain: ringThickness,
  usual: [0.0028, 0.0036],
} as const;

const gap = { meaning: 'ring gap', domain: ringGap, usual: [0.0002, 0.0008] } as const;
const land = {
  meaning: 'diametral clearance of the land below the ring',
  domain: landClearance,
  usual: [0.0002, 0.001],
} as const;

/** Formulas of a ring in its groove and of its gap. */
export const ringCards = {
  ringSideClearance: card({
    of: ringSideClearance,
    name: 'side clearance of a ring',
    gives: { symbol: 'c', meaning: 'least side clearance', dimension: 'length' },
    letters: {
      w_g: {
        field: 'grooveWidths[0]',
        written: 'smallestGroove',
        meaning: 'width of the groove',
        domain: ringWidth,
        usual: [0.00203, 0.0022],
      },
      w_r: {
        field: 'ringWidths[0]',
        written: 'widestRing',
        meaning: 'width of the ring',
        domain: ringWidth,
        usual: [0.00196, 0.002],
      },
    },
    call: ({ w_g, w_r }) => [{ grooveWidths: [w_g], ringWidths: [w_r] }],
    read: ({ clearance }) => clearance.min,
    expression: 'w_g - w_r',
    refuses: {
      'the groove was never of the ring': { with: { w_g: 0.004 }, names: 'grooveWidths[0]' },
    },
    example: { w_g: mm(2.04), w_r: mm(1.99) },
    source: 'geometry',
  }),
  ringBackClearance: card({
    of: ringBackClearance,
    name: 'back clearance of a ring',
    gives: { symbol: 'c', meaning: 'radial back clearance, piston central', dimension: 'length' },
    letters: {
      D: bore,
      D_r: {
        field: 'root',
        meaning: 'diameter at the root of the groove',
        domain: diameter,
        usual: [0.07, 0.072],
      },
      a: thickness,
    },
    call: ({ D, D_r, a }) => [{ bore: D, root: D_r, radialThickness: a }],
    read: ({ radialClearance }) => radialClearance.min,
    expression: '(D - D_r) / 2 - a',
    example: { D: mm(80), D_r: mm(72.4), a: mm(3.2) },
    source: 'geometry',
  }),
  ringBackClearanceByDepth: card({
    of: ringBackClearance,
    name: 'least back clearance of a ring, from the depth of its groove',
    gives: {
      symbol: 'c',
      meaning: 'radial back clearance, piston against the wall',
      dimension: 'length',
    },
    letters: {
      D: bore,
      D_l: {
        field: 'land',
        meaning: 'diameter of the land beside the groove',
        domain: diameter,
        usual: [0.0781, 0.0795],
      },
      d: {
        field: 'depth',
        meaning: 'depth of the groove',
        domain: ringThickness,
        usual: [0.0034, 0.0042],
      },
      a: thickness,
      c_p: {
        field: 'pistonClearance',
        meaning: "diametral clearance of the piston's skirt",
        domain: landClearance,
        usual: [0.00005, 0.0002],
      },
    },
    call: ({ D, D_l, d, a, c_p }) => [
      { bore: D, land: D_l, depth: d, radialThickness: a, pistonClearance: c_p },
    ],
    read: ({ radialAgainstWall }) => radialAgainstWall?.min,
    where: [
      defined('D_r = D_l - 2 * d', 'diameter at the root of the groove', 'root'),
      defined(
        'c_r = (D - D_r) / 2 - a',
        'radial back clearance, piston central',
        'radialClearance',
      ),
    ],
    expression: 'c_r - c_p / 2',
    refuses: { 'the land is not of the bore': { with: { D_l: 0.07 }, names: 'land' } },
    example: { D: mm(80), D_l: mm(79.4), d: mm(3.5), a: mm(3.2), c_p: mm(0.07) },
    source: 'geometry',
  }),
  ringLeakArea: card({
    of: ringLeakArea,
    name: 'leak area of a ring gap',
    gives: { symbol: 'A', meaning: 'area left open', dimension: 'area' },
    letters: {
      g: { field: 'rings[0].gap', ...gap },
      c: { field: 'rings[0].landClearance', ...land },
    },
    call: ({ g, c }) => [{ rings: [{ gap: g, landClearance: c }] }],
    read: ({ rings }) => rings[0]?.max,
    expression: 'g * c / 2',
    source: 'geometry',
  }),
  ringLeakHole: card({
    of: ringLeakArea,
    name: 'hole that leaks as much as two ring gaps in a row',
    gives: { symbol: 'd', meaning: 'diameter of the hole', dimension: 'length' },
    letters: {
      g_1: { field: 'rings[0].gap', written: 'firstGap', ...gap },
      c_1: { field: 'rings[0].landClearance', written: 'firstLand', ...land },
      g_2: { field: 'rings[1].gap', written: 'secondGap', ...gap },
      c_2: { field: 'rings[1].landClearance', written: 'secondLand', ...land },
    },
    call: ({ g_1, c_1, g_2, c_2 }) => [
      {
        rings: [
          { gap: g_1, landClearance: c_1 },
          { gap: g_2, landClearance: c_2 },
        ],
      },
    ],
    read: ({ asHole }) => asHole.max,
    where: [
      defined('A_1 = g_1 * c_1 / 2', 'area left open by the first gap', 'firstArea'),
      defined('A_2 = g_2 * c_2 / 2', 'area left open by the second gap', 'secondArea'),
      defined('A = 1 / sqrt(1 / A_1^2 + 1 / A_2^2)', 'area of one hole that leaks as much', 'area'),
    ],
    expression: 'sqrt(4 * A / pi)',
    source: 'geometry; throttlings in a row, from memory',
  }),
};
