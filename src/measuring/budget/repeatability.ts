import { guardList, guardQuantity } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';

/** How closely repeated readings of one thing agree. */
export interface Repeatability {
  /** Mean of the readings [m]. */
  readonly mean: Length;
  /** Standard deviation of one reading [m]. */
  readonly standardDeviation: Length;
  /** Standard deviation of the mean [m]. */
  readonly standardError: Length;
  /** How many readings there are, less one. */
  readonly degreesOfFreedom: number;
}

/**
 * How closely repeated readings agree: take the same size at the same place again and again, with the instrument
 * put down between. Readings that are all alike do not show that the instrument is without error: they only
 * show nothing finer than its division, which a budget takes in besides.
 *
 *     mean = (sum of the readings) / n
 *     standardDeviation = √((sum of (reading - mean)²) / (n - 1))
 *     standardError = standardDeviation / √n
 *
 * @param readings - at least two readings of one thing [m]
 * @returns their mean, the standard deviation of one reading and of the mean, and the degrees of freedom
 * @throws {RebuildInputError} when there are fewer than two readings, or one is not finite
 * @see Source: JCGM 100:2008, 4.2
 * @example
 * ```ts
 * const { standardDeviation } = repeatability([2.1241, 2.1242, 2.1241, 2.124].map(inch));
 * format(standardDeviation, micrometre); // "2.1 µm"
 * ```
 */
export function repeatability(readings: readonly Length[]): Repeatability {
  guardList('readings', readings, 2, 'readings');
  readings.forEach((reading, i) => {
    guardQuantity(`readings[${i}]`, reading, 'length');
  });
  const n = readings.length;
  // From one of the readings on, sums keep the digits that the readings differ in.
  const datum = readings[0] as number;
  const about = readings.reduce((sum, reading) => sum + (reading - datum), 0) / n;
  const off = readings.map((reading) => reading - datum - about);
  const squares = off.reduce((sum, each) => sum + each * each, 0);
  const left = off.reduce((sum, each) => sum + each, 0);
  const standardDeviation = Math.sqrt(Math.max(0, squares - (left * left) / n) / (n - 1));
  return {
    mean: (datum + about) as Length,
    standardDeviation: standardDeviation as Length,
    standardError: (standardDeviation / Math.sqrt(n)) as Length,
    degreesOfFreedom: n - 1,
  };
}
