import type { Span } from '../../judging/index.js';
import { guardFields } from '../../judging/internal.js';
import { geometricCompression } from '../../motion/internal.js';
import type { Area, Length, Ratio, Volume } from '../../quantities/index.js';
import { chamberMouth, gasketThickness, skimmedOff } from './domains.js';
import {
  type CylinderSpaces,
  type CylinderToCompress,
  clearanceWith,
  type GasketOpening,
  guardGasket,
  guardOpening,
  spacesOf,
} from './spaces.js';

/** A cylinder that is to compress further, and the face that may be skimmed. */
export interface CylinderToSkim extends CylinderToCompress {
  /** Compression ratio that is wanted [-]. */
  readonly wanted: Ratio;
  /** Area that the chamber has where the face is cut, for the head; the bore's area for the deck [m²]. */
  readonly skimArea: Area;
  /** The most that may come off, by the maker [m]. */
  readonly mayComeOff?: Length;
}

/** What skimming does to the ratio. */
export type SkimForRatio =
  | {
      /** The ratio may be as wanted already, as far as the volumes are known. */
      readonly outcome: 'as wanted';
    }
  | {
      /** Something has to come off. */
      readonly outcome: 'skim';
      /** How much: the least for the smallest clearance that the readings allow. Take off that, and pour again [m]. */
      readonly by: Span<Length>;
      /** Whether that stays within what may come off. Without a figure nobody knows. */
      readonly leastLeft: 'kept' | 'not known';
    }
  | {
      /** More would have to come off than may. */
      readonly outcome: 'too much to skim';
      /** How much would have to come off at least [m]. */
      readonly needed: Length;
      /** How much may [m]. */
      readonly mayComeOff: Length;
    }
  | {
      /** It compresses further than wanted; only a thicker gasket or a larger chamber brings it down. */
      readonly outcome: 'too high already';
      /** What volume is missing [m³]. */
      readonly missing: Span<Volume>;
    };

/** What gasket gives a ratio. */
export type GasketForRatio =
  | {
      /** There is one. */
      readonly outcome: 'gasket';
      /** How thick it has to be once tightened [m]. */
      readonly thickness: Span<Length>;
      /** From the flat edge of the piston to the face of the head with it; negative stands into the head [m]. */
      readonly pistonToHeadFace: Span<Length>;
    }
  | {
      /** Even without one the spaces are too large. */
      readonly outcome: 'no gasket is thin enough';
      /** What volume is too much, with a gasket of no thickness [m³]. */
      readonly tooMuch: Span<Volume>;
    };

const SKIM = [
  'bore',
  'stroke',
  'chamber',
  'deckClearance',
  'gasket',
  'wanted',
  'skimArea',
  'crown',
  'blockChamber',
  'mayComeOff',
] as const;
const THICKNESS = [
  'bore',
  'stroke',
  'chamber',
  'deckClearance',
  'gasket',
  'wanted',
  'crown',
  'blockChamber',
] as const;

/**
 * How much to skim off a head or a deck for a compression ratio.
 *
 *     by = (clearanceVolume - sweptVolume / (wanted - 1)) / skimArea
 *
 * The area counts that the chamber has where the cutter goes, and only as deep as its walls stand square: a side-valve
 * chamber has the outline over bore and valves. Take off the least figure first and pour again.
 *
 * A skimmed head is thinner for good, and every part above comes nearer to the valves and the piston: check the lift of
 * each valve against the head (side valves) or the piston, the length of the push rods, and the room above the crown.
 * An old engine's bearings, gasket and fuel were made for its own ratio: without the maker's figure, leave it as it
 * was.
 *
 * @param cylinder - the cylinder, the ratio wanted, and the area that is cut
 * @returns how much to skim, or why not
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, a
 * gasket has both a bore and an area, or no room is left above the piston
 * @see Source: {@link compressionRatio}, turned round
 * @example
 * ```ts
 * const work = skimForRatio({
 *   bore: mm(80), stroke: mm(80), chamber: mL(75), deckClearance: mm(0),
 *   gasket: { thickness: mm(1), area: squareMm(9000) }, wanted: ratio(6), skimArea: squareMm(9000),
 * });
 * // (84 - 402.1 / 5) mL over 90 cm²
 * work.outcome === 'skim' && format(work.by.min, mm); // "0.397 mm"
 * ```
 */
