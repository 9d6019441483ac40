import { card, defined, diameter } from '../judging/internal.js';
import { elasticModulus, ofGreyIron, ofSteel } from '../measuring/internal.js';
import type { Quantity } from '../quantities/index.js';
import { boreThrough, engagement, frictionInFit, interference, poissonRatio } from './domains.js';
import { interferencePressure } from './lame.js';
import { pressFit } from './press-fit.js';

const d = {
  field: 'diameter',
  meaning: 'diameter of the fit',
  domain: diameter,
  usual: [0.02, 0.05],
} as const;
const i = {
  field: 'diametralInterference',
  meaning: 'interference, in diameter',
  domain: interference,
  usual: [0.00001, 0.00005],
} as const;
const D = {
  field: 'hub.outside',
  meaning: 'outside diameter of the hub',
  domain: diameter,
  usual: [0.06, 0.1],
} as const;
const b = {
  field: 'shaft.bore',
  meaning: 'bore through the shaft',
  domain: boreThrough,
  usual: [0.005, 0.015],
} as const;
// A hub of grey iron on a shaft of steel.
const ofHub = {
  stiffness: { domain: elasticModulus, usual: [1e11, 1.2e11], made: ofGreyIron },
  narrowing: { domain: poissonRatio, usual: [0.25, 0.27], made: [0.25, 0.26, 0.27] },
} as const;
const ofShaft = {
  stiffness: { domain: elasticModulus, usual: [2e11, 2.1e11], made: ofSteel },
  narrowing: { domain: poissonRatio, usual: [0.28, 0.3], made: [0.28, 0.29, 0.3] },
} as const;
const E_h = {
  field: 'hub.elasticity',
  written: 'hub.elasticity',
  meaning: 'modulus of elasticity of the hub',
  ...ofHub.stiffness,
} as const;
const n_h = {
  field: 'hub.poisson',
  written: 'hub.poisson',
  meaning: "Poisson's ratio of the hub",
  ...ofHub.narrowing,
} as const;
const E_s = {
  field: 'shaft.elasticity',
  written: 'shaft.elasticity',
  meaning: 'modulus of elasticity of the shaft',
  ...ofShaft.stiffness,
} as const;
const n_s = {
  field: 'shaft.poisson',
  written: 'shaft.poisson',
  meaning: "Poisson's ratio of the shaft",
  ...ofShaft.narrowing,
} as const;
const OF_HUB = defined('C_h = ((D^2 + d^2) / (D^2 - d^2) + n_h) / E_h', 'give of the hub', 'ofHub');
const OF_SHAFT = defined(
  'C_s = ((d^2 + b^2) / (d^2 - b^2) - n_s) / E_s',
  'give of the shaft',
  'ofShaft',
);
const PRESSURE = defined('p = i / (d * (C_h + C_s))', 'pressure at the fit', 'pressure');
const AXIAL = defined('F = f * p * pi * d * L', 'force along the axis', 'axialForce');
const where = [OF_HUB, OF_SHAFT];
const withPressure = [OF_HUB, OF_SHAFT, PRESSURE];
const OUTSIDE = { with: { D: 0.019, d: 0.02 }, names: 'hub.outside' } as const;
const INSIDE = { with: { b: 0.05, d: 0.03 }, names: 'shaft.bore' } as const;
const TOO_MUCH = { with: { i: 0.003, d: 0.02 }, names: 'diametralInterference' } as const;
const refuses = {
  'the interference is more than a twentieth of the diameter': TOO_MUCH,
  'the bore is not inside of the diameter': INSIDE,
  'the outside is not outside of it': OUTSIDE,
};
const source = "Lamé's thick cylinders";
const stress = { dimension: 'pressure' } as const;
const letters = { d, i, D, b, E_h, n_h, E_s, n_s };
type Values = {
  readonly [K in keyof typeof letters]: Quantity<(typeof letters)[K]['domain']['dimension']>;
};

/** Two parts as they are given to the functions. */
const partsOf = ({ d, i, D, b, E_h, n_h, E_s, n_s }: Values) => ({
  diameter: d,
  diametralInterference: i,
  shaft: { bore: b, elasticity: E_s, poisson: n_s },
  hub: { outside: D, elasticity: E_h, poisson: n_h },
});
const L = {
  field: 'length',
  meaning: 'length in contact',
  domain: engagement,
  usual: [0.02, 0.05],
} as const;
const f = {
  field: 'friction',
  meaning: 'coefficient of friction at the fit',
  domain: frictionInFit,
  usual: [0.08, 0.2],
} as const;

