import type { Wording } from '../judging/index.js';
import { guardLayout, guardWording, say, showIn } from '../judging/internal.js';
import { degree } from '../quantities/index.js';
import { oddReadingLayout } from './layouts.js';
import type { OddReading } from './odd-readings.js';

/**
 * Says which reading to take again, and what the others say.
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
 * // "read this one again, at station 30.000 mm, angle 0 deg: 31.590 mm; the others say 31.990 mm"
 * ```
 */
export function describeOddReading(odd: OddReading, wording: Wording): string {
  guardLayout('odd', odd, oddReadingLayout, 'oddReadings');
  guardWording(wording);
  const { station, angle, diameter } = odd.reading;
  const print = (length: typeof diameter) => say(length, 'length', wording.units);
  return `read this one again, at station ${print(station)}, angle ${showIn(angle, degree)}: ${print(diameter)}; the others say ${print(odd.expected)}`;
}
