import { smallestOf } from '../quantities/internal.js';
import { placesOf } from './odd-repeats.js';
import { type DiameterReading, inHalfTurns } from './readings.js';

/** How many readings the place has that was read least often. The readings are for others to guard. */
export const fewestAtAPlace = (readings: readonly DiameterReading[]): number =>
  smallestOf(placesOf(inHalfTurns(readings)).map(({ length }) => length));
