import { readFileSync } from 'node:fs';
import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { root } from '../../support/repo.js';
import { calls, refused } from './calls.js';

/** One of each section, so that every path can be tried. */
const plain = {
  version: 1,
  engine: 'pump set',
  units: 'inch',
  crankshaft: {
    rodJournals: {
      standard: { min: '2.1245 in', max: '2.1250 in' },
      steps: ['standard', '10 under', '20 under'],
      minimum: '2.09 in',
      cleanUpAllowance: '1 thou',
      wear: 'one side',
      shape: { max: '0.5 thou', source: 'the manual' },
      oilClearance: { min: '1 thou', max: '3 thou' },
    },
    mainJournals: { standard: { min: '2.4995 in', max: '2.5000 in' } },
    endPlay: {
      readings: [{ pushed: '0 thou', pulled: '14 thou' }],
      limits: { min: '4 thou', max: '10 thou', source: 'the manual' },
    },
  },
  rods: [
    {
      name: 'rod 1',
      journal: {
        readings: [
          { station: '0.25 in', angle: '0 deg', diameter: '2.1046 in' },
          { station: '0.25 in', angle: '90 deg', diameter: '2.1049 in' },
          { station: '1.25 in', angle: '0 deg', diameter: '2.1047 in' },
          { station: '1.25 in', angle: '90 deg', diameter: '2.1049 in' },
        ],
        runout: '0.2 thou',
      },
      housingBore: '2.251 in',
      fittedShells: 'standard',
    },
  ],
  mains: [
    {
      name: 'main 1',
      journal: {
        readings: [
          { station: '6 mm', angle: '0 deg', diameter: '2.4996 in' },
          { station: '6 mm', angle: '90 deg', diameter: '2.4997 in' },
          { station: '30 mm', angle: '0 deg', diameter: '2.4996 in' },
          { station: '30 mm', angle: '90 deg', diameter: '2.4998 in' },
        ],
      },
      housingBore: { min: '2.6260 in', max: '2.6262 in' },
    },
  ],
  shells: [
    { name: 'standard', fits: 'rods', undersize: 'standard', wall: '0.062 in', pairs: 0 },
    {
      name: '20 under',
      fits: 'rods',
      undersize: '20 under',
      wall: { min: '0.0719 in', max: '0.0720 in' },
      pairs: 1,
    },
  ],
  cylinderLimits: {
    outOfRound: { max: '3 thou' },
    taper: { max: '5 thou' },
    pistonClearance: { min: '3 thou', max: '5 thou' },
    ringGap: { min: '9 thou', max: '20 thou' },
  },
  cylinders: [
    {
      name: 'cylinder 1',
      bore: {
        readings: [
          { station: '0.1 in', angle: '0 deg', diameter: '3 in' },
          { station: '0.5 in', angle: '0 deg', diameter: '3.001 in' },
          { station: '0.5 in', angle: '90 deg', diameter: '3.002 in' },
          { station: '3 in', angle: '0 deg', diameter: '3 in' },
          { station: '3 in', angle: '90 deg', diameter: '3.001 in' },
        ],
        ringTravel: { min: '0.3 in', max: '3.5 in' },
      },
      piston: '2.997 in',
      rings: [{ name: 'top', gap: '5 thou', measuredIn: '3 in' }],
    },
  ],
  oil: {
    line: [
      { temperature: '40 °C', viscosity: '100 cSt' },
      { temperature: '100 °C', viscosity: '11 cSt' },
    ],
    sump: '1 US qt',
    sample: { temperature: '20 °C', viscosity: '200 cSt' },
    fuelViscosity: '0.6 cSt',
    leak: { drops: '12 per minute', dropVolume: '0.05 mL' },
    thresholds: { act: '2 vol%', critical: '4 vol%', source: 'the laboratory' },
  },
};
const text = readFileSync(`${root}/examples/pump-set-metric.json`, 'utf8');
const sheet = readSheet(plain);
const inspection = inspect(sheet);
const [first, ...others] = actionsFrom(inspection).map(
  (action) => [action, { units: 'inch' }] as const,
);
const inch = { units: 'inch' };

export const sheetCalls = {
  readSheet: calls(readSheet, {
    sound: [[plain], [text]],
    provoked: {
      'a field is missing': refused('engine', { version: 1, units: 'inch' }),
      misspelt: refused('oils', { ...plain, oils: plain.oil }),
      'out of range': refused('oil.sump', { ...plain, oil: { ...plain.oil, sump: '1 m³' } }),
      contradictory: refused('rods[1].name', { ...plain, rods: [...plain.rods, ...plain.rods] }),
      repeated: refused(
        'units',
        '{ "version": 1, "engine": "e", "units": "inch", "units": "metric" }',
      ),
      'not JSON': refused('sheet, line 1', 'version: 1'),
      'the text is too long': refused(
        'sheet',
        '{ "version": 1, "engine": "e", "units": "inch" }'.padEnd(20_000_001),
      ),
      'not a sheet': refused('sheet', []),
      nothing: refused('sheet'),
    },
  }),
  inspect: calls(inspect, {
    madeBy: 'readSheet',
    sound: [[sheet]],
    provoked: {
      'readings contradict each other': refused('sheet.rods[0].journal.readings', {
        ...sheet,
        crankshaft: { rodJournals: { standard: { min: 0.05, max: 0.0501 } } },
      }),
      'no standard size': refused('crankshaft.rodJournals', { ...sheet, crankshaft: {} }),
      'the sheet is not what `readSheet` gives': refused('sheet'),
    },
  }),
  actionsFrom: calls(actionsFrom, {
    madeBy: 'inspect',
    sound: [[inspection]],
    provoked: {
      'the inspection is not what `inspect` gives': refused('inspection.engine', {}),
      'no inspection': refused('inspection'),
    },
  }),
  describeAction: calls(describeAction, {
    madeBy: 'actionsFrom',
    sound: first ? [first, ...others] : [],
    provoked: {
      'the unit system is unknown': refused('wording.units', first?.[0], { units: 'imperial' }),
      'the action is not what `actionsFrom` gives': refused('action.kind', {}, inch),
      'no wording': refused('wording', first?.[0]),
    },
  }),
  report: calls(report, {
    madeBy: 'inspect',
    sound: [[inspection], [inspection, { units: 'metric' }]],
    provoked: {
      'the inspection is not what `inspect` gives': refused('inspection.engine', {}, inch),
      'no inspection': refused('inspection'),
      'the unit system is unknown': refused('wording.units', inspection, { units: 'imperial' }),
    },
  }),
};
