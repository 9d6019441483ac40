import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { isSwept } from './bore.js';
import { type OddReading, type OddReadingOptions, oddReadings } from './odd-readings.js';
import type { DiameterReading } from './readings.js';

/**
 * Bores wear most at one place: at the top of the ring travel, on the thrust side. So far they do, per diameter
 * (wear that TM 10-3930-647-14&P lets a sleeve of another engine have).
 */
const LOCAL_WEAR = 0.001;

/** Readings of a bore that do not fit the others: those where the rings run are held against each other alone. */
export function oddInBore(
  readings: readonly DiameterReading[],
  ringTravel: Span<Length> | undefined,
  options: Omit<OddReadingOptions, 'localWear'> = {},
): readonly OddReading[] {
  const swept = readings.flatMap((reading, index) =>
    ringTravel === undefined || isSwept(reading, ringTravel) ? [{ reading, index }] : [],
  );
  const [first] = readings;
  const max = (LOCAL_WEAR * (first?.diameter ?? 0)) as Length;
  const odd = oddReadings(
    swept.map(({ reading }) => reading),
    { ...options, localWear: { min: 0 as Length, max } },
  );
  return odd.map((each) => ({ ...each, index: swept[each.index]?.index ?? each.index }));
}
