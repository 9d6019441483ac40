import {
  afterMachining,
  describeShedDifference,
  diffSheds,
  emptyBoxes,
  newShed,
  outsideLimits,
  readingsToFill,
  readShed,
  shedSchema,
  workSchema,
  writeShed,
} from 'crankwright/shed';
import { newSheet, sheetSchema } from 'crankwright/sheet';
import { plainShed, spoiltShed } from '../../shed/sheds.js';
import { calls, refused } from './calls.js';

const csv = `part, feature, station, angle, reading
block A, cylinder 1, 1 in, 0 deg, 3.0004 in
block A, cylinder 1, 1 in, 90 deg, 3.0003 in
rods A, rod A1, , , 1.7507 in
rods A, rod A1, , , 1.7508 in
washers 0.096, thickness, , , 0.096 in
`;
const lacking = spoiltShed({
  'blocks[0].bores[0].readings': undefined,
  'rods[0].rods[0].housingBore': undefined,
  'thrustWashers[0].thickness': undefined,
});
const empty = { ...plainShed(), blocks: [], toBuy: {} };

const read = readShed(plainShed());
const { asWritten, ...made } = read;
const skimmed = {
  version: 1,
  parts: [{ name: 'head B', done: [{ work: 'skim head' }], flatness: '0.001 in' }],
};

/** The boxes of a build sheet, one of them not filled in. */
const boxes = {
  version: 1,
  engine: 'block A',
  takes: [{ name: 'rods A', count: 1 }],
  boxes: [
    { part: 'rods A', feature: 'rod A1', at: 'as fitted', reading: '1.7507 in' },
    { part: 'crankshaft A', feature: 'rod 1', station: '0.25 in', angle: '0 deg', reading: '' },
  ],
  checks: [{ what: 'end play', limits: '0.005 in to 0.012 in', reading: '0.008 in' }],
};
const answers = {
  name: 'pump set',
  units: 'inch',
  cylinders: 2,
  mains: 2,
  rodJournal: '1.6245 in to 1.6250 in',
  mainJournal: '1.9995 to 2.0000',
  bore: '3.0000 in to 3.0005 in',
  lubrication: 'splash',
  cores: 2,
} as const;
const { cores, lubrication, ...ofSheet } = answers;
const started = newShed(answers);

