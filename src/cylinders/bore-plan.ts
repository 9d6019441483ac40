import type { Finding, Span } from '../judging/index.js';
import { NANOMETRE, shifted, worstOf } from '../judging/internal.js';
import type { InDoubt } from '../measuring/index.js';
import { doubtAbout, judgeShape, usableAsItIs } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import { shapeInDoubt } from './bore-limits.js';
import { type BoreJob, guardBoreRequest } from './bore-request.js';
import type {
  BorePlan,
  BoreReason,
  BoreRequest,
  BoreToMachine,
  BoreWork,
  ServedBorePlan,
} from './bore-types.js';

/**
 * The smallest common oversize at which every cylinder of a block is good as it
 * is or cleans up when bored and honed. Where no step serves them all, the step
 * that needs the fewest sleeves, and which cylinders get one.
 *
 *     needed = largest + outOfRound + honingAllowance   where it wore on one side, else without the out-of-round
 *     target.max = standard.max + oversize
 *     boreTo.max = standard.max + oversize - honingAllowance
 *     stockRemoved.max = standard.max + oversize - smallest
 *     wallLeft = wall - (standard.max + oversize - smallest) / 2
 *
 * @param request - cylinders, the standard size, the steps, the pistons at hand, the least wall
 * @returns the step, what to bore and hone to, work and stock per cylinder with reasons
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a list is empty, a
 * span is reversed, a smallest is above its largest, a shape contradicts its sizes, a bore is far smaller than
 * standard, or a wall is given without the least one
 * @see Source: geometry; steps are common practice; worked checks in tests/cylinders/bore-plan.test.ts
 * @example
 * ```ts
 * const plan = borePlan({
 *   cylinders: [{
 *     name: 'cylinder 2', smallest: inch(3.0009), largest: inch(3.0081),
 *     outOfRound: inch(0.0019), taper: inch(0.0069),
 *   }],
 *   standard: { min: inch(3.0000), max: inch(3.0005) },
 *   steps: oversizeSteps('inch'),
 * });
 * plan.outcome; // "bore"
 * plan.outcome !== 'none' && format(plan.oversize, thou); // "20.0 thou"
 * plan.outcome !== 'none' && format(plan.boreTo.max, inch); // "3.0175 in"
 * ```
 */
export function borePlan(request: BoreRequest): BorePlan {
  const job = guardBoreRequest(request);
  const attempts = job.steps.map((oversize) => tryStep(job, oversize));
  const possible = attempts.filter(({ hasPistons }) => hasPistons);
  const fewest = smallestOf(possible.map(({ sleeves }) => sleeves));
  const taken = possible.find(({ sleeves }) => sleeves === fewest);
  if (taken === undefined) {
    return { outcome: 'none', because: attempts.flatMap(({ obstacles }) => obstacles) };
  }
  // Where it comes to a sleeve, what stands in the way of every other step is told too, and may be in doubt.
  const others = fewest > 0 ? attempts : attempts.slice(0, attempts.indexOf(taken));
  const { oversize, target, cylinders } = taken;
  const bores = cylinders.some(({ work }) => work === 'bore');
  const allowance: BoreReason = { kind: 'allowance', ...job.allowance };
  const inDoubt = doubtAmong([...others, taken], job, taken);
  const nearly = nearlyServed(others);
  return {
    outcome: fewest > 0 ? 'sleeve' : bores ? 'bore' : 'use as it is',
    oversize,
    target,
    boreTo: shifted(target, -job.allowance.honingAllowance),
    cylinders,
    ...(inDoubt && { inDoubt }),
    ...(nearly && { nearly }),
    stepsLeft: job.steps.filter((step) => step > oversize + NANOMETRE).length,
    because: [
      ...others.flatMap(({ obstacles }) => obstacles),
      ...taken.because,
      ...(bores ? [allowance] : []),
    ],
  };
}

/** A step tried on every cylinder. */
interface Attempt {
  readonly oversize: Length;
  readonly target: Span<Length>;
  readonly hasPistons: boolean;
  readonly cylinders: readonly BoreWork[];
  /** How many cylinders only a sleeve brings to this step. */
  readonly sleeves: number;
  /** What stands in the step's way. */
  readonly obstacles: readonly BoreReason[];
  /** How the cylinders that it serves stand at it. */
  readonly because: readonly BoreReason[];
}

function tryStep(job: BoreJob, oversize: Length): Attempt {
  const target = shifted(job.standard, oversize);
  const { pistonsAtHand } = job;
  const hasPistons =
    !pistonsAtHand || pistonsAtHand.some((size) => Math.abs(size - oversize) <= NANOMETRE);
  const tried = job.cylinders.map((cylinder) => tryCylinder(cylinder, job, oversize, target));
  const refused = tried.filter(({ work }) => work.work === 'sleeve');
  return {
    oversize,
    target,
    hasPistons,
    cylinders: tried.map(({ work }) => work),
    sleeves: refused.length,
    obstacles: [
      ...(hasPistons ? [] : [{ kind: 'no pistons at hand' as const, oversize }]),
      ...refused.flatMap(({ because }) => because),
    ],
    because: tried.filter((each) => !refused.includes(each)).flatMap(({ because }) => because),
  };
}

