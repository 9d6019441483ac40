import { card, diameter, pistonStroke } from '../../judging/internal.js';
import {
  airPressure,
  geometricCompression,
  polytropicExponent,
  rodCentres,
} from '../../motion/internal.js';
import { kPa, kPaGauge } from '../../quantities/index.js';
import { compressionInAir, standardAirPressure } from './air-pressure.js';
import { crankingPressure } from './cranking-pressure.js';
import {
  altitudeAboveSea,
  compressionReading,
  dischargeCoefficient,
  heldAir,
  inletClosing,
  orificeBore,
  testAir,
  workshopAir,
} from './domains.js';
import { leakDown } from './leak-down.js';

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
const LEAN = ['r = s / 2', 'rodAngle = asin(r / l * sin(alpha))'] as const;
const LEFT = 'r * (1 + cos(alpha)) + l * (1 - cos(rodAngle))';
const epsilon = {
  field: 'compressionRatio',
  meaning: 'compression ratio',
  domain: geometricCompression,
  usual: [5, 9],
} as const;
const p_a = {
  field: 'airPressure',
  meaning: 'absolute pressure of the air',
  domain: airPressure,
  usual: [8e4, 1.02e5],
} as const;
const GAUGES = {
  p_s: {
    field: 'supply',
    meaning: 'gauge pressure supplied',
    domain: testAir,
    usual: [5e5, 6e5],
  },
  p_h: {
    field: 'held',
    meaning: 'gauge pressure held in the cylinder',
    domain: heldAir,
    usual: [3e5, 4.8e5],
  },
} as const;
const ORIFICE = {
  ...GAUGES,
  d: {
    field: 'orifice',
    meaning: 'bore of the orifice',
    domain: orificeBore,
    usual: [0.001, 0.0016],
  },
  p_a,
} as const;
const SONIC = '(2 / 2.4)^3.5';
const THROUGH = [
  'supplyPressure = p_s + p_a',
  'cylinderPressure = p_h + p_a',
  `x = max(cylinderPressure / supplyPressure, ${SONIC})`,
  'flowIn = supplyPressure * sqrt(7 * (x^(2 / 1.4) - x^(2.4 / 1.4)))',
] as const;
const nozzle = 'isentropic flow of air through a nozzle';
const MORE_THAN_FED = {
  'the cylinder holds more than it is fed': { with: { p_h: 1e6 }, names: 'held' },
};

/** Formulas of what a gauge shows of a cylinder. */
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
    where: [...LEAN, `travelLeft = ${LEFT}`],
    expression: '1 + (epsilon - 1) * travelLeft / s',
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
    where: [...LEAN, `travelLeft = ${LEFT}`, 'effectiveRatio = 1 + (epsilon - 1) * travelLeft / s'],
    expression: 'p_a * (effectiveRatio^n - 1)',
    refuses: NO_ROD,
    source: 'polytropic law',
  }),
  leakage: card({
    of: leakDown,
    name: 'share of the test pressure that a cylinder loses',
    gives: { symbol: 'x', meaning: 'share lost', dimension: 'ratio' },
    letters: GAUGES,
    read: ({ lost }) => lost,
    expression: '1 - p_h / p_s',
    refuses: MORE_THAN_FED,
    source: 'definition',
  }),
  leakArea: card({
    of: leakDown,
    name: 'area of a leak from a leakage test',
    gives: { symbol: 'A', meaning: 'area of a hole like the orifice', dimension: 'area' },
    letters: ORIFICE,
    where: [
      ...THROUGH,
      `y = max(p_a / cylinderPressure, ${SONIC})`,
      'flowOut = cylinderPressure * sqrt(7 * (y^(2 / 1.4) - y^(2.4 / 1.4)))',
    ],
    read: (test) => test.leakArea?.min,
    expression: 'pi / 4 * d^2 * flowIn / flowOut',
    refuses: MORE_THAN_FED,
    source: nozzle,
  }),
  leakageFlow: card({
    of: leakDown,
    name: 'air that a leaking cylinder is fed',
    gives: { symbol: 'Q', meaning: 'flow, at the pressure of the room', dimension: 'flow' },
    letters: {
      ...ORIFICE,
      C: {
        field: 'discharge',
        meaning: 'discharge coefficient of the orifice',
        domain: dischargeCoefficient,
        usual: [0.7, 1],
      },
      T: {
        field: 'temperature',
        meaning: 'temperature of the air',
        domain: workshopAir,
        usual: [280, 300],
      },
    },
    where: THROUGH,
    read: (test) => test.airFlow?.min,
    expression: 'C * pi / 4 * d^2 * flowIn * sqrt(287.05 * (1 m^2/s^2/K) * T) / p_a',
    refuses: MORE_THAN_FED,
    source: nozzle,
  }),
  pistonForce: card({
    of: leakDown,
    name: 'force of a tester on the piston',
    gives: { symbol: 'F', meaning: 'force, if nothing leaks', dimension: 'force' },
    letters: {
      p_s: GAUGES.p_s,
      D: { field: 'bore', meaning: 'bore of the cylinder', domain: diameter, usual: [0.06, 0.09] },
    },
    call: ({ p_s, D }) => [{ supply: p_s, held: p_s, bore: D }],
    read: (test) => test.pistonForce,
    expression: 'pi / 4 * D^2 * p_s',
    source: 'definition of pressure',
  }),
};
