import type { Span } from '../judging/index.js';
import { guardSpan, stationAlong } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { boreShape, isSwept } from './bore.js';
import { type DiameterReading, guardReadings } from './readings.js';
import { type Shape, type StillToRead, stillToRead } from './shape.js';

/** What was read of a journal or bore so far. */
export interface ReadSoFar {
  /** The smallest and the largest diameter; absent if none was read that counts [m]. */
  readonly size?: Span<Length>;
  /** What is still to be read to tell its shape; absent if nothing is. */
  readonly lacks?: 'all readings' | 'readings in the ring travel' | StillToRead;
}

/** What was read so far, be it nothing. Readings that cannot belong to one part are refused. */
export function readSoFar(
  readings: readonly DiameterReading[],
  ringTravel?: Span<Length>,
): ReadSoFar {
  if (readings.length === 0) return { lacks: 'all readings' };
  const placed = guardReadings(readings);
  const travel = ringTravel && guardSpan('options.ringTravel', ringTravel, stationAlong);
  const worn = travel ? placed.filter((reading) => isSwept(reading, travel)) : placed;
  if (worn.length === 0) {
    // Where the whole bore was read, its stations and the ring travel are not from one datum: that is refused.
    if (stillToRead(placed) === undefined)
      boreShape(readings, { ringTravel: travel as Span<Length> });
    return { lacks: 'readings in the ring travel' };
  }
  const diameters = worn.map(({ diameter }) => diameter);
  const lacks = stillToRead(worn);
  return {
    size: { min: smallestOf(diameters), max: largestOf(diameters) },
    ...(lacks !== undefined && { lacks }),
  };
}

/** Size and shape as far as plans take them. */
export type KnownShape = Pick<Shape, 'smallest' | 'largest' | 'outOfRound' | 'taper'>;

/** Size and shape as far as they were read: what was not read of the shape is taken as round and straight. */
export function kindestShape(
  readings: readonly DiameterReading[],
  ringTravel?: Span<Length>,
): KnownShape | undefined {
  const { size, lacks } = readSoFar(readings, ringTravel);
  if (lacks === undefined) return boreShape(readings, ringTravel ? { ringTravel } : {});
  const [none, { min, max } = {}] = [0 as Length, size];
  return min === undefined || max === undefined
    ? undefined
    : { smallest: min, largest: max, outOfRound: none, taper: none };
}
