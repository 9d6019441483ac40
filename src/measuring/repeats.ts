import type { Length } from '../quantities/index.js';
import { FALSE_ALARM, meanOfPlace, oddRepeats, placesOf } from './odd-repeats.js';
import { type DiameterReading, inHalfTurns, TENTH } from './readings.js';

/** How readings scatter that were taken again at the same places, without those that do not fit their place. */
export interface Repeats {
  /** Standard deviation of one reading, from all places together [m]. */
  readonly standardDeviation: Length;
  /** How many of these readings there are more than places [-]. */
  readonly degreesOfFreedom: number;
}

/**
 * The mean reading of every place, and how the repeats scatter about it, if any place was read again. One that is off
 * from the others of its place counts in neither: it is no scatter but a slip. Where two differ so, their mean stands
 * until they are read again, and nothing is learnt of the scatter.
 */
export function atPlaces(readings: readonly DiameterReading[]): {
  readonly places: readonly DiameterReading[];
  readonly repeats?: Repeats;
} {
  const listed = readings.map((reading, index) => ({ ...reading, index }));
  const groups = placesOf(listed);
  if (groups.length === readings.length) return { places: readings };
  const sound = new Set(oddRepeats(listed, TENTH / 2, FALSE_ALARM).left);
  let [squares, degreesOfFreedom] = [0, 0];
  const places = groups.map((group) => {
    const agreeing = group.filter((reading) => sound.has(reading));
    const diameter = meanOfPlace(agreeing.length > 0 ? agreeing : group);
    for (const each of agreeing) squares += (each.diameter - diameter) ** 2;
    degreesOfFreedom += Math.max(0, agreeing.length - 1);
    const { station, angle } = group[0] as DiameterReading;
    return { station, angle, diameter };
  });
  if (degreesOfFreedom === 0) return { places };
  const standardDeviation = Math.sqrt(squares / degreesOfFreedom) as Length;
  return { places, repeats: { standardDeviation, degreesOfFreedom } };
}

/** How readings scatter that were taken again at the same places, if any were. The readings are for others to guard. */
export const repeatsIn = (readings: readonly DiameterReading[]): Repeats | undefined =>
  atPlaces(inHalfTurns(readings)).repeats;
