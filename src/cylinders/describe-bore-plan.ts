import type { Wording } from '../judging/index.js';
import {
  describeSpan,
  guardLayout,
  guardWording,
  NANOMETRE,
  noteOf,
  say,
  sayFinding,
} from '../judging/internal.js';
import { describeDoubts, describeNearly, outsideBy } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import type { BorePlan, BoreReason } from './bore-types.js';
import { borePlanLayout } from './layouts.js';

/**
 * Describes a bore plan in sentences: the decision, then each reason. With `why: false` only what is to be done or
 * decided is told: no step that was passed over, unless a bore is sleeved, no step serves or only pistons are
 * wanting, and no bore that is good as it is.
 *
 * @param plan - what `borePlan` gave
 * @param wording - the units to print in, and whether to tell why
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the plan is not what `borePlan` gives, or the unit system is unknown
 * @example
 * ```ts
 * const plan = borePlan({
 *   cylinders: [{
 *     name: 'cylinder 1', smallest: inch(3.0002), largest: inch(3.0004),
 *     outOfRound: inch(0.0001), taper: inch(0.0001),
 *   }],
 *   standard: { min: inch(3.0000), max: inch(3.0005) },
 *   steps: oversizeSteps('inch'),
 * });
 * describeBorePlan(plan, { units: 'inch' });
 * // ["no boring needed at standard, 3.0000 to 3.0005 in", "cylinder 1 needs no boring at standard"]
 * ```
 */
export function describeBorePlan(plan: BorePlan, wording: Wording): readonly string[] {
  guardLayout('plan', plan, borePlanLayout, 'borePlan');
  guardWording(wording);
  return [
    boreOrder(plan, wording),
    ...doubts(plan, wording),
    ...plan.because
      .filter((reason) => wording.why !== false || isNews(reason, plan))
      .map((reason) => sentence(reason, wording)),
  ];
}

/** Whether a reason says more than the decision does, or than why another step was not taken. */
function isNews(reason: BoreReason, { outcome, because }: BorePlan): boolean {
  switch (reason.kind) {
    case 'does not clean up':
    case 'wall too thin':
      return outcome === 'none' || outcome === 'sleeve';
    case 'no pistons at hand':
      return because.every(
        (other) => other === reason || !('oversize' in other) || other.oversize !== reason.oversize,
      );
    case 'good as it is':
      return outcome !== 'use as it is' || reason.outside !== undefined;
    default:
      return true;
  }
}

/** What the maker's limits may still allow, so that less metal comes off. */
function doubts(plan: BorePlan, wording: Wording): readonly string[] {
  if (plan.outcome === 'none') return [];
  const { inDoubt, nearly } = plan;
  return [
    ...(inDoubt
      ? [
          describeDoubts(
            nameOversize(inDoubt.oversize, wording),
            inDoubt.cylinders,
            'bore',
            wording,
          ),
        ]
      : []),
    ...(nearly
      ? [describeNearly(nameOversize(nearly.oversize, wording), nearly.cylinders, 'bore')]
      : []),
  ];
}

/** What is to be bored, and to what size. */
export function boreOrder(plan: BorePlan, wording: Wording): string {
  if (plan.outcome === 'none') return 'no pistons are at hand for any step';
  const span = (size: typeof plan.target) => describeSpan(size, 'length', wording.units);
  const step = `${nameOversize(plan.oversize, wording)}, ${span(plan.target)}`;
  if (plan.outcome === 'use as it is') return `no boring needed at ${step}`;
  const named = (work: string) =>
    plan.cylinders
      .filter((cylinder) => cylinder.work === work)
      .map(({ name }) => name)
      .join(', ');
  const sleeves = named('sleeve') === '' ? '' : `sleeve ${named('sleeve')}; `;
  const bored = named('bore');
  const alone =
    named('use as it is') === '' || bored === '' ? '' : ` ${bored}, and none of the others,`;
  return `${sleeves}bore${alone} to ${span(plan.boreTo)} and hone to ${step}`;
}

function sentence(reason: BoreReason, wording: Wording): string {
  const length = (value: Length) => say(value, 'length', wording.units);
  const step = 'oversize' in reason ? nameOversize(reason.oversize, wording) : '';
  switch (reason.kind) {
    case 'does not clean up':
      return `not ${step}: ${reason.cylinder} does not clean up (needs ${length(reason.needed)}, the step starts at ${length(reason.target.min)})`;
    case 'wall too thin':
      return `not ${step}: ${reason.cylinder} would have a wall of ${length(reason.wallLeft)}, below the least of ${length(reason.leastWall)}`;
    case 'no pistons at hand':
      return `not ${step}: no pistons at hand`;
    case 'good as it is': {
      const off = reason.outside === undefined ? '' : `: ${outsideBy(reason.outside, wording)}`;
      const note =
        reason.basis === undefined ? '' : `, within the allowance ${noteOf(reason.basis, wording)}`;
      return `${reason.cylinder} needs no boring at ${step}${off}${note}`;
    }
    case 'cleans up':
      return `${reason.cylinder} cleans up at ${step} (needs ${length(reason.needed)})`;
    case 'size':
      return `${reason.cylinder} is to be bored: it reads ${describeSpan(reason.size, 'length', wording.units)}, and the step asks for ${describeSpan(reason.target, 'length', wording.units)}`;
    case 'shape':
      return `${reason.cylinder} ${reason.finding.grade === 'undecided' ? 'is to be bored' : 'must be bored'}: ${sayFinding(reason.finding, wording)}`;
    case 'faults':
      return `${reason.cylinder} must be bored: ${reason.faults.join(', ')}`;
    case 'allowance':
      return `honing allowance ${length(reason.honingAllowance)} ${noteOf(reason.basis, wording)}`;
  }
}

/** `standard` or `0.0200 in over`. */
export function nameOversize(oversize: Length, { units }: Wording): string {
  return Math.abs(oversize) < NANOMETRE ? 'standard' : `${say(oversize, 'length', units)} over`;
}
