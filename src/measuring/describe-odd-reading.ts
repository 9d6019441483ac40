import type { Wording } from '../judging/index.js';
import { guardLayout, guardWording, say, showIn } from '../judging/internal.js';
import { degree, type Length } from '../quantities/index.js';
import { oddReadingLayout } from './layouts.js';
import type { OddReading } from './odd-types.js';
import type { DiameterReading } from './readings.js';

/**
 * Says which reading to take again, and what the others say; or which, where it may be any of some.
 *
 * @param odd - what `oddReadings` gave
 * @param wording - the units to print in
 * @returns one sentence without a full stop
 * @throws {RebuildInputError} when a field is misspelt, it is not what `oddReadings` gives, or the unit system is unknown
 * @example
 * ```ts
 * const [odd] = oddReadings([
 *   { station: mm(6), angle: degree(0), diameter: mm(31.99) },
 *   { station: mm(6), angle: degree(90), diameter: mm(31.98) },
 *   { station: mm(30), angle: degree(0), diameter: mm(31.59) },
 *   { station: mm(30), angle: degree(90), diameter: mm(31.98) },
 * ]);
 * odd && describeOddReading(odd, { units: 'metric' });
 * // ["read this one again, at station 30.000 mm, angle 0 deg: 31.590 mm; the others say 31.990 mm"]
 * ```
 */
export function describeOddReading(odd: OddReading, wording: Wording): readonly string[] {
  guardLayout('odd', odd, oddReadingLayout, 'oddReadings');
  guardWording(wording);
  return [sayOddReading(odd, wording)];
}

/** The sentence of it. */
export function sayOddReading(
  { reading, together, expected }: OddReading,
  { units }: Wording,
): string {
  const print = (length: Length) => say(length, 'length', units);
  const place = ({ station, angle, diameter }: DiameterReading) =>
    `at station ${print(station)}, angle ${showIn(angle, degree)}: ${print(diameter)}`;
  return together
    ? `one of these does not fit the others, read them all again: ${[reading, ...together.map((other) => other.reading)].map(place).join('; ')}`
    : `read this one again, ${place(reading)}; the others say ${print(expected)}`;
}
