import {
  type GrindPlan,
  grindPlan,
  type ServedGrindPlan,
  undersizeSteps,
} from '../../crankshaft/index.js';
import type { Finding, Span } from '../../judging/index.js';
import { namedFrom } from '../../judging/internal.js';
import { journalShape, oddReadings } from '../../measuring/index.js';
import {
  asOthersSay,
  journalShapeLimits,
  judgeShape,
  kindestShape,
  readSoFar,
  type SizeAndShape,
  withStandard,
} from '../../measuring/internal.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import {
  type Accuracy,
  belowAtNoStep,
  bestEstimate,
  certaintyOf,
  grindNames,
  grindRequest,
  type JournalKind,
  own,
  readingsAt20C,
  readWith,
} from '../../reading/index.js';
import type { JournalPlace } from '../shed.js';
import { measureAgain } from './measure-again.js';
import { notMeasured } from './not-measured.js';
import { faultsOn, type SeenFaults } from './seen-faults.js';
import type { TriageReason } from './triage-types.js';
import type { Way } from './ways.js';

/** The sure ways, or those that there may be. */
export const waysOf = ({ ways, atBest = [] }: Journals) => (ways.length > 0 ? ways : atBest);

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

/** No main that has shells: nothing is in the way. */
export const NO_MAINS: Journals = {
  ways: [{ step: 0 as Length, sizes: [], jobs: [] }],
  findings: [],
  because: [],
};

export interface Journals {
  readonly ways: readonly Way[];
  /** The ways there may be once they are read again or measured better, where none is sure now; absent if that helps nothing. */
  readonly atBest?: readonly Way[];
  readonly findings: readonly Finding<'length'>[];
  readonly because: readonly TriageReason[];
}

/** Works out how the journals of one kind can be made ready. */
export function journalsReady(
  kind: 'rods' | 'mains',
  places: readonly JournalPlace[],
  journals: JournalKind,
  judged: JudgedWithRunout,
): Journals {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const steps = namedFrom(
    () => ({ '': `engine.${field}` }),
    () => withStandard(journals.steps ?? undersizeSteps(judged.units)),
  );
  const paths = places.map((_, i) => `part.${field}[${i}]`);
  const read = places.map(({ name: place, readings = [] }, i) =>
    namedFrom(
      () => ({ readings: `${paths[i]}.readings` }),
      () => {
        const soFar = readSoFar(readings);
        if (soFar.lacks !== undefined)
          return {
            soFar,
            shape: kindestShape(readingsAt20C(readings, 'journals', judged.accuracy)),
            misread: [],
          };
        const odd = oddReadings(readings, readWith('micrometer', judged.accuracy));
        const likely = asOthersSay(readings, odd);
        const shape = journalShape(readingsAt20C(likely, 'journals', judged.accuracy));
        const below = belowAtNoStep(readings, shape, journals, steps);
        return {
          soFar,
          shape,
          misread: [
            ...odd.map((one): TriageReason => ({ kind: 'read again', place, odd: one })),
            ...(below === undefined ? [] : [{ kind: 'at no step' as const, place, below }]),
          ],
        };
      },
    ),
  );
  const groundOf = (isIn: (i: number) => boolean) => {
    const known = places.flatMap((place, i) => {
      const { shape } = read[i] as (typeof read)[number];
      return shape && isIn(i) ? [{ ...place, shape, path: paths[i] as string }] : [];
    });
    const of = namedFrom(
      () =>
        grindNames(
          `engine.${field}`,
          known.map(({ path }) => path),
        ),
      () => groundFrom(kind, known, journals, steps, judged),
    );
    return { known, of };
  };
  const isWhole = (i: number) => read[i]?.soFar.lacks === undefined;
  const whole = groundOf(isWhole);
  const misread = read.flatMap((each) => each.misread);
  const unread = notMeasured(
    kind === 'rods' ? 'rod journals' : 'main journals',
    places.map(({ name }, i) => ({ name, soFar: (read[i] as (typeof read)[number]).soFar })),
  );
  if (unread.length === 0 && misread.length === 0) return whole.of;
  const sure = waysOf(whole.of);
  // What was measured to the end condemns the crankshaft, whatever the other journals measure.
  if (misread.length === 0 && sure.length === 0) return whole.of;
  const begun = groundOf(() => true);
  const likely = waysOf(begun.of);
  const [from, best] = likely.length > 0 ? [begun.known, likely] : [whole.known, sure];
  // The size of a journal that was not measured to the end is open, whatever was read of it.
  const open = best.map((way) => ({
    ...way,
    sizes: places.map(({ name }, i) =>
      isWhole(i) ? way.sizes[from.findIndex((each) => each.name === name)] : undefined,
    ),
  }));
  // Of misread journals nothing is decided, and no finding given, before they are read again.
  return {
    ways: [],
    atBest: open,
    findings: misread.length > 0 ? [] : whole.of.findings,
    because: [...misread, ...unread, ...(misread.length > 0 ? [] : measuredSoFar(whole))],
  };
}

/** What the journals that were measured to the end ask for. */
const measuredSoFar = ({
  known,
  of,
}: {
  readonly known: readonly unknown[];
  readonly of: Journals;
}): readonly TriageReason[] =>
  known.length === 0
    ? []
    : of.because.map((reason) =>
        reason.kind === 'journals' ? { ...reason, soFar: true as const } : reason,
      );

function groundFrom(
  kind: 'rods' | 'mains',
  places: readonly (JournalPlace & { readonly shape: SizeAndShape })[],
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
    shape: shapes[i] as SizeAndShape,
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

/** Every journal ground to a step that may serve. */
function wayAt(step: Length, standard: Span<Length>, places: number): Way {
  const to = { min: standard.min - step, max: standard.max - step } as Span<Length>;
  return { step, sizes: Array.from({ length: places }, () => to), jobs: [] };
}

function wayOf(
  kind: 'rods' | 'mains',
  plan: ServedGrindPlan,
  shapes: readonly SizeAndShape[],
): Way {
  const { undersize: step, target: to, journals } = plan;
  const ground = journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  const work = kind === 'rods' ? 'grind rod journals' : 'grind main journals';
  return {
    step,
    sizes: journals.map((journal, i) => {
      const { smallest: min, largest: max } = shapes[i] as SizeAndShape;
      return journal.work === 'grind' ? to : { min, max };
    }),
    jobs: ground.length === 0 ? [] : [{ work, places: ground, step, to }],
  };
}
