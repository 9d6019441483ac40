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
import {
  asOthersSay,
  judgeShape,
  kindestShape,
  oddInBore,
  readSoFar,
  repeatsIn,
  type SizeAndShape,
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
import { boresOf, mainHousingsOf } from '../places-of.js';
import type { BlockPart, BorePlace } from '../shed.js';
import { measureAgain } from './measure-again.js';
import { mended } from './mended.js';
import { notMeasured } from './not-measured.js';
import { readyHousings } from './ready-housings.js';
import { faultsOn, type SeenFaults, seenFaults } from './seen-faults.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness, Shop, Way } from './ways.js';

/** How a block can be made ready. */
export interface ReadyBlock {
  /** One way for every step that serves, fewest sleeves first, then smallest step. */
  readonly bores: readonly Way[];
  /** Its main housings, after any resizing [m]. */
  readonly housings: readonly (Span<Length> | undefined)[];
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how a block can be made ready, with findings and reasons. */
export function readyBlock(part: BlockPart, shop: Shop): Readiness<ReadyBlock> {
  const { engine, units } = shop;
  const places = boresOf(part, engine);
  const seen = seenFaults('blocks', part, places);
  const accuracy = accuracyOf(shop, {
    boreGauge: places.map(({ readings = [] }) => repeatsIn(readings)),
  });
  const housings = namedFrom(
    () => ({ housings: 'part.mainHousings', limits: 'engine.mainHousing' }),
    () =>
      readyHousings(
        'main housings',
        mainHousingsOf(part, engine),
        engine.mainHousing,
        seen.works.includes('resize housings'),
        accuracy,
      ),
  );
  const { bores, misread, unread, told } = namedFrom(
    () => boreNames(places),
    () => boresReady(places, { bores: engine.bores, seen, units, accuracy }),
  );
  const because = [...seen.because, ...misread, ...unread, ...told, ...housings.because];
  const { findings } = housings;
  if (seen.scrap || bores.length === 0) return { findings, because };
  const best = housings.ready ?? housings.atBest;
  const mend = mended(seen, shop);
  const block = {
    bores,
    housings: best?.sizes ?? [],
    repairs: [...mend.repairs, ...seen.repairs, ...(best?.repairs ?? [])],
  };
  if (mend.aside || housings.aside === 'not as it is') {
    return { atBest: block, aside: 'not as it is', findings, because };
  }
  if (misread.length > 0) {
    return { atBest: { ...block, repairs: [] }, aside: 'undecided', findings, because };
  }
  return housings.ready === undefined || unread.length > 0
    ? { atBest: block, aside: 'undecided', findings, because }
    : { ready: block, findings, because };
}

/** What bores are judged with. */
interface JudgedWith {
  readonly bores: BoreKind;
  readonly seen: SeenFaults;
  readonly units: UnitSystem;
  readonly accuracy: Accuracy;
}

/** How the bores of a block can be made ready. Those that were not read are open: they may be of any size. */
function boresReady(places: readonly BorePlace[], judged: JudgedWith) {
  const { accuracy } = judged;
  const read = places.map((place, i) => likely(place, i, accuracy));
  const misread = read.flatMap((each) => each.misread);
  const unread = notMeasured(
    'bores',
    read.map(({ place: { name }, soFar }) => ({ name, soFar })),
  );
  const estimate = bestEstimate(accuracy);
  const isWhole = (name: string) => !unread.some((each) => each.places.includes(name));
  const whole = read.filter(({ place }) => isWhole(place.name));
  const request = requestFor(whole, judged, estimate);
  const plan = whole.length > 0 ? borePlan(request) : undefined;
  const told: readonly TriageReason[] =
    plan === undefined || misread.length > 0
      ? []
      : [
          { kind: 'bores', plan, ...(unread.length > 0 && { soFar: true as const }) },
          ...againIn(plan, requestFor(whole, judged, accuracy)),
        ];
  const sure = waysOf(request, places, isWhole);
  if (unread.length === 0) return { bores: sure, misread, unread, told };
  const begun = requestFor(
    read.filter(({ soFar }) => soFar.size),
    judged,
    estimate,
  );
  const best = waysOf(begun, places, isWhole);
  return { bores: best.length > 0 ? best : sure, misread, unread, told };
}

/** A bore with its odd readings as the others say, and what is to be read again of it. */
function likely(place: BorePlace, i: number, accuracy: Accuracy) {
  const { name, readings = [], ringTravel } = place;
  const soFar = namedFrom(
    () => readNames(i),
    () => readSoFar(readings, ringTravel),
  );
  if (soFar.lacks !== undefined) return { i, place: { ...place, readings }, soFar, misread: [] };
  const odd = namedFrom(
    () => readNames(i),
    () => oddInBore(readings, ringTravel, readWith('boreGauge', accuracy)),
  );
  return {
    i,
    soFar,
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
  read: readonly Pick<ReturnType<typeof likely>, 'i' | 'place'>[],
  { bores, seen, units }: JudgedWith,
  accuracy: Accuracy,
): BoreRequest {
  return boreRequest(
    bores,
    withStandard(bores.steps ?? oversizeSteps(units)),
    read.map(({ i, place: { name, readings, ringTravel, wall, faults } }) => ({
      name,
      shape: namedFrom(
        () => readNames(i),
        () => kindestShape(readingsAt20C(readings, 'bores', accuracy), ringTravel) as SizeAndShape,
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

type Planned = ServedBorePlan['cylinders'][number];
type Cylinder = BoreRequest['cylinders'][number];

/** The work on the bores for every step that serves. */
function waysOf(
  request: BoreRequest,
  places: readonly BorePlace[],
  isWhole: (name: string) => boolean,
): readonly Way[] {
  if (request.cylinders.length === 0) {
    return request.steps.map((step) => ({ step, sizes: places.map(() => undefined), jobs: [] }));
  }
  const ways = request.steps.flatMap((step): Way[] => {
    const plan = borePlan({ ...request, pistonsAtHand: [step] });
    if (plan.outcome === 'none') return [];
    const { oversize, target: to, cylinders } = plan;
    const placesFor = (work: 'bore' | 'sleeve') =>
      cylinders.filter((cylinder) => cylinder.work === work).map(({ name }) => name);
    return [
      {
        step: oversize,
        sizes: places.map(({ name }) => {
          if (!isWhole(name)) return undefined;
          const { work } = cylinders.find((each) => each.name === name) as Planned;
          const { smallest: min, largest: max } = request.cylinders.find(
            (each) => each.name === name,
          ) as Cylinder;
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
