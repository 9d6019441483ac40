import type { Basis, Finding, Wording } from '../judging/index.js';
import {
  describeSpan,
  guardLayout,
  guardWording,
  NANOMETRE,
  noteOf,
  say,
  sayDistance,
  sayFinding,
} from '../judging/internal.js';
import { describeDoubts, describeNearly, outsideBy } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import type { GrindPlan, GrindReason } from './grind-types.js';
import { grindPlanLayout } from './layouts.js';

/**
 * Describes a grind plan in sentences: the decision, then each step that was
 * passed over, then each journal. With `why: false` only what is to be done or
 * decided is told: no step that was passed over, unless no step serves or only
 * shells are wanting for it, and no journal that is good as it is.
 *
 * @param plan - what `grindPlan` gave
 * @param wording - the units to print in, and whether to tell why
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the plan is not what `grindPlan` gives, or the unit system is unknown
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
 * // ["no grinding needed at standard, 2.4995 to 2.5000 in", "main 1 needs no grinding at standard"]
 * ```
 */
export function describeGrindPlan(plan: GrindPlan, wording: Wording): readonly string[] {
  guardLayout('plan', plan, grindPlanLayout, 'grindPlan');
  guardWording(wording);
  const { units } = wording;
  const reasons = [
    ...doubts(plan, wording),
    ...nearlyServed(plan, wording),
    ...passedOver(plan, wording),
    ...plan.because.flatMap((reason) => describeJournal(reason, plan, wording)),
  ];
  if (plan.outcome === 'none') {
    const who = plan.defeatedBy.length > 0 ? `: ${plan.defeatedBy.join(', ')} cannot clean up` : '';
    const none = plan.nearly ? 'no step surely serves' : `no step serves${who}`;
    return [none, ...reasons];
  }
  const verb = plan.outcome === 'grind' ? 'grind to' : 'no grinding needed at';
  const target = describeSpan(plan.target, 'length', units);
  const finish = plan.outcome === 'grind' ? [`${FINISH.how} ${noteOf(FINISH.basis, wording)}`] : [];
  return [`${verb} ${nameUndersize(plan.undersize, wording)}, ${target}`, ...reasons, ...finish];
}

/** What a grinder is told besides the size. */
const FINISH: { readonly how: string; readonly basis: Basis } = {
  how: "keep the fillets at the maker's radius, as a sharp one starts a crack, and polish to 8 to 12 µin (0.20 to 0.30 µm)",
  basis: {
    kind: 'published',
    source: 'TM 5-3895-346-14, p. 110',
    forAnotherEngine: true,
  },
};

/** `standard` or `0.0200 in under`. */
export function nameUndersize(undersize: Length, { units }: Wording): string {
  return Math.abs(undersize) < NANOMETRE ? 'standard' : `${say(undersize, 'length', units)} under`;
}

/** What the maker's limits may still allow, so that less metal comes off. */
function doubts(plan: GrindPlan, wording: Wording): readonly string[] {
  if (plan.outcome === 'none' || plan.inDoubt === undefined) return [];
  const { undersize, journals } = plan.inDoubt;
  return [describeDoubts(nameUndersize(undersize, wording), journals, 'grind', wording)];
}

/** A smaller step that better readings may allow. */
function nearlyServed({ nearly }: GrindPlan, wording: Wording): readonly string[] {
  if (nearly === undefined) return [];
  return [describeNearly(nameUndersize(nearly.undersize, wording), nearly.journals, 'grind')];
}

/** One sentence for each step that was passed over, with everything that ruled it out. */
function passedOver({ outcome, because }: GrindPlan, wording: Wording): readonly string[] {
  const obstacles = new Map<Length, string[]>();
  for (const reason of because) {
    const text = obstacle(reason, wording);
    if (text === undefined || !('undersize' in reason)) continue;
    obstacles.set(reason.undersize, [...(obstacles.get(reason.undersize) ?? []), text]);
  }
  const isTold = wording.why !== false || outcome === 'none';
  return [...obstacles]
    .filter(([, texts]) => isTold || texts.every((text) => text === NO_SHELLS))
    .map(([undersize, texts]) => `not ${nameUndersize(undersize, wording)}: ${texts.join('; ')}`);
}

const NO_SHELLS = 'not enough shells at hand';

function obstacle(reason: GrindReason, wording: Wording): string | undefined {
  const length = (value: Length) => say(value, 'length', wording.units);
  switch (reason.kind) {
    case 'does not clean up': {
      const { journal, outside, available, target } = reason;
      const short = sayDistance(target.max - available, 'length', wording.units);
      const why = outside === 0 ? 'not shown to be good as it is' : outsideBy(outside, wording);
      return `${journal} is ${why} and does not clean up (clean at ${length(available)}, ${short} short)`;
    }
    case 'no shells at hand':
      return NO_SHELLS;
    case 'below the minimum':
      return reason.nearly
        ? `${reason.journal} is ${length(reason.smallest)}, too near the minimum of ${length(reason.minimum)} for how well it is measured`
        : `${reason.journal} would be ${length(reason.smallest)}, below the minimum of ${length(reason.minimum)}`;
    default:
      return undefined;
  }
}

/** The stock that grinding takes off a journal. */
function stockOf(name: string, plan: GrindPlan, { units }: Wording): string {
  const journals = plan.outcome === 'none' ? [] : plan.journals;
  const stock = journals.find((journal) => journal.name === name)?.stockRemoved;
  return stock ? `: ${describeSpan(stock, 'length', units)} comes off` : '';
}

/** Each journal at the step that was chosen. */
function describeJournal(
  reason: GrindReason,
  plan: GrindPlan,
  wording: Wording,
): readonly string[] {
  const length = (value: Length) => say(value, 'length', wording.units);
  switch (reason.kind) {
    case 'good as it is': {
      const isNews = plan.outcome !== 'use as it is' || reason.outside !== undefined;
      if (wording.why === false && !isNews) return [];
      const off = reason.outside === undefined ? '' : `: ${outsideBy(reason.outside, wording)}`;
      const note =
        reason.basis === undefined ? '' : `, within the allowance ${noteOf(reason.basis, wording)}`;
      return [
        `${reason.journal} needs no grinding at ${nameUndersize(reason.undersize, wording)}${off}${note}`,
      ];
    }
    case 'cleans up':
      return [
        `${reason.journal} cleans up at ${nameUndersize(reason.undersize, wording)} (clean at ${length(reason.available)})${stockOf(reason.journal, plan, wording)}`,
      ];
    case 'shape':
      return [
        `${reason.journal} ${whyGround(reason.finding)}: ${sayFinding(reason.finding, wording)}`,
      ];
    case 'faults':
      return [`${reason.journal} must be ground: ${reason.faults.join(', ')}`];
    case 'allowance':
      return [
        `clean-up allowance ${length(reason.cleanUpAllowance)} ${noteOf(reason.basis, wording)}`,
      ];
    default:
      return [];
  }
}

/** Whether a journal must be ground for its shape, by the rule alone, or for want of better readings. */
function whyGround({ verdict, grade }: Finding<'length'>): string {
  if (verdict === 'undecided') return 'is not shown to be true enough';
  return grade === 'undecided' ? 'is to be ground' : 'must be ground';
}
