import {
  angleAround,
  card,
  defined,
  everyStep,
  pistonStroke,
  stationAlong,
  upFrom,
} from '../judging/internal.js';
import { degree, metre, mm } from '../quantities/index.js';
import { CRANK, NO_ROD } from './card-letters.js';
import { dipperDip } from './dipper.js';
import {
  dipperLength,
  heightFromCrank,
  oilDepth,
  phaseOfThrows,
  pinHeight,
  rodCentres,
} from './domains.js';
import { pistonStandDown } from './stand-down.js';
import { throwPhase, throwPhaseByHeights } from './throw-phase.js';

const TOPS = {
  a_1: {
    field: 'firstTop',
    meaning: 'crank reading at the top of the first piston',
    domain: angleAround,
    usual: [0.22, 0.27],
    made: everyStep(degree, 13, 15, 0.1),
  },
  a_2: {
    field: 'secondTop',
    meaning: 'crank reading at the top of the second piston',
    domain: angleAround,
    usual: [3.37, 3.42],
    made: everyStep(degree, 193.5, 195.5, 0.1),
  },
  phi: {
    field: 'designed',
    meaning: 'phase by design',
    domain: phaseOfThrows,
    usual: [3.14, 3.15],
    made: [degree(180)],
  },
} as const;
const HEIGHTS = {
  s: CRANK.s,
  h_0: {
    field: 'centre',
    meaning: 'height of the crankshaft centre',
    domain: stationAlong,
    usual: [0.1, 0.101],
  },
  h_1: {
    field: 'first',
    meaning: 'height of the first crankpin',
    domain: stationAlong,
    usual: [0.102, 0.105],
  },
  h_2: {
    field: 'second',
    meaning: 'height of the second pin',
    domain: stationAlong,
    usual: [0.102, 0.105],
  },
} as const;
const ARMS = [
  defined('r = s / 2', 'radius of the crank', 'throw'),
  defined('alpha = asin((h_1 - h_0) / r)', 'first throw above the level, in radians'),
  defined('beta = asin((h_2 - h_0) / r)', 'second throw above the level, in radians'),
] as const;
const NOT_LEVEL = { 'a throw does not lie nearly level': { with: { h_1: 0.3 }, names: 'first' } };
const DIPPER = {
  s: CRANK.s,
  l: CRANK.l,
  d: {
    field: 'dipper',
    meaning: 'dipper, from the crankpin centre to the tip',
    domain: dipperLength,
    usual: [0.03, 0.05],
  },
} as const;
const FLOOR = {
  h: {
    field: 'centreAboveFloor',
    meaning: 'centre of the crankshaft above the floor',
    domain: heightFromCrank,
    usual: [0.09, 0.12],
  },
  o: {
    field: 'oilDepth',
    meaning: 'depth of the oil above the floor',
    domain: oilDepth,
    usual: [0.01, 0.02],
  },
} as const;
const geometry = 'geometry';
const error = { symbol: 'e', meaning: 'phase error', dimension: 'angle' } as const;

