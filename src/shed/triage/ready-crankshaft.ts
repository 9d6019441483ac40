import { grindPlan, type ServedGrindPlan, undersizeSteps } from '../../crankshaft/index.js';
import { judgeRunout } from '../../crankshaft/internal.js';
import type { Finding } from '../../judging/index.js';
import { holds, namedFrom } from '../../judging/internal.js';
import { journalShape, oddReadings, type Shape } from '../../measuring/index.js';
import {
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
  type EngineKind,
  grindNames,
  grindRequest,
  type JournalKind,
  own,
  readingsAt20C,
  readWith,
} from '../../reading/index.js';
import type { CrankshaftPart, JournalPlace } from '../shed.js';
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
  const reads = listed ? undefined : readsAsBent(part, engine, accuracy);
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
  const misread = [...mains.misread, ...rods.misread];
  const unread: readonly TriageReason[] = worst || bent ? [] : [{ kind: 'runout not read' }];
  const because = [...seen.because, ...mains.because, ...rods.because, ...unread];
  if (misread.length > 0 && !seen.scrap) {
    const atBest = { rods: [], mains: [], repairs: [] };
    return { atBest, aside: 'undecided', findings, because: [...because, ...misread] };
  }
  if (!seen.scrap && [mains, rods].some(({ nearly }) => nearly)) {
    return { atBest: { rods: [], mains: [], repairs: [] }, aside: 'undecided', findings, because };
  }
  const usable = !seen.scrap && rods.ways.length > 0 && mains.ways.length > 0;
  if (!usable) return { findings, because };
  const repairs: readonly Job[] = reads
    ? [{ work: 'straighten', places: [] }, ...seen.repairs]
    : seen.repairs;
  const ready = { rods: rods.ways, mains: mains.ways, repairs };
  if (!judged.ifTrue) return { ready, findings, because };
  const unknown: TriageReason = reads
    ? { kind: 'reads as bent', ...reads }
    : { kind: 'runout not known', ...worst };
  return { atBest: ready, aside: 'undecided', findings, because: [...because, unknown] };
}

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

/** The largest runout that was read, mains first. */
function worstRunout({ mainJournals = [], rodJournals }: CrankshaftPart) {
  const read = [...mainJournals, ...rodJournals].flatMap(({ name: place, runout }) =>
    runout === undefined ? [] : [{ place, runout }],
  );
  return read.reduce<{ readonly place: string; readonly runout: Length } | undefined>(
    (worst, each) => (worst && worst.runout >= each.runout ? worst : each),
    undefined,
  );
}

/** The journal that tells most of a bent crankshaft, by the owner's limits of the runout or the rule of thumb. */
function readsAsBent(
  { mainJournals = [], rodJournals }: CrankshaftPart,
  engine: EngineKind,
  accuracy: Accuracy,
) {
  const judged = (['mainJournals', 'rodJournals'] as const).flatMap((field) =>
    (field === 'mainJournals' ? mainJournals : rodJournals).flatMap(({ name: place, runout }) =>
      runout === undefined
        ? []
        : [
            {
              place,
              finding: judgeRunout(`engine.${field}.runout`, runout, {
                ...own(engine[field]?.runout),
                ...certaintyOf('runout', accuracy),
              }),
            },
          ],
    ),
  );
  return judged
    .filter(({ finding }) => !holds(finding))
    .sort((a, b) => a.finding.margin - b.finding.margin)[0];
}

/** No main that has shells: nothing is in the way. */
const NO_MAINS: Journals = {
  ways: [{ step: 0 as Length, sizes: [], jobs: [] }],
  nearly: false,
  misread: [],
  findings: [],
  because: [],
};

interface Journals {
  readonly ways: readonly Way[];
  /** Whether no step serves, but one may once the journals are measured better. */
  readonly nearly: boolean;
  /** Readings that do not fit the others. Nothing is decided, and no finding given, before they are read again. */
  readonly misread: readonly TriageReason[];
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
  const shapes = places.map(({ readings }, i) =>
    namedFrom(
      () => ({ readings: `${paths[i]}.readings` }),
      () => journalShape(readingsAt20C(readings, 'journals', judged.accuracy)),
    ),
  );
  const misread = places.flatMap(({ name: place, readings }) =>
    oddReadings(readings, readWith('micrometer', judged.accuracy)).map(
      (odd): TriageReason => ({ kind: 'read again', place, odd }),
    ),
  );
  if (misread.length > 0) return { ...NO_MAINS, ways: [], misread };
  return namedFrom(
    () => grindNames(`engine.${field}`, paths),
    () => groundFrom(kind, places, journals, shapes, judged),
  );
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
  return {
    ways,
    nearly: plan.outcome === 'none' && plan.nearly !== undefined,
    misread: [],
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
