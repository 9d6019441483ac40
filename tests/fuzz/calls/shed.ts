import { readShed, shedSchema } from 'crankwright/shed';
import { sheetSchema } from 'crankwright/sheet';
import { plainShed, spoiltShed } from '../../shed/sheds.js';
import { calls } from './calls.js';

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
      missing: [spoiltShed({ engine: undefined })],
      misspelt: [{ ...plainShed(), block: [] }],
      'out of range': [spoiltShed({ 'shells[0].wall': '0.62 m' })],
      contradictory: [spoiltShed({ 'engine.cylinders': 3 })],
      'given twice': [JSON.stringify(plainShed()).replace('{', '{"units":"metric",')],
      'too long': [JSON.stringify(plainShed()).padEnd(2_000_001)],
      'too many readings': [lacking, csv + '\n'.repeat(20_000)],
      'two parts of one name': [spoiltShed({ 'heads[1].name': 'head A' })],
      'a price without a currency': [spoiltShed({ 'machining[0].price': '18.00' })],
      'a CSV with a wrong column': [plainShed(), csv.replace('angle', 'degrees')],
      'a reading that is none': [lacking, csv.replace('1.7508 in', '=1+1')],
      'readings that are no text': [plainShed(), 7],
      'not JSON': ['version: 1'],
      'not a shed': [[]],
      nothing: [],
    },
  }),
  sheetSchema: calls(sheetSchema, { sound: [[]], provoked: {} }),
  shedSchema: calls(shedSchema, { sound: [[]], provoked: {} }),
};
