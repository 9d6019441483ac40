import type { SizeOrSpan, Span } from '../../judging/index.js';
import {
  diameter,
  diametralClearance,
  guardFields,
  guardLength,
  guardSpan,
  NANOMETRE,
} from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';

/** A pin, and the clearance that its bore is to give it. */
export interface PinToReamFor {
  /** Diameter of the pin in all places where it sits in that bore [m]. */
  readonly pin: SizeOrSpan<Length>;
  /** Least and most diametral clearance wanted; for a press fit both are negative [m]. */
  readonly clearance: Span<Length>;
  /** The bore as it is now, if it was read [m]. */
  readonly bore?: SizeOrSpan<Length>;
}

/** What to ream, hone or grind a bore to. */
export type PinReamSize =
  | {
      /** To be machined; or all that was read of it is right already. */
      readonly outcome: 'ream' | 'fits as it is';
      /** What the bore may measure anywhere [m]. */
      readonly reamTo: Span<Length>;
    }
  | {
      /** It is past that already: it takes a new bushing, or a pin that is larger. */
      readonly outcome: 'too large';
      /** What the bore may measure anywhere [m]. */
      readonly reamTo: Span<Length>;
      /** By how much it is too large where it is largest [m]. */
      readonly tooLargeBy: Length;
    }
  | {
      /** No round bore gives what is wanted all along the pin. */
      readonly outcome: 'pin varies too much';
      /** How much the pin varies [m]. */
      readonly pinVaries: Length;
      /** How much it may [m]. */
      readonly mayVary: Length;
    };

const REAM = ['pin', 'clearance', 'bore'] as const;

/**
 * What to ream a bore to for a pin, so that all of the pin has the clearance that is wanted.
 *
 *     least = largestPin + leastClearance
 *     most = smallestPin + mostClearance
 *
 * Pin and bore are measured equally warm, and the bore after a bushing is pressed in, since it closes: see
 * `boreAfterPressing`. Take the clearance from the maker's manual, and narrow it by what the readings may be off. Ream
 * little at a time, turn the reamer one way only, and line both bosses or both bushings up in one pass; a hone leaves
 * a rounder bore than a hand reamer. Try the pin before the last cut.
 *
 * @param joint - pin, clearance wanted, and the bore as it is if it was read [m]
 * @returns what to ream to, or why that does not serve
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or the bore
 * was never of the pin
 * @see Source: geometry
 * @example
 * ```ts
 * const ream = pinReamSize({
 *   pin: { min: inch(0.7499), max: inch(0.75) }, clearance: { min: thou(0.2), max: thou(0.6) }, bore: inch(0.746),
 * });
 * ream.outcome; // "ream"
 * ream.outcome === 'ream' && format(ream.reamTo.min, inch); // "0.7502 in"
 * ream.outcome === 'ream' && format(ream.reamTo.max, inch); // "0.7505 in"
 * ```
 */
export function pinReamSize(joint: PinToReamFor): PinReamSize {
  guardFields('joint', joint, REAM);
  const pin = guardSpan('pin', joint.pin, diameter);
  const wanted = guardSpan('clearance', joint.clearance, diametralClearance);
  const now =
    joint.bore === undefined
      ? undefined
      : guardSpan('bore', joint.bore, (at, size) =>
          guardLength(at, diameter(at, size), [0.5 * pin.max, 1.1 * pin.min], diameter.example),
        );
  const [least, most] = [pin.max + wanted.min, pin.min + wanted.max];
  if (least > most + NANOMETRE) {
    return {
      outcome: 'pin varies too much',
      pinVaries: (pin.max - pin.min) as Length,
      mayVary: (wanted.max - wanted.min) as Length,
    };
  }
  // Where the pin takes all that is allowed, one size is left.
  const reamTo = { min: Math.min(least, most), max: most } as Span<Length>;
  if (now === undefined) return { outcome: 'ream', reamTo };
  if (now.max > most + NANOMETRE) {
    return { outcome: 'too large', reamTo, tooLargeBy: (now.max - most) as Length };
  }
  return { outcome: now.min >= least - NANOMETRE ? 'fits as it is' : 'ream', reamTo };
}
