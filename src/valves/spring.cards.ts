import { card, defined } from '../judging/internal.js';
import type { Density, Length, Pressure, Ratio } from '../quantities/index.js';
import {
  camshaftSpeed,
  coilCount,
  coilDiameter,
  deadCoilCount,
  shearStiffness,
  springHeight,
  springWire,
  surgeRate,
  wireDensity,
} from './domains.js';
import { type CoilSpring, type SpringEnds, valveSpring } from './spring.js';
import { springAtHeight } from './spring-at-height.js';
import { springSurge } from './spring-surge.js';

const d = {
  field: 'wire',
  meaning: 'diameter of the wire',
  domain: springWire,
  usual: [0.0025, 0.004],
} as const;
const D_o = {
  field: 'outside',
  meaning: 'diameter over the coils',
  domain: coilDiameter,
  usual: [0.024, 0.03],
} as const;
const n_t = {
  field: 'coils',
  meaning: 'total coils',
  domain: coilCount,
  usual: [7, 9],
  made: [7, 7.5, 8, 8.5, 9],
} as const;
const n_d = {
  field: 'deadCoils',
  meaning: 'dead coils',
  domain: deadCoilCount,
  usual: [1.5, 2],
  made: [1.5, 2],
} as const;
const G = {
  field: 'shearModulus',
  meaning: 'shear modulus of the wire',
  domain: shearStiffness,
  usual: [7.8e10, 8.2e10],
} as const;
const rho = {
  field: 'density',
  meaning: 'density of the wire',
  domain: wireDensity,
  usual: [7800, 7900],
} as const;
const spring = { d, D_o, n_t, n_d, G } as const;
const heavy = { ...spring, rho } as const;
const h_f = {
  field: 'freeHeight',
  meaning: 'free height',
  domain: springHeight,
  usual: [0.045, 0.055],
} as const;
const h = {
  field: 'height',
  meaning: 'compressed height',
  domain: springHeight,
  usual: [0.038, 0.043],
} as const;
const pressed = { ...spring, h_f, h } as const;
const shigley = 'Shigley, Mechanical Engineering Design, sections 10-1 to 10-8, from memory';

const coil = [
  defined('D = D_o - d', 'mean diameter of the coils', 'meanDiameter'),
  defined('n_a = n_t - n_d', 'coils that work', 'activeCoils'),
];
const rate = defined('k = G * d^4 / (8 * D^3 * n_a)', 'rate of the spring', 'rate');
const mass = defined(
  'm = rho * pi^2 * d^2 * D * n_a / 4',
  'mass of the coils that work',
  'activeMass',
);
const D = defined('D = D_o - d', 'mean diameter of the coils');
const force = defined(
  'F = G * d^4 / (8 * D^3 * (n_t - n_d)) * (h_f - h)',
  'force of the spring',
  'force',
);
const FIT = {
  'the coils do not fit the wire': { with: { D_o: 0.006 }, names: 'outside' },
  'all coils lie dead': { with: { n_t: 2 }, names: 'coils' },
};

/** The letters of a spring. */
interface Letters {
  readonly d: Length;
  readonly D_o: Length;
  readonly n_t: Ratio;
  readonly n_d: Ratio;
  readonly G: Pressure;
  readonly rho?: Density;
}

const made = ({ d, D_o, n_t, n_d, G, rho }: Letters): CoilSpring => ({
  wire: d,
  outside: D_o,
  coils: n_t,
  deadCoils: n_d,
  shearModulus: G,
  ...(rho !== undefined && { density: rho }),
  ends: 'squared and ground',
});
/** A spring whose wire and coils alone matter. */
const wound = (d: Length, n_t: Ratio, ends: SpringEnds): CoilSpring => ({
  wire: d,
  outside: 0.027 as Length,
  coils: n_t,
  ends,
});
const pressedTo = (of: Letters & { readonly h_f: Length; readonly h: Length }) => ({
  ...made(of),
  freeHeight: of.h_f,
  height: of.h,
});

