import type { Span } from '../judging/index.js';
import { NANOMETRE, shifted, worstOf } from '../judging/internal.js';
import type { InDoubt } from '../measuring/index.js';
import {
  doubtAbout,
  isReadTooCoarsely,
  judgeShape,
  MOST_IN_DOUBT,
  outsideOf,
  usableAsItIs,
} from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { type GrindJob, guardRequest } from './grind-request.js';
import type {
  GrindPlan,
  GrindReason,
  GrindRequest,
  JournalToGrind,
  JournalWork,
  NearlyServes,
  ServedGrindPlan,
} from './grind-types.js';

/**
 * The smallest common undersize at which every journal of one kind is good as
 * it is or cleans up when ground. Rods and mains of one crankshaft are planned
 * apart and may take different steps; journals of one kind share one.
 *
 *     available = smallest - outOfRound - runout - cleanUpAllowance   where it wore on one side, else without the out-of-round
 *     target.max = standard.max - undersize
 *     stockRemoved.min = largest - (standard.max - undersize)
 *
 * @param request - journals, the standard size, the steps, the shells at hand, the maker's minimum
 * @returns the step, target span, work and stock per journal with reasons, or which journal defeats it
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a list is empty, a
 * smallest is above its largest, a shape contradicts its sizes, a journal is far larger than standard, or a journal
 * is far smaller than any undersize
 * @see Source: geometry; steps are common practice; worked checks in tests/published/crankshaft.test.ts
 * @example
 * ```ts
 * const plan = grindPlan({
 *   journals: [{
 *     name: 'rod 1', smallest: inch(2.1189), largest: inch(2.1202),
 *     outOfRound: inch(0.0013), taper: inch(0.0004),
 *   }],
 *   standard: { min: inch(2.1245), max: inch(2.1250) },
 *   steps: undersizeSteps('inch'),
 * });
 * plan.outcome; // "grind"
 * plan.outcome !== 'none' && format(plan.undersize, thou); // "10.0 thou"
 * ```
 */
export function grindPlan(request: GrindRequest): GrindPlan {
  const job = guardRequest(request);
  const because: GrindReason[] = [];
  let defeated: readonly string[] = [];
  let inDoubt: ServedGrindPlan['inDoubt'];
  let nearly: NearlyServes | undefined;
  for (const undersize of job.steps) {
    const { journals, because: reasons } = tryStep(job, undersize);
    for (const reason of reasons) because.push(reason);
    const grinds = journals?.some(({ work }) => work === 'grind');
    if (grinds !== false) inDoubt ??= doubtAt(job, undersize);
    if (journals) {
      return {
        outcome: grinds ? 'grind' : 'use as it is',
        undersize,
        target: shifted(job.standard, -undersize),
        journals,
        ...(grinds && inDoubt && { inDoubt }),
        ...(grinds && nearly && { nearly }),
        stepsLeft: stepsAfter(job, undersize),
        because,
      };
    }
    defeated = reasons.flatMap((why) => (why.kind === 'does not clean up' ? [why.journal] : []));
    nearly ??= nearlyServes(undersize, reasons);
  }
  return { outcome: 'none', defeatedBy: defeated, ...(nearly && { nearly }), because };
}

/** Whether nothing stands in the way of a step but journals that may serve once they are measured better. */
function nearlyServes(
  undersize: Length,
  obstacles: readonly GrindReason[],
): NearlyServes | undefined {
  const journals = obstacles.flatMap((why) => ('nearly' in why && why.nearly ? [why.journal] : []));
  const isNear = journals.length > 0 && journals.length === obstacles.length;
  return isNear ? { undersize, journals } : undefined;
}

/** A step tried on every journal. */
interface Attempt {
  /** What is done to each, if the step serves. */
  readonly journals?: readonly JournalWork[];
  /** What stands in its way, or how each journal stands at it. */
  readonly because: readonly GrindReason[];
}

function tryStep(job: GrindJob, undersize: Length): Attempt {
  const target = shifted(job.standard, -undersize);
  const tried = job.journals.map((journal) => tryJournal(journal, job, undersize, target));
  const obstacles: GrindReason[] = [
    ...(lacksShells(job, undersize) ? [{ kind: 'no shells at hand' as const, undersize }] : []),
    ...tried.flatMap((each) => (each.work ? belowMinimum(each, undersize, job) : each.because)),
  ];
  if (obstacles.length > 0) return { because: obstacles };
  const journals = tried.flatMap(({ work }) => work ?? []);
  const allowance: GrindReason = { kind: 'allowance', ...job.allowance };
  const grinds = journals.some(({ work }) => work === 'grind');
  const because = [...tried.flatMap((each) => each.because), ...(grinds ? [allowance] : [])];
  return { journals, because };
}

