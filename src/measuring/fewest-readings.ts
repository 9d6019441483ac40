import { type DiameterReading, groupBy, inHalfTurn } from './readings.js';

/** How many readings the place has that was read least often. The readings are for others to guard. */
export function fewestAtAPlace(readings: readonly DiameterReading[]): number {
  const around = readings.map((each) => ({ ...each, angle: inHalfTurn(each.angle) }));
  const counts = groupBy(around, 'station').flatMap(({ group }) =>
    groupBy(group, 'angle').map((place) => place.group.length),
  );
  return counts.reduce((least, count) => Math.min(least, count), Number.MAX_SAFE_INTEGER);
}
