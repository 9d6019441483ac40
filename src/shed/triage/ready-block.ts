import {
  type BorePlan,
  type BoreRequest,
  borePlan,
  oversizeSteps,
  type ServedBorePlan,
} from '../../cylinders/index.js';
import { boreShapeLimits } from '../../cylinders/internal.js';
import type { Span } from '../../judging/index.js';
import { type Names, namedFrom } from '../../judging/internal.js';
import { boreShape } from '../../measuring/index.js';
import {
  asOthersSay,
  judgeShape,
  oddInBore,
  repeatsIn,
  withStandard,
} from '../../measuring/internal.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import {
  type Accuracy,
  accuracyOf,
  type BoreKind,
  bestEstimate,
  boreRequest,
  readingsAt20C,
  readWith,
} from '../../reading/index.js';
import type { BlockPart, BorePlace } from '../shed.js';
import { measureAgain } from './measure-again.js';
import { mended } from './mended.js';
import { readyHousings } from './ready-housings.js';
import { faultsOn, type SeenFaults, seenFaults } from './seen-faults.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness, Shop, Way } from './ways.js';

/** How a block can be made ready. */
export interface ReadyBlock {
  /** One way for every step that serves, fewest sleeves first, then smallest step. */
  readonly bores: readonly Way[];
  /** Its main housings, after any resizing [m]. */
  readonly housings: readonly Span<Length>[];
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how a block can be made ready, with findings and reasons. */
export function readyBlock(part: BlockPart, shop: Shop): Readiness<ReadyBlock> {
  const { engine, units } = shop;
  const seen = seenFaults('blocks', part, part.bores);
  const accuracy = accuracyOf(shop, {
    boreGauge: part.bores.map(({ readings }) => repeatsIn(readings)),
  });
  const places = engine.mains > 0 ? (part.mainHousings ?? []) : [];
  const housings = namedFrom(
    () => ({ housings: 'part.mainHousings', limits: 'engine.mainHousing' }),
    () =>
      readyHousings(places, engine.mainHousing, seen.works.includes('resize housings'), accuracy),
  );
  const { smallest, again, bores, misread } = namedFrom(
    () => boreNames(part.bores),
    () => {
      const read = part.bores.map((place, i) => likely(place, i, accuracy));
      const requestBy = (how: Accuracy) =>
        requestFor(
          read.map(({ place }) => place),
          engine.bores,
          seen,
          units,
          how,
        );
      const request = requestBy(bestEstimate(accuracy));
      const plan = borePlan(request);
      return {
        smallest: plan,
        again: againIn(plan, requestBy(accuracy)),
        bores: waysOf(request),
        misread: read.flatMap((each) => each.misread),
      };
    },
  );
  const because = [
    ...seen.because,
    ...(misread.length > 0 ? misread : [{ kind: 'bores', plan: smallest } as const, ...again]),
    ...housings.because,
  ];
  const { findings } = housings;
  if (seen.scrap || bores.length === 0) return { findings, because };
  const best = housings.ready ?? housings.atBest;
  const mend = mended(seen, shop);
  const block = {
    bores,
    housings: best?.sizes ?? [],
    repairs: [...mend.repairs, ...seen.repairs, ...(best?.repairs ?? [])],
  };
  if (misread.length > 0) {
    return { atBest: { ...block, repairs: [] }, aside: 'undecided', findings, because };
  }
  return housings.ready === undefined || mend.aside
    ? { atBest: block, aside: housings.aside ?? 'not as it is', findings, because }
    : { ready: block, findings, because };
}

/** A bore with its odd readings as the others say, and what is to be read again of it. */
function likely(place: BorePlace, i: number, accuracy: Accuracy) {
  const { name, readings, ringTravel } = place;
  const odd = namedFrom(
    () => readNames(i),
    () => oddInBore(readings, ringTravel, readWith('boreGauge', accuracy)),
  );
  return {
    place: { ...place, readings: asOthersSay(readings, odd) },
    misread: odd.map((one): TriageReason => ({ kind: 'read again', place: name, odd: one })),
  };
}

/** Where the inputs of the shape of a bore come from. */
const readNames = (i: number): Names => ({
  readings: `cylinders[${i}].readings`,
  'options.ringTravel': `cylinders[${i}].ringTravel`,
});

function requestFor(
  places: readonly BorePlace[],
  bores: BoreKind,
  seen: SeenFaults,
  units: UnitSystem,
  accuracy: Accuracy,
): BoreRequest {
  return boreRequest(
    bores,
    withStandard(bores.steps ?? oversizeSteps(units)),
    places.map(({ name, readings, ringTravel, wall, faults }, i) => ({
      name,
      shape: namedFrom(
        () => readNames(i),
        () =>
          boreShape(
            readingsAt20C(readings, 'bores', accuracy),
            ringTravel === undefined ? {} : { ringTravel },
          ),
      ),
      faults: faultsOn(faults, seen),
      wall,
    })),
    accuracy,
  );
}

/** Where the inputs of a bore request come from: the engine, and each bore. */
function boreNames(bores: readonly BorePlace[]): Names {
  const each = bores.flatMap((_, i) => [
    [`cylinders[${i}]`, `part.bores[${i}]`],
    [`cylinders[${i}].smallest`, `part.bores[${i}].readings`],
    [`cylinders[${i}].largest`, `part.bores[${i}].readings`],
  ]);
  return {
    '': 'engine.bores',
    'shape.limits': 'engine.bores.shape',
    ...Object.fromEntries(each),
  };
}

/** What of the bores is to be measured again, as the plan by best estimates hangs on it. */
function againIn(best: BorePlan, request: BoreRequest): readonly TriageReason[] {
  const known = borePlan(request);
  if (best.outcome === 'none' || known.outcome === 'none') return [];
  const { inDoubt, nearly } = known;
  const { shape = {}, standard, stroke } = request;
  const allowed = boreShapeLimits({ outOfRound: shape, taper: shape }, standard.min, stroke, {
    outOfRound: 'shape',
    taper: 'shape',
  });
  const decided = ({ outcome, oversize, cylinders }: ServedBorePlan) =>
    JSON.stringify([outcome, oversize, cylinders.map(({ work }) => work)]);
  return measureAgain({
    of: 'bores',
    places: request.cylinders.map((cylinder, i) => ({
      name: cylinder.name,
      findings: judgeShape(cylinder, allowed.outOfRound, allowed.taper),
      isLeft: best.cylinders[i]?.work === 'use as it is',
    })),
    doubts: inDoubt?.cylinders ?? [],
    nearly: nearly?.cylinders ?? [],
    step: nearly?.oversize ?? inDoubt?.oversize,
    differs: decided(known) !== decided(best),
  });
}

/** The work on the bores for every step that serves. */
function waysOf(request: BoreRequest): readonly Way[] {
  const ways = request.steps.flatMap((step): Way[] => {
    const plan = borePlan({ ...request, pistonsAtHand: [step] });
    if (plan.outcome === 'none') return [];
    const { oversize, target: to, cylinders } = plan;
    const placesFor = (work: 'bore' | 'sleeve') =>
      cylinders.filter((cylinder) => cylinder.work === work).map(({ name }) => name);
    return [
      {
        step: oversize,
        sizes: cylinders.map(({ work }, i) => {
          const { smallest: min, largest: max } = request.cylinders[
            i
          ] as BoreRequest['cylinders'][number];
          return work === 'use as it is' ? { min, max } : to;
        }),
        jobs: (['bore', 'sleeve'] as const)
          .map((work): Job => ({ work, places: placesFor(work), step: oversize, to }))
          .filter(({ places }) => places.length > 0),
      },
    ];
  });
  return ways.sort((a, b) => sleevesOf(a) - sleevesOf(b));
}

const sleevesOf = ({ jobs }: Way) => jobs.find(({ work }) => work === 'sleeve')?.places.length ?? 0;
