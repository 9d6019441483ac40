import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import { guardFields, guardLength, ownLimitsOr } from '../judging/internal.js';
import { type Length, thou } from '../quantities/index.js';
import { gripLength, lastingStretch } from './domains.js';

/** A bolt that was used, its length free of load, and how much longer it may stay. */
export interface UsedBolt extends OwnLimits<'length'> {
  /** Length over both ends, slacked off [m]. */
  readonly length: Length;
  /** The same when it was new, or that of a new one of its kind [m]. */
  readonly asNew: Length;
}

/** How much longer a used bolt has stayed. */
export interface PermanentStretch {
  /** Length now less length as new; a little under nothing by the error of reading [m]. */
  readonly stretch: Length;
  /** That against the limit. */
  readonly finding: Finding<'length'>;
}

const USED = ['length', 'asNew', 'limits', 'basis', 'service', 'uncertainty', 'rule'] as const;

/**
 * How much longer a bolt has stayed than it was new. A bolt that has yielded is not used again: it holds less each time
 * and breaks. Without the maker's limit the rule of thumb is 0.001 in, about what a shop can read.
 *
 *     stretch = length - asNew
 *
 * A bolt may have yielded without showing it here: also look for a thread that is necked down, on which a new nut does
 * not run by hand. New bolts from the same box differ by more than this, so only the bolt's own length as new counts.
 *
 * @param bolt - both lengths, and the limit if it is known [m]
 * @returns how much longer it is, and the finding [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the lengths are not of one
 * bolt, or the limits have no bound
 * @see Source: common practice; the maker's limit wins
 * @example
 * ```ts
 * const { finding } = permanentStretch({ length: inch(2.253), asNew: inch(2.25) });
 * finding.verdict; // "above"
 * ```
 */
export function permanentStretch(bolt: UsedBolt): PermanentStretch {
  guardFields('bolt', bolt, USED);
  const length = gripLength('length', bolt.length);
  const asNew = gripLength('asNew', bolt.asNew);
  guardLength('length', length, [0.98 * asNew, 1.05 * asNew], gripLength.example);
  const allowed = ownLimitsOr('bolt', bolt, rule(), lastingStretch);
  const stretch = (length - asNew) as Length;
  const feature = 'permanent stretch of the bolt';
  return { stretch, finding: judge({ feature, dimension: 'length', value: stretch, ...allowed }) };
}

const rule = (): BasedLimits<'length'> => ({
  limits: { max: thou(1) },
  limitsOf: 'service',
  basis: { kind: 'common practice', rule: 'a bolt that stays 0.001 in longer is not used again' },
});
