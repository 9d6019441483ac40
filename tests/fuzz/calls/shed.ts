import {
  afterMachining,
  describeShedDifference,
  diffSheds,
  emptyBoxes,
  readShed,
  shedSchema,
  writeShed,
} from 'crankwright/shed';
import { sheetSchema } from 'crankwright/sheet';
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

export const shedCalls = {
  readShed: calls(readShed, {
    sound: [[plainShed()], [JSON.stringify(plainShed())], [lacking, csv], [empty]],
    provoked: {
      'a field is missing': refused('engine', spoiltShed({ engine: undefined })),
      misspelt: refused('block', { ...plainShed(), block: [] }),
      'out of range': refused('shells[0].wall', spoiltShed({ 'shells[0].wall': '0.62 m' })),
      contradictory: refused('blocks[0].bores', spoiltShed({ 'engine.cylinders': 3 })),
      repeated: refused('units', JSON.stringify(plainShed()).replace('{', '{"units":"metric",')),
      'the text is too long': refused('shed', JSON.stringify(plainShed()).padEnd(20_000_001)),
      'too many readings': refused('readings', lacking, csv + '\n'.repeat(20_000)),
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
      'not a shed': refused('shed', []),
      nothing: refused('shed'),
    },
  }),
  sheetSchema: calls(sheetSchema, { sound: [[]], provoked: {} }),
  shedSchema: calls(shedSchema, { sound: [[]], provoked: {} }),
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
      'the record is not JSON': refused('work, line 1', read, 'version: 1'),
      'no record': refused('work', read),
    },
  }),
  emptyBoxes: calls(emptyBoxes, {
    sound: [[skimmed], [JSON.stringify(skimmed)]],
    provoked: {
      'a field is misspelt': refused('box', { ...skimmed, box: [] }),
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
