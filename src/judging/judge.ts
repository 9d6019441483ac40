import {
  coherentUnit,
  type Dimension,
  type Quantity,
  RebuildInputError,
} from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { type Basis, guardBasis } from './basis.js';
import { guardFields, guardQuantity, guardText, guardWord } from './guards.js';
import { guardLimits, type Limits, NANOMETRE, ROUNDING, type Span } from './limits.js';
import { showQuantity } from './showing.js';

/** How a value stands to its limits. */
export type Verdict = 'within' | 'below' | 'above' | 'undecided';

/** What `judge` needs to know. */
export interface Judgement<D extends Dimension> {
  /** What is judged, in the trade's words: `'oil clearance'`. */
  readonly feature: string;
  /** Dimension of the value. */
  readonly dimension: D;
  /** The value, in the coherent SI unit of the dimension. */
  readonly value: Quantity<NoInfer<D>>;
  /** What it must lie between, in the same unit. */
  readonly limits: Limits<Quantity<NoInfer<D>>>;
  /** Who set the limits. */
  readonly basis: Basis;
  /** Expanded uncertainty of the value, if it is known, in the same unit. */
  readonly uncertainty?: Quantity<NoInfer<D>>;
}

/** A value, its limits and how it stands to them. Data: `describe` makes the sentence. */
export interface Finding<D extends Dimension = Dimension> extends Judgement<D> {
  /** `undecided` only where an uncertainty was given and it straddles a limit. */
  readonly verdict: Verdict;
  /** Distance to the nearest limit, in the same unit: inside it is positive, outside negative. */
  readonly margin: Quantity<D>;
}

const JUDGEMENT = ['feature', 'dimension', 'value', 'limits', 'basis', 'uncertainty'] as const;
const FINDING = [
  'feature',
  'dimension',
  'value',
  'limits',
  'basis',
  'uncertainty',
  'verdict',
  'margin',
] as const;

/**
 * Judges a value against its limits. Both limits belong to the range, and a
 * reading at the limit never fails by floating-point noise: lengths are
 * compared to 1 nm, everything else to 1 part in 10⁹.
 *
 * With an uncertainty U the value is within only if it lies inside by U or
 * more, outside only if it lies outside by more than U, and otherwise undecided.
 *
 * @param judgement - what is judged, its value, its limits and who set them
 * @returns the finding
 * @throws {RebuildInputError} when a field is misspelt, the value or a limit is not finite, or there is no
 * limit at all
 * @see Source: decision rule of ISO 14253-1
 * @example
 * ```ts
 * const finding = judge({
 *   feature: 'end play', dimension: 'length', value: thou(12),
 *   limits: { min: thou(4), max: thou(10) }, basis: { kind: 'specified' },
 * });
 * finding.verdict; // "above"
 * format(finding.margin, thou); // "-2.0 thou"
 * ```
 */
export function judge<D extends Dimension>(judgement: Judgement<D>): Finding<D> {
  guardFields('judgement', judgement, JUDGEMENT);
  const { feature, value, uncertainty } = judgement;
  guardText('feature', feature);
  const dimension = guardWord('dimension', judgement.dimension, DIMENSIONS) as D;
  guardQuantity('value', value, dimension);
  const limits = guardLimits('limits', judgement.limits, finite(dimension), dimension);
  const basis = guardBasis('basis', judgement.basis);
  guardUncertainty('uncertainty', uncertainty, dimension);

  const above = limits.max === undefined ? -Infinity : value - limits.max;
  const below = limits.min === undefined ? -Infinity : limits.min - value;
  const outside = Math.max(above, below);
  const room = uncertainty ?? 0;
  const noise = comparisonTolerance(dimension, [value, limits.min ?? 0, limits.max ?? 0]);
  const verdict = verdictOf(outside, above > below ? 'above' : 'below', room, noise);
  return {
    feature,
    dimension,
    value,
    limits,
    basis,
    ...(uncertainty === undefined ? {} : { uncertainty }),
    verdict,
    margin: (0 - outside) as Quantity<D>,
  };
}

/** Refuses a finding that `judge` did not make. */
export function guardFinding<D extends Dimension>(
  parameter: string,
  finding: Finding<D>,
): Finding<D> {
  guardFields(parameter, finding, FINDING);
  const { feature, value, verdict, margin, uncertainty } = finding;
  guardText(`${parameter}.feature`, feature);
  const dimension = guardWord(`${parameter}.dimension`, finding.dimension, DIMENSIONS) as D;
  guardQuantity(`${parameter}.value`, value, dimension);
  guardQuantity(`${parameter}.margin`, margin, dimension);
  guardUncertainty(`${parameter}.uncertainty`, uncertainty, dimension);
  guardWord(`${parameter}.verdict`, verdict, ['within', 'below', 'above', 'undecided']);
  guardLimits(`${parameter}.limits`, finding.limits, finite(dimension), dimension);
  guardBasis(`${parameter}.basis`, finding.basis);
  return finding;
}

/**
 * Judges both ends of a span and gives the worse finding: the one with the
 * least margin, the upper end if they are equal.
 */
export function judgeSpan<D extends Dimension>(
  judgement: Omit<Judgement<D>, 'value'> & { readonly value: Span<Quantity<D>> },
): Finding<D> {
  const low = judge({ ...judgement, value: judgement.value.min });
  const high = judge({ ...judgement, value: judgement.value.max });
  return low.margin < high.margin ? low : high;
}

/** The finding that fails by most, if any fails. */
export function worstOf<D extends Dimension>(
  findings: readonly Finding<D>[],
): Finding<D> | undefined {
  return findings
    .filter(({ verdict }) => verdict !== 'within')
    .sort((a, b) => a.margin - b.margin)[0];
}

/** Sizes no further apart are compared as one: 1 nm for lengths, 1 part in 10⁹ of the sizes for other dimensions. */
export function comparisonTolerance(dimension: Dimension, sizes: readonly number[]): number {
  return dimension === 'length' ? NANOMETRE : ROUNDING * largestOf(sizes.map(Math.abs));
}

const finite =
  <D extends Dimension>(dimension: D) =>
  (parameter: string, bound: Quantity<D>) =>
    guardQuantity(parameter, bound, dimension);

function guardUncertainty<D extends Dimension>(
  parameter: string,
  uncertainty: Quantity<D> | undefined,
  dimension: D,
): void {
  if (uncertainty === undefined || guardQuantity(parameter, uncertainty, dimension) >= 0) return;
  throw new RebuildInputError({
    parameter,
    value: uncertainty,
    shown: showQuantity(uncertainty, dimension),
    expected: 'an uncertainty of zero or more',
    hint: 'Give the half width of the interval, without its sign.',
  });
}

function verdictOf(outside: number, side: 'above' | 'below', room: number, noise: number): Verdict {
  if (outside > room + noise) return side;
  if (outside <= noise - room) return 'within';
  return 'undecided';
}

const DIMENSIONS = /* @__PURE__ */ Object.keys(coherentUnit) as Dimension[];
