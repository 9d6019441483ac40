import { readShed, shedSchema } from 'crankwright/shed';
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
};
