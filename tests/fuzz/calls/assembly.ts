import {
  degree,
  describeStandDown,
  dipperDip,
  inch,
  pistonStandDown,
  thou,
  throwPhase,
  throwPhaseByHeights,
} from 'crankwright';
import { calls, refused } from './calls.js';

const tops = {
  stroke: inch(3.25),
  firstTop: degree(12.5),
  secondTop: degree(193.25),
  designed: degree(180),
  topsWithin: degree(0.25),
  limits: { max: degree(0.5) },
};
const level = {
  stroke: inch(3.25),
  centre: inch(4),
  first: inch(4.01),
  second: inch(3.998),
  throws: 'opposite' as const,
  heightsWithin: thou(0.5),
  limits: { max: degree(0.5) },
};
const trough = {
  stroke: inch(3.25),
  rodLength: inch(6),
  cylinder: 'upright' as const,
  dipper: { min: inch(1.7), max: inch(1.75) },
  centreAboveFloor: inch(3.5),
  oilDepth: { min: inch(0.375), max: inch(0.5) },
  dipLimits: { limits: { min: inch(0.125) } },
  clearanceLimits: { limits: { min: inch(0.0625) } },
};
const sizes = {
  deckHeight: { min: inch(9.02), max: inch(9.03) },
  stroke: inch(3.48),
  rodLength: inch(5.7),
  pinHeight: { min: inch(1.558), max: inch(1.562) },
  measured: inch(0.05),
  limits: { max: inch(0.04) },
};

const standDown = pistonStandDown(sizes);

export const assemblyCalls = {
  throwPhase: calls(throwPhase, {
    sound: [[tops]],
    provoked: {
      'the limits have no bound': refused('tops.limits', { ...tops, limits: {} }),
    },
  }),
  throwPhaseByHeights: calls(throwPhaseByHeights, {
    sound: [[level], [{ ...level, throws: 'together' }]],
    provoked: {
      'it is unknown how the throws stand': refused('throws', { ...level, throws: 'crossed' }),
      'the limits have no bound': refused('crank.limits', { ...level, limits: {} }),
    },
  }),
  dipperDip: calls(dipperDip, {
    sound: [[trough], [{ ...trough, cylinder: 'lying' }]],
    provoked: {
      'a span is reversed': refused('oilDepth', {
        ...trough,
        oilDepth: { min: inch(0.5), max: inch(0.25) },
      }),
      'it is unknown how the cylinder stands': refused('cylinder', { ...trough, cylinder: 'V' }),
      'limits have no bound': refused('dipLimits.limits', { ...trough, dipLimits: { limits: {} } }),
    },
  }),
  pistonStandDown: calls(pistonStandDown, {
    sound: [[sizes]],
    provoked: {
      'a span is reversed': refused('deckHeight', {
        ...sizes,
        deckHeight: { min: inch(9.03), max: inch(9.02) },
      }),
    },
  }),
  describeStandDown: calls(describeStandDown, {
    madeBy: 'pistonStandDown',
    sound: [
      [standDown, { units: 'inch' }],
      [pistonStandDown({ ...sizes, measured: inch(-0.02) }), { units: 'metric' }],
    ],
    provoked: {
      'the stand-down is not what `pistonStandDown` gives': refused(
        'standDown.calculated',
        {},
        { units: 'inch' },
      ),
      'the unit system is unknown': refused('wording.units', standDown, { units: 'imperial' }),
    },
  }),
};
