import type { Basis, Span } from '../judging/index.js';
import { guardFields, guardWord } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { roughness } from './domains.js';

/** A measure of roughness: mean deviation, root mean square deviation, or mean height from valley to peak. */
export type RoughnessMeasure = 'Ra' | 'Rq' | 'Rz';

/** What a roughness may be by another measure. */
export interface RoughnessSpan {
  /** Least and most that it may be [m]. */
  readonly span: Span<Length>;
  /** The rule. */
  readonly basis: Basis;
}

const FIELDS = ['value', 'from', 'to'] as const;
const MEASURES = ['Ra', 'Rq', 'Rz'] as const;

/** How many times Ra each measure is, from surfaces of regular grooves to those with a few deep ones. */
const TIMES_RA: Readonly<Record<RoughnessMeasure, Span<number>>> = {
  Ra: { min: 1, max: 1 },
  // A sine has π / (2 √2), heights spread normally √(π / 2).
  Rq: { min: 1.1107, max: 1.2533 },
  Rz: { min: 4, max: 20 },
};

const RULE =
  'Rq is 1.11 (a sine) to 1.25 times Ra (heights spread normally); Rz is 4 to 7 times Ra on most turned and ground surfaces, and up to 20 times where a few grooves are deep';

/**
 * What a roughness may be by another measure. No number leads from one to the other: Ra and Rq are means over all of
 * a profile, Rz looks at its highest peaks and deepest valleys alone, and the ratio is of the process. So a span is
 * given, and a limit is met only if all of it is within. Better measure what the limit asks for.
 *
 *     least = value * (least of to / Ra) / (most of from / Ra)
 *     most = value * (most of to / Ra) / (least of from / Ra)
 *
 * A plateau-honed bore lies outside even of this for Rq: its deep scratches are what it is honed for. Measure it.
 *
 * @param surface - the roughness, by which measure it was read, and which is wanted
 * @returns least and most that it may be, marked as common practice [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or a measure is unknown
 * @see Source: Rq: geometry of a sine and of the normal distribution; Rz: common practice, no standard gives a ratio
 * @example
 * ```ts
 * const { span } = convertRoughness({ value: micrometre(0.5), from: 'Ra', to: 'Rz' });
 * format(span.min, micrometre); // "2.0 µm"
 * format(span.max, micrometre); // "10.0 µm"
 * ```
 */
export function convertRoughness(surface: {
  /** Roughness as it was read [m]. */
  readonly value: Length;
  /** The measure it was read by. */
  readonly from: RoughnessMeasure;
  /** The measure that is wanted. */
  readonly to: RoughnessMeasure;
}): RoughnessSpan {
  guardFields('surface', surface, FIELDS);
  const value = roughness('value', surface.value);
  const from = guardWord('from', surface.from, MEASURES);
  const to = guardWord('to', surface.to, MEASURES);
  const [had, wanted] = [TIMES_RA[from], TIMES_RA[to]];
  const least = from === to ? 1 : wanted.min / had.max;
  const most = from === to ? 1 : wanted.max / had.min;
  return {
    span: { min: (value * least) as Length, max: (value * most) as Length },
    basis: { kind: 'common practice', rule: RULE },
  };
}
