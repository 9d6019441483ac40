import {
  celsius,
  clearanceFromRock,
  degree,
  type EngineMaterial,
  guideClearance,
  guideWear,
  inch,
  type Length,
  lashGrowth,
  lbf,
  meanExpansion,
  percent,
  perSecond,
  ratio,
  rpm,
  seatFindings,
  springAtHeight,
  springSurge,
  springTest,
  stemToGrind,
  thou,
  valveSpring,
} from 'crankwright';
import { calls, refused } from './calls.js';

const piece = (length: Length, of: EngineMaterial, degrees: number) => ({
  length,
  expansion: meanExpansion(of),
  temperature: celsius(degrees),
});
const sideValve = {
  carrier: [piece(inch(6), 'grey iron', 110)],
  train: [piece(inch(2), 'steel', 90), piece(inch(4), 'austenitic valve steel', 300)],
};
const block = sideValve.carrier[0];
const overhead = {
  carrier: [piece(inch(4), 'grey iron', 120)],
  train: [piece(inch(4), 'martensitic valve steel', 250)],
  rocker: {
    ratio: ratio(1.3),
    carrier: [piece(inch(9), 'aluminium alloy', 120)],
    train: [piece(inch(9), 'steel', 80)],
  },
  hotLash: thou(8),
};
const own = { limits: { min: thou(1.5), max: thou(4.5) } };
const pair = { guide: { min: inch(0.3125), max: inch(0.3145) }, stem: inch(0.3105), ...own };
const wanted = { min: thou(7), max: thou(9) };
const spring = {
  wire: inch(0.12),
  outside: inch(0.97),
  coils: ratio(7.5),
  ends: 'squared and ground',
} as const;
const onTester = {
  closed: { height: inch(1.095), force: lbf(17), specified: lbf(19) },
  open: { height: inch(0.88), force: lbf(40), specified: lbf(42) },
};
const reversedSpan = { min: thou(9), max: thou(7) };

const read = (station: number, angle: number) => ({
  station: inch(station),
  angle: degree(angle),
  diameter: inch(0.3135),
});

export const valveCalls = {
  guideWear: calls(guideWear, {
    sound: [[[read(0.1, 0), read(0.1, 90), read(1.9, 0), read(1.9, 90)]]],
    provoked: {
      'a station has one angle only': refused('readings', [
        read(0.1, 0),
        read(1.9, 0),
        read(1.9, 90),
      ]),
      'an angle has one station only': refused('readings', [
        read(0.1, 0),
        read(0.1, 90),
        read(1.9, 0),
        read(1.9, 45),
      ]),
    },
  }),
  lashGrowth: calls(lashGrowth, {
    sound: [[sideValve], [overhead]],
    provoked: {
      'a list is empty': refused('carrier', { ...sideValve, carrier: [] }),
      'a span is reversed': refused('carrier[0].expansion.coefficient', {
        ...sideValve,
        carrier: [
          { ...block, expansion: { ...block?.expansion, coefficient: { min: 2e-5, max: 1e-5 } } },
        ],
      }),
      'the range of a mean is reversed': refused('carrier[0].expansion', {
        ...sideValve,
        carrier: [{ ...block, expansion: { ...block?.expansion, from: 400, to: 300 } }],
      }),
    },
  }),
  stemToGrind: calls(stemToGrind, {
    sound: [
      [{ lash: thou(3), wanted }],
      [{ lash: thou(0), wanted, length: inch(3.9), leastLength: inch(3.8) }],
      [{ lash: thou(3), wanted, length: inch(3.8), leastLength: inch(3.8) }],
      [{ lash: thou(20), wanted }],
    ],
    provoked: {
      'the lash wanted is reversed': refused('wanted', { lash: thou(3), wanted: reversedSpan }),
      'the least length is given without the length': refused('length', {
        lash: thou(3),
        wanted,
        leastLength: inch(3.8),
      }),
    },
  }),
  guideClearance: calls(guideClearance, {
    sound: [[pair], [{ guide: inch(0.3125), stem: inch(0.3105) }]],
    provoked: {
      'a span is reversed': refused('guide', {
        ...pair,
        guide: { min: inch(0.3145), max: inch(0.3125) },
      }),
      'the stem was never of the guide': refused('stem', { ...pair, stem: inch(0.25) }),
    },
  }),
  clearanceFromRock: calls(clearanceFromRock, {
    sound: [[{ rock: thou(12), guideLength: inch(2), overhang: inch(1.5), ...own }]],
    provoked: {},
  }),
  seatFindings: calls(seatFindings, {
    sound: [
      [{ seatWidth: inch(0.07), margin: inch(0.012) }],
      [
        { seatWidth: inch(0.05), margin: inch(0.02), recession: thou(20) },
        { recession: { limits: { max: thou(30) } }, margin: { limits: { min: inch(1 / 64) } } },
      ],
    ],
    provoked: {
      'a value is not finite': refused('margin', { margin: Number.NaN }),
      'out of range': refused('margin', { margin: 1 }),
      'limits have no bound': refused('limits.margin.limits', {}, { margin: { limits: {} } }),
    },
  }),
  valveSpring: calls(valveSpring, {
    sound: [[spring]],
    provoked: { 'the ends are unknown': refused('ends', { ...spring, ends: 'ground' }) },
  }),
  springAtHeight: calls(springAtHeight, {
    sound: [[{ ...spring, freeHeight: inch(1.7), height: inch(1.4), limits: { min: thou(40) } }]],
    provoked: {
      'the ends are unknown': refused('ends', {
        ...spring,
        freeHeight: inch(1.7),
        height: inch(1.4),
        ends: 'ground',
      }),
    },
  }),
  springSurge: calls(springSurge, {
    sound: [[{ surgeFrequency: perSecond(424), camSpeed: rpm(900), limits: { min: ratio(12) } }]],
    provoked: {},
  }),
  springTest: calls(springTest, {
    sound: [
      [onTester],
      [
        {
          ...onTester,
          forceWithin: lbf(1),
          limits: { max: percent(5) },
          basis: { kind: 'specified' },
        },
      ],
    ],
    provoked: {},
  }),
};