/** The journals that only a rule of thumb keeps from a step, if it would serve without the rule. */
function doubtAt(job: GrindJob, undersize: Length): ServedGrindPlan['inDoubt'] {
  if (lacksShells(job, undersize)) return undefined;
  const target = shifted(job.standard, -undersize);
  const doubts = job.journals.flatMap((journal): readonly (InDoubt | undefined)[] => {
    const { work } = tryJournal(journal, job, undersize, target);
    if (work?.work === 'use as it is') return [];
    const doubt = doubtAboutLeaving(journal, job, target);
    return doubt || !work ? [doubt] : [];
  });
  const journals = doubts.filter((doubt) => doubt !== undefined);
  if (journals.length === 0 || journals.length < doubts.length) return undefined;
  return job.journals.every((journal) => mayPass(journal, job))
    ? { undersize, journals }
    : undefined;
}

/** What stands against leaving a journal as it is, if that is in doubt. */
function doubtAboutLeaving(
  journal: JournalToGrind,
  { shape, sizeAllowance }: GrindJob,
  target: Span<Length>,
): InDoubt | undefined {
  const flaw = worstOf(judgeShape(journal, shape));
  const wear = { wearsTo: 'smaller', upTo: MOST_IN_DOUBT } as const;
  return doubtAbout(journal, flaw, target, sizeAllowance, wear);
}

/** Whether a journal may be above the minimum as it is, as far as it is measured. */
const mayPass = (
  { smallest }: JournalToGrind,
  { minimum = 0 as Length, sizeAllowance }: GrindJob,
) => smallest + sizeAllowance.band >= minimum - NANOMETRE;

/** Whether a journal that does not clean up at a step may do so, or be left as it is, once it is measured better. */
function mayServe(
  journal: JournalToGrind,
  job: GrindJob,
  target: Span<Length>,
  available: Length,
): boolean {
  const isAllowed = target.min >= (job.minimum ?? 0) - NANOMETRE;
  if (isAllowed && available + job.sizeAllowance.band >= target.max - NANOMETRE) return true;
  const doubt = doubtAboutLeaving(journal, job, target);
  return doubt !== undefined && isReadTooCoarsely(doubt) && mayPass(journal, job);
}

/** One journal tried at one step. */
interface Tried {
  readonly because: readonly GrindReason[];
  /** What is done to it, if the step serves it. */
  readonly work?: JournalWork;
  /** Its smallest size once that is done. */
  readonly smallest?: Length;
}

/** One journal at one step: good as it is, to be ground, or past saving there. */
function tryJournal(
  journal: JournalToGrind,
  job: GrindJob,
  undersize: Length,
  target: Span<Length>,
): Tried {
  const { name, largest, faults = [] } = journal;
  const flaw = worstOf(judgeShape(journal, job.shape));
  const usable = usableAsItIs(journal, target, job.sizeAllowance);
  if (flaw === undefined && usable) {
    return {
      work: { name, work: 'use as it is' },
      smallest: journal.smallest,
      because: [{ kind: 'good as it is', journal: name, undersize, ...usable }],
    };
  }
  const available = availableIn(journal, job);
  const outside = outsideOf(journal, target);
  if (available < target.max - NANOMETRE) {
    const nearly = mayServe(journal, job, target, available);
    const why = { undersize, journal: name, outside, available, target };
    return {
      because: [{ kind: 'does not clean up', ...why, ...(nearly && { nearly }) }],
    };
  }
  const stockRemoved = { min: largest - target.max, max: largest - target.min } as Span<Length>;
  return {
    work: { name, work: 'grind', stockRemoved },
    smallest: target.min,
    because: [
      ...(flaw ? [{ kind: 'shape' as const, journal: name, finding: flaw }] : []),
      ...(faults.length > 0 ? [{ kind: 'faults' as const, journal: name, faults }] : []),
      { kind: 'cleans up', journal: name, undersize, available },
    ],
  };
}

/** The steps past one that the maker's minimum allows. */
function stepsAfter({ steps, standard, minimum }: GrindJob, undersize: Length): number {
  const least = (minimum ?? 0) - NANOMETRE;
  return steps.filter((step) => step > undersize + NANOMETRE && standard.min - step >= least)
    .length;
}

/** A journal that is used as it is must be above the minimum by what its size is not known to; one that is ground is measured then. */
function belowMinimum(
  { work, smallest }: Tried,
  undersize: Length,
  { minimum, sizeAllowance }: GrindJob,
): readonly GrindReason[] {
  if (work === undefined || smallest === undefined || minimum === undefined) return [];
  const band = work.work === 'grind' ? 0 : sizeAllowance.band;
  if (smallest - band >= minimum - NANOMETRE) return [];
  const nearly = smallest + band >= minimum - NANOMETRE;
  const why = { undersize, journal: work.name, smallest, minimum };
  return [{ kind: 'below the minimum', ...why, ...(nearly && { nearly }) }];
}

function lacksShells({ shellsAtHand }: GrindJob, undersize: Length): boolean {
  return shellsAtHand !== undefined && !shellsAtHand.some((shell) => sameSize(shell, undersize));
}

/** The largest round journal about the axis it will be ground on that the worn one still contains. */
function availableIn(journal: JournalToGrind, job: GrindJob): Length {
  const oneSided = job.wear === 'one side' ? journal.outOfRound : 0;
  const eccentric = journal.runout ?? 0;
  return (journal.smallest - oneSided - eccentric - job.allowance.cleanUpAllowance) as Length;
}

const sameSize = (a: Length, b: Length) => Math.abs(a - b) <= NANOMETRE;
