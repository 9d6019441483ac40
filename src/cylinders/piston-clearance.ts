import type { SizeOrSpan, Span } from '../judging/index.js';
import { diameter, guardAlike, guardFields, guardSpan } from '../judging/internal.js';
import { gapOf } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';

const SIZES = ['bore', 'piston'] as const;

/**
 * Diametral clearance of a piston in its bore, both at the same temperature.
 * Measure the skirt across the thrust faces, where the maker says.
 *
 *     clearance = bore - piston
 *
 * @param sizes - bore and piston diameters [m]
 * @returns diametral clearance; negative is an interference [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the two are not
 * of one cylinder
 * @see Source: geometry
 * @example
 * ```ts
 * format(pistonClearance({ bore: inch(3.0005), piston: inch(2.9970) }), inch); // "0.0035 in"
 * ```
 */
export function pistonClearance(sizes: {
  /** Bore diameter [m]. */
  readonly bore: Length;
  /** Piston diameter across its thrust faces [m]. */
  readonly piston: Length;
}): Length {
  guardFields('sizes', sizes, SIZES);
  const bore = diameter('bore', sizes.bore);
  const piston = guardAlike('piston', diameter('piston', sizes.piston), 'bore', bore);
  return (bore - piston) as Length;
}

/**
 * The span of diametral clearance that a worn or toleranced bore and piston
 * can leave. A span that begins below zero says that pistons must be selected
 * for their bores.
 *
 *     min = bore.min - piston.max
 *     max = bore.max - piston.min
 *
 * @param sizes - bore and piston diameters, each one size or a span [m]
 * @returns least and most diametral clearance; negative is an interference [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, or the two are not of one cylinder
 * @see Source: geometry; worked check in tests/published/cylinders.test.ts
 * @example
 * ```ts
 * const span = pistonClearanceSpan({
 *   bore: { min: mm(87.20), max: mm(87.25) }, piston: { min: mm(87.165), max: mm(87.215) },
 * });
 * format(span.min, mm); // "-0.015 mm"
 * format(span.max, mm); // "0.085 mm"
 * ```
 */
export function pistonClearanceSpan(sizes: {
  /** Bore diameter [m]. */
  readonly bore: SizeOrSpan<Length>;
  /** Piston diameter across its thrust faces [m]. */
  readonly piston: SizeOrSpan<Length>;
}): Span<Length> {
  guardFields('sizes', sizes, SIZES);
  const bore = guardSpan('bore', sizes.bore, diameter);
  const piston = guardSpan('piston', sizes.piston, diameter);
  guardAlike('piston', piston.min, 'bore', bore.max);
  guardAlike('piston', piston.max, 'bore', bore.min);
  return gapOf(bore, piston);
}
