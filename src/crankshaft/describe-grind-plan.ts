import { describe, type Wording } from '../judging/index.js';
import {
  describeSpan,
  guardLayout,
  guardWording,
  NANOMETRE,
  noteOf,
  say,
  sayDistance,
} from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { GrindPlan, GrindReason } from './grind-types.js';
import { grindPlanLayout } from './layouts.js';

/**
 * Says a grind plan in sentences: the decision first, then one for each step
 * that was passed over and one for each journal.
 *
 * @param plan - what `grindPlan` gave
 * @param wording - the units to print in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the plan is not one or the unit system is unknown
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
  guardLayout('plan', plan, grindPlanLayout, 'grindPlan');
  guardWording(wording);
  const { units } = wording;
  const reasons = [
    ...passedOver(plan, wording),
    ...plan.because.flatMap((reason) => standing(reason, plan, wording)),
  ];
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
  return Math.abs(undersize) < NANOMETRE ? 'standard' : `${say(undersize, 'length', units)} under`;
}

/** One sentence for each step that was passed over, with all that stood in its way. */
function passedOver({ because }: GrindPlan, wording: Wording): readonly string[] {
  const obstacles = new Map<Length, string[]>();
  for (const reason of because) {
    const text = obstacle(reason, wording);
    if (text === undefined || !('undersize' in reason)) continue;
    obstacles.set(reason.undersize, [...(obstacles.get(reason.undersize) ?? []), text]);
  }
  return [...obstacles].map(
    ([undersize, texts]) => `not ${nameUndersize(undersize, wording)}: ${texts.join('; ')}`,
  );
}

function obstacle(reason: GrindReason, wording: Wording): string | undefined {
  const length = (value: Length) => say(value, 'length', wording.units);
  switch (reason.kind) {
    case 'does not clean up': {
      const { journal, outside, available, target } = reason;
      const short = sayDistance(target.max - available, 'length', wording.units);
      const why = outside === 0 ? 'out of shape or damaged' : outsideBy(outside, wording);
      return `${journal}, ${why}, does not clean up (${length(available)} left, ${short} short)`;
    }
    case 'no shells at hand':
      return 'not enough shells at hand';
    case 'below the minimum':
      return `${reason.journal}, ${length(reason.smallest)}, would be below the minimum ${length(reason.minimum)}`;
    default:
      return undefined;
  }
}

function outsideBy(outside: Length, { units }: Wording): string {
  return `${sayDistance(Math.abs(outside), 'length', units)} ${outside < 0 ? 'below' : 'above'} it`;
}

/** What comes off a journal that is ground. */
function stockOf(name: string, plan: GrindPlan, { units }: Wording): string {
  const journals = plan.outcome === 'none' ? [] : plan.journals;
  const stock = journals.find((journal) => journal.name === name)?.stockRemoved;
  return stock ? `: ${describeSpan(stock, 'length', units)} comes off` : '';
}

/** How each journal stands at the step that was taken. */
function standing(reason: GrindReason, plan: GrindPlan, wording: Wording): readonly string[] {
  const length = (value: Length) => say(value, 'length', wording.units);
  switch (reason.kind) {
    case 'good as it is': {
      const worn = reason.outside === undefined ? '' : `, ${outsideBy(reason.outside, wording)}`;
      const note = reason.basis === undefined ? '' : ` ${noteOf(reason.basis, wording)}`;
      return [
        `${reason.journal} is good as it is at ${nameUndersize(reason.undersize, wording)}${worn}${note}`,
      ];
    }
    case 'cleans up':
      return [
        `${reason.journal} cleans up at ${nameUndersize(reason.undersize, wording)} (${length(reason.available)} left)${stockOf(reason.journal, plan, wording)}`,
      ];
    case 'shape':
      return [`${reason.journal} must be ground: ${describe(reason.finding, wording)}`];
    case 'faults':
      return [`${reason.journal} must be ground: ${reason.faults.join(', ')}`];
    case 'allowance':
      return [
        `with ${length(reason.cleanUpAllowance)} left to clean up ${noteOf(reason.basis, wording)}`,
      ];
    default:
      return [];
  }
}
