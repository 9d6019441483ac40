import { angleAround, card } from '../judging/internal.js';
import { degree, type Length, mm, ratio } from '../quantities/index.js';
import { dialReading, lobeCount, partRadius, vBlockAngle } from './domains.js';
import { runout } from './runout.js';
import { pointsFromDial } from './trace.js';
import { twoPointOutOfRound } from './two-point.js';
import { vBlockFactor } from './v-block.js';

const dial = { domain: dialReading, usual: [0.00001, 0.0001] } as const;

/** Letters of four readings, a quarter turn apart. */
const quarters = {
  x_1: { field: 'readings[0].reading', meaning: 'dial reading at a mark', ...dial },
  x_2: { field: 'readings[1].reading', meaning: 'dial reading a quarter turn on', ...dial },
  x_3: { field: 'readings[2].reading', meaning: 'dial reading half a turn on', ...dial },
  x_4: {
    field: 'readings[3].reading',
    meaning: 'dial reading three quarters of a turn on',
    ...dial,
  },
} as const;

const atQuarters = (readings: readonly Length[]) =>
  readings.map((reading, i) => ({ angle: degree(90 * i), reading }));

/** Formulas of traces round a part. */
export const traceCards = {
  traceAcross: card({
    of: pointsFromDial,
    name: 'point on a part from a dial reading',
    gives: { symbol: 'x', meaning: 'coordinate of the point across the part', dimension: 'length' },
    letters: {
      R: {
        field: 'radius',
        meaning: 'radius at which the dial reads zero',
        domain: partRadius,
        usual: [0.01, 0.05],
      },
      d: { field: 'readings[0].reading', meaning: 'dial reading', ...dial },
      a: {
        field: 'readings[0].angle',
        meaning: 'angle from the mark on the part',
        domain: angleAround,
        usual: [0, 6],
      },
    },
    call: ({ R, d, a }) => [{ radius: R, readings: [{ angle: a, reading: d }] }],
    read: ([point]) => point?.x,
    expression: '(R + d) * cos(a)',
    example: { R: mm(30), d: mm(0.05), a: degree(30) },
    source: 'geometry',
  }),
  eccentricity: card({
    of: runout,
    name: 'eccentricity from four readings of a dial',
    gives: { symbol: 'e', meaning: 'eccentricity', dimension: 'length' },
    letters: quarters,
    call: ({ x_1, x_2, x_3, x_4 }) => [atQuarters([x_1, x_2, x_3, x_4])],
    read: ({ eccentricity }) => eccentricity,
    expression: 'sqrt((x_1 - x_3)^2 + (x_2 - x_4)^2) / 2',
    example: { x_1: mm(0.09), x_2: mm(0.06), x_3: mm(0.01), x_4: mm(0.04) },
    source: 'least squares of one wave at four equal steps',
  }),
  twoPointOutOfRound: card({
    of: twoPointOutOfRound,
    name: 'out-of-round that a micrometer reads',
    gives: { symbol: 'o', meaning: 'two-point out-of-round', dimension: 'length' },
    letters: quarters,
    call: ({ x_1, x_2, x_3, x_4 }) => [atQuarters([x_1, x_2, x_3, x_4])],
    expression: 'abs((x_1 + x_3) - (x_2 + x_4))',
    example: { x_1: mm(0.09), x_2: mm(0.02), x_3: mm(0.05), x_4: mm(0.03) },
    source: 'geometry',
  }),
  vBlockFactor: card({
    of: vBlockFactor,
    name: 'swing of a dial above a V-block',
    gives: {
      symbol: 'f',
      meaning: 'swing of the dial over the height of the lobes',
      dimension: 'ratio',
    },
    letters: {
      n: {
        field: 'lobes',
        meaning: 'number of lobes',
        domain: lobeCount,
        usual: [3, 3],
        made: [3, 5],
      },
      a: {
        field: 'includedAngle',
        meaning: 'angle between the faces of the block',
        domain: vBlockAngle,
        usual: [1, 2.1],
        made: [degree(60), degree(90), degree(120)],
      },
    },
    expression: '1 + cos(n * (pi * 1 rad + a) / 2) / sin(a / 2)',
    refuses: { 'the lobes are no whole number': { with: { n: 2.5 }, names: 'lobes' } },
    example: { n: ratio(3), a: degree(90) },
    source: 'J. Japan Soc. Precision Eng. 43 (1977) 1167, abstract',
  }),
};
