import type { DiameterReading } from '../measuring/index.js';
import { readingsAt20C } from '../reading/index.js';
import { accuracyOfSheet } from './inspect.js';
import type { Sheet } from './sheet.js';

/** The readings of a sheet as they are judged: at 20 °C. Journals and bores are in the order of the sheet. */
export function readingsAsJudged(sheet: Sheet): {
  readonly mains: readonly (readonly DiameterReading[])[];
  readonly rods: readonly (readonly DiameterReading[])[];
  readonly cylinders: readonly (readonly DiameterReading[])[];
} {
  const accuracy = accuracyOfSheet(sheet);
  const journals = (kind: 'mains' | 'rods') =>
    (sheet[kind] ?? []).map(({ journal }) => readingsAt20C(journal.readings, 'journals', accuracy));
  return {
    mains: journals('mains'),
    rods: journals('rods'),
    cylinders: (sheet.cylinders ?? []).map(({ bore }) =>
      readingsAt20C(bore.readings, 'bores', accuracy),
    ),
  };
}
