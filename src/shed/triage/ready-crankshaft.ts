import { grindPlan, type ServedGrindPlan, undersizeSteps } from '../../crankshaft/index.js';
import type { Finding, Span } from '../../judging/index.js';
import { namedFrom } from '../../judging/internal.js';
import { journalShape, oddReadings, type Shape } from '../../measuring/index.js';
import {
  asOthersSay,
  journalShapeLimits,
  judgeShape,
  repeatsIn,
  withStandard,
} from '../../measuring/internal.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import {
  type Accuracy,
  accuracyOf,
  certaintyOf,
  grindNames,
  grindRequest,
  type JournalKind,
  own,
  readingsAt20C,
  readWith,
} from '../../reading/index.js';
import type { CrankshaftPart, JournalPlace } from '../shed.js';
import { runoutsOutside, worstRunout } from './runouts.js';
import { faultsOn, type SeenFaults, seenFaults } from './seen-faults.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness, Shop, Way } from './ways.js';

/** How a crankshaft can be made ready: a way for its rod journals and one for its mains. */
export interface ReadyCrankshaft {
  /** One way for every step that serves the rod journals, smallest first. */
  readonly rods: readonly Way[];
  /** One way for every step that serves the mains, smallest first; one empty way if no main has shells. */
  readonly mains: readonly Way[];
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/**
 * Works out how a crankshaft can be made ready, with findings and reasons. What was read of the
 * journals of a bent one, or of one that reads as bent, does not show how they will clean up. They are judged with the runout that
 * the shop promises once it is straight; without a promise it is undecided, and the steps are those
 * that would serve if it came back true.
 */
export function readyCrankshaft(part: CrankshaftPart, shop: Shop): Readiness<ReadyCrankshaft> {
  const { engine, units } = shop;
  const all = [...part.rodJournals, ...(part.mainJournals ?? [])];
  const accuracy = accuracyOf(shop, { micrometer: all.map(({ readings }) => repeatsIn(readings)) });
  const seen = seenFaults('crankshafts', part);
  const listed = seen.works.includes('straighten');
  const worst = worstRunout(part);
  const runouts = listed ? [] : runoutsOutside(part, engine, accuracy);
  const reads = runouts.find(({ finding }) => finding.verdict !== 'undecided');
  const bent = listed || reads !== undefined;
  const promised = part.runoutOnceStraight;
  const judged: Judged = {
    seen,
    units,
    accuracy,
    ...(bent && { runout: promised }),
    ifTrue: bent && promised === undefined,
  };
  const mains =
    engine.mains > 0 && engine.mainJournals
      ? journalsReady('mains', part.mainJournals ?? [], engine.mainJournals, judged)
      : NO_MAINS;
  const rods = journalsReady('rods', part.rodJournals, engine.rodJournals, judged);
  const findings = [...mains.findings, ...rods.findings];
  const unread: readonly TriageReason[] = worst || bent ? [] : [{ kind: 'runout not read' }];
  const because = [...seen.because, ...mains.because, ...rods.because, ...unread];
  const lost = [mains, rods].filter(({ ways }) => ways.length === 0);
  if (seen.scrap || !lost.every(({ atBest }) => atBest)) return { findings, because };
  const repairs: readonly Job[] = reads
    ? [{ work: 'straighten', places: [] }, ...seen.repairs]
    : seen.repairs;
  const ready = { rods: waysOf(rods), mains: waysOf(mains), repairs };
  if (lost.length > 0) {
    return { atBest: { ...ready, repairs: [] }, aside: 'undecided', findings, because };
  }
  if (judged.ifTrue) {
    const unknown: TriageReason = reads
      ? { kind: 'reads as bent', ...reads }
      : { kind: 'runout not known', ...worst };
    return { atBest: ready, aside: 'undecided', findings, because: [...because, unknown] };
  }
  const near = bent ? [] : runouts;
  if (near.length === 0) return { ready, findings, because };
  const again = near.map(({ place, finding }): TriageReason => {
    const { feature } = finding;
    return { kind: 'measure again', finding: { ...finding, feature: `${place}: ${feature}` } };
  });
  return { atBest: ready, aside: 'undecided', findings, because: [...because, ...again] };
}

/** The sure ways, or those that there may be. */
const waysOf = ({ ways, atBest = [] }: Journals) => (ways.length > 0 ? ways : atBest);

/** What journals are judged with. */
interface Judged {
  readonly seen: SeenFaults;
  readonly units: UnitSystem;
  readonly accuracy: Accuracy;
  /** The runout of every journal, in place of those that were read [m]. */
  readonly runout?: Length | undefined;
  /** Whether they are judged as if the crankshaft ran true. */
  readonly ifTrue: boolean;
}

/** No main that has shells: nothing is in the way. */
const NO_MAINS: Journals = {
  ways: [{ step: 0 as Length, sizes: [], jobs: [] }],
  findings: [],
  because: [],
};

interface Journals {
  readonly ways: readonly Way[];
  /** The ways there may be once they are read again or measured better, where none is sure now; absent if that helps nothing. */
  readonly atBest?: readonly Way[];
  readonly findings: readonly Finding<'length'>[];
  readonly because: readonly TriageReason[];
}

function journalsReady(
  kind: 'rods' | 'mains',
  places: readonly JournalPlace[],
  journals: JournalKind,
  judged: Judged,
): Journals {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const paths = places.map((_, i) => `part.${field}[${i}]`);
  const read = places.map(({ name: place, readings }, i) =>
    namedFrom(
      () => ({ readings: `${paths[i]}.readings` }),
      () => {
        const odd = oddReadings(readings, readWith('micrometer', judged.accuracy));
        const likely = asOthersSay(readings, odd);
        return {
          shape: journalShape(readingsAt20C(likely, 'journals', judged.accuracy)),
          misread: odd.map((one): TriageReason => ({ kind: 'read again', place, odd: one })),
        };
      },
    ),
  );
  const ground = namedFrom(
    () => grindNames(`engine.${field}`, paths),
    () =>
      groundFrom(
        kind,
        places,
        journals,
        read.map(({ shape }) => shape),
        judged,
      ),
  );
  const misread = read.flatMap((each) => each.misread);
  if (misread.length === 0) return ground;
  // Nothing is decided, and no finding given, before they are read again.
  return { ways: [], atBest: waysOf(ground), findings: [], because: misread };
}

function groundFrom(
  kind: 'rods' | 'mains',
  places: readonly JournalPlace[],
  journals: JournalKind,
  shapes: readonly Shape[],
  judged: Judged,
): Journals {
  const { seen, units, ifTrue, accuracy } = judged;
  const steps = withStandard(journals.steps ?? undersizeSteps(units));
  const request = grindRequest(
    journals,
    steps,
    places.map(({ name, runout, faults }, i) => ({
      name,
      shape: shapes[i] as Shape,
      faults: faultsOn(faults, seen),
      runout: 'runout' in judged ? judged.runout : runout,
    })),
    accuracy,
  );
  const ways = steps.flatMap((step) => {
    const plan = grindPlan({ ...request, shellsAtHand: [step] });
    return plan.outcome === 'none' ? [] : [wayOf(kind, plan, shapes)];
  });
  const allowed = journalShapeLimits('shape', {
    ...own(journals.shape),
    ...certaintyOf('journal shape', accuracy),
  });
  const plan = grindPlan(request);
  const nearly = plan.outcome === 'none' ? plan.nearly : undefined;
  return {
    ways,
    ...(nearly && { atBest: [wayAt(nearly.undersize, journals.standard, places.length)] }),
    findings: shapes.flatMap((each) => judgeShape(each, allowed)),
    because: [
      {
        kind: 'journals',
        journals: kind,
        plan,
        ...(ifTrue && { ifTrue: true as const }),
        ...(judged.runout !== undefined && { promised: judged.runout }),
      },
    ],
  };
}

/** Every journal ground to a step that may serve. */
function wayAt(step: Length, standard: Span<Length>, places: number): Way {
  const to = { min: standard.min - step, max: standard.max - step } as Span<Length>;
  return { step, sizes: Array.from({ length: places }, () => to), jobs: [] };
}

function wayOf(kind: 'rods' | 'mains', plan: ServedGrindPlan, shapes: readonly Shape[]): Way {
  const { undersize: step, target: to, journals } = plan;
  const ground = journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  const work = kind === 'rods' ? 'grind rod journals' : 'grind main journals';
  return {
    step,
    sizes: journals.map((journal, i) => {
      const { smallest: min, largest: max } = shapes[i] as Shape;
      return journal.work === 'grind' ? to : { min, max };
    }),
    jobs: ground.length === 0 ? [] : [{ work, places: ground, step, to }],
  };
}
