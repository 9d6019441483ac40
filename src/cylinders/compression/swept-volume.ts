import { diameter, guardFields, pistonStroke } from '../../judging/internal.js';
import type { Length, Volume } from '../../quantities/index.js';

/** A cylinder by its two sizes. */
export interface CylinderSize {
  /** Bore diameter [m]. */
  readonly bore: Length;
  /** Stroke of the piston, twice the throw of the crank [m]. */
  readonly stroke: Length;
}

const SIZE = ['bore', 'stroke'] as const;

/**
 * What a piston sweeps in one stroke. An engine's capacity is that of all its cylinders together.
 *
 *     volume = π / 4 * bore² * stroke
 *
 * @param cylinder - bore and stroke [m]
 * @returns swept volume of one cylinder [m³]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: geometry; worked check in tests/published/compression.test.ts
 * @example
 * ```ts
 * format(sweptVolume({ bore: mm(77), stroke: mm(80.4) }), mL); // "374.4 mL"
 * ```
 */
export function sweptVolume(cylinder: CylinderSize): Volume {
  guardFields('cylinder', cylinder, SIZE);
  const bore = diameter('bore', cylinder.bore);
  return sweptBy(bore, pistonStroke('stroke', cylinder.stroke));
}

/** The same without guards: the volume of a length of bore. */
export const sweptBy = (bore: number, length: number): Volume =>
  (QUARTER_PI * bore * bore * length) as Volume;

export const QUARTER_PI = 0.785_398_163_397_448_3;