/** Formulas of what is measured as an engine goes together. */
export const assemblyCards = {
  throwPhase: card({
    of: throwPhase,
    name: 'phase error of two throws',
    gives: error,
    letters: TOPS,
    call: (v) => [{ stroke: metre(0.08), firstTop: v.a_1, secondTop: v.a_2, designed: v.phi }],
    read: (found) => found.error,
    expression: 'a_2 - a_1 - phi',
    example: { a_1: degree(14), a_2: degree(194.3), phi: degree(180) },
    source: 'definition',
  }),
  throwPhaseAlong: card({
    of: throwPhase,
    name: 'phase error along the circle of the crankpins',
    gives: { symbol: 'x', meaning: 'phase error along the circle', dimension: 'length' },
    letters: { s: CRANK.s, ...TOPS },
    where: [defined('e = (a_2 - a_1 - phi) / (1 rad)', 'phase error, in radians', 'error')],
    read: (found) => found.alongCircle,
    expression: 's / 2 * e',
    example: { s: mm(75), a_1: degree(14), a_2: degree(194.3), phi: degree(180) },
    source: 'definition',
  }),
  oppositeThrows: card({
    of: throwPhaseByHeights,
    name: 'phase error of opposite throws, from pin heights',
    gives: error,
    letters: HEIGHTS,
    where: ARMS,
    call: (v) => [
      { stroke: v.s, centre: v.h_0, first: v.h_1, second: v.h_2, throws: 'opposite' as const },
    ],
    read: (found) => found.error,
    expression: '(-alpha - beta) * 1 rad',
    refuses: NOT_LEVEL,
    example: { s: mm(75), h_0: mm(100.5), h_1: mm(103.5), h_2: mm(97.4) },
    source: geometry,
  }),
  throwsTogether: card({
    of: throwPhaseByHeights,
    name: 'phase error of throws that stand together, from pin heights',
    gives: error,
    letters: { ...HEIGHTS, h_2: { ...HEIGHTS.h_2, usual: [0.108, 0.11] } },
    where: ARMS,
    call: (v) => [
      { stroke: v.s, centre: v.h_0, first: v.h_1, second: v.h_2, throws: 'together' as const },
    ],
    read: (found) => found.error,
    expression: '(beta - alpha) * 1 rad',
    refuses: NOT_LEVEL,
    example: { s: mm(75), h_0: mm(100.5), h_1: mm(103.5), h_2: mm(103.6) },
    source: geometry,
  }),
  dipperClearance: card({
    of: dipperDip,
    name: 'clearance of a dipper, cylinder upright',
    gives: { symbol: 'c', meaning: 'clearance to the floor', dimension: 'length' },
    letters: { s: CRANK.s, d: DIPPER.d, h: FLOOR.h },
    where: [
      defined('R = s / 2 + d', 'lowest point of the tip below the crankshaft centre', 'reach'),
    ],
    call: (v) => [
      {
        stroke: v.s,
        rodLength: metre(0.15),
        cylinder: 'upright' as const,
        dipper: v.d,
        centreAboveFloor: v.h,
        oilDepth: metre(0.01),
      },
    ],
    read: ({ clearance }) => clearance.min,
    expression: 'h - R',
    example: { s: mm(75), d: mm(40), h: mm(85) },
    source: geometry,
  }),
  dipperDip: card({
    of: dipperDip,
    name: 'dip of a dipper, cylinder lying',
    gives: { symbol: 'x', meaning: 'depth in the oil', dimension: 'length' },
    letters: { ...DIPPER, ...FLOOR },
    where: [
      defined('phi = asin(s / 2 / l)', 'lean of the rod, in radians', 'rodAngle'),
      defined(
        'R = s / 2 + d * cos(phi)',
        'lowest point of the tip below the crankshaft centre',
        'reach',
      ),
      defined('c = h - R', 'clearance to the floor', 'clearance'),
    ],
    call: (v) => [
      {
        stroke: v.s,
        rodLength: v.l,
        cylinder: 'lying' as const,
        dipper: v.d,
        centreAboveFloor: v.h,
        oilDepth: v.o,
      },
    ],
    read: ({ dip }) => dip.min,
    expression: 'o - c',
    refuses: NO_ROD,
    example: { s: mm(75), l: mm(200), d: mm(40), h: mm(85), o: mm(15) },
    source: geometry,
  }),
  pistonStandDown: card({
    of: pistonStandDown,
    name: 'least stand-down of a piston',
    gives: { symbol: 'd_min', meaning: 'least stand-down below the deck', dimension: 'length' },
    letters: {
      H: {
        field: 'deckHeight.min',
        written: 'leastDeckHeight',
        meaning: 'least deck height',
        domain: heightFromCrank,
        usual: [0.238, 0.24],
      },
      s: {
        field: 'stroke',
        written: 'mostStroke',
        meaning: 'most stroke',
        domain: pistonStroke,
        usual: [0.078, 0.08],
      },
      l: {
        field: 'rodLength',
        written: 'mostRodLength',
        meaning: 'longest rod',
        domain: rodCentres,
        usual: [0.155, 0.156],
      },
      p: {
        field: 'pinHeight',
        written: 'mostPinHeight',
        meaning: 'most pin height',
        domain: pinHeight,
        usual: [0.039, 0.04],
      },
    },
    call: (v) => [
      {
        deckHeight: upFrom(heightFromCrank, v.H, 1e-3),
        stroke: v.s,
        rodLength: v.l,
        pinHeight: v.p,
      },
    ],
    read: ({ calculated }) => calculated.min,
    expression: 'H - s / 2 - l - p',
    refuses: {
      ...NO_ROD,
      'the sizes are not of one engine': { with: { p: 0.5 }, names: 'deckHeight.max' },
    },
    example: { H: mm(239), s: mm(79), l: mm(155.5), p: mm(43.8) },
    source: geometry,
  }),
};
