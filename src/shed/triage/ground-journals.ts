import { type GrindPlan, grindPlan, type ServedGrindPlan } from '../../crankshaft/index.js';
import { soundAlone } from '../../crankshaft/internal.js';
import type { Finding, Span } from '../../judging/index.js';
import { shifted } from '../../judging/internal.js';
import { journalShapeLimits, judgeShape, type KnownShape } from '../../measuring/internal.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import {
  type Accuracy,
  bestEstimate,
  certaintyOf,
  grindRequest,
  isByRule,
  type JournalKind,
  own,
} from '../../reading/index.js';
import type { JournalPlace } from '../shed.js';
import { measureAgain } from './measure-again.js';
import { faultsOn, type SeenFaults } from './seen-faults.js';
import type { TriageReason } from './triage-types.js';
import type { Way } from './ways.js';

/** What journals are judged with. */
export interface JudgedWithRunout {
  readonly seen: SeenFaults;
  readonly units: UnitSystem;
  readonly accuracy: Accuracy;
  /** The runout of every journal, in place of those that were read [m]. */
  readonly runout?: Length | undefined;
  /** Whether they are judged as if the crankshaft ran true. */
  readonly ifTrue: boolean;
}

/** How the journals of one kind can be made ready. */
export interface Journals {
  readonly ways: readonly Way[];
  /** The ways there may be once they are read again or measured better, where none is sure now; absent if that helps nothing. */
  readonly atBest?: readonly Way[];
  readonly findings: readonly Finding<'length'>[];
  readonly because: readonly TriageReason[];
}

/** How journals that were measured, or of which something was read, can be made ready. */
export function groundFrom(
  kind: 'rods' | 'mains',
  places: readonly (JournalPlace & { readonly shape: KnownShape })[],
  journals: JournalKind,
  steps: readonly Length[],
  judged: JudgedWithRunout,
): Journals {
  const { seen, ifTrue, accuracy } = judged;
  const shapes = places.map(({ shape }) => shape);
  if (places.length === 0) {
    const ways = steps.map((step) => ({ step, sizes: [], jobs: [] }));
    return { ways, findings: [], because: [] };
  }
  const measured = places.map(({ name, runout, faults }, i) => ({
    name,
    shape: shapes[i] as KnownShape,
    faults: faultsOn(faults, seen),
    runout: 'runout' in judged ? judged.runout : runout,
  }));
  const requestBy = (known: Accuracy) => grindRequest(journals, steps, measured, known);
  const estimate = requestBy(bestEstimate(accuracy));
  const ways = steps.flatMap((step) => {
    const plan = grindPlan({ ...estimate, shellsAtHand: [step] });
    return plan.outcome === 'none' ? [] : [wayOf(kind, plan, shapes)];
  });
  const allowed = journalShapeLimits('shape', {
    ...own(journals.shape),
    ...certaintyOf('journal shape', accuracy),
  });
  const findings = shapes.map((each) => judgeShape(each, allowed));
  const [best, known] = [grindPlan(estimate), grindPlan(requestBy(accuracy))];
  // What only an undecided reading condemns is not condemned.
  const plan = best.outcome === 'none' ? known : best;
  // How a bent crankshaft will read once it is straight is not known.
  const sound = 'runout' in judged ? [] : soundAlone(requestBy(accuracy), plan);
  const nearly = plan.outcome === 'none' ? plan.nearly : undefined;
  return {
    ways,
    ...(nearly && { atBest: [wayAt(nearly.undersize, journals.standard, places.length)] }),
    findings: findings.flat(),
    because: [
      {
        kind: 'journals',
        journals: kind,
        plan,
        ...(isByRule(plan, shapes, own(journals.oilClearance).limits) && { byRule: true as const }),
        ...(sound.length > 0 && { sound }),
        ...(ifTrue && { ifTrue: true as const }),
        ...(judged.runout !== undefined && { promised: judged.runout }),
      },
      ...(best.outcome === 'none' ? [] : againIn(kind, best, known, places, findings)),
    ],
  };
}

/** What of the journals is to be measured again, as the plan by best estimates hangs on it. */
function againIn(
  of: 'rods' | 'mains',
  best: ServedGrindPlan,
  known: GrindPlan,
  places: readonly JournalPlace[],
  findings: readonly (readonly Finding<'length'>[])[],
): readonly TriageReason[] {
  const { inDoubt, nearly } = known.outcome === 'none' ? { nearly: known.nearly } : known;
  const decided = ({ outcome, undersize, journals }: ServedGrindPlan) =>
    JSON.stringify([outcome, undersize, journals.map(({ work }) => work)]);
  return measureAgain({
    of,
    places: places.map(({ name }, i) => ({
      name,
      findings: findings[i] ?? [],
      isLeft: best.journals[i]?.work === 'use as it is',
    })),
    doubts: inDoubt?.journals ?? [],
    nearly: nearly?.journals ?? [],
    step: nearly?.undersize ?? inDoubt?.undersize,
    differs: known.outcome === 'none' || decided(known) !== decided(best),
  });
}

/** The work of grinding journals of one kind. */
export const grinding = (kind: 'rods' | 'mains') =>
  kind === 'rods' ? 'grind rod journals' : 'grind main journals';

/** Every journal ground to a step that may serve. */
function wayAt(step: Length, standard: Span<Length>, places: number): Way {
  const to = shifted(standard, -step);
  return { step, sizes: Array.from({ length: places }, () => to), jobs: [] };
}

function wayOf(kind: 'rods' | 'mains', plan: ServedGrindPlan, shapes: readonly KnownShape[]): Way {
  const { undersize: step, target: to, journals } = plan;
  const ground = journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  return {
    step,
    sizes: journals.map((journal, i) => {
      const { smallest: min, largest: max } = shapes[i] as KnownShape;
      return journal.work === 'grind' ? to : { min, max };
    }),
    jobs: ground.length === 0 ? [] : [{ work: grinding(kind), places: ground, step, to }],
  };
}
