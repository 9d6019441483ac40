import type { BasedLimits, Basis, Finding, Limits, OwnLimits, Span } from '../../judging/index.js';
import { judgeSpan, ownLimitsOr } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';

/** Two parts that must not touch, or must, and why. */
export interface Contact {
  /** What their clearance must lie between. */
  readonly limits: { readonly min: Length } | { readonly max: Length };
  /** Why. */
  readonly basis: Basis;
}

const NONE: BasedLimits<'length'> = { limits: {}, basis: { kind: 'specified' } };

/** The caller's limits, or none at all. */
export const ownLimitsOnly = (
  parameter: string,
  own: OwnLimits<'length'>,
  guard: (parameter: string, bound: Length) => Length,
): BasedLimits<'length'> => ownLimitsOr(parameter, own, NONE, guard);

/** A clearance by the caller's limits, at its worse end: nothing without limits. */
export const ownFindings = (
  feature: string,
  value: Span<Length>,
  allowed: BasedLimits<'length'>,
): readonly Finding<'length'>[] =>
  allowed.limits === NONE.limits
    ? []
    : [judgeSpan({ feature, dimension: 'length', value, ...allowed })];

/** That parts touch which must not, unless it is ruled out: parts that do not touch may still be far too loose. */
export function contactFindings(
  feature: string,
  value: Span<Length>,
  { uncertainty, rule }: BasedLimits<'length'>,
  contact: Contact,
): readonly Finding<'length'>[] {
  const { min = -Infinity, max = Infinity }: Limits<number> = contact.limits;
  const isSure = uncertainty === undefined && rule === undefined;
  if (isSure && value.min >= min && value.max <= max) return [];
  const finding = judgeSpan({
    feature,
    dimension: 'length',
    value,
    ...contact,
    ...(uncertainty !== undefined && { uncertainty }),
    ...(rule !== undefined && { rule }),
  });
  return finding.verdict === 'within' ? [] : [finding];
}

/** Both: contact only where the caller's limits leave that open. */
export function findingsOn(
  feature: string,
  value: Span<Length>,
  allowed: BasedLimits<'length'>,
  contact: Contact,
): readonly Finding<'length'>[] {
  const own = ownFindings(feature, value, allowed);
  const isTold = Object.keys(contact.limits).some((end) => end in allowed.limits);
  return isTold ? own : [...own, ...contactFindings(feature, value, allowed, contact)];
}
