import {
  bigEndLoads,
  bigEndOrbit,
  celsius,
  centistokes,
  degree,
  gasTrace,
  hour,
  inch,
  judge,
  kilogram,
  litre,
  micrometre,
  millipascalSecond,
  mL,
  mLPerHour,
  oddReadings,
  percentByVolume,
  quartUS,
  ratio,
  rpm,
  thou,
} from 'crankwright';
import { engineChances, planBuilds } from 'crankwright/planning';
import {
  bigEndPicture,
  borePicture,
  clearancesOf,
  clearancesPicture,
  fuelPicture,
  journalPicture,
  measureFirstPicture,
  planPage,
  planPicture,
  reportPage,
  triagePage,
  viscosityPicture,
} from 'crankwright/plots';
import { readShed, triage } from 'crankwright/shed';
import { inspect, readSheet } from 'crankwright/sheet';
import { plainShed } from '../../shed/sheds.js';
import { calls, refused } from './calls.js';

const units = { units: 'inch' } as const;
const read = (station: number, angle: number, diameter: number) => ({
  station: inch(station),
  angle: degree(angle),
  diameter: inch(diameter),
});
const readings = [
  read(0.25, 0, 1.6248),
  read(0.25, 90, 1.6148),
  read(0.75, 0, 1.6248),
  read(0.75, 90, 1.6248),
  read(1.25, 0, 1.6248),
  read(1.25, 90, 1.6247),
];
const odd = oddReadings(readings);
const journal = { name: 'rod 1', readings };
const bore = { ...journal, ringTravel: { min: inch(0.2), max: inch(1.5) } };
/** What every picture says of its options. */
const ofOptions = (...before: readonly unknown[]) => ({
  'the unit system is unknown': refused('options.units', ...before, { units: 'imperial' }),
  'the width is out of range': refused('options.width', ...before, { ...units, width: 10 }),
  'the id is not one': refused('options.id', ...before, { ...units, id: '1 2' }),
});
const ofReadings = (parameter: 'journal' | 'bore') => ({
  'the name is empty': refused(`${parameter}.name`, { ...journal, name: ' ' }, units),
  'a value is not finite': refused(
    `${parameter}.readings[0].diameter`,
    { ...journal, readings: [{ ...readings[0], diameter: Number.NaN }] },
    units,
  ),
  'out of range': refused(
    `${parameter}.readings[0].diameter`,
    { ...journal, readings: [{ ...readings[0], diameter: 1.6 }] },
    units,
  ),
  'a reading stands out against the others by more than any part wears': refused(
    `${parameter}.readings[6].diameter`,
    { ...journal, readings: [...readings, read(1.25, 45, 1.5248)] },
    units,
  ),
  [`an odd reading is not of this ${parameter}`]: refused(
    `${parameter}.odd[0].index`,
    { ...journal, odd: [{ ...odd[0], index: 9 }] },
    units,
  ),
  ...ofOptions(parameter === 'journal' ? journal : bore),
});

const finding = judge({
  feature: 'oil clearance',
  dimension: 'length',
  value: thou(2.4),
  uncertainty: thou(0.3),
  limits: { min: thou(1.2), max: thou(2.8) },
  basis: { kind: 'specified', by: 'the manual' },
  service: { limits: { max: thou(4) }, basis: { kind: 'specified' } },
});
const clearance = { name: 'rod 1', finding, span: { min: thou(2), max: thou(2.4) } };

const crank = { stroke: inch(3.25), rodLength: inch(6) };
const engineLoads = bigEndLoads({
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
});
/** Without the torque, which is not drawn. */
const { meanTorque: _mean, ...diagram } = engineLoads;
const loads = {
  ...diagram,
  loads: engineLoads.loads.map(({ torque: _, ...load }) => load),
};
const running = { journal: inch(1.625), length: inch(1), clearance: inch(0.0017), loads };
const orbit = bigEndOrbit({ ...running, viscosity: millipascalSecond(15) });
const bigEnd = {
  name: 'rod 1',
  orbit,
  loads,
  clearance: running.clearance,
  needed: micrometre(2),
};

const story = {
  oil: quartUS(1),
  leak: { running: mLPerHour(0), standing: mLPerHour(6) },
  log: [{ running: hour(2) }, { standing: hour(12) }, { drained: litre(0.3) }],
};
const most = { ...story, fuel: mL(20) };
const thresholds = { thresholds: { act: percentByVolume(2), critical: percentByVolume(4) } };

