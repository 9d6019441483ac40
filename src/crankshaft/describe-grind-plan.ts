import { describeBasis } from '../judging/basis.js';
import { describe, describeSpan, say, type Wording } from '../judging/describe.js';
import { guardObject } from '../judging/guards.js';
import type { Length } from '../quantities/dimensions.js';
import type { GrindPlan, GrindReason } from './grind-plan.js';

/**
 * Says a grind plan in sentences: the decision first, then one for each reason.
 *
 * @param plan - what `grindPlan` gave
 * @param wording - the units to print in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when the plan is not one or the unit system is unknown
 * @example
 * ```ts
 * const plan = grindPlan({
 *   journals: [{
 *     name: 'main 1', smallest: inch(2.4995), largest: inch(2.4998),
 *     outOfRound: inch(0.0002), taper: inch(0.0001),
 *   }],
 *   standard: { min: inch(2.4995), max: inch(2.5000) },
 *   steps: undersizeSteps('inch'),
 * });
 * describeGrindPlan(plan, { units: 'inch' });
 * // ["use as it is at standard, 2.4995 to 2.5000 in", "main 1 is good as it is at standard"]
 * ```
 */
export function describeGrindPlan(plan: GrindPlan, wording: Wording): readonly string[] {
  guardObject('plan', plan);
  guardObject('wording', wording);
  const { units } = wording;
  const reasons = plan.because.map((reason) => describeReason(reason, wording));
  if (plan.outcome === 'none') {
    const who = plan.defeatedBy.length > 0 ? `: defeated by ${plan.defeatedBy.join(', ')}` : '';
    return [`no step serves${who}`, ...reasons];
  }
  const verb = plan.outcome === 'grind' ? 'grind to' : 'use as it is at';
  const target = describeSpan(plan.target, 'length', units);
  return [`${verb} ${nameUndersize(plan.undersize, wording)}, ${target}`, ...reasons];
}

/** `standard` or `0.0200 in under`. */
export function nameUndersize(undersize: Length, { units }: Wording): string {
  return Math.abs(undersize) < 1e-9 ? 'standard' : `${say(undersize, 'length', units)} under`;
}

function describeReason(reason: GrindReason, wording: Wording): string {
  const length = (value: Length) => say(value, 'length', wording.units);
  switch (reason.kind) {
    case 'does not clean up':
      return `${reason.journal} does not clean up at ${nameUndersize(reason.undersize, wording)}: ${length(reason.available)} is left, ${length(reason.target.max)} is wanted`;
    case 'no shells at hand':
      return `no shells at hand for ${nameUndersize(reason.undersize, wording)}`;
    case 'below the minimum':
      return `${nameUndersize(reason.undersize, wording)} is ${length(reason.target.min)}, below the minimum ${length(reason.minimum)}`;
    case 'good as it is':
      return `${reason.journal} is good as it is at ${nameUndersize(reason.undersize, wording)}`;
    case 'cleans up':
      return `${reason.journal} cleans up at ${nameUndersize(reason.undersize, wording)}: ${length(reason.available)} is left`;
    case 'shape':
      return `${reason.journal} must be ground: ${describe(reason.finding, wording)}`;
    case 'allowance':
      return `clean-up allowance ${length(reason.cleanUpAllowance)} (${describeBasis(reason.basis)})`;
  }
}
