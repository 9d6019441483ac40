import { card, defined, diameter } from '../../judging/internal.js';
import { elasticModulus, ofGreyIron } from '../../measuring/internal.js';
import { type Length, mm, type Quantity } from '../../quantities/index.js';
import { openRingGap, ringGap, ringThickness, ringWidth } from '../domains.js';
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
  usual: [0.0029, 0.0033],
} as const;

const ofTension = {
  D: bore,
  m: {
    field: 'freeGap',
    meaning: 'free gap of the ring',
    domain: openRingGap,
    usual: [0.008, 0.01],
  },
  a: thickness,
  E: {
    field: 'elasticity',
    meaning: 'modulus of elasticity of the ring, of grey iron',
    domain: elasticModulus,
    usual: [9e10, 1.1e11],
    made: ofGreyIron,
  },
} as const;
const s = {
  field: 'closedGap',
  meaning: 'gap of the ring in its bore',
  domain: ringGap,
  usual: [0.0002, 0.0006],
} as const;
type OfTension = {
  readonly [K in keyof typeof ofTension]: Quantity<(typeof ofTension)[K]['domain']['dimension']>;
};
const tensionOf = (
  { D, m, a, E }: OfTension,
  rest: {
    readonly closedGap?: Length;
    readonly width?: Length;
    readonly spreadGap?: Length;
  },
) =>
  [
    {
      bore: D,
      freeGap: m,
      closedGap: mm(0.3),
      radialThickness: a,
      width: mm(2),
      elasticity: E,
      ...rest,
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
};
const beam = 'thin curved beam';
const pressing = defined(
  'p = 4 * E * (m - s) * a^3 / (9 * pi * D * D_m^3)',
  'pressure on the wall',
  'wallPressure',
);
const mean = defined('D_m = D - a', 'mean diameter of the ring', 'meanDiameter');

/** Formulas of how a ring springs. */
export const ringTensionCards = {
  ringWallPressure: card({
    of: ringTension,
    name: 'pressure of a ring on its bore',
    gives: { symbol: 'p', meaning: 'pressure on the wall', dimension: 'pressure' },
    letters: { ...ofTension, s },
    call: ({ s, ...of }) => tensionOf(of, { closedGap: s }),
    read: ({ wallPressure }) => wallPressure.max,
    where: [mean],
    expression: '4 * E * (m - s) * a^3 / (9 * pi * D * D_m^3)',
    refuses: refusesTension,
    source: beam,
  }),
  ringTangentialForce: card({
    of: ringTension,
    name: 'tangential force of a ring',
    gives: { symbol: 'F_t', meaning: 'tangential force that closes the ring', dimension: 'force' },
    letters: {
      ...ofTension,
      s,
      h: {
        field: 'width',
        meaning: 'axial width of the ring',
        domain: ringWidth,
        usual: [0.0015, 0.003],
      },
    },
    call: ({ s, h, ...of }) => tensionOf(of, { closedGap: s, width: h }),
    read: ({ tangentialForce }) => tangentialForce.max,
    where: [mean, pressing],
    expression: 'p * h * D / 2',
    source: `${beam}; a ring maker's manual, section on tangential force`,
  }),
  ringClosedStress: card({
    of: ringTension,
    name: 'stress of a ring in its bore',
    gives: { symbol: 'f', meaning: 'greatest bending stress', dimension: 'pressure' },
    letters: { ...ofTension, s },
    call: ({ s, ...of }) => tensionOf(of, { closedGap: s }),
    read: ({ closedStress }) => closedStress.max,
    where: [mean],
    expression: '4 * E * (m - s) * a / (3 * pi * D_m^2)',
    source: beam,
  }),
  ringSpreadStress: card({
    of: ringTension,
    name: 'stress of a ring spread over its piston',
    gives: { symbol: 'f_s', meaning: 'greatest bending stress', dimension: 'pressure' },
    letters: {
      ...ofTension,
      m_s: {
        field: 'spreadGap',
        meaning: 'gap of the ring spread over its piston',
        domain: openRingGap,
        usual: [0.019, 0.022],
      },
    },
    call: ({ m_s, ...of }) => tensionOf(of, { spreadGap: m_s }),
    read: ({ spreadStress }) => spreadStress?.max,
    where: [mean],
    expression: '4 * E * (m_s - m) * a / (3 * pi * D_m^2)',
    refuses: {
      'the ring is not spread wider than it is free': {
        with: { m_s: 0.005 },
        names: 'spreadGap',
      },
    },
    source: beam,
  }),
};