const line = [
  { temperature: celsius(40), viscosity: centistokes(100) },
  { temperature: celsius(100), viscosity: centistokes(11.1) },
] as const;
const [cold, hot] = line;
const oils = [{ name: 'SAE 30', line }];
const samples = [{ name: 'used', temperature: celsius(20), viscosity: centistokes(130) }];
const ofOil = (points: readonly unknown[]) => ({ oils: [{ name: 'SAE 30', line: points }] });

const inspection = inspect(
  readSheet({
    version: 1,
    engine: 'pump set',
    units: 'inch',
    crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '7 thou' }] } },
  }),
);
const sheet = readSheet({
  version: 1,
  engine: 'pump set',
  units: 'inch',
  cylinders: [
    {
      name: 'cylinder 1',
      bore: {
        readings: [
          { station: '0.5 in', angle: '0 deg', diameter: '3.001 in' },
          { station: '0.5 in', angle: '90 deg', diameter: '3.002 in' },
          { station: '3 in', angle: '0 deg', diameter: '3 in' },
          { station: '3 in', angle: '90 deg', diameter: '3.001 in' },
        ],
      },
    },
  ],
});
const shed = readShed(plainShed());
const plan = await planBuilds(shed);
const chances = await engineChances(shed);
const sorted = triage(shed);
const ofPlan = {
  'the plan is not what `planBuilds` gives': refused('plan.shed', {}, units),
  'no plan': refused('plan', undefined, units),
};

