import {
  angleAtTravel,
  crankPlace,
  degree,
  describeTimingCard,
  inch,
  mm,
  oneTooth,
  percent,
  pistonTravel,
  pointsDwell,
  ratio,
  rimAngle,
  rimDistance,
  rotorEdgeAngle,
  sparkLaterByDwell,
  sparkSetting,
  teethOff,
  timingCard,
  topDeadCentre,
  valveTiming,
} from 'crankwright';
import { calls, refused } from './calls.js';

const rim = { diameter: inch(10), angle: degree(18) };
const crank = { stroke: inch(3.25), rodLength: inch(6) };
const inletOpens = { angle: degree(10), before: 'top' } as const;
const inletCloses = { angle: degree(30), after: 'bottom' } as const;
const exhaustOpens = { angle: degree(40), before: 'bottom' } as const;
const exhaustCloses = { angle: degree(20), after: 'top' } as const;
const valves = { inletOpens, inletCloses, exhaustOpens, exhaustCloses };
const spark = { advance: degree(20), speedRatio: ratio(0.5) };
const held = {
  ...spark,
  lag: degree(14),
  retard: degree(2),
  within: degree(1),
  limits: { max: degree(2) },
  basis: { kind: 'specified', by: 'the manual' },
} as const;
const mesh = {
  found: { inletOpens: { angle: degree(5), after: 'top' } as const, inletCloses },
  wanted: valves,
  within: degree(1),
  crankTeeth: 24,
  camTeeth: 48,
};
const toList = {
  rimDiameter: inch(10),
  crank,
  spark: held,
  valves: { ...valves, within: degree(1) },
  basis: { kind: 'published', source: 'a manual' },
} as const;
const bothSides = { angle: degree(10), before: 'top', after: 'top' };
const noCentre = { angle: degree(10), before: 'middle' };
const reversed = { min: degree(9), max: degree(2) };
const card = timingCard(toList);
const bare = timingCard({});

/** What readings of valves are refused for, with the path to them and a call that has them. */
const wrongReadings = (at: string, call: (readings: object) => unknown) => ({
  'a place is both before and after': refused(
    `${at}inletOpens.after`,
    call({ inletOpens: bothSides }),
  ),
  'a dead centre is unknown': refused(`${at}inletOpens.before`, call({ inletOpens: noCentre })),
  'a valve opens after it closes': refused(
    `${at}inletCloses`,
    call({
      inletOpens: { angle: degree(95), after: 'top' },
      inletCloses: { angle: degree(95), before: 'bottom' },
    }),
  ),
  "a place is far from the valve's own dead centre": refused(
    `${at}inletCloses`,
    call({ inletOpens, inletCloses: { angle: degree(20), before: 'top' } }),
  ),
});
const { 'a place is both before and after': both, ...others } = wrongReadings(
  '',
  (readings) => readings,
);

