import { inch, second } from 'crankwright';
import { buildBoxes, buildSheet } from 'crankwright/build-sheet';
import {
  chancesReport,
  describePlanDifference,
  diffPlans,
  engineChances,
  planBuilds,
  planReport,
} from 'crankwright/planning';
import { describePart, readShed, triage, triageReport } from 'crankwright/shed';
import { noEngine, twoEngines } from '../../planning/plans.js';
import { plainShed } from '../../shed/sheds.js';
import { calls, refused } from './calls.js';

const sorted = triage(readShed(plainShed()));
const [first, ...others] = sorted.parts.map((part) => [part, { units: 'inch' }] as const);

/** As little as makes an engine: a single in rolling bearings, without head and valves. */
const single = readShed({
  version: 1,
  shed: 'the bench',
  units: 'inch',
  engine: {
    name: 'pump set, single',
    cylinders: 1,
    mains: 0,
    rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' }, steps: ['standard'] },
    bores: { standard: { min: '3.0000 in', max: '3.0005 in' }, steps: ['standard'] },
    alsoNeeds: [],
  },
  blocks: [
    {
      name: 'block',
      bores: [
        {
          name: 'bore',
          readings: [
            { station: '0.5 in', angle: '0 deg', diameter: '3.0004 in' },
            { station: '0.5 in', angle: '90 deg', diameter: '3.0003 in' },
            { station: '3.5 in', angle: '0 deg', diameter: '3.0003 in' },
            { station: '3.5 in', angle: '90 deg', diameter: '3.0003 in' },
          ],
        },
      ],
    },
  ],
  crankshafts: [
    {
      name: 'crankshaft',
      rodJournals: [
        {
          name: 'journal',
          readings: [
            { station: '0.25 in', angle: '0 deg', diameter: '1.6248 in' },
            { station: '0.25 in', angle: '90 deg', diameter: '1.6247 in' },
            { station: '1.25 in', angle: '0 deg', diameter: '1.6248 in' },
            { station: '1.25 in', angle: '90 deg', diameter: '1.6248 in' },
          ],
        },
      ],
    },
  ],
  rods: [{ name: 'rod', rods: [{ name: 'big end', housingBore: '1.7507 in' }] }],
  pistonSets: [
    {
      name: 'piston set',
      oversize: 'standard',
      pistons: [{ name: 'piston', diameter: '2.9968 in' }],
    },
  ],
  ringSets: [{ name: 'rings', oversize: 'standard' }],
  // 1.7507 - 2 * 0.0621 - 1.6248 leaves 0.0017 in.
  shells: [{ name: 'shells', fits: 'rods', undersize: 'standard', wall: '0.0621 in', pairs: 1 }],
});
const tenth = { within: inch(0.0001) };
const measured = {
  ...single,
  instruments: { micrometer: tenth, boreGauge: tenth, wallGauge: tenth },
};
const { pistonSets, ...withoutPistons } = single;
/** A single of which the piston was not measured. */
const half = {
  ...withoutPistons,
  pistonSets: [{ name: 'piston set', condition: { is: 'ran' as const } }],
};
const chances = await engineChances(half);
const cap = { amount: 100, currency: 'EUR' };