/** Formulas of two parts that press on each other. */
export const fitCards = {
  interferencePressure: card({
    of: interferencePressure,
    name: 'pressure of an interference',
    gives: { symbol: 'p', meaning: 'pressure at the fit', ...stress },
    letters,
    call: (values) => [partsOf(values)],
    where,
    expression: 'i / (d * (C_h + C_s))',
    refuses,
    source,
  }),
  pressFitPressure: card({
    of: pressFit,
    name: 'pressure of a press fit',
    gives: { symbol: 'p', meaning: 'pressure at the fit', dimension: 'pressure' },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ pressure }) => pressure.max,
    where: where,
    expression: 'i / (d * (C_h + C_s))',
    refuses,
    source,
  }),
  hubBoreHoop: card({
    of: pressFit,
    name: 'hoop stress of a hub at its bore',
    gives: {
      symbol: 'sigma_t',
      meaning: 'hoop stress at the bore of the hub',
      dimension: 'pressure',
    },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ hubBore }) => hubBore.hoop,
    where: withPressure,
    expression: 'p * (D^2 + d^2) / (D^2 - d^2)',
    source,
  }),
  hubBoreRadial: card({
    of: pressFit,
    name: 'radial stress of a hub at its bore',
    gives: { symbol: 'sigma_r', meaning: 'radial stress', dimension: 'pressure' },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ hubBore }) => hubBore.radial,
    where: withPressure,
    expression: '-p',
    source,
  }),
  hubBoreEquivalent: card({
    of: pressFit,
    name: 'equivalent stress of a hub at its bore',
    gives: {
      symbol: 'sigma_e',
      meaning: 'equivalent stress, hoop less radial',
      dimension: 'pressure',
    },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ hubBore }) => hubBore.equivalent,
    where: withPressure,
    expression: 'p * 2 * D^2 / (D^2 - d^2)',
    source,
  }),
  hubOutsideHoop: card({
    of: pressFit,
    name: 'hoop stress of a hub at its outside',
    gives: {
      symbol: 'sigma_t',
      meaning: 'hoop stress at the outside of the hub',
      dimension: 'pressure',
    },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ hubOutside }) => hubOutside.hoop,
    where: withPressure,
    expression: 'p * 2 * d^2 / (D^2 - d^2)',
    source,
  }),
  shaftSurfaceHoop: card({
    of: pressFit,
    name: 'hoop stress of a shaft at its surface',
    gives: {
      symbol: 'sigma_t',
      meaning: 'hoop stress at the surface of the shaft',
      dimension: 'pressure',
    },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ shaftSurface }) => shaftSurface.hoop,
    where: withPressure,
    expression: '-p * (d^2 + b^2) / (d^2 - b^2)',
    source,
  }),
  shaftBoreHoop: card({
    of: pressFit,
    name: 'hoop stress of a shaft at its bore',
    gives: {
      symbol: 'sigma_t',
      meaning: 'hoop stress at the bore of the shaft',
      dimension: 'pressure',
    },
    letters: letters,
    call: (values) => [partsOf(values)],
    read: ({ shaftBore }) => shaftBore?.hoop,
    where: withPressure,
    expression: '-p * 2 * d^2 / (d^2 - b^2)',
    source,
  }),
  axialForce: card({
    of: pressFit,
    name: 'force that a press fit holds',
    gives: { symbol: 'F', meaning: 'force along the axis', dimension: 'force' },
    letters: { ...letters, L, f },
    call: ({ L, f, ...values }) => [{ ...partsOf(values), length: L, friction: f }],
    read: ({ held }) => held?.axialForce.max,
    where: withPressure,
    expression: 'f * p * pi * d * L',
    source,
  }),
  torqueHeld: card({
    of: pressFit,
    name: 'torque that a press fit holds',
    gives: { symbol: 'T', meaning: 'torque before it slips', dimension: 'torque' },
    letters: { ...letters, L, f },
    call: ({ L, f, ...values }) => [{ ...partsOf(values), length: L, friction: f }],
    read: ({ held }) => held?.torque.max,
    where: [OF_HUB, OF_SHAFT, PRESSURE, AXIAL],
    expression: 'F * d / 2',
    source,
  }),
};
