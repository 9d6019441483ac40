import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { readTwo } from './designation.js';
import { betweenParts, type FitKind } from './fit-kind.js';
import { type LimitsOfSize, limitsFrom } from './limits-of-size.js';

/** A hole and the shaft that goes into it. */
export interface Fit {
  /** Basic size of both [m]. */
  readonly basic: Length;
  /** What the hole may measure. */
  readonly hole: LimitsOfSize;
  /** What the shaft may measure. */
  readonly shaft: LimitsOfSize;
  /** Least and most diametral clearance of parts within their limits; negative is an interference [m]. */
  readonly clearance: Span<Length>;
  /** The same, least and most diametral interference: negative is a clearance [m]. */
  readonly interference: Span<Length>;
  /** What kind of fit it is. */
  readonly kind: FitKind;
}

/**
 * A fit by ISO 286: the limits of hole and shaft, and the diametral clearance of any two of them, smallest hole on
 * largest shaft and the other way round.
 *
 * It is a clearance fit if the least clearance is nothing or more, an interference fit if the most clearance is nothing
 * or less, and otherwise a transition fit, of which some pairs slide and some must be pressed: measure both parts before
 * they are put together. A used part is seldom within the limits of its class; what its fit is now is hole less shaft as
 * they measure.
 *
 * @param designation - basic size in millimetres, class of the hole, a stroke, class of the shaft: `40H7/g6`
 * @returns limits of both, the clearance and the kind of fit [m]
 * @throws {RebuildInputError} when the designation is none, its size is not above 0 and up to 500 mm, a letter does not
 * exist, a class is not defined at the size, or the hole does not come first
 * @see Source: ISO 286-1:2010; see {@link limitsOfSize}
 * @example
 * ```ts
 * const { clearance, kind } = fitOf('40H7/p6');
 * format(clearance.min, micrometre); // "-42.0 µm"
 * format(clearance.max, micrometre); // "-1.0 µm"
 * kind; // "interference"
 * ```
 */
export function fitOf(designation: string): Fit {
  const [hole, shaft] = readTwo(designation);
  const [ofHole, ofShaft] = [limitsFrom(hole), limitsFrom(shaft)];
  return {
    basic: ofHole.basic,
    hole: ofHole,
    shaft: ofShaft,
    ...betweenParts(
      { lower: hole.upper - hole.tolerance, upper: hole.upper },
      { lower: shaft.upper - shaft.tolerance, upper: shaft.upper },
      fromMicrometres,
    ),
  };
}

const fromMicrometres = (count: number) => (count / 1e6) as Length;
