import type { Span } from '../judging/index.js';
import {
  type BoreShape,
  boreShape,
  type DiameterReading,
  journalShape,
  type Shape,
} from '../measuring/index.js';
import { formOf } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { type Accuracy, readingsAt20C } from './accuracy.js';
import { certaintyOf } from './certainty.js';

/** The shape of a journal at 20 °C; a form along its length is named only where the micrometer can tell it. */
export const journalSeen = (readings: readonly DiameterReading[], accuracy: Accuracy): Shape =>
  asSeen(journalShape(readingsAt20C(readings, 'journals', accuracy)), 'journal shape', accuracy);

/** The shape of a bore at 20 °C likewise, by the bore gauge. */
export const boreSeen = (
  readings: readonly DiameterReading[],
  ringTravel: Span<Length> | undefined,
  accuracy: Accuracy,
): BoreShape =>
  asSeen(
    boreShape(
      readingsAt20C(readings, 'bores', accuracy),
      ringTravel === undefined ? {} : { ringTravel },
    ),
    'bore shape',
    accuracy,
  );

function asSeen<S extends Shape>(
  shape: S,
  feature: 'journal shape' | 'bore shape',
  accuracy: Accuracy,
): S {
  const { uncertainty } = certaintyOf(feature, accuracy);
  if (uncertainty === undefined) return shape;
  const means = shape.stations.map(({ mean }) => mean);
  return { ...shape, form: formOf(means, uncertainty) };
}
