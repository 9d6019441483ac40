import { guardFields, lengthDomain, showLength } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';

/** A chord across an arc, as a straightedge or a gauge with two feet spans it. */
export const chordOfArc = /* @__PURE__ */ lengthDomain({
  least: 0.0001,
  most: 1,
  example: 'mm(8)',
});

/** How far an arc rises from its chord. */
export const riseOfArc = /* @__PURE__ */ lengthDomain({
  least: 1e-6,
  most: 0.5,
  example: 'mm(2)',
});

const ARC = ['chord', 'sagitta'] as const;

/**
 * Radius of an arc of which only a part can be reached: a fillet, a cam flank, the seat of a worn shell. It is
 * measured by a chord and by how far the arc rises from its middle.
 *
 *     radius = chord² / (8 * sagitta) + sagitta / 2
 *
 * A flat arc makes it uncertain: an error in the sagitta grows by radius over sagitta.
 *
 * @param arc - chord and sagitta [m]
 * @returns radius of the arc [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the arc is more
 * than half a circle
 * @see Source: Euclid, Elements, book III, proposition 35; worked check in tests/published/measuring.test.ts
 * @example
 * ```ts
 * format(radiusFromSagitta({ chord: mm(8), sagitta: mm(2) }), mm); // "5.000 mm"
 * ```
 */
export function radiusFromSagitta(arc: {
  /** Straight across the arc, from end to end [m]. */
  readonly chord: Length;
  /** How far the arc rises from the middle of its chord [m]. */
  readonly sagitta: Length;
}): Length {
  guardFields('arc', arc, ARC);
  const chord = chordOfArc('chord', arc.chord);
  const sagitta = riseOfArc('sagitta', arc.sagitta);
  if (2 * sagitta <= chord) return ((chord * chord) / (8 * sagitta) + sagitta / 2) as Length;
  throw new RebuildInputError({
    parameter: 'sagitta',
    value: sagitta,
    shown: showLength(sagitta),
    expected: `at most half the chord, ${showLength(chord / 2)}`,
    hint: 'This way measures up to half a circle: are chord and sagitta swapped?',
  });
}
