import type { Area, Length } from '../quantities/index.js';
import { guardThread } from './guard-thread.js';
import type { ThreadSize } from './thread-forms.js';
import type { Thread } from './thread-series.js';

/** What of a bolt is left at its thread. */
export interface ThreadAreas {
  /** Diameter where thread and gap are as wide as each other; the British call it effective [m]. */
  readonly pitchDiameter: Length;
  /** Diameter at the root of the bolt's thread; the British call it core [m]. */
  readonly minorDiameter: Length;
  /** Diameter of a plain rod that is as strong and as stiff in tension as the thread [m]. */
  readonly stressDiameter: Length;
  /** Area of that rod: the stress area [m²]. */
  readonly stressArea: Area;
  /** Area at the root: the least there is [m²]. */
  readonly minorArea: Area;
}

/**
 * The areas of a thread that carry a bolt's load, from the formulae of its form.
 *
 *     pitchDiameter = diameter - f * pitch
 *     minorDiameter = diameter - r * pitch
 *     stressDiameter = diameter - (f + r) / 2 * pitch
 *     stressArea = π / 4 * (diameter - (f + r) / 2 * pitch)²
 *     minorArea = π / 4 * (diameter - r * pitch)²
 *
 * f and r are 0.649519 and 1.226869 for ISO metric threads, 0.649519 and 1.299038 for unified ones, 0.640327 and
 * 1.280655 for Whitworth's, 0.5327 and 1.0654 for cycle threads, 0.6 and 1.2 for BA. The stress area is that of the mean
 * of the pitch and the minor diameter. The standards of metric and unified threads say so; for the British forms it is
 * common practice.
 *
 * These are the sizes of a whole thread. A thread that is worn, rusted, necked down or recut has less.
 *
 * @param thread - the form with diameter and pitch, or what `threadOf` gives
 * @returns the diameters, and the areas at the stress diameter and at the root
 * @throws {RebuildInputError} when a field is misspelt, the form is unknown, a value is not finite or out of range, or
 * the pitch is too coarse for the diameter
 * @see Source: ISO 68-1 and ISO 898-1, ASME B1.1, BS 84, BS 811 and BS 93; checked in tests/published/fasteners.test.ts
 * @example
 * ```ts
 * const { stressArea } = threadAreas(threadOf('3/8-16 UNC'));
 * format(stressArea, squareInch); // "0.0775 in²"
 * ```
 */
export function threadAreas(thread: ThreadSize | Thread): ThreadAreas {
  return areasOf(thread, 'alone');
}

/** The same for a thread that may be the field of an argument. */
export function areasOf(thread: ThreadSize, place: 'alone' | 'within'): ThreadAreas {
  const { flanks, root } = guardThread(thread, place);
  const { diameter, pitch } = thread;
  const minor = diameter - root * pitch;
  const stress = diameter - ((flanks + root) / 2) * pitch;
  return {
    pitchDiameter: (diameter - flanks * pitch) as Length,
    minorDiameter: minor as Length,
    stressDiameter: stress as Length,
    stressArea: ((Math.PI / 4) * stress * stress) as Area,
    minorArea: ((Math.PI / 4) * minor * minor) as Area,
  };
}
