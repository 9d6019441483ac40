import { card, diameter } from '../../judging/internal.js';
import { elasticModulus } from '../../measuring/internal.js';
import type { Quantity } from '../../quantities/index.js';
import { landClearance, openRingGap, ringGap, ringThickness, ringWidth } from '../domains.js';
import { ringBackClearance } from './back-clearance.js';
import { ringLeakArea } from './leak-area.js';
import { ringSideClearance } from './side-clearance.js';
import { ringTension } from './tension.js';

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

const ofTension = {
  D: bore,
  m: {
    field: 'freeGap',
    meaning: 'gap of the ring on the bench',
    domain: openRingGap,
    usual: [0.006, 0.012],
  },
  s: {
    field: 'closedGap',
    meaning: 'gap of the ring in its bore',
    domain: ringGap,
    usual: [0.0002, 0.0006],
  },
  a: thickness,
  h: {
    field: 'width',
    meaning: 'axial width of the ring',
    domain: ringWidth,
    usual: [0.0015, 0.003],
  },
  E: {
    field: 'elasticity',
    meaning: 'modulus of elasticity of the ring',
    domain: elasticModulus,
    usual: [8e10, 1.6e11],
  },
  m_s: {
    field: 'spreadGap',
    meaning: 'gap of the ring spread over its piston',
    domain: openRingGap,
    usual: [0.025, 0.032],
  },
} as const;
type OfTension = {
  readonly [K in keyof typeof ofTension]: Quantity<(typeof ofTension)[K]['domain']['dimension']>;
};
const tensionOf = ({ D, m, s, a, h, E, m_s }: OfTension) =>
  [
    {
      bore: D,
      freeGap: m,
      closedGap: s,
      radialThickness: a,
      width: h,
      elasticity: E,
      spreadGap: m_s,
    },
  ] as const;
const refusesTension = {
  'the free gap is not wider than the gap in the bore': {
    with: { m: 0.0005, s: 0.0006 },
    names: 'freeGap',
  },
  'the free gap is more than three tenths of the bore': { with: { m: 0.03 }, names: 'freeGap' },
  'the ring is thicker than a tenth of the bore': {
    with: { a: 0.0085 },
    names: 'radialThickness',
  },
  'the closed gap is more than a tenth of the bore': { with: { s: 0.009 }, names: 'closedGap' },
  'the ring is not spread wider than it is free': { with: { m_s: 0.005 }, names: 'spreadGap' },
};
const beam = 'thin curved beam';
const pressing = 'wallPressure = 4 * E * (m - s) * a^3 / (9 * pi * D * mean^3)';
const mean = 'mean = D - a';

const ofLeak = {
  g: { field: 'rings[0].gap', meaning: 'ring gap', domain: ringGap, usual: [0.0002, 0.0008] },
  c: {
    field: 'rings[0].landClearance',
    meaning: 'diametral clearance of the land below the ring',
    domain: landClearance,
    usual: [0.0002, 0.001],
  },
} as const;

/** Formulas of a ring in its groove and of its spring. */
export const ringCards = {
  ringSideClearance: card({
    of: ringSideClearance,
    name: 'side clearance of a ring',
    gives: { symbol: 'c', meaning: 'least side clearance', dimension: 'length' },
    letters: {
      w_g: {
        field: 'grooveWidths[0]',
        written: 'smallest grooveWidth',
        meaning: 'width of the groove',
        domain: ringWidth,
        usual: [0.00203, 0.0022],
      },
      w_r: {
        field: 'ringWidths[0]',
        written: 'largest ringWidth',
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
    source: 'geometry',
  }),
  ringBackClearance: card({
    of: ringBackClearance,
    name: 'room behind a ring',
    gives: { symbol: 'c', meaning: 'radial clearance in the middle', dimension: 'length' },
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
    source: 'geometry',
  }),
  ringBackClearanceByDepth: card({
    of: ringBackClearance,
    name: 'room behind a ring, from the depth of its groove, with the piston against the wall',
    gives: { symbol: 'c', meaning: 'least radial clearance', dimension: 'length' },
    letters: {
      D: bore,
      D_l: {
        field: 'land',
        meaning: 'diameter of the land beside the groove',
        domain: diameter,
        usual: [0.0775, 0.0795],
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
    where: ['root = D_l - 2 * d', 'radialClearance = (D - root) / 2 - a'],
    expression: 'radialClearance - c_p / 2',
    refuses: { 'the land is not of the bore': { with: { D_l: 0.07 }, names: 'land' } },
    source: 'geometry',
  }),
  ringWallPressure: card({
    of: ringTension,
    name: 'pressure of a ring on its bore',
    gives: { symbol: 'p', meaning: 'pressure on the wall', dimension: 'pressure' },
    letters: ofTension,
    call: tensionOf,
    read: ({ wallPressure }) => wallPressure.max,
    where: [mean],
    expression: '4 * E * (m - s) * a^3 / (9 * pi * D * mean^3)',
    refuses: refusesTension,
    source: beam,
  }),
  ringTangentialForce: card({
    of: ringTension,
    name: 'tangential force of a ring',
    gives: { symbol: 'F_t', meaning: 'pull of a band that closes the ring', dimension: 'force' },
    letters: ofTension,
    call: tensionOf,
    read: ({ tangentialForce }) => tangentialForce.max,
    where: [mean, pressing],
    expression: 'wallPressure * h * D / 2',
    source: `${beam}; a ring maker's manual, section on tangential force`,
  }),
  ringClosedStress: card({
    of: ringTension,
    name: 'stress of a ring in its bore',
    gives: { symbol: 'f', meaning: 'most bending stress', dimension: 'pressure' },
    letters: ofTension,
    call: tensionOf,
    read: ({ closedStress }) => closedStress.max,
    where: [mean],
    expression: '4 * E * (m - s) * a / (3 * pi * mean^2)',
    source: beam,
  }),
  ringSpreadStress: card({
    of: ringTension,
    name: 'stress of a ring spread over its piston',
    gives: { symbol: 'f_s', meaning: 'most bending stress', dimension: 'pressure' },
    letters: ofTension,
    call: tensionOf,
    read: ({ spreadStress }) => spreadStress?.max,
    where: [mean],
    expression: '4 * E * (m_s - m) * a / (3 * pi * mean^2)',
    source: beam,
  }),
  ringLeakArea: card({
    of: ringLeakArea,
    name: 'opening that the gap of a ring leaves',
    gives: { symbol: 'A', meaning: 'area left open', dimension: 'area' },
    letters: ofLeak,
    call: ({ g, c }) => [{ rings: [{ gap: g, landClearance: c }] }],
    read: ({ rings }) => rings[0]?.max,
    expression: 'g * c / 2',
    source: 'geometry',
  }),
  ringLeakHole: card({
    of: ringLeakArea,
    name: 'hole that leaks as much as two alike gaps in a row',
    gives: { symbol: 'd', meaning: 'diameter of the hole', dimension: 'length' },
    letters: ofLeak,
    call: ({ g, c }) => [
      {
        rings: [
          { gap: g, landClearance: c },
          { gap: g, landClearance: c },
        ],
      },
    ],
    read: ({ asHole }) => asHole.max,
    where: ['gapArea = g * c / 2', 'area = gapArea / sqrt(2)'],
    expression: 'sqrt(4 * area / pi)',
    source: 'geometry; throttlings in a row, from memory',
  }),
};