export const plotCalls = {
  journalPicture: calls(journalPicture, {
    sound: [
      [journal, units],
      [
        { ...journal, odd },
        { ...units, width: 320, id: 'rod-1' },
      ],
    ],
    provoked: ofReadings('journal'),
  }),
  borePicture: calls(borePicture, {
    sound: [
      [bore, units],
      [
        { ...bore, odd },
        { ...units, width: 320, id: 'bore-1' },
      ],
    ],
    provoked: {
      ...ofReadings('bore'),
      'the ring travel is reversed': refused(
        'bore.ringTravel',
        { ...journal, ringTravel: { min: inch(3), max: inch(1) } },
        units,
      ),
    },
  }),
  clearancesPicture: calls(clearancesPicture, {
    sound: [
      [[clearance, { name: 'rod 2' }, { name: 'rod 3', readAgain: true }], units],
      [[{ name: 'a', span: clearance.span }], { ...units, width: 960, id: 'all' }],
    ],
    provoked: {
      'the list is empty': refused('clearances', [], units),
      'a name is empty': refused('clearances[0].name', [{ name: '' }], units),
      'a finding is not one': refused(
        'clearances[0].finding.verdict',
        [{ name: 'a', finding: { ...finding, verdict: 'good' } }],
        units,
      ),
      'a value is not finite': refused(
        'clearances[0].span.min',
        [{ name: 'a', span: { min: Number.NaN, max: 1 } }],
        units,
      ),
      'a span is reversed': refused(
        'clearances[0].span',
        [{ name: 'a', span: { min: thou(2), max: thou(1) } }],
        units,
      ),
      'it is marked to be read again otherwise than by true': refused(
        'clearances[0].readAgain',
        [{ name: 'a', readAgain: false }],
        units,
      ),
      'of another dimension': refused(
        'clearances[0].finding.dimension',
        [{ name: 'a', finding: { ...finding, dimension: 'force' } }],
        units,
      ),
      ...ofOptions([clearance]),
    },
  }),
  clearancesOf: calls(clearancesOf, {
    madeBy: 'inspect',
    sound: [[inspection]],
    provoked: {
      'the inspection is not what `inspect` gives': refused('inspection.engine', {}),
    },
  }),
  bigEndPicture: calls(bigEndPicture, {
    cases: 200,
    sound: [[bigEnd, units]],
    provoked: {
      'the name is empty': refused('bigEnd.name', { ...bigEnd, name: '' }, units),
      'the orbit is not what `bigEndOrbit` gives': refused(
        'bigEnd.orbit.outcome',
        { ...bigEnd, orbit: {} },
        units,
      ),
      'it did not settle': refused(
        'bigEnd.orbit.outcome',
        { ...bigEnd, orbit: { outcome: 'no film' } },
        units,
      ),
      'the loads do not go once around the cycle': refused(
        'bigEnd.loads.loads',
        { ...bigEnd, loads: { ...loads, loads: loads.loads.slice(0, 30) } },
        units,
      ),
      'a value is not finite': refused(
        'bigEnd.clearance',
        { ...bigEnd, clearance: Number.NaN },
        units,
      ),
      'out of range': refused('bigEnd.needed', { ...bigEnd, needed: 1 }, units),
      ...ofOptions(bigEnd),
    },
  }),
  fuelPicture: calls(fuelPicture, {
    sound: [
      [story, {}, units],
      [{ least: story, most }, thresholds, { ...units, width: 320 }],
    ],
    provoked: {
      'a value is not finite': refused('oil', { ...story, oil: Number.NaN }, {}, units),
      'out of range': refused('sump.least.oil', { least: { ...story, oil: 9 }, most }, {}, units),
      'the log is empty': refused('log', { ...story, log: [] }, {}, units),
      'the logs differ': refused(
        'sump.most.log',
        { least: story, most: { ...most, log: [{ running: hour(1) }] } },
        {},
        units,
      ),
      'no time passes in it': refused(
        'sump.log',
        { ...story, log: [{ drained: mL(10) }] },
        {},
        units,
      ),
      'a threshold has no sound value': refused(
        'thresholds.thresholds.act',
        story,
        { thresholds: { act: 2, critical: 3 } },
        units,
      ),
      ...ofOptions(story, {}),
    },
  }),
  viscosityPicture: calls(viscosityPicture, {
    sound: [[{ oils, samples }, units]],
    provoked: {
      'there is no oil': refused('shown.oils', { oils: [] }, units),
      'a name is empty': refused('shown.oils[0].name', { oils: [{ name: '', line }] }, units),
      'a value is not finite': refused(
        'shown.samples[0].viscosity',
        { oils, samples: [{ ...samples[0], viscosity: Number.NaN }] },
        units,
      ),
      'out of range': refused(
        'shown.samples[0].temperature',
        { oils, samples: [{ ...samples[0], temperature: 20 }] },
        units,
      ),
      'an oil has not two points': refused('shown.oils[0].line', ofOil([cold]), units),
      'its temperatures are equal': refused('shown.oils[0].line', ofOil([cold, cold]), units),
      'it would thicken when heated': refused(
        'shown.oils[0].line',
        ofOil([
          { ...cold, viscosity: hot.viscosity },
          { ...hot, viscosity: cold.viscosity },
        ]),
        units,
      ),
      ...ofOptions({ oils }),
    },
  }),
  planPicture: calls(planPicture, {
    madeBy: 'planBuilds',
    sound: [[plan, units]],
    provoked: {
      ...ofPlan,
      'an option is unknown': refused('options.wide', plan, { ...units, wide: 3 }),
      ...ofOptions(plan),
    },
  }),
  measureFirstPicture: calls(measureFirstPicture, {
    madeBy: 'planBuilds',
    sound: [[plan, units]],
    provoked: {
      ...ofPlan,
      'an option is unknown': refused('options.wide', plan, { ...units, wide: 3 }),
      ...ofOptions(plan),
    },
  }),
  planPage: calls(planPage, {
    madeBy: 'planBuilds',
    sound: [[plan], [plan, { units: 'metric' }], [plan, units, chances]],
    provoked: {
      ...ofPlan,
      'the chances are not what `engineChances` gives': refused('chances.chances', plan, units, {}),
      'the unit system is unknown': refused('wording.units', plan, { units: 'imperial' }),
    },
  }),
  reportPage: calls(reportPage, {
    madeBy: 'readSheet',
    sound: [[sheet], [sheet, { units: 'metric', why: true }]],
    provoked: {
      'the sheet is not what `readSheet` gives': refused('sheet.version', {}, units),
      'readings contradict each other': refused('crankshaft.rodJournals', {
        ...sheet,
        rods: [
          { name: 'rod 1', journal: { readings: readings.slice(2) }, housingBore: inch(1.75) },
        ],
      }),
      'the unit system is unknown': refused('wording.units', sheet, { units: 'imperial' }),
    },
  }),
  triagePage: calls(triagePage, {
    madeBy: 'triage',
    sound: [[sorted], [sorted, { units: 'metric' }]],
    provoked: {
      'the triage is not what `triage` gives': refused('triage.shed', {}, units),
      'the unit system is unknown': refused('wording.units', sorted, { units: 'imperial' }),
    },
  }),
};