interface Tried {
  readonly work: BoreWork;
  readonly because: readonly BoreReason[];
}

/** One cylinder at one step: good as it is, to be bored, or past saving without a sleeve. */
function tryCylinder(
  cylinder: BoreToMachine,
  job: BoreJob,
  oversize: Length,
  target: Span<Length>,
): Tried {
  const { name, smallest, wall, faults = [] } = cylinder;
  const flaw = flawOf(cylinder, job);
  const usable = usableAsItIs(cylinder, target, job.sizeAllowance);
  if (flaw === undefined && usable) {
    return {
      work: { name, work: 'use as it is' },
      because: [{ kind: 'good as it is', cylinder: name, oversize, ...usable }],
    };
  }
  const sleeve: BoreWork = { name, work: 'sleeve' };
  const needed = neededFor(cylinder, job);
  if (needed > target.min + NANOMETRE) {
    const nearly = needed - job.sizeAllowance.band <= target.min + NANOMETRE;
    const reason: BoreReason = {
      kind: 'does not clean up',
      oversize,
      cylinder: name,
      needed,
      target,
      ...(nearly && { nearly }),
    };
    return { work: sleeve, because: [reason] };
  }
  const { leastWall } = job;
  const wallLeft = wall === undefined ? undefined : wallAfter(wall, smallest, target);
  if (wallLeft !== undefined && leastWall !== undefined && wallLeft < leastWall - NANOMETRE) {
    const reason: BoreReason = {
      kind: 'wall too thin',
      oversize,
      cylinder: name,
      wallLeft,
      leastWall,
    };
    return { work: sleeve, because: [reason] };
  }
  const stockRemoved = shifted(target, -smallest);
  return {
    work: { name, work: 'bore', stockRemoved, ...(wallLeft !== undefined && { wallLeft }) },
    because: [
      ...(flaw ? [{ kind: 'shape' as const, cylinder: name, finding: flaw }] : []),
      ...(flaw === undefined && faults.length === 0
        ? [
            {
              kind: 'size' as const,
              cylinder: name,
              size: { min: smallest, max: cylinder.largest },
              target,
            },
          ]
        : []),
      ...(faults.length > 0 ? [{ kind: 'faults' as const, cylinder: name, faults }] : []),
      { kind: 'cleans up', cylinder: name, oversize, needed },
    ],
  };
}

function flawOf(cylinder: BoreToMachine, { shape }: BoreJob): Finding<'length'> | undefined {
  return worstOf(judgeShape(cylinder, shape.outOfRound, shape.taper));
}

/** The first step that only rules of thumb stand against, if less is bored at it than at the step that was taken. */
function doubtAmong(attempts: readonly Attempt[], job: BoreJob, taken: Attempt): Doubt | undefined {
  const machined = ({ cylinders }: Attempt) =>
    cylinders.filter(({ work }) => work !== 'use as it is').length;
  if (machined(taken) === 0) return undefined;
  const possible = attempts.filter((each) => each.hasPistons);
  for (const { oversize, target, cylinders: works } of possible) {
    const doubts = job.cylinders.flatMap((cylinder, i): readonly (InDoubt | undefined)[] => {
      const work = works[i]?.work;
      if (work === 'use as it is') return [];
      const doubt = doubtAbout(cylinder, flawOf(cylinder, job), target, job.sizeAllowance, {
        wearsTo: 'larger',
        upTo: shapeInDoubt(job.standard.min),
      });
      return doubt || work === 'sleeve' ? [doubt] : [];
    });
    const cylinders = doubts.filter((doubt) => doubt !== undefined);
    if (cylinders.length > 0 && cylinders.length === doubts.length) return { oversize, cylinders };
  }
  return undefined;
}

/** The first step that nothing stands in the way of but cylinders that may clean up once they are measured better. */
function nearlyServed(attempts: readonly Attempt[]): ServedBorePlan['nearly'] {
  for (const { oversize, obstacles } of attempts) {
    const cylinders = obstacles.flatMap((why) =>
      why.kind === 'does not clean up' && why.nearly ? [why.cylinder] : [],
    );
    if (cylinders.length > 0 && cylinders.length === obstacles.length) {
      return { oversize, cylinders };
    }
  }
  return undefined;
}

type Doubt = NonNullable<ServedBorePlan['inDoubt']>;

/** The smallest finished bore about its old axis that contains the worn one, and what the hone takes. */
function neededFor({ largest, outOfRound }: BoreToMachine, job: BoreJob): Length {
  const oneSided = job.wear === 'one side' ? outOfRound : 0;
  return (largest + oneSided + job.allowance.honingAllowance) as Length;
}

/** The wall at its thinnest once the bore is at its largest: where nothing was worn, half the stock goes. */
function wallAfter(wall: Length, smallest: Length, target: Span<Length>): Length {
  return (wall - (target.max - smallest) / 2) as Length;
}
