import {
  type BorePlan,
  type BoreRequest,
  borePlan,
  oversizeSteps,
  type ServedBorePlan,
} from '../../cylinders/index.js';
import { boreShapeLimits } from '../../cylinders/internal.js';
import { type Names, namedFrom } from '../../judging/internal.js';
import {
  asOthersSay,
  judgeShape,
  type KnownShape,
  kindestShape,
  oddInBore,
  readSoFar,
  withStandard,
} from '../../measuring/internal.js';
import type { UnitSystem } from '../../quantities/index.js';
import {
  type Accuracy,
  type BoreKind,
  bestEstimate,
  boreRequest,
  farReadings,
  isByRule,
  own,
  readingsAt20C,
  readWith,
} from '../../reading/index.js';
import type { BorePlace } from '../shed.js';
import { measureAgain } from './measure-again.js';
import { unreadPlaces } from './not-measured.js';
import { faultsOn, type SeenFaults } from './seen-faults.js';
import type { TooFar } from './too-far-types.js';
import type { Job, TriageReason } from './triage-types.js';
import { machining, type Way } from './ways.js';

/** What bores are judged with. */
interface JudgedWith {
  readonly bores: BoreKind;
  readonly seen: SeenFaults;
  readonly units: UnitSystem;
  readonly accuracy: Accuracy;
}

/** How the bores of a block can be made ready. Those that were not read are open: they may be of any size. */
export function boresReady(places: readonly BorePlace[], judged: JudgedWith) {
  const { accuracy } = judged;
  const read = places.map((place, i) => likely(place, i, judged));
  const misread = read.flatMap((each) => each.misread);
  const unread = [
    ...read.flatMap(({ far }) => far),
    ...unreadPlaces(
      'bores',
      read.map(({ place: { name }, soFar }) => ({ name, soFar })),
    ),
  ];
  const estimate = bestEstimate(accuracy);
  const isWhole = (i: number) => read[i]?.soFar.lacks === undefined;
  const whole = read.filter(({ i }) => isWhole(i));
  const request = requestFor(whole, judged, estimate);
  const plan = whole.length > 0 ? borePlan(request) : undefined;
  const told: readonly TriageReason[] =
    plan === undefined || misread.length > 0
      ? []
      : [
          {
            kind: 'bores',
            plan,
            ...(unread.length > 0 && { soFar: true as const }),
            ...(isByRule(plan, request.cylinders, own(judged.bores.pistonClearance).limits) && {
              byRule: true as const,
            }),
          },
          ...againIn(plan, requestFor(whole, judged, accuracy)),
        ];
  const waysFor = (some: typeof read, asked: BoreRequest) =>
    waysOf(
      asked,
      places.map((_, i) => (isWhole(i) ? some.findIndex((each) => each.i === i) : -1)),
    );
  const sure = waysFor(whole, request);
  if (unread.length === 0) return { bores: sure, misread, unread, told };
  const begun = read.filter(({ soFar, far }) => soFar.size && far.length === 0);
  const best = waysFor(begun, requestFor(begun, judged, estimate));
  // A fault is there before anything is measured.
  const faulty = read.flatMap(({ i, place: { name, faults } }) =>
    isWhole(i) || faultsOn(faults, judged.seen).length === 0 ? [] : [name],
  );
  const bores = machining(best.length > 0 ? best : sure, faulty, {
    work: 'bore',
    standard: judged.bores.standard,
  });
  return { bores, misread, unread, told };
}

/** A bore with its odd readings as the others say, and what is to be read again of it. */
function likely(place: BorePlace, i: number, { accuracy, bores, units }: JudgedWith) {
  const { name, readings = [], ringTravel } = place;
  const soFar = namedFrom(
    () => readNames(i),
    () => readSoFar(readings, ringTravel),
  );
  if (soFar.lacks !== undefined) {
    const steps = namedFrom(
      () => ({ '': 'engine.bores' }),
      () => withStandard(bores.steps ?? oversizeSteps(units)),
    );
    const placed = readingsAt20C(readings, 'bores', accuracy);
    const far = farReadings('bores', placed, bores.standard, steps).map(
      (one): TooFar => ({ kind: 'too far off', of: 'bores', place: name, far: one }),
    );
    return { i, place: { ...place, readings }, soFar, misread: [], far };
  }
  const odd = namedFrom(
    () => readNames(i),
    () => oddInBore(readings, ringTravel, readWith('boreGauge', accuracy)),
  );
  return {
    i,
    soFar,
    far: [],
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
        () => kindestShape(readingsAt20C(readings, 'bores', accuracy), ringTravel) as KnownShape,
      ),
      faults: faultsOn(faults, seen),
      wall,
    })),
    accuracy,
  );
}

/** Where the inputs of a bore request come from: the engine, and each bore. */
export function boreNames(bores: readonly BorePlace[]): Names {
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

/** The work on the bores for every step that serves. Each place of the block has its index in the request, or none. */
function waysOf(request: BoreRequest, indices: readonly number[]): readonly Way[] {
  if (request.cylinders.length === 0) {
    return request.steps.map((step) => ({ step, sizes: indices.map(() => undefined), jobs: [] }));
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
        sizes: indices.map((i) => {
          const [planned, asked] = [cylinders[i], request.cylinders[i]];
          if (!planned || !asked) return undefined;
          const { smallest: min, largest: max } = asked;
          return planned.work === 'use as it is' ? { min, max } : to;
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
