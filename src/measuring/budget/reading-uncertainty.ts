import { guardFields } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { statedUncertainty } from '../domains.js';
import { type Contribution, type Contributor, contributionsOf } from './contributor.js';
import { combined } from './expanded-uncertainty.js';

/** What a person says of an instrument: `±0.0001 in`. */
export interface StatedUncertainty {
  /** How far a reading may be off, about 95 times in 100 [m]. */
  readonly expanded: Length;
}

/** An instrument: what a person says of it, or a budget of all that adds to its uncertainty. */
export type InstrumentUncertainty = StatedUncertainty | readonly Contributor[];

/** How far readings of an instrument may be off, expanded at about 95 % (two standard uncertainties). */
export interface ReadingUncertainty {
  /** Of the size that was read [m]. */
  readonly size: Length;
  /** Of the difference of two sizes that the same instrument read: out-of-round, taper, wear [m]. */
  readonly difference: Length;
}

const STATED = ['expanded'] as const;

/**
 * How far a reading of an instrument may be off, and how far the difference of two of its readings.
 * What is common to every reading, a zero error or the warmth of the instrument, cancels in a difference; the rest of
 * each reading adds. Of a stated uncertainty nothing is known to cancel, and its difference is √2 of it.
 *
 *     difference = √2 · (expanded uncertainty without what is common)
 *
 * @param instrument - what a person states, or a budget as `instrumentBudget` gives it
 * @returns both uncertainties, expanded at about 95 % [m]
 * @throws {RebuildInputError} when a field is misspelt, the stated uncertainty is out of range, or the budget is refused
 * by `expandedUncertainty`
 * @see Source: JCGM 100:2008, 5.1 and 5.2 (what is common is wholly correlated)
 * @example
 * ```ts
 * const { size, difference } = readingUncertainty([
 *   { name: 'resolution', kind: 'rectangular', halfWidth: inch(0.00005) },
 *   { name: 'zero error', kind: 'rectangular', halfWidth: inch(0.0001), common: true },
 * ]);
 * format(size, micrometre); // "3.3 µm"
 * format(difference, micrometre); // "2.1 µm"
 * ```
 */
export function readingUncertainty(instrument: InstrumentUncertainty): ReadingUncertainty {
  if (!Array.isArray(instrument)) {
    const stated = instrument as StatedUncertainty;
    guardFields('instrument', stated, STATED);
    const size = statedUncertainty('instrument.expanded', stated.expanded);
    return { size, difference: (Math.SQRT2 * size) as Length };
  }
  const all = contributionsOf('instrument', instrument as readonly Contributor[]);
  const own = all.filter(({ common, standard }) => !common && standard > 0);
  return { size: combined<'length'>(all).expanded, difference: differenceOf(own) };
}

function differenceOf(own: readonly Contribution[]): Length {
  return (own.length === 0 ? 0 : Math.SQRT2 * combined<'length'>(own).expanded) as Length;
}
