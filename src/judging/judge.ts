import type { Dimension, Quantity } from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { type DecisionRule, guardBandOf } from './decision-rule.js';
import { type Finding, guardJudgement, type Judgement } from './finding.js';
import { GRADES, gradeOf, holds, type Verdict } from './grade.js';
import { type Limits, NANOMETRE, ROUNDING, type Span } from './limits.js';

/**
 * Judges a value against its limits. Both limits belong to the range, and a
 * reading at the limit never fails by floating-point noise: lengths are
 * compared to 1 nm, everything else to 1 part in 10⁹.
 *
 * With an uncertainty U the value is within only if it lies inside by U or
 * more, outside only if it lies outside by more than U, and otherwise undecided. Another decision rule
 * puts its own guard band in the place of U. The service limit is judged by the same rule.
 *
 * A used part is graded besides, if it is said what the limits are of: a part past the limits of new parts
 * is `serviceable` up to its service limit. Only limits of this engine condemn a part.
 *
 * @param judgement - what is judged, its value, its limits and who set them
 * @returns the finding
 * @throws {RebuildInputError} when a field is misspelt, the value is not finite, a limit is not finite, the limits
 * are reversed, there is no limit at all, the rule is unknown, or the guard band is negative
 * @see Source: decision rules of ISO 14253-1:1998 and 2017, guard bands as in ILAC-G8:09/2019
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
  const { feature, dimension, value, limits, basis, uncertainty, rule, service, limitsOf } =
    guardJudgement(judgement);
  const room = guardBandOf<D>({ ...(rule && { rule }), ...(uncertainty && { uncertainty }) });
  const against = (to: Limits<Quantity<D>>) => standing(value, to, room, dimension);
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
    ...(isApplied(rule, uncertainty) && { rule }),
    verdict: stands.verdict,
    margin: (0 - stands.outside) as Quantity<D>,
    ...(grade && { grade }),
  };
}

/** Whether a rule has anything to say: a named one only of an uncertainty. */
function isApplied<D extends Dimension>(
  rule: DecisionRule<D> | undefined,
  uncertainty: number | undefined,
): rule is DecisionRule<D> {
  return rule !== undefined && (typeof rule === 'object' || uncertainty !== undefined);
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

/** Whether the value itself lies outside its limits, whatever is not known of it. */
export const isOutside = ({ dimension, value, limits, margin }: Finding): boolean =>
  margin < -comparisonTolerance(dimension, [value, limits.min ?? 0, limits.max ?? 0]);

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

function verdictOf(outside: number, end: 'min' | 'max', room: number, noise: number): Verdict {
  if (outside > room + noise) return end === 'max' ? 'above' : 'below';
  if (outside <= noise - room) return 'within';
  return 'undecided';
}
