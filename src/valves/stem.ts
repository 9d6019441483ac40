import type { Span } from '../judging/index.js';
import { guardFields, guardSpan, NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { trainLength, valveLash, wantedLash } from './domains.js';

/** A valve whose lash is set at its stem, since nothing adjusts it. */
export interface StemToFit {
  /** Lash that was found, valve and seat finished and the tappet on the heel of its cam; negative is how far the valve is held off its seat [m]. */
  readonly lash: Length;
  /** Lash that is wanted, set cold [m]. */
  readonly wanted: Span<Length>;
  /** How long the valve is now, from its face to the end of its stem [m]. */
  readonly length?: Length;
  /** The least length that it may be ground to, by the maker [m]. */
  readonly leastLength?: Length;
}

/** Whether the stem stays long enough. Without both lengths nobody has looked. */
export type StemLength = 'kept' | 'not known';

/** What to do with the end of a valve's stem. */
export type StemWork =
  | {
      /** The lash is within what is wanted. */
      readonly outcome: 'leave it';
    }
  | {
      /** The stem is too long. */
      readonly outcome: 'grind the stem';
      /** How much to take off: the least brings the lash to its least, the most to its most [m]. */
      readonly by: Span<Length>;
      /** No lash was found: a feeler does not show how far the valve is held off its seat, and more may have to come off. Take off a little and read it again. */
      readonly atLeast?: true;
      /** Whether it stays as long as the maker wants it. */
      readonly leastLength: StemLength;
    }
  | {
      /** Ground far enough to have its lash, the stem would be shorter than it may be. */
      readonly outcome: 'stem too short';
      /** How much has to come off at least [m]. */
      readonly needed: Length;
      /** How much may come off [m]. */
      readonly left: Length;
    }
  | {
      /** There is more lash than wanted, and no stem grows. */
      readonly outcome: 'too much lash';
      /** How far the valve would have to sink, by its seat or its face [m]. */
      readonly sink: Span<Length>;
    };

const STEM = ['lash', 'wanted', 'length', 'leastLength'] as const;

/**
 * How much to grind off a valve's stem where nothing adjusts the lash, as in most small side-valve engines.
 *
 *     by = wanted - lash
 *
 * Read the lash last, when seat and face are finished and lapped, with the valve pressed on its seat and the tappet
 * on the heel of its cam. Take off less than it says, read it again, and stop once the lash is there: what is off
 * stays off. Keep the end square with the stem, and cool; the ends are hard for a little way only, and a blued one is soft. Wear
 * eye protection. A stem is never ground past the least length that was given; where none was, look for the
 * depth of the hard end and for the groove of the keepers first.
 *
 * With too much lash the seat or the face has to come down, which takes margin and sinks the valve
 * (`afterFacing`), or another valve has to be found.
 *
 * @param stem - lash found and wanted, and the lengths if they are known [m]
 * @returns to grind and by how much, to leave it, or why it cannot be done [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the lash wanted is
 * reversed, or the least length is given without the length
 * @see Source: TM 5-4240-501-14&P, pp. 152 and 278
 * @example
 * ```ts
 * const work = stemToGrind({ lash: thou(3), wanted: { min: thou(7), max: thou(9) } });
 * work.outcome; // "grind the stem"
 * work.outcome === 'grind the stem' && format(work.by.min, thou); // "4.0 thou"
 * ```
 */
export function stemToGrind(stem: StemToFit): StemWork {
  guardFields('stem', stem, STEM);
  const lash = valveLash('lash', stem.lash);
  const wanted = guardSpan('wanted', stem.wanted, wantedLash);
  const left = stockOf(stem);
  const by = { min: wanted.min - lash, max: wanted.max - lash } as Span<Length>;
  if (by.max < -NANOMETRE) {
    return { outcome: 'too much lash', sink: { min: -by.max, max: -by.min } as Span<Length> };
  }
  if (by.min <= NANOMETRE) return { outcome: 'leave it' };
  const atLeast = lash === 0 && { atLeast: true as const };
  if (left === undefined) {
    return { outcome: 'grind the stem', by, ...atLeast, leastLength: 'not known' };
  }
  if (by.min > left + NANOMETRE) {
    return { outcome: 'stem too short', needed: by.min, left };
  }
  const most = Math.max(by.min, Math.min(by.max, left)) as Length;
  const ground = { min: by.min, max: most };
  return { outcome: 'grind the stem', by: ground, ...atLeast, leastLength: 'kept' };
}

/** How much may come off, where both lengths are known. */
function stockOf({ length, leastLength }: StemToFit): Length | undefined {
  if (length !== undefined) trainLength('length', length);
  if (leastLength === undefined) return undefined;
  trainLength('leastLength', leastLength);
  return (trainLength('length', length as Length) - leastLength) as Length;
}
