import type { Length } from '../quantities/index.js';
import { type DiameterReading, groupBy, inHalfTurn } from './readings.js';

/** How readings scatter that were taken again at the same places. */
export interface Repeats {
  /** Standard deviation of one reading, from all places together [m]. */
  readonly standardDeviation: Length;
  /** How many readings there are more than places [-]. */
  readonly degreesOfFreedom: number;
}

/** The mean reading of every place, and how the repeats scatter about it, if any place was read again. */
export function atPlaces(readings: readonly DiameterReading[]): {
  readonly places: readonly DiameterReading[];
  readonly repeats?: Repeats;
} {
  const groups = groupBy(readings, 'station').flatMap(({ group }) =>
    groupBy(group, 'angle').map((place) => place.group),
  );
  const degreesOfFreedom = readings.length - groups.length;
  if (degreesOfFreedom === 0) return { places: readings };
  const places = groups.map((group) => ({
    ...(group[0] as DiameterReading),
    diameter: meanOf(group),
  }));
  const squares = groups.map((group, i) => {
    const mean = places[i]?.diameter ?? 0;
    return group.reduce((sum, { diameter }) => sum + (diameter - mean) ** 2, 0);
  });
  const sum = squares.reduce((total, each) => total + each, 0);
  return {
    places,
    repeats: { standardDeviation: Math.sqrt(sum / degreesOfFreedom) as Length, degreesOfFreedom },
  };
}

/** How readings scatter that were taken again at the same places, if any were. The readings are for others to guard. */
export const repeatsIn = (readings: readonly DiameterReading[]): Repeats | undefined =>
  atPlaces(readings.map((each) => ({ ...each, angle: inHalfTurn(each.angle) }))).repeats;

/** The mean of readings of one place: from the first on, so that no digit of a large size is lost. */
function meanOf(group: readonly DiameterReading[]): Length {
  const first = group[0]?.diameter ?? 0;
  const above = group.reduce((sum, { diameter }) => sum + (diameter - first), 0);
  return (first + above / group.length) as Length;
}
