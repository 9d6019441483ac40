import { guardFields } from '../judging/internal.js';
import { type DiameterReading, guardReadings } from './readings.js';
import { type Shape, type ShapeOptions, shapeOf } from './shape.js';

const OPTIONS = ['resolution'] as const;

/**
 * Size and shape of a journal from micrometer readings.
 *
 * Out-of-round is the largest minus the smallest diameter at one station;
 * taper is the largest minus the smallest along one angle; the worst of each
 * is given, and every station and line beside it. Two-point readings cannot
 * see odd lobes: a journal may pass here and still not be round.
 *
 *     outOfRound = largest - smallest   of the diameters at one station
 *     taper = largest - smallest   of the diameters along one angle
 *
 * @param readings - diameters on at least two stations, at least two angles at each
 * @param options - what counts as straight
 * @returns size, out-of-round, taper and form
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a reading stands out
 * against the others, a station has one angle only, or an angle has one station only
 * @see Source: definitions of the trade; worked checks in tests/published/measuring.test.ts
 * @example
 * ```ts
 * const shape = journalShape([
 *   { station: inch(0.25), angle: degree(0), diameter: inch(2.1246) },
 *   { station: inch(0.25), angle: degree(90), diameter: inch(2.1241) },
 *   { station: inch(1.25), angle: degree(0), diameter: inch(2.1243) },
 *   { station: inch(1.25), angle: degree(90), diameter: inch(2.1240) },
 * ]);
 * format(shape.outOfRound, inch); // "0.0005 in"
 * format(shape.taper, inch); // "0.0003 in"
 * shape.form; // "tapered"
 * ```
 */
export function journalShape(
  readings: readonly DiameterReading[],
  options: ShapeOptions = {},
): Shape {
  guardFields('options', options, OPTIONS);
  return shapeOf(guardReadings(readings), options);
}
