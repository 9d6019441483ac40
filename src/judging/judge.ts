import {
  coherentUnit,
  type Dimension,
  type Quantity,
  RebuildInputError,
} from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { type Basis, guardBasis } from './basis.js';
import { type Grade, gradeOf, holds, type Verdict } from './grade.js';
import { guardFields, guardQuantity, guardText, guardWord } from './guards.js';
import {
  guardLimits,
  type Limits,
  type LimitsOf,
  NANOMETRE,
  ROUNDING,
  type Span,
} from './limits.js';
import type { ServiceLimits } from './own-limits.js';
import { showQuantity } from './showing.js';

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
  /** Whether the limits are of new parts or of worn ones. Say so of a part that wears, and it is graded. */
  readonly limitsOf?: LimitsOf;
  /** How far wear may take the part past the limits of new parts and leave it in service. */
  readonly service?: ServiceLimits<NoInfer<D>>;
  /** Expanded uncertainty of the value, if it is known, in the same unit. */
  readonly uncertainty?: Quantity<NoInfer<D>>;
}

/** A value, its limits and how it stands to them. Data: `describe` makes the sentence. */
export interface Finding<D extends Dimension = Dimension> extends Judgement<D> {
  /** `undecided` only where an uncertainty was given and it straddles a limit. */
  readonly verdict: Verdict;
  /** Distance to the nearest limit, in the same unit: inside it is positive, outside negative. */
  readonly margin: Quantity<D>;
  /** How a used part stands, where it was said what the limits are of. */
  readonly grade?: Grade;
}

const JUDGEMENT = [
  'feature',
  'dimension',
  'value',
  'limits',
  'basis',
  'limitsOf',
  'service',
  'uncertainty',
] as const;
const FINDING = [...JUDGEMENT, 'verdict', 'margin', 'grade'] as const;

/**
 * Judges a value against its limits. Both limits belong to the range, and a
 * reading at the limit never fails by floating-point noise: lengths are
 * compared to 1 nm, everything else to 1 part in 10⁹.
 *
 * With an uncertainty U the value is within only if it lies inside by U or
 * more, outside only if it lies outside by more than U, and otherwise undecided.
 *
 * A used part is graded besides, if it is said what the limits are of: a part past the limits of new parts
 * is `serviceable` up to its service limit. Only limits of this engine condemn a part.
 *
 * @param judgement - what is judged, its value, its limits and who set them
 * @returns the finding
 * @throws {RebuildInputError} when a field is misspelt, the value is not finite, a limit is not finite, the limits
 * are reversed, or there is no limit at all
 * @see Source: decision rule of ISO 14253-1
 * @example
 * ```ts
 * const finding = judge({
 *   feature: 'end play', dimension: 'length', value: thou(12),
 *   limits: { min: thou(4), max: thou(10) }, basis: { kind: 'specified' },
 * });
 * finding.verdict; // "above"
 * format(finding.margin, thou); // "-2.0 thou"
 * const used = judge({
 *   feature: 'end play', dimension: 'length', value: thou(12),
 *   limits: { min: thou(4), max: thou(10) }, basis: { kind: 'specified' },
 *   service: { limits: { max: thou(18) }, basis: { kind: 'specified' } },
 * });
 * used.grade; // "serviceable"
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
  const service = guardService('service', judgement.service, dimension);
  const limitsOf = guardLimitsOf('limitsOf', judgement.limitsOf, service);

  const against = (to: Limits<Quantity<D>>) => standing(value, to, uncertainty ?? 0, dimension);
  const stands = against(limits);
  const grade =
    limitsOf &&
    gradeOf(
      stands,
      { limits, limitsOf, basis, ...(service && { service }) },
      (worn) => against(worn).verdict,
    );
  return {
    feature,
    dimension,
    value,
    limits,
    basis,
    ...(limitsOf && { limitsOf }),
    ...(service && { service }),
    ...(uncertainty === undefined ? {} : { uncertainty }),
    verdict: stands.verdict,
    margin: (0 - stands.outside) as Quantity<D>,
    ...(grade && { grade }),
  };
}

/** How far a value is outside limits, at which end, and the verdict. */
function standing<D extends Dimension>(
  value: Quantity<D>,
  { min, max }: Limits<Quantity<D>>,
  room: number,
  dimension: D,
) {
  const above = max === undefined ? -Infinity : value - max;
  const below = min === undefined ? -Infinity : min - value;
  const outside = Math.max(above, below);
  const end = above > below ? 'max' : 'min';
  const noise = comparisonTolerance(dimension, [value, min ?? 0, max ?? 0]);
  return { outside, end, verdict: verdictOf(outside, end, room, noise) } as const;
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
  const service = guardService(`${parameter}.service`, finding.service, dimension);
  guardLimitsOf(`${parameter}.limitsOf`, finding.limitsOf, service);
  if (finding.grade !== undefined) guardWord(`${parameter}.grade`, finding.grade, GRADES);
  return finding;
}

/**
 * Judges both ends of a span and gives the worse finding: the one with the worse grade, else with the
 * least margin, the upper end if they are equal.
 */
export function judgeSpan<D extends Dimension>(
  judgement: Omit<Judgement<D>, 'value'> & { readonly value: Span<Quantity<D>> },
): Finding<D> {
  const low = judge({ ...judgement, value: judgement.value.min });
  const high = judge({ ...judgement, value: judgement.value.max });
  return worseFirst(low, high) < 0 ? low : high;
}

/** The finding that fails by most, if any fails: a part that must go before one in doubt. */
export function worstOf<D extends Dimension>(
  findings: readonly Finding<D>[],
): Finding<D> | undefined {
  return findings.filter((finding) => !holds(finding)).sort(worseFirst)[0];
}

function worseFirst<D extends Dimension>(a: Finding<D>, b: Finding<D>): number {
  return badness(b) - badness(a) || a.margin - b.margin;
}

function badness({ verdict, grade }: Finding): number {
  if (grade !== undefined) return GRADES.indexOf(grade);
  return verdict === 'within' ? 0 : GRADES.length;
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

function guardService<D extends Dimension>(
  parameter: string,
  service: ServiceLimits<D> | undefined,
  dimension: D,
): ServiceLimits<D> | undefined {
  if (service === undefined) return undefined;
  guardFields(parameter, service, SERVICE);
  guardLimits(`${parameter}.limits`, service.limits, finite(dimension), dimension);
  guardBasis(`${parameter}.basis`, service.basis);
  return service;
}

const SERVICE = ['limits', 'basis'] as const;

/** What the limits are of: a service limit beside them tells that they are of new parts. */
function guardLimitsOf(
  parameter: string,
  limitsOf: LimitsOf | undefined,
  service: unknown,
): LimitsOf | undefined {
  if (limitsOf !== undefined) return guardWord(parameter, limitsOf, LIMITS_OF);
  return service === undefined ? undefined : 'new parts';
}

function verdictOf(outside: number, end: 'min' | 'max', room: number, noise: number): Verdict {
  if (outside > room + noise) return end === 'max' ? 'above' : 'below';
  if (outside <= noise - room) return 'within';
  return 'undecided';
}

const LIMITS_OF = ['new parts', 'service'] as const;
/** Best first. */
const GRADES = ['as new', 'serviceable', 'undecided', 'out of limits', 'worn out'] as const;

const DIMENSIONS = /* @__PURE__ */ Object.keys(coherentUnit) as Dimension[];
