import { grindPlan, type ServedGrindPlan, undersizeSteps } from '../../crankshaft/index.js';
import type { Finding } from '../../judging/index.js';
import { namedFrom } from '../../judging/internal.js';
import { journalShape, type Shape } from '../../measuring/index.js';
import { journalShapeLimits, judgeShape, withStandard } from '../../measuring/internal.js';
import type { UnitSystem } from '../../quantities/index.js';
import {
  type EngineKind,
  grindNames,
  grindRequest,
  type JournalKind,
  own,
} from '../../reading/index.js';
import type { CrankshaftPart, JournalPlace } from '../shed.js';
import { faultsOn, type SeenFaults, seenFaults } from './seen-faults.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness, Way } from './ways.js';

/** How a crankshaft can be made ready: a way for its rod journals and one for its mains. */
export interface ReadyCrankshaft {
  /** One way for every step that serves the rod journals, smallest first. */
  readonly rods: readonly Way[];
  /** One way for every step that serves the mains, smallest first; one empty way if no main has shells. */
  readonly mains: readonly Way[];
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how a crankshaft can be made ready, with findings and reasons. */
export function readyCrankshaft(
  part: CrankshaftPart,
  engine: EngineKind,
  units: UnitSystem,
): Readiness<ReadyCrankshaft> {
  const seen = seenFaults('crankshafts', part);
  const rods = journalsReady('rods', part.rodJournals, engine.rodJournals, seen, units);
  const mains =
    engine.mains > 0 && engine.mainJournals
      ? journalsReady('mains', part.mainJournals ?? [], engine.mainJournals, seen, units)
      : { ways: [{ step: 0, sizes: [], jobs: [] } as unknown as Way], findings: [], because: [] };
  const usable = !seen.scrap && rods.ways.length > 0 && mains.ways.length > 0;
  return {
    ...(usable && { ready: { rods: rods.ways, mains: mains.ways, repairs: seen.repairs } }),
    findings: [...rods.findings, ...mains.findings],
    because: [...seen.because, ...rods.because, ...mains.because],
  };
}

interface Journals {
  readonly ways: readonly Way[];
  readonly findings: readonly Finding<'length'>[];
  readonly because: readonly TriageReason[];
}

function journalsReady(
  kind: 'rods' | 'mains',
  places: readonly JournalPlace[],
  journals: JournalKind,
  seen: SeenFaults,
  units: UnitSystem,
): Journals {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const paths = places.map((_, i) => `part.${field}[${i}]`);
  const shapes = places.map(({ readings }, i) =>
    namedFrom(
      () => ({ readings: `${paths[i]}.readings` }),
      () => journalShape(readings),
    ),
  );
  return namedFrom(
    () => grindNames(`engine.${field}`, paths),
    () => groundFrom(kind, places, journals, shapes, seen, units),
  );
}

function groundFrom(
  kind: 'rods' | 'mains',
  places: readonly JournalPlace[],
  journals: JournalKind,
  shapes: readonly Shape[],
  seen: SeenFaults,
  units: UnitSystem,
): Journals {
  const steps = withStandard(journals.steps ?? undersizeSteps(units));
  const request = grindRequest(
    journals,
    steps,
    places.map(({ name, runout, faults }, i) => ({
      name,
      shape: shapes[i] as Shape,
      faults: faultsOn(faults, seen),
      // A straightened crankshaft runs true, so the old runout no longer counts.
      runout: seen.straightened ? undefined : runout,
    })),
  );
  const ways = steps.flatMap((step) => {
    const plan = grindPlan({ ...request, shellsAtHand: [step] });
    return plan.outcome === 'none' ? [] : [wayOf(kind, plan, shapes)];
  });
  const allowed = journalShapeLimits('shape', own(journals.shape));
  return {
    ways,
    findings: shapes.flatMap((each) => judgeShape(each, allowed)),
    because: [{ kind: 'journals', journals: kind, plan: grindPlan(request) }],
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