export const timingCalls = {
  rimDistance: calls(rimDistance, { sound: [[rim]], provoked: {} }),
  rimAngle: calls(rimAngle, {
    sound: [[{ diameter: inch(10), arc: inch(1.5) }], [{ diameter: inch(10), chord: inch(1.5) }]],
    provoked: {
      'neither distance': refused('arc', { diameter: inch(10) }),
      'both are given': refused('chord', {
        diameter: inch(10),
        arc: inch(1.5),
        chord: inch(1.5),
      }),
    },
  }),
  pistonTravel: calls(pistonTravel, { sound: [[{ ...crank, angle: degree(18) }]], provoked: {} }),
  angleAtTravel: calls(angleAtTravel, {
    sound: [[{ ...crank, travel: inch(0.1) }]],
    provoked: {},
  }),
  topDeadCentre: calls(topDeadCentre, {
    sound: [[{ first: degree(21), second: degree(345), within: degree(0.5) }]],
    provoked: {},
  }),
  crankPlace: calls(crankPlace, {
    sound: [
      [{ reading: degree(353), top: degree(3), numbersRise: 'forwards' }],
      [{ reading: degree(200), top: degree(3), numbersRise: 'backwards' }],
    ],
    provoked: {
      'the way is unknown': refused('numbersRise', {
        reading: degree(353),
        top: degree(3),
        numbersRise: 'up',
      }),
    },
  }),
  valveTiming: calls(valveTiming, {
    sound: [[valves], [{ inletOpens, exhaustCloses, within: degree(1) }]],
    provoked: {
      'there is no reading': refused('readings', { within: degree(1) }),
      'a place is both before and after': both,
      ...others,
    },
  }),
  oneTooth: calls(oneTooth, {
    sound: [[{ crankTeeth: 24, gearTeeth: 48 }]],
    provoked: {
      'the teeth are no whole number from 8 to 400': refused('gearTeeth', {
        crankTeeth: 24,
        gearTeeth: 48.5,
      }),
    },
  }),
  teethOff: calls(teethOff, {
    sound: [
      [mesh],
      [{ ...mesh, found: { exhaustOpens }, wantedWithin: degree(3), lashSet: true }],
      [{ ...mesh, within: degree(9) }],
    ],
    provoked: {
      ...wrongReadings('found.', (found) => ({ ...mesh, found })),
      'a value is not finite': refused('within', { ...mesh, within: Number.NaN }),
      'out of range': refused('within', { ...mesh, within: degree(16) }),
      'nothing was both found and wanted': refused('found', { ...mesh, wanted: { exhaustOpens } }),
      'the teeth are no whole number from 8 to 400': refused('crankTeeth', {
        ...mesh,
        crankTeeth: 7,
      }),
      'the cam has not twice the teeth of the crank': refused('camTeeth', {
        ...mesh,
        camTeeth: 47,
      }),
    },
  }),
  sparkSetting: calls(sparkSetting, {
    sound: [[spark], [held]],
    provoked: {
      'limits have no bound': refused('limits', { ...held, limits: {} }),
      'are reversed': refused('limits', { ...held, limits: reversed }),
      'a basis stands without limits': refused('spark.limits', { ...held, limits: undefined }),
    },
  }),
  pointsDwell: calls(pointsDwell, {
    sound: [[{ lobes: 4, dwell: degree(45) }], [{ lobes: 2, share: percent(60) }]],
    provoked: {
      'the lobes are no whole number from 1 to 12': refused('lobes', {
        lobes: 13,
        dwell: degree(20),
      }),
      'neither dwell nor share is given': refused('share', { lobes: 4 }),
      'both are': refused('share', { lobes: 4, dwell: degree(45), share: percent(50) }),
    },
  }),
  sparkLaterByDwell: calls(sparkLaterByDwell, {
    sound: [[{ from: degree(50), to: degree(46), speedRatio: ratio(0.5) }]],
    provoked: {},
  }),
  rotorEdgeAngle: calls(rotorEdgeAngle, {
    sound: [[{ rotorDiameter: mm(45), edgeDistance: mm(3), speedRatio: ratio(0.5) }]],
    provoked: {},
  }),
  timingCard: calls(timingCard, {
    sound: [[toList], [{}]],
    provoked: {
      ...wrongReadings('valves.', (readings) => ({ valves: readings })),
      'the rod cannot belong to the stroke': refused('crank.rodLength', {
        crank: { stroke: inch(3.25), rodLength: inch(0.9) },
      }),
      'limits have no bound': refused('spark.limits', { spark: { ...held, limits: {} } }),
      'are reversed': refused('spark.limits', { spark: { ...held, limits: reversed } }),
      'a basis stands without limits': refused('spark.limits', {
        spark: { ...held, limits: undefined },
      }),
      'a value is not finite': refused('rimDiameter', { rimDiameter: Number.NaN }),
      'out of range': refused('rimDiameter', { rimDiameter: 10 }),
      'the basis is none': refused('basis.kind', { basis: {} }),
    },
  }),
  describeTimingCard: calls(describeTimingCard, {
    sound: [
      [card, { units: 'inch' }],
      [bare, { units: 'metric' }],
    ],
    madeBy: 'timingCard',
    provoked: {
      'the card is not what `timingCard` gives': refused(
        'card.rows',
        { rows: 1 },
        { units: 'inch' },
      ),
      'the unit system is unknown': refused('wording.units', card, { units: 'imperial' }),
    },
  }),
};
