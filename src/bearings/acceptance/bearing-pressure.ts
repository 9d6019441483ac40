import { guardFields } from '../../judging/internal.js';
import { bearingLoad } from '../../motion/internal.js';
import type { Force, Length, Pressure } from '../../quantities/index.js';
import { guardLengthOf } from '../film/journal-bearing.js';

/** What presses on a bearing, and on how much of it. */
export interface PressedBearing {
  /** Load across the shaft [N]. */
  readonly load: Force;
  /** Journal diameter [m]. */
  readonly journal: Length;
  /** Length of the bearing along the shaft, without chamfers and grooves [m]. */
  readonly length: Length;
}

const PRESSED = ['load', 'journal', 'length'] as const;

/**
 * Pressure on a bearing as makers of shells state it: load over projected area. The film itself is pressed
 * harder in the middle; `filmThickness` gives that.
 *
 *     pressure = load / (journal * length)
 *
 * @param bearing - load, journal and length
 * @returns load over projected area [Pa]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the bearing is
 * too short for its journal
 * @see Source: Mechanical Engineer's Data Handbook, section 2.9; definition
 * @example
 * ```ts
 * const pressure = bearingPressure({ load: lbf(1500), journal: inch(1.5948), length: inch(1) });
 * format(pressure, psi, 0); // "941 psi"
 * ```
 */
export function bearingPressure(bearing: PressedBearing): Pressure {
  guardFields('bearing', bearing, PRESSED);
  return pressureOf(bearingLoad('load', bearing.load), guardLengthOf(bearing));
}

/** The same of a bearing that was checked. */
export const pressureOf = (
  load: Force,
  { journal, length }: { readonly journal: Length; readonly length: Length },
): Pressure => (load / (journal * length)) as Pressure;
