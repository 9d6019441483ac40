import type { Span } from '../judging/index.js';
import {
  type BoreShape,
  boreShape,
  type DiameterReading,
  journalShape,
  type Shape,
  type ShapeOptions,
} from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { type Accuracy, readingsAt20C } from './accuracy.js';
import { certaintyOf } from './certainty.js';

/** The shape of a journal at 20 °C; a form along its length is named only where the micrometer can tell it. */
export const journalSeen = (readings: readonly DiameterReading[], accuracy: Accuracy): Shape =>
  journalShape(readingsAt20C(readings, 'journals', accuracy), leastSeen('journal shape', accuracy));

/** The shape of a bore at 20 °C likewise, by the bore gauge. */
export const boreSeen = (
  readings: readonly DiameterReading[],
  ringTravel: Span<Length> | undefined,
  accuracy: Accuracy,
): BoreShape =>
  boreShape(readingsAt20C(readings, 'bores', accuracy), {
    ...leastSeen('bore shape', accuracy),
    ...(ringTravel !== undefined && { ringTravel }),
  });

function leastSeen(feature: 'journal shape' | 'bore shape', accuracy: Accuracy): ShapeOptions {
  const { uncertainty } = certaintyOf(feature, accuracy);
  return uncertainty === undefined ? {} : { resolution: uncertainty };
}