export function skimForRatio(cylinder: CylinderToSkim): SkimForRatio {
  guardFields('cylinder', cylinder, SKIM);
  const spaces = spacesOf(cylinder);
  const { area, thickness } = guardGasket(cylinder.gasket);
  const wanted = geometricCompression('wanted', cylinder.wanted);
  const skimArea = chamberMouth('skimArea', cylinder.skimArea);
  const { mayComeOff } = cylinder;
  if (mayComeOff !== undefined) skimmedOff('mayComeOff', mayComeOff);
  const clearance = clearanceWith(spaces, area * thickness);
  const room = spaces.swept / (wanted - 1);
  const [min, max] = [clearance.min - room, clearance.max - room];
  if (max < -ROUNDED * room) {
    return { outcome: 'too high already', missing: { min: -max, max: -min } as Span<Volume> };
  }
  if (min <= ROUNDED * room) return { outcome: 'as wanted' };
  const by = { min: min / skimArea, max: max / skimArea } as Span<Length>;
  if (mayComeOff === undefined) return { outcome: 'skim', by, leastLeft: 'not known' };
  if (by.min > mayComeOff) return { outcome: 'too much to skim', needed: by.min, mayComeOff };
  const most = Math.min(by.max, mayComeOff) as Length;
  return { outcome: 'skim', by: { min: by.min, max: most }, leastLeft: 'kept' };
}

/** A share of a volume that is lost in rounding. */
const ROUNDED = 1e-9;

/**
 * How thick a gasket has to be, once tightened, for a compression ratio.
 *
 *     thickness = (sweptVolume / (wanted - 1) - spaces) / opening
 *
 * with all the other spaces above the piston, and the area of the opening. Gaskets come in few thicknesses, and two on
 * top of each other leak: choose the next thicker one and accept the ratio. A thin one brings piston and valves nearer
 * to the head: see `pistonToHeadFace`.
 *
 * @param cylinder - the cylinder, the opening of the gasket, and the ratio wanted
 * @returns the thickness as a span, or by how much no gasket is thin enough
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or a
 * gasket has both a bore and an area
 * @see Source: {@link compressionRatio}, turned round
 * @example
 * ```ts
 * const found = gasketForRatio({
 *   bore: mm(80), stroke: mm(80), chamber: mL(75), deckClearance: mm(0), gasket: { bore: mm(82) }, wanted: ratio(6),
 * });
 * // (402.1 / 5 - 75) mL over π / 4 * 8.2² cm²
 * found.outcome === 'gasket' && format(found.thickness.min, mm); // "1.027 mm"
 * ```
 */
export function gasketForRatio(
  cylinder: CylinderSpaces & {
    /** The opening of the gasket. */
    readonly gasket: GasketOpening;
    /** Compression ratio that is wanted [-]. */
    readonly wanted: Ratio;
  },
): GasketForRatio {
  guardFields('cylinder', cylinder, THICKNESS);
  const { swept, rest, deck } = spacesOf(cylinder);
  const area = guardOpening(cylinder.gasket);
  const room = swept / (geometricCompression('wanted', cylinder.wanted) - 1);
  const thickness = { min: (room - rest.max) / area, max: (room - rest.min) / area };
  if (thickness.max < gasketThickness.least) {
    const tooMuch = { min: rest.min - room, max: rest.max - room } as Span<Volume>;
    return { outcome: 'no gasket is thin enough', tooMuch };
  }
  const pistonToHeadFace = {
    min: deck.min + thickness.min,
    max: deck.max + thickness.max,
  } as Span<Length>;
  return { outcome: 'gasket', thickness: thickness as Span<Length>, pistonToHeadFace };
}
