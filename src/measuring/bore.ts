import type { Span } from '../judging/index.js';
import { guardFields, guardSpan, showLength, stationAlong } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { type DiameterReading, guardReadings, SAME_PLACE } from './readings.js';
import { type Shape, type ShapeOptions, shapeOf } from './shape.js';

/** What may be told about a bore. */
export interface BoreOptions extends ShapeOptions {
  /** Stations between which the rings run, by default all; readings outside it are unworn land [m]. */
  readonly ringTravel?: Span<Length>;
}

const BORE_OPTIONS = ['resolution', 'ringTravel'] as const;

/** Size and shape of the worn part of a bore, and how it stands to the unworn part. */
export interface BoreShape extends Shape {
  /** Mean diameter of the readings outside the ring travel, if there were any [m]. */
  readonly unworn?: Length;
  /** Largest diameter in the ring travel less the unworn diameter, if that is known [m]. */
  readonly wear?: Length;
}

/**
 * Size and shape of a bore from bore-gauge readings, with stations measured
 * down from the deck. The land above the ring travel hardly wears, so its
 * readings are kept apart: they give the original size and, against it, the wear.
 *
 *     wear = largest - unworn
 *
 * @param readings - diameters on at least two stations of the ring travel, at least two angles at each
 * @param options - where the rings run, and what counts as straight
 * @returns size, out-of-round, taper and form of the ring travel; unworn size and wear where the land was read
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a reading stands out
 * against the others, or the ring travel is reversed, lacks a station,
 * lacks an angle, or has no reading in it
 * @see Source: definitions of the trade; worked checks in tests/published/measuring.test.ts
 * @example
 * ```ts
 * const shape = boreShape(
 *   [
 *     { station: inch(0.1), angle: degree(0), diameter: inch(3.0000) },
 *     { station: inch(0.5), angle: degree(0), diameter: inch(3.0060) },
 *     { station: inch(0.5), angle: degree(90), diameter: inch(3.0080) },
 *     { station: inch(3.0), angle: degree(0), diameter: inch(3.0010) },
 *     { station: inch(3.0), angle: degree(90), diameter: inch(3.0015) },
 *   ],
 *   { ringTravel: { min: inch(0.3), max: inch(3.5) } },
 * );
 * format(shape.taper, inch); // "0.0065 in"
 * shape.wear && format(shape.wear, inch); // "0.0080 in"
 * ```
 */
export function boreShape(
  readings: readonly DiameterReading[],
  options: BoreOptions = {},
): BoreShape {
  guardFields('options', options, BORE_OPTIONS);
  const placed = guardReadings(readings);
  if (options.ringTravel === undefined) return shapeOf(placed, options);

  const travel = guardSpan('options.ringTravel', options.ringTravel, stationAlong);
  const swept = (reading: DiameterReading) => isSwept(reading, travel);
  const worn = placed.filter(swept);
  if (worn.length === 0) {
    throw new RebuildInputError({
      parameter: 'options.ringTravel',
      value: options.ringTravel,
      shown: `${showLength(travel.min)} to ${showLength(travel.max)}`,
      expected: 'stations that some of the readings lie between',
      problem: 'has no reading in it',
      hint: 'Measure stations and ring travel from the same datum, best down from the deck.',
    });
  }
  const shape = shapeOf(worn, options);
  const land = placed.filter((reading) => !swept(reading));
  if (land.length === 0) return shape;
  const unworn = land.reduce((sum, reading) => sum + reading.diameter, 0) / land.length;
  return { ...shape, unworn: unworn as Length, wear: (shape.largest - unworn) as Length };
}

/** Whether the rings pass the place of a reading. */
export const isSwept = ({ station }: DiameterReading, { min, max }: Span<Length>): boolean =>
  station >= min - SAME_PLACE.station && station <= max + SAME_PLACE.station;
