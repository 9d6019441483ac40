import { readShelf, sheetSchema, shelfSchema } from 'crankwright/shelf';
import { plainShelf, spoiltShelf } from '../../shelf/shelves.js';
import { calls } from './calls.js';

const csv = `part, feature, station, angle, reading
block A, cylinder 1, 1 in, 0 deg, 3.0004 in
block A, cylinder 1, 1 in, 90 deg, 3.0003 in
rods A, rod A1, , , 1.7507 in
rods A, rod A1, , , 1.7508 in
washers 0.096, thickness, , , 0.096 in
`;
const lacking = spoiltShelf({
  'rods[0].rods[0].housingBore': undefined,
  'thrustWashers[0].thickness': undefined,
});
const empty = { ...plainShelf(), blocks: [], toBuy: {} };

export const shelfFileCalls = {
  readShelf: calls(readShelf, {
    sound: [[plainShelf()], [JSON.stringify(plainShelf())], [lacking, csv], [empty]],
    provoked: {
      missing: [spoiltShelf({ engine: undefined })],
      misspelt: [{ ...plainShelf(), block: [] }],
      'out of range': [spoiltShelf({ 'shells[0].wall': '0.62 m' })],
      contradictory: [spoiltShelf({ 'engine.cylinders': 3 })],
      'given twice': [JSON.stringify(plainShelf()).replace('{', '{"units":"metric",')],
      'too long': [JSON.stringify(plainShelf()).padEnd(2_000_001)],
      'too many readings': [lacking, csv + '\n'.repeat(20_000)],
      'two parts of one name': [spoiltShelf({ 'heads[1].name': 'head A' })],
      'a price without a currency': [spoiltShelf({ 'machining[0].price': '18.00' })],
      'a CSV with a wrong column': [plainShelf(), csv.replace('angle', 'degrees')],
      'a reading that is none': [lacking, csv.replace('1.7508 in', '=1+1')],
      'readings that are no text': [plainShelf(), 7],
      'not JSON': ['version: 1'],
      'not a shelf': [[]],
      nothing: [],
    },
  }),
  sheetSchema: calls(sheetSchema, { sound: [[]], provoked: {} }),
  shelfSchema: calls(shelfSchema, { sound: [[]], provoked: {} }),
};