export const shedCalls = {
  readShed: calls(readShed, {
    sound: [
      [plainShed()],
      [JSON.stringify(plainShed())],
      [lacking, csv],
      [empty],
      [lacking, csv, { today: '2026-11-26' }],
    ],
    provoked: {
      'a field is missing': refused('engine', spoiltShed({ engine: undefined })),
      misspelt: refused('block', { ...plainShed(), block: [] }),
      'out of range': refused('shells[0].wall', spoiltShed({ 'shells[0].wall': '0.62 m' })),
      contradictory: refused('blocks[0].bores', spoiltShed({ 'engine.cylinders': 3 })),
      repeated: refused('units', JSON.stringify(plainShed()).replace('{', '{"units":"metric",')),
      'the text is too long': refused('shed', JSON.stringify(plainShed()).padEnd(20_000_001)),
      'too many readings': refused('readings', lacking, csv + '\n'.repeat(200_000)),
      'two parts have one name': refused(
        'heads[1].name',
        spoiltShed({ 'heads[1].name': 'head A' }),
      ),
      'a price without a currency': refused(
        'machining[0].price',
        spoiltShed({ 'machining[0].price': '18.00' }),
      ),
      'a CSV with a wrong column': refused(
        'readings, line 1',
        plainShed(),
        csv.replace('angle', 'degrees'),
      ),
      'a reading that is none': refused(
        'readings, line 5: reading',
        lacking,
        csv.replace('1.7508 in', '=1+1'),
      ),
      'readings that are no text': refused('readings', plainShed(), 7),
      'not JSON': refused('shed, line 1', 'version: 1'),
      '`today` is not a day': refused('options.today', plainShed(), undefined, {
        today: '2026-02-30',
      }),
      'a date after today': refused(
        'heads[0].dates.bought',
        spoiltShed({ 'heads[0].dates': { bought: '2026-11-27' } }),
        undefined,
        { today: '2026-11-26' },
      ),
      'not a shed': refused('shed', []),
      nothing: refused('shed'),
    },
    cases: 500,
  }),
  sheetSchema: calls(sheetSchema, { sound: [[]], provoked: {} }),
  shedSchema: calls(shedSchema, { sound: [[]], provoked: {} }),
  workSchema: calls(workSchema, { sound: [[]], provoked: {} }),
  writeShed: calls(writeShed, {
    madeBy: 'readShed',
    sound: [[read], [made]],
    cases: 500,
    provoked: {
      'the shed is not what `readShed` gives': refused('shed.version', {}),
      'it was changed so that `readShed` would refuse it': refused('heads[1].name', {
        ...read,
        heads: [{ name: 'head' }, { name: 'head' }],
      }),
      'a name that would be read as another': refused('shed.shed', { ...read, shed: ' shed' }),
      'text that it was not read from': refused('shed.asWritten.text', {
        ...read,
        asWritten: { text: '{' },
      }),
    },
  }),
  afterMachining: calls(afterMachining, {
    madeBy: 'readShed',
    sound: [
      [read, skimmed],
      [made, JSON.stringify(skimmed)],
    ],
    cases: 500,
    provoked: {
      'a field is misspelt': refused('parts[0].flatnes', read, {
        ...skimmed,
        parts: [{ name: 'head B', flatnes: '0.001 in' }],
      }),
      'the shed is not what `readShed` gives': refused('shed.version', {}, skimmed),
      'a part is not in the shed': refused('parts[0].name', read, {
        version: 1,
        parts: [{ name: 'head Z' }],
      }),
      'a place is not on its part': refused('parts[0].rods[0].name', read, {
        version: 1,
        parts: [{ name: 'rods A', rods: [{ name: 'rod Z', housingBore: '1 in' }] }],
      }),
      'a fault is not listed': refused('parts[0].repaired[0]', read, {
        version: 1,
        parts: [{ name: 'head B', repaired: ['bent'] }],
      }),
      'work is not done on such a part': refused('parts[0].done[0].work', read, {
        version: 1,
        parts: [{ name: 'head B', done: [{ work: 'bore' }] }],
      }),
      'a size is out of range': refused('parts[0].flatness', read, {
        version: 1,
        parts: [{ name: 'head B', flatness: '9 m' }],
      }),
      '`today` is not a day': refused('options.today', read, skimmed, { today: 'today' }),
      'a date is after `today`': refused(
        'on',
        read,
        { ...skimmed, on: '2026-05-01' },
        { today: '2026-04-30' },
      ),
      'the record is not JSON': refused('work, line 1', read, 'version: 1'),
      'no record': refused('work', read),
    },
  }),
  newShed: calls(newShed, {
    sound: [[answers]],
    provoked: {
      'an answer is missing': refused('answers.name', { ...answers, name: undefined }),
      unknown: refused('answers.colour', { ...answers, colour: 'red' }),
      impossible: refused('answers.cylinders', { ...answers, cylinders: 0 }),
      'a main journal is not told': refused('answers.mainJournal', {
        ...answers,
        mainJournal: undefined,
      }),
      'a size is none': refused('answers.bore', { ...answers, bore: 'wide' }),
      'a size is out of range': refused('answers.bore', { ...answers, bore: '90 m' }),
      'no answers': refused('answers'),
    },
  }),
  newSheet: calls(newSheet, {
    sound: [[ofSheet], [{ name: 'pump set', units: 'metric', cylinders: 1, mains: 0 }]],
    provoked: {
      'an answer is missing': refused('answers.units', { ...ofSheet, units: undefined }),
      unknown: refused('answers.cores', { ...ofSheet, cores: 2 }),
      impossible: refused('answers.mains', { ...ofSheet, mains: 2.5 }),
      'no answers': refused('answers'),
    },
  }),
  readingsToFill: calls(readingsToFill, {
    sound: [[started], [JSON.stringify(started)], [lacking]],
    cases: 500,
    provoked: {
      '`readShed` does not read the file': refused('shed, line 1', 'version: 1'),
      'no file': refused('shed'),
    },
  }),
  outsideLimits: calls(outsideLimits, {
    sound: [[boxes], [JSON.stringify(boxes)]],
    provoked: { 'the record cannot be read': refused('work', 7) },
  }),
  emptyBoxes: calls(emptyBoxes, {
    sound: [[boxes], [JSON.stringify(boxes)]],
    provoked: {
      'a field is misspelt': refused('box', { ...boxes, box: [] }),
      'the record cannot be read': refused('work', 7),
    },
  }),
  diffSheds: calls(diffSheds, {
    madeBy: 'readShed',
    sound: [[read, made]],
    cases: 500,
    provoked: {
      'a field is misspelt': refused('newer.misspelt', read, { ...made, misspelt: 1 }),
      'a shed is not what `readShed` gives': refused('older.version', {}, read),
      'the newer is not what `readShed` gives': refused('newer.version', read, {}),
    },
  }),
  describeShedDifference: calls(describeShedDifference, {
    madeBy: 'diffSheds',
    sound: [[diffSheds(read, afterMachining(read, skimmed)), { units: 'inch' }]],
    provoked: {
      'the difference is not what `diffSheds` gives': refused(
        'difference.parts',
        {},
        {
          units: 'inch',
        },
      ),
      'the unit system is unknown': refused('wording.units', diffSheds(read, made), {
        units: 'imperial',
      }),
    },
  }),
};
