import type { OddReading } from './odd-readings.js';
import type { DiameterReading } from './readings.js';

/** Readings with the odd ones as the others say that they should be: what a part is at best, once they are read again. */
export const asOthersSay = (
  readings: readonly DiameterReading[],
  odd: readonly OddReading[],
): readonly DiameterReading[] =>
  readings.map((reading, i) => {
    const wrong = odd.find(({ index }) => index === i);
    return wrong ? { ...reading, diameter: wrong.expected } : reading;
  });
