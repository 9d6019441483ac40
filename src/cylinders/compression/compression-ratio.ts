import type { Span } from '../../judging/index.js';
import { guardFields } from '../../judging/internal.js';
import type { Length, Ratio, Volume } from '../../quantities/index.js';
import { type CylinderToCompress, clearanceWith, guardGasket, spacesOf } from './spaces.js';

/** How far a cylinder compresses, and what that comes of. */
export interface CompressionRatio {
  /** Volume at the bottom of the stroke over that at the top [-]. */
  readonly ratio: Span<Ratio>;
  /** What the piston sweeps [m³]. */
  readonly sweptVolume: Volume;
  /** What is left above it at top dead centre [m³]. */
  readonly clearanceVolume: Span<Volume>;
  /** What of that the gasket makes [m³]. */
  readonly gasketVolume: Volume;
  /** How far the piston stops below the deck, as it was given; negative stands above it [m]. */
  readonly deckClearance: Span<Length>;
  /** From the flat edge of the piston to the face of the head; negative stands into the head [m]. */
  readonly pistonToHeadFace: Span<Length>;
}

const CYLINDER = [
  'bore',
  'stroke',
  'chamber',
  'deckClearance',
  'gasket',
  'crown',
  'blockChamber',
] as const;

/**
 * Compression ratio of a cylinder from its spaces, each as one size or as the span that it lies in.
 *
 *     sweptVolume = π / 4 * bore² * stroke
 *     gasketVolume = π / 4 * gasketBore² * thickness
 *     clearanceVolume = chamber + blockChamber + gasketVolume + π / 4 * bore² * deckClearance - crown
 *     ratio = 1 + sweptVolume / clearanceVolume
 *
 * It is the ratio by geometry. What is squeezed at cranking depends on where the inlet valve closes
 * (`crankingPressure`). Where all of the clearance was poured at once, give that as the chamber, a deck clearance of 0,
 * and `'none'` for the gasket. Compare cylinders by calling it for each: a chamber that differs is one that was welded,
 * cut or is full of carbon.
 *
 * Room is judged nowhere here: `pistonToHeadFace` is cold and at rest, and a piston, its dome or a valve that comes
 * too near to the head strikes it at speed. Measure that with soft wire or clay. `describeCompressionRatio` says first that
 * a piston stands proud of the deck.
 *
 * @param cylinder - bore, stroke, and the spaces above the piston at top dead centre
 * @returns the ratio as a span, with the volumes behind it and the room to the head's face
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, a
 * gasket has both a bore and an area, or no room is left above the piston
 * @see Source: definition; worked check in tests/published/compression.test.ts
 * @example
 * ```ts
 * const { ratio, clearanceVolume } = compressionRatio({
 *   bore: inch(4), stroke: inch(3.48), chamber: cubicInch(4.272), crown: cubicInch(-0.305),
 *   deckClearance: inch(0.05), gasket: { thickness: inch(0.02), bore: inch(4) },
 * });
 * format(clearanceVolume.min, cubicInch); // "5.457 in³"
 * ratio.min.toFixed(2); // "9.01"
 * ```
 */
export function compressionRatio(cylinder: CylinderToCompress): CompressionRatio {
  guardFields('cylinder', cylinder, CYLINDER);
  const spaces = spacesOf(cylinder);
  const { area, thickness } = guardGasket(cylinder.gasket);
  const gasket = area * thickness;
  const { swept, deck } = spaces;
  const clearance = clearanceWith(spaces, gasket);
  return {
    ratio: { min: 1 + swept / clearance.max, max: 1 + swept / clearance.min } as Span<Ratio>,
    sweptVolume: swept,
    clearanceVolume: clearance,
    gasketVolume: gasket as Volume,
    deckClearance: deck,
    pistonToHeadFace: { min: deck.min + thickness, max: deck.max + thickness } as Span<Length>,
  };
}
