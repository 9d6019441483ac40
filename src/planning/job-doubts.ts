import type { GrindReason } from '../crankshaft/index.js';
import { nameUndersize, saySoundAlone } from '../crankshaft/internal.js';
import type { BoreReason } from '../cylinders/index.js';
import { nameOversize } from '../cylinders/internal.js';
import type { Wording } from '../judging/index.js';
import { describeDoubts } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { sayByRule } from '../reading/index.js';
import type { Job, TriagedPart, TriageReason, Work } from '../shed/index.js';
import type { BuildJob } from './job-types.js';

/** What of a job is in doubt, by the triage of its part: the places that may stay, and the step at which they may. */
export function doubtOf(
  { part: name, work, places, step = 0 as Length }: Pick<BuildJob, 'part'> & Job,
  parts: readonly TriagedPart[],
): Pick<BuildJob, 'inDoubt'> {
  const because = parts.find((each) => each.name === name)?.because ?? [];
  const doubts = because.flatMap((reason) => (isOf(reason, work) ? doubtIn(reason) : []));
  // A step that something else asks for is in no doubt.
  const inDoubt = doubts
    .map(({ at, places: all }) => ({ at, places: all.filter((one) => places.includes(one.name)) }))
    .find(({ at, places: its }) => at < step && its.length > 0);
  return inDoubt ? { inDoubt } : {};
}

/** What a job rests on, by the triage of its part: a rule of thumb alone, or faults that were seen. */
export function restsOn(
  { part: name, work, places }: Pick<BuildJob, 'part'> & Job,
  parts: readonly TriagedPart[],
): Pick<BuildJob, 'byRule' | 'faults'> {
  const because = parts.find((each) => each.name === name)?.because ?? [];
  const its = because.filter((reason) => isOf(reason, work));
  const seen = its.flatMap((reason) => faultsIn(reason).filter(({ at }) => places.includes(at)));
  const faults = [...new Set(seen.map(({ fault }) => fault))].map((fault) => ({
    fault,
    places: [...new Set(seen.filter((each) => each.fault === fault).map(({ at }) => at))],
  }));
  return {
    ...(its.some((reason) => 'byRule' in reason && reason.byRule) && { byRule: true as const }),
    ...(faults.length > 0 && { faults }),
  };
}

/** The faults of journals or bores that a plan was told of. */
function faultsIn(
  reason: TriageReason,
): readonly { readonly fault: string; readonly at: string }[] {
  if (reason.kind !== 'bores' && reason.kind !== 'journals') return [];
  const because: readonly (BoreReason | GrindReason)[] = reason.plan.because;
  return because.flatMap((why) => {
    if (why.kind !== 'faults') return [];
    const at = 'cylinder' in why ? why.cylinder : why.journal;
    return why.faults.map((fault) => ({ fault, at }));
  });
}

/** The journals of a job that are sound by themselves, by the triage of their crankshaft. */
export function soundOf(
  { part: name, work, places }: Pick<BuildJob, 'part'> & Job,
  parts: readonly TriagedPart[],
): Pick<BuildJob, 'sound'> {
  const because = parts.find((each) => each.name === name)?.because ?? [];
  const [found] = because.flatMap((reason) => {
    if (reason.kind !== 'journals' || reason.plan.outcome === 'none' || !isOf(reason, work))
      return [];
    const journals = (reason.sound ?? []).filter((one) => places.includes(one.name));
    const keepsOthers = places.length < reason.plan.journals.length;
    return journals.length === 0 ? [] : [{ journals, keepsOthers }];
  });
  return found ? { sound: found } : {};
}

/** Whether a reason is of the bores or journals that a work is done on. */
function isOf(reason: TriageReason, work: Work): boolean {
  if (reason.kind === 'bores') return isBoring(work);
  if (reason.kind !== 'journals') return false;
  return work === (reason.journals === 'rods' ? 'grind rod journals' : 'grind main journals');
}

function doubtIn(reason: TriageReason): readonly NonNullable<BuildJob['inDoubt']>[] {
  if (reason.kind === 'bores' && reason.plan.outcome !== 'none') {
    const { inDoubt } = reason.plan;
    return inDoubt ? [{ at: inDoubt.oversize, places: inDoubt.cylinders }] : [];
  }
  if (reason.kind === 'journals' && reason.plan.outcome !== 'none') {
    const { inDoubt } = reason.plan;
    return inDoubt ? [{ at: inDoubt.undersize, places: inDoubt.journals }] : [];
  }
  return [];
}

const isBoring = (work: Work): boolean => work === 'bore' || work === 'sleeve';

/** `in doubt: only a rule of thumb stands against leaving it at standard: …; find the limit before you bore`: none if it is not. */
export function sayJobDoubt(
  { work, inDoubt, byRule }: BuildJob,
  wording: Wording,
): readonly string[] {
  if (byRule) return [sayByRule(isBoring(work) ? 'bore' : 'grind')];
  if (inDoubt === undefined) return [];
  const { at, places } = inDoubt;
  const isBore = isBoring(work);
  const step = isBore ? nameOversize(at, wording) : nameUndersize(at, wording);
  return [describeDoubts(step, places, isBore ? 'bore' : 'grind', wording)];
}

/** Whether a job is to be settled before it is ordered. */
export const isToSettle = ({ inDoubt, byRule, readFirst }: BuildJob): boolean =>
  inDoubt !== undefined || byRule === true || readFirst !== undefined;

/** `IN DOUBT: order it only after the doubtful reading of pistons A is taken again …`: none if nothing is to be read first. */
const sayReadFirst = ({ readFirst }: BuildJob): readonly string[] =>
  readFirst === undefined
    ? []
    : [
        `IN DOUBT: order it only after the doubtful reading of ${readFirst.join(' and ')} is taken again; it may not be needed then`,
      ];

/** The same beside an order, `; IN DOUBT: …`, what is to be read first, and which journals are sound by themselves. */
export const besideOrder = (job: BuildJob, wording: Wording): string =>
  [
    ...sayReadFirst(job),
    ...sayJobDoubt(job, wording).map((said) => said.replace(/^in doubt/, 'IN DOUBT')),
    ...sayFaults(job),
    ...saySound(job, wording),
  ]
    .map((said) => `; ${said}`)
    .join('');

/** The faults that a job is to clean up, and what to find out about them first. */
const sayFaults = ({ work, faults = [] }: BuildJob): readonly string[] =>
  faults.map(({ fault, places }) => {
    const seen = `${places.join(', ')} ${places.length === 1 ? 'is' : 'are'} ${fault}`;
    if (fault === 'spun') return seen;
    return isBoring(work)
      ? `${seen}: find out how deep before it goes out; what is deeper than the cut on one side does not clean up at this step`
      : `${seen}: feel it with a fingernail before it goes out; what does not catch may polish out, and what is deeper than the cut on one side does not clean up`;
  });

/** What to ask before journals are ground that are sound by themselves. */
function saySound({ places, step, sound }: BuildJob, wording: Wording): readonly string[] {
  if (sound === undefined) return [];
  const { journals, keepsOthers } = sound;
  const kept = keepsOthers && step !== undefined ? { kept: step } : {};
  const told = saySoundAlone({ ground: places, sound: journals, ...kept }, wording);
  return told === undefined ? [] : [told];
}