/** Formulas of valve springs. */
export const springCards = {
  springRate: card({
    of: valveSpring,
    name: 'rate of a valve spring',
    gives: { symbol: 'k', meaning: 'rate of the spring', dimension: 'stiffness' },
    letters: spring,
    where: coil,
    call: (letters) => [made(letters)],
    read: ({ rate }) => rate,
    expression: 'G * d^4 / (8 * D^3 * n_a)',
    refuses: FIT,
    source: shigley,
  }),
  groundSolidHeight: card({
    of: valveSpring,
    name: 'solid height of a spring with ground ends',
    gives: { symbol: 'h_s', meaning: 'solid height of the spring', dimension: 'length' },
    letters: { d, n_t },
    call: ({ d, n_t }) => [wound(d, n_t, 'squared and ground')],
    read: ({ solidHeight }) => solidHeight,
    expression: 'd * n_t',
    source: shigley,
  }),
  squaredSolidHeight: card({
    of: valveSpring,
    name: 'solid height of a spring with round ends',
    gives: { symbol: 'h_s', meaning: 'solid height of the spring', dimension: 'length' },
    letters: { d, n_t },
    call: ({ d, n_t }) => [wound(d, n_t, 'squared')],
    read: ({ solidHeight }) => solidHeight,
    expression: 'd * (n_t + 1)',
    source: shigley,
  }),
  surgeFrequency: card({
    of: valveSpring,
    name: 'surge frequency of a spring',
    gives: { symbol: 'f', meaning: 'lowest natural frequency', dimension: 'rate' },
    letters: heavy,
    where: [...coil, rate, mass],
    call: (letters) => [made(letters)],
    read: ({ surgeFrequency }) => surgeFrequency,
    expression: 'sqrt(k / m) / 2',
    source: shigley,
  }),
  springWaveTime: card({
    of: valveSpring,
    name: 'time of a wave along a spring',
    gives: { symbol: 't', meaning: 'time from end to end', dimension: 'time' },
    letters: heavy,
    where: [...coil, rate, mass],
    call: (letters) => [made(letters)],
    read: ({ waveTime }) => waveTime,
    expression: 'sqrt(m / k)',
    source: 'wave along a uniform spring',
  }),
  springForceAtHeight: card({
    of: springAtHeight,
    name: 'force of a spring at a height',
    gives: {
      symbol: 'F',
      meaning: 'force of the spring at the compressed height',
      dimension: 'force',
    },
    letters: pressed,
    where: [D],
    call: (letters) => [pressedTo(letters)],
    read: ({ force }) => force,
    expression: 'G * d^4 / (8 * D^3 * (n_t - n_d)) * (h_f - h)',
    refuses: {
      ...FIT,
      'the height is above the free height': { with: { h: 0.06 }, names: 'height' },
    },
    source: shigley,
  }),
  springStress: card({
    of: springAtHeight,
    name: 'shear stress of a spring at a height',
    gives: { symbol: 'tau', meaning: 'shear stress inside the coils', dimension: 'pressure' },
    letters: pressed,
    where: [
      D,
      defined('C = D / d', 'spring index'),
      force,
      defined(
        'K = (4 * C - 1) / (4 * C - 4) + 0.615 / C',
        "Wahl's factor for the curve of the wire",
      ),
    ],
    call: (letters) => [pressedTo(letters)],
    read: ({ shearStress }) => shearStress,
    expression: 'K * 8 * F * D / (pi * d^3)',
    source: "Wahl's factor: Khurmi and Gupta, Machine Design, p. 1208",
  }),
  roomBeforeCoilBind: card({
    of: springAtHeight,
    name: 'room before coil bind',
    gives: { symbol: 'r', meaning: 'travel left before coil bind', dimension: 'length' },
    letters: { h, d, n_t },
    call: ({ h, d, n_t }) => [
      { ...wound(d, n_t, 'squared and ground'), freeHeight: 1 as Length, height: h },
    ],
    read: ({ toCoilBind }) => toCoilBind,
    expression: 'h - d * n_t',
    source: 'definition of the trade',
  }),
  surgeOrder: card({
    of: springSurge,
    name: 'surge order of a spring over its cam',
    gives: { symbol: 'n', meaning: 'surge swings for each turn of the cam', dimension: 'ratio' },
    letters: {
      f: {
        field: 'surgeFrequency',
        meaning: 'lowest natural frequency of the spring',
        domain: surgeRate,
        usual: [200, 500],
      },
      omega: {
        field: 'camSpeed',
        meaning: 'speed of the camshaft',
        domain: camshaftSpeed,
        usual: [60, 150],
      },
    },
    read: ({ order }) => order,
    expression: '2 * pi * f / (omega / (1 rad))',
    source: 'definition',
  }),
};
