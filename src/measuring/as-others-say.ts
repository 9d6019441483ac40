import type { OddReading } from './odd-types.js';
import type { DiameterReading } from './readings.js';

/**
 * Readings with the odd ones as the others say that they should be: what a part is at best, once they are read again. Of
 * readings that are named together only the first is put right, or those that lie to the same side of a round part.
 */
export function asOthersSay(
  readings: readonly DiameterReading[],
  odd: readonly OddReading[],
): readonly DiameterReading[] {
  const right = new Map(
    odd.flatMap((one) => [one, ...alikeTo(one)].map(({ index, expected }) => [index, expected])),
  );
  return readings.map((reading, i) => {
    const diameter = right.get(i);
    return diameter === undefined ? reading : { ...reading, diameter };
  });
}

const alikeTo = ({ against, expected, reading, together = [] }: OddReading) =>
  together.filter(
    (other) =>
      against === 'form' &&
      Math.sign(other.expected - other.reading.diameter) === Math.sign(expected - reading.diameter),
  );
