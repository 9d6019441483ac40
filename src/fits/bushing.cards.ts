import { card, defined, diameter } from '../judging/internal.js';
import { elasticModulus, ofGreyIron, ofSteel } from '../measuring/internal.js';
import type { Quantity } from '../quantities/index.js';
import { boreAfterPressing } from './bushing.js';
import { poissonRatio } from './domains.js';

// A bushing of bronze in a boss of steel.
const stiffness = { domain: elasticModulus } as const;
const narrowing = { domain: poissonRatio } as const;
const letters = {
  D_b: {
    field: 'bushing.outside',
    written: 'bushing.outside',
    meaning: 'outside diameter of the free bushing',
    domain: diameter,
    usual: [0.02502, 0.02506],
  },
  b: {
    field: 'bushing.bore',
    written: 'bushing.bore',
    meaning: 'bore of the free bushing',
    domain: diameter,
    usual: [0.019, 0.022],
  },
  d: {
    field: 'housing.bore',
    written: 'housing.bore',
    meaning: 'bore of the housing',
    domain: diameter,
    usual: [0.02498, 0.025],
  },
  D: {
    field: 'housing.outside',
    written: 'housing.outside',
    meaning: 'outside diameter of the boss',
    domain: diameter,
    usual: [0.035, 0.06],
  },
  E_b: {
    field: 'bushing.elasticity',
    written: 'bushing.elasticity',
    meaning: 'modulus of elasticity of the bushing',
    ...stiffness,
    usual: [1e11, 1.2e11],
    made: ofGreyIron,
  },
  n_b: {
    field: 'bushing.poisson',
    written: 'bushing.poisson',
    meaning: "Poisson's ratio of the bushing",
    ...narrowing,
    usual: [0.33, 0.35],
    made: [0.33, 0.34, 0.35],
  },
  E_h: {
    field: 'housing.elasticity',
    written: 'housing.elasticity',
    meaning: 'modulus of elasticity of the housing',
    ...stiffness,
    usual: [2e11, 2.1e11],
    made: ofSteel,
  },
  n_h: {
    field: 'housing.poisson',
    written: 'housing.poisson',
    meaning: "Poisson's ratio of the housing",
    ...narrowing,
    usual: [0.28, 0.3],
    made: [0.28, 0.29, 0.3],
  },
} as const;
type Values = {
  readonly [K in keyof typeof letters]: Quantity<(typeof letters)[K]['domain']['dimension']>;
};
const call = ({ D_b, b, d, D, E_b, n_b, E_h, n_h }: Values) =>
  [
    {
      bushing: { outside: D_b, bore: b, elasticity: E_b, poisson: n_b },
      housing: { bore: d, outside: D, elasticity: E_h, poisson: n_h },
    },
  ] as const;
const where = [
  defined('i = D_b - d', 'interference, in diameter', 'diametralInterference'),
  defined('C_h = ((D^2 + d^2) / (D^2 - d^2) + n_h) / E_h', 'give of the housing', 'ofHousing'),
  defined('C_b = ((d^2 + b^2) / (d^2 - b^2) - n_b) / E_b', 'give of the bushing', 'ofBushing'),
  defined('p = i / (d * (C_h + C_b))', 'pressure at the fit', 'pressure'),
  defined('delta = 2 * p * d^2 * b / (E_b * (d^2 - b^2))', 'how much the bore closes', 'closing'),
];

/** The formula of a bushing that is pressed in. */
export const bushingCards = {
  boreAfterPressing: card({
    of: boreAfterPressing,
    name: 'bore of a bushing once it is pressed in',
    gives: { symbol: 'b_p', meaning: 'bore once pressed in', dimension: 'length' },
    letters,
    call,
    read: ({ bore }) => bore,
    where,
    expression: 'b - delta',
    refuses: {
      'the interference is more than a twentieth of the diameter': {
        with: { D_b: 0.028 },
        names: 'bushing.outside less housing.bore',
      },
      "the bore is not inside of the housing's bore": {
        with: { b: 0.026 },
        names: 'bushing.bore',
      },
      'the outside is not outside of it': { with: { D: 0.02 }, names: 'housing.outside' },
    },
    source: "Lamé's thick cylinders",
  }),
};
