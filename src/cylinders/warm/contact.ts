import type { BasedLimits, Basis, Finding, OwnLimits, Span } from '../../judging/index.js';
import { judgeSpan, ownLimitsOr } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';

/** Two parts that must not touch, or must: what is found where the caller has no limit for that. */
export interface Contact {
  /** What the clearance must lie between, so that they do not. */
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

/**
 * Judges a clearance by the caller's limits, at its worse end. Where they leave open whether the parts may touch, that is
 * found besides, but only if it is not ruled out: parts that do not touch may still be far too loose.
 */
export function findingsOn(
  feature: string,
  value: Span<Length>,
  allowed: BasedLimits<'length'>,
  contact: Contact | undefined,
): readonly Finding<'length'>[] {
  const findings: Finding<'length'>[] = [];
  const { limits, uncertainty, rule } = allowed;
  if (limits !== NONE.limits) {
    findings.push(judgeSpan({ feature, dimension: 'length', value, ...allowed }));
  }
  if (contact === undefined || Object.keys(contact.limits).some((end) => end in limits)) {
    return findings;
  }
  const touching = judgeSpan({
    feature,
    dimension: 'length',
    value,
    ...contact,
    ...(uncertainty !== undefined && { uncertainty }),
    ...(rule !== undefined && { rule }),
  });
  if (touching.verdict !== 'within') findings.push(touching);
  return findings;
}
