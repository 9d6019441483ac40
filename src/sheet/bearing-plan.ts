import { type GrindPlan, type GrindReason, grindPlan } from '../crankshaft/index.js';
import { soundAlone } from '../crankshaft/internal.js';
import type { Basis, Finding, SizeOrSpan } from '../judging/index.js';
import { holds } from '../judging/internal.js';
import type { Shape } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import {
  type Accuracy,
  accuracyOf,
  certaintyOf,
  grindRequest,
  type JournalKind,
  type ShellPairs,
  sameStep,
} from '../reading/index.js';
import { clearanceAt, type FittedShells } from './inspect-fitted.js';
import type { BearingSheet } from './sheet.js';

/** A bearing and the shells found in it. */
interface Found {
  readonly name: string;
  readonly fitted?: FittedShells;
}

/** A bearing of the sheet and the shape of its journal. */
export interface Measured {
  readonly bearing: BearingSheet;
  /** At 20 °C, as far as it is known how warm it was; if it was measured. */
  readonly housingBore: SizeOrSpan<Length> | undefined;
  readonly shape: Shape;
  readonly accuracy: Accuracy;
}

/**
 * Chooses the step. Journals within limits are left alone, whatever shells there are. If any must be
 * ground, a step with enough shells on the shelf is preferred; otherwise the smallest step is taken
 * and shells are bought.
 */
export function planFor(
  journals: JournalKind,
  steps: readonly Length[],
  shelf: readonly ShellPairs[],
  measured: readonly Measured[],
): GrindPlan {
  const request = grindRequest(
    journals,
    steps,
    measured.map(({ bearing: { name, journal }, shape }) => ({
      name,
      shape,
      runout: journal.runout,
    })),
    measured[0]?.accuracy ?? accuracyOf({}),
  );
  const smallest = grindPlan(request);
  if (smallest.outcome !== 'grind') return smallest;
  const shellsAtHand = steps.filter((step) => pairsOf(shelf, step) >= measured.length);
  const served = grindPlan({ ...request, shellsAtHand });
  if (served.outcome === 'none') return smallest;
  // Shells can be bought for a step that would spare the journals.
  const { inDoubt, nearly } = smallest;
  return { ...served, ...(inDoubt && { inDoubt }), ...(nearly && { nearly }) };
}

function pairsOf(shelf: readonly ShellPairs[], undersize: Length): number {
  return shelf
    .filter((shell) => sameStep(shell.undersize, undersize))
    .reduce((sum, shell) => sum + shell.pairs, 0);
}

/**
 * How far outside their size journals lie that only the rule of thumb for sizes keeps from being used, if the
 * clearance of each holds as it is: then that rule has nothing to say.
 */
export function worthKeeping(
  plan: GrindPlan,
  reports: readonly Found[],
  accuracy: Accuracy,
): Length | undefined {
  if (plan.outcome === 'none' || plan.inDoubt === undefined) return undefined;
  const { undersize, journals } = plan.inDoubt;
  const holdsAsItIs = journals.every(({ name, finding }) => {
    const left = leftAt(name, undersize, reports);
    return finding === undefined && left !== undefined && holds(left);
  });
  if (!holdsAsItIs) return undefined;
  // The allowance covers what the sizes are not known to: their clearances hold with that taken into account.
  const { uncertainty = 0 } = certaintyOf('journal size', accuracy, plan.target.max);
  return (largestOf(journals.map(({ outside }) => Math.abs(outside ?? 0))) + uncertainty) as Length;
}

/** Says of a plan made with a wider allowance who allows it: the clearance, or the rule of thumb. Nobody specified it. */
export function allowedByClearance(plan: GrindPlan, doubtful: GrindPlan): GrindPlan {
  if (doubtful.outcome === 'none' || doubtful.inDoubt === undefined) return plan;
  const { journals } = doubtful.inDoubt;
  const because = plan.because.map((reason): GrindReason => {
    if (reason.kind !== 'good as it is' || reason.basis === undefined) return reason;
    const isKept = journals.some(({ name }) => name === reason.journal);
    const rule = journals.find(({ basis }) => basis !== undefined)?.basis;
    return { ...reason, basis: isKept || rule === undefined ? CLEARANCE_HOLDS : rule };
  });
  return { ...plan, because };
}

const CLEARANCE_HOLDS: Basis = {
  kind: 'computed',
  how: 'its clearance with shells of that step holds as it is',
};

/** The clearance that shells of a step leave a bearing as it is, if the shells found in it show it. */
function leftAt(
  name: string,
  step: Length,
  reports: readonly Found[],
): Finding<'length'> | undefined {
  const { fitted } = reports.find((report) => report.name === name) ?? {};
  return fitted && clearanceAt(fitted, step);
}

/** Doubt about grinding helps nobody where the clearance would be wrong without it. */
export function withoutIdleDoubt(plan: GrindPlan, reports: readonly Found[]): GrindPlan {
  if (plan.outcome === 'none' || plan.inDoubt === undefined) return plan;
  const { inDoubt, ...sure } = plan;
  const isIdle = inDoubt.journals.some(({ name }) => {
    const left = leftAt(name, inDoubt.undersize, reports);
    return left !== undefined && !holds(left) && left.grade !== 'undecided';
  });
  return isIdle ? sure : plan;
}

/** The undersize at which a journal that is to be ground needs no work by itself. */
export function soundStep(
  plan: GrindPlan,
  { bearing: { name, journal }, shape, accuracy }: Measured,
  journals: JournalKind,
  steps: readonly Length[],
  fitted: FittedShells | undefined,
): Length | undefined {
  const requestBy = (by: JournalKind) =>
    grindRequest(by, steps, [{ name, shape, runout: journal.runout }], accuracy);
  const alone = grindPlan(requestBy(journals));
  const sizeAllowance = worthKeeping(alone, [{ name, ...(fitted && { fitted }) }], accuracy);
  const request = requestBy(
    sizeAllowance === undefined ? journals : { ...journals, sizeAllowance },
  );
  return soundAlone(request, plan)[0]?.undersize;
}