export const planCalls = {
  planBuilds: calls(planBuilds, {
    madeBy: 'readShed',
    cases: 500,
    sound: [
      [single],
      [single, { atMost: 1, buying: false, mostPerEngine: cap, mustBuild: ['block'] }],
      [measured, { holdsWith: 0.9 }],
      [single, { reserved: ['rod'], timeLimit: second(60), onProgress: () => {} }],
    ],
    provoked: {
      'the shed is not what `readShed` gives': refused('shed.version', {}),
      'an option is unknown': refused('options.most', single, { most: 1 }),
      impossible: refused('options.atMost', single, { atMost: -1 }),
      'a name is not in the shed': refused('options.reserved[0]', single, {
        reserved: ['head'],
      }),
      'a chance is asked for and the shed does not describe its instruments': refused(
        'options.holdsWith',
        single,
        { holdsWith: 0.95 },
      ),
    },
  }),
  engineChances: calls(engineChances, {
    madeBy: 'readShed',
    cases: 300,
    sound: [
      [single],
      [half],
      [half, { atMost: 1, buying: false, reserved: ['rod'], draws: 10, seed: 3 }],
      [half, { timeLimit: second(60), onProgress: () => {} }],
    ],
    provoked: {
      'the shed is not what `readShed` gives': refused('shed.version', {}),
      'an option is unknown': refused('options.mustBuild', single, { mustBuild: ['block'] }),
      impossible: refused('options.draws', single, { draws: 0 }),
    },
  }),
  chancesReport: calls(chancesReport, {
    madeBy: 'engineChances',
    sound: [[chances], [await engineChances(single)]],
    provoked: {
      'the chances are not what `engineChances` gives': refused('chances.chances', {}),
      'no chances': refused('chances'),
      'the unit system is unknown': refused('wording.units', chances, { units: 'imperial' }),
    },
  }),
  triage: calls(triage, {
    madeBy: 'readShed',
    sound: [[single], [readShed(plainShed())]],
    provoked: { 'the shed is not what `readShed` gives': refused('shed.version', {}) },
  }),
  describePart: calls(describePart, {
    madeBy: 'triage',
    sound: first ? [first, ...others] : [],
    provoked: {
      'the part is not what `triage` gives': refused('part.section', {}, { units: 'inch' }),
      'the unit system is unknown': refused('wording.units', first?.[0], { units: 'imperial' }),
      'no wording': refused('wording', first?.[0]),
    },
  }),
  triageReport: calls(triageReport, {
    madeBy: 'triage',
    sound: [[sorted], [sorted, { units: 'metric' }]],
    provoked: {
      'the triage is not what `triage` gives': refused('triage.shed', {}, { units: 'inch' }),
      'no triage': refused('triage'),
      'the unit system is unknown': refused('wording.units', sorted, { units: 'imperial' }),
    },
  }),
  planReport: calls(planReport, {
    madeBy: 'planBuilds',
    sound: [[twoEngines], [noEngine], [twoEngines, { units: 'metric' }]],
    provoked: {
      'the plan is not what `planBuilds` gives': refused('plan.shed', {}, { units: 'inch' }),
      'no plan': refused('plan'),
      'the unit system is unknown': refused('wording.units', twoEngines, { units: 'imperial' }),
    },
  }),
  diffPlans: calls(diffPlans, {
    madeBy: 'planBuilds',
    sound: [[noEngine, twoEngines]],
    cases: 500,
    provoked: {
      'a field is misspelt': refused('newer.misspelt', noEngine, { ...twoEngines, misspelt: 1 }),
      'a plan is not what `planBuilds` gives': refused('older.shed', {}, noEngine),
    },
  }),
  describePlanDifference: calls(describePlanDifference, {
    madeBy: 'diffPlans',
    sound: [[diffPlans(noEngine, twoEngines), { units: 'inch' }]],
    provoked: {
      'the difference is not what `diffPlans` gives': refused(
        'difference.engines',
        {},
        {
          units: 'inch',
        },
      ),
      'the unit system is unknown': refused('wording.units', diffPlans(noEngine, twoEngines), {
        units: 'imperial',
      }),
    },
  }),
  buildBoxes: calls(buildBoxes, {
    madeBy: 'planBuilds',
    sound: [[noEngine, readShed(plainShed())]],
    cases: 500,
    provoked: {
      'a field is misspelt': refused('shed.misspelt', noEngine, { ...single, misspelt: 1 }),
      'the plan is not what `planBuilds` gives': refused('plan.shed', {}, single),
      'the shed is not what `readShed` gives': refused('shed.version', noEngine, {}),
    },
  }),
  buildSheet: calls(buildSheet, {
    madeBy: 'planBuilds',
    sound: [[twoEngines], [noEngine], [twoEngines, { units: 'metric', format: 'text' }]],
    provoked: {
      'the plan is not what `planBuilds` gives': refused('plan.shed', { units: 'inch' }),
      'no plan': refused('plan'),
      'an option is unknown': refused('options.unit', twoEngines, { unit: 'inch' }),
      'the unit system is unknown': refused('options.units', twoEngines, { units: 'imperial' }),
      'the format is unknown': refused('options.format', twoEngines, { format: 'html' }),
    },
  }),
};
