import { card, defined, pistonStroke } from '../../judging/internal.js';
import { geometricCompression, polytropicExponent, rodCentres } from '../../motion/internal.js';
import { kPa, kPaGauge } from '../../quantities/index.js';
import { compressionInAir, standardAirPressure } from './air-pressure.js';
import { p_a } from './card-letters.js';
import { crankingPressure } from './cranking-pressure.js';
import { altitudeAboveSea, compressionReading, inletClosing } from './domains.js';

const NO_ROD = {
  'the rod cannot belong to the stroke': { with: { l: 0.03 }, names: 'rodLength' },
};
const TRAVEL = {
  s: { field: 'stroke', meaning: 'stroke', domain: pistonStroke, usual: [0.06, 0.1] },
  l: {
    field: 'rodLength',
    meaning: 'rod from centre to centre',
    domain: rodCentres,
    usual: [0.15, 0.25],
  },
  alpha: {
    field: 'inletCloses',
    meaning: 'closing of the inlet, after bottom dead centre',
    domain: inletClosing,
    usual: [0.3, 1.2],
  },
} as const;
const LEAN = [
  defined('r = s / 2', 'radius of the crank'),
  defined('phi = asin(r / l * sin(alpha))', 'lean of the rod, in radians', 'rodAngle'),
] as const;
const LEFT = 'r * (1 + cos(alpha)) + l * (1 - cos(phi))';
const epsilon = {
  field: 'compressionRatio',
  meaning: 'compression ratio',
  domain: geometricCompression,
  usual: [5, 9],
} as const;
/** Formulas of what a gauge shows of a cylinder when it is cranked. */
export const compressionPressureCards = {
  standardAirPressure: card({
    of: standardAirPressure,
    name: 'pressure of the standard atmosphere',
    gives: { symbol: 'p', meaning: 'absolute pressure of the air', dimension: 'pressure' },
    letters: {
      h: {
        field: 'altitude',
        meaning: 'height above the sea',
        domain: altitudeAboveSea,
        usual: [0, 3000],
      },
    },
    call: ({ h }) => [h],
    expression: '(1 - 0.0065 / 288.15 * h / (1 m))^5.25588 * 101325 * (1 Pa)',
    source: 'ISO 2533, below 11 km',
  }),
  compressionInAir: card({
    of: compressionInAir,
    name: 'compression reading at another air pressure',
    gives: {
      symbol: 'p_2',
      meaning: 'gauge reading at the other air pressure',
      dimension: 'gaugePressure',
    },
    letters: {
      p_1: {
        field: 'reading',
        meaning: 'gauge reading',
        domain: compressionReading,
        usual: [5e5, 1e6],
      },
      a_1: { ...p_a, field: 'from', meaning: 'air pressure it was read at' },
      a_2: { ...p_a, field: 'to', meaning: 'air pressure it is wanted for' },
    },
    expression: 'p_1 * a_2 / a_1',
    example: { p_1: kPaGauge(600), a_1: kPa(101), a_2: kPa(85) },
    source: 'gas law',
  }),
  travelLeft: card({
    of: crankingPressure,
    name: 'stroke left after the inlet closes',
    gives: { symbol: 'x', meaning: 'stroke left', dimension: 'length' },
    letters: TRAVEL,
    call: (v) => [
      { stroke: v.s, rodLength: v.l, inletCloses: v.alpha, compressionRatio: 6 as never },
    ],
    read: ({ travelLeft }) => travelLeft.min,
    where: LEAN,
    expression: LEFT,
    refuses: NO_ROD,
    source: 'geometry of the slider-crank',
  }),
  effectiveRatio: card({
    of: crankingPressure,
    name: 'compression ratio after the inlet closes',
    gives: {
      symbol: 'epsilon_e',
      meaning: 'compression ratio from the closing of the inlet',
      dimension: 'ratio',
    },
    letters: { ...TRAVEL, epsilon },
    read: ({ effectiveRatio }) => effectiveRatio.min,
    where: [...LEAN, defined(`x = ${LEFT}`, 'stroke left after the inlet closes', 'travelLeft')],
    expression: '1 + (epsilon - 1) * x / s',
    refuses: NO_ROD,
    source: 'geometry of the slider-crank',
  }),
  crankingPressure: card({
    of: crankingPressure,
    name: 'pressure at cranking, an estimate',
    gives: { symbol: 'p', meaning: 'gauge pressure', dimension: 'gaugePressure' },
    letters: {
      ...TRAVEL,
      epsilon,
      p_a,
      n: {
        field: 'exponent',
        meaning: 'polytropic exponent',
        domain: polytropicExponent,
        usual: [1.2, 1.3],
      },
    },
    read: ({ gauge }) => gauge.min,
    where: [
      ...LEAN,
      defined(`x = ${LEFT}`, 'stroke left after the inlet closes', 'travelLeft'),
      defined(
        'epsilon_e = 1 + (epsilon - 1) * x / s',
        'compression ratio from the closing of the inlet',
        'effectiveRatio',
      ),
    ],
    expression: 'p_a * (epsilon_e^n - 1)',
    refuses: NO_ROD,
    source: 'polytropic law',
  }),
};
