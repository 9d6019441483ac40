import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import type { OddReading } from './odd-types.js';
import { type DiameterReading, groupBy } from './readings.js';

/** A place of a part, with the mean of its readings. */
export interface Place extends DiameterReading {
  /** The readings there, by their places in the list. */
  readonly indices: readonly number[];
}

/** A place that was read again and agreed stands. */
export const isConfirmed = ({ indices }: Place): boolean => indices.length > 1;

/** No journal and no bore worn so far out of round, over its diameter, holds together (common practice). */
const MOST_OUT_OF_ROUND = 0.005;

/**
 * Readings of stations that are further out of round than any part is. Which of them are wrong the form does not tell: a
 * thimble that was read a turn off all along one angle looks like an oval.
 */
export function oddInForm(places: readonly Place[], instrument: number): readonly OddReading[] {
  const suspects = groupBy(places, 'station').flatMap(({ group }) => {
    const sizes = group.map(({ diameter }) => diameter);
    const others = { min: smallestOf(sizes), max: largestOf(sizes) };
    const [range, most] = [others.max - others.min, MOST_OUT_OF_ROUND * others.max];
    if (range <= most) return [];
    const middle = (others.min + others.max) / 2;
    return group
      .filter((place) => !isConfirmed(place))
      .map((place) => ({
        index: place.indices[0] as number,
        reading: place,
        expected: (place.diameter < middle ? others.max : others.min) as Length,
        others,
        deviation: range / instrument,
        critical: most / instrument,
      }));
  });
  const [first, ...together] = suspects.sort((a, b) => a.reading.diameter - b.reading.diameter);
  if (first === undefined) return [];
  const rest = together.map(({ index, reading, expected }) => ({ index, reading, expected }));
  return [{ ...first, against: 'form', ...(rest.length > 0 && { together: rest }) }];
}

/** A part that differs by more than this share of its diameter from place to place is seldom seen in one piece. */
const SELDOM = 0.0025;

/** Whether a part is seldom seen in the form that one other size of one place leaves it. */
export function isSeldom(places: readonly Place[], of: Place, diameter: number): boolean {
  const sizes = places.map((place) => (place === of ? diameter : place.diameter));
  return largestOf(sizes) - smallestOf(sizes) > SELDOM * largestOf(sizes);
}
