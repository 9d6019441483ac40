import { describeGrindPlan } from '../../crankshaft/index.js';
import { groundWithOthers, saySoundAlone } from '../../crankshaft/internal.js';
import { describeBorePlan } from '../../cylinders/index.js';
import type { Wording } from '../../judging/index.js';
import { NANOMETRE, noteOf, say, sayFinding } from '../../judging/internal.js';
import { journalWords, sayByRule } from '../../reading/index.js';
import type { Consequence, Fault } from '../faults.js';
import type { PartTest } from '../history.js';
import { wordFor } from '../section-words.js';
import type { Section } from '../sections.js';
import { SCRAP_ROD } from '../sources.js';
import { describeAgain } from './describe-again.js';
import { describeFar } from './describe-far.js';
import { doing, need } from './describe-job.js';
import { describeMisread } from './describe-misread.js';
import { describeNotMeasured } from './describe-not-measured.js';
import { MENDS } from './tests.js';
import type { TriagedPart, TriageReason } from './triage-types.js';

/** Describes a reason: what was seen or judged, and the consequence. */
export function describeReason(
  reason: TriageReason,
  part: TriagedPart,
  wording: Wording,
): readonly string[] {
  switch (reason.kind) {
    case 'fault':
      return [
        `${reason.found ? 'found by a test' : 'seen'}: ${describeFault(reason)}; ${sayConsequence(reason.consequence, part, wording, reason)}`,
      ];
    case 'happened':
      return [`its bearing seized; ${sayConsequence(reason.consequence, part, wording)}`];
    case 'journals':
      return labelled(
        `${journalWords(reason.journals)}${reason.soFar ? SO_FAR : ''}${sayRunout(reason, wording)}`,
        [
          ...describeGrindPlan(reason.plan, wording),
          ...(reason.byRule ? [sayByRule('grind')] : []),
          ...tellSound(reason, wording),
        ],
      );
    case 'read again':
    case 'readings apart':
    case 'at no step':
    case 'as large as its bore':
    case 'far under its bore':
    case 'apart from its set':
      return [describeMisread(reason, wording)];
    case 'too far off':
      return [describeFar(reason, wording)];
    case 'runout not known':
      return [describeRunout(reason, wording)];
    case 'reads as bent':
      return [
        `${reason.place}: ${sayFinding(reason.finding, wording)}: it reads as bent; have it straightened and read again before you use it, or list it as bent with the runout that the shop promises`,
      ];
    case 'which bearing seized':
      return [
        reason.cleared
          ? 'which bearing seized is not told; you list that it was tested for softening and cracks, none found'
          : `find out which bearing seized: that rod is scrap ${noteOf(SCRAP_ROD, wording)}; say so of that rod, or test this one for softening and cracks`,
      ];
    case 'margin':
      return [`${sayFinding(reason.finding, wording)}; scrap them`];
    case 'bores':
      return labelled(`bores${reason.soFar ? SO_FAR : ''}`, [
        ...describeBorePlan(reason.plan, wording),
        ...(reason.byRule ? [sayByRule('bore')] : []),
      ]);
    case 'housing':
      return [describeHousing(reason, part, wording)];
    case 'not measured':
      return describeNotMeasured(reason, wording);
    case 'measure again':
    case 'measure sizes again':
      return [describeAgain(reason, wording)];
    case 'face':
      return [sayFinding(reason.finding, wording)];
    case 'no shop':
      return [`no shop on the list offers ${doing(reason.work)}`];
    case 'fits nothing':
      // The first sentence of a spare says so.
      return [];
  }
}

const SO_FAR = ', of those fully measured';

/** In a few words, what rules a part out; undefined if the reason does not. */
export function obstacle(reason: TriageReason, { section, jobs }: TriagedPart): string | undefined {
  switch (reason.kind) {
    case 'fault':
      if (reason.consequence.kind === 'mend' && !isMended(jobs)) {
        return `${reason.fault}; no repair on the list`;
      }
      return reason.consequence.kind === 'scrap' ? reason.fault : undefined;
    case 'happened':
      return reason.consequence.kind === 'scrap' ? reason.what : undefined;
    case 'margin':
      return 'the margin is too thin';
    case 'journals': {
      const { plan, journals } = reason;
      if (plan.outcome !== 'none') return undefined;
      const who = plan.defeatedBy.length > 0 ? ` (${plan.defeatedBy.join(', ')})` : '';
      return `no undersize saves the ${journalWords(journals)}${who}`;
    }
    case 'bores':
      return reason.plan.outcome === 'none' ? 'no pistons are at hand for its bores' : undefined;
    case 'housing':
      return jobs.some(({ work }) => work === 'resize housings')
        ? undefined
        : `housing ${reason.place} must be resized, but to what size is not known`;
    case 'fits nothing':
      return nothingFits(section, reason.section);
    default:
      return undefined;
  }
}

/** What may be done instead of grinding journals that are sound by themselves. */
function tellSound({ plan, sound = [] }: JournalsReason, wording: Wording): readonly string[] {
  if (plan.outcome === 'none') return [];
  const told = saySoundAlone(groundWithOthers(plan, sound), wording);
  return told === undefined ? [] : [told];
}

/** On what runout of a bent crankshaft a plan for its journals counts. */
function sayRunout({ ifTrue, promised }: JournalsReason, { units }: Wording): string {
  if (ifTrue) return ', if it comes back true';
  return promised === undefined
    ? ''
    : `, with the runout of ${say(promised, 'length', units)} that the shop promises`;
}

type JournalsReason = Extract<TriageReason, { readonly kind: 'journals' }>;

type FaultReason = Extract<TriageReason, { readonly kind: 'fault' }>;

function describeFault({ fault, place }: FaultReason): string {
  const where = place === undefined ? '' : ` on ${place}`;
  switch (fault) {
    case 'frost-cracked':
      return `frost-cracked${where}: ice in its water spaces has forced the metal apart`;
    case 'spun':
      return `spun${where}: shells have turned in their housing`;
    default:
      return `${fault}${where}`;
  }
}

function sayConsequence(
  consequence: Consequence,
  { section, jobs }: TriagedPart,
  wording: Wording,
  { place = 'it', fault }: { readonly place?: string; readonly fault?: Fault } = {},
): string {
  const name = place === 'it' ? '; name the journal' : '';
  const hint = fault === 'scored' ? `${name}${FEEL_FIRST}` : '';
  switch (consequence.kind) {
    case 'scrap': {
      const { basis, unlessTested = [] } = consequence;
      const note = basis ? ` ${noteOf(basis, wording)}` : '';
      const unless =
        unlessTested.length > 0
          ? `, unless it is tested for ${unlessTested.join(' and ')} and none is found`
          : '';
      return `scrap it${note}${unless}`;
    }
    case 'cleared': {
      const { basis, tests, work } = consequence;
      const then = work ? `; ${need(work)}` : '';
      return `it is scrap ${noteOf(basis, wording)}, but you list that it was ${tests.map(sayTest).join(' and ')}${then}`;
    }
    case 'machine':
      return `${place} must be ${section === 'blocks' ? `bored${fault === 'scored' ? HONE_FIRST : ''}` : `ground${hint}`}`;
    case 'repair':
      return need(consequence.work);
    case 'look':
      return LOOK_AT_SCORES;
    case 'mend': {
      const mend = jobs.find(({ work }) => MENDS.includes(work));
      return mend
        ? need(mend.work)
        : 'do not use it as it is; no shop on the list stitches or welds it';
    }
  }
}

const FEEL_FIRST =
  '; if a fingernail does not catch in it, polish it instead, measure it, and take the fault off the list';

const HONE_FIRST =
  '; feel how deep the score is first: if a fingernail does not catch in it, hone it lightly instead, measure it, and take the fault off the list';

/** What tells a scored piston that runs again from one that does not. */
const LOOK_AT_SCORES =
  'look where: light scores on a skirt are dressed with a fine stone, measured, and the fault is taken off the list; it is scrap if a score catches a fingernail, runs through the ring lands, or has smeared metal over a ring or the pin';

const isMended = (jobs: TriagedPart['jobs']) => jobs.some(({ work }) => MENDS.includes(work));

/** `tested for cracks (magnetic particles, by the grinder), none found`. */
function sayTest({ for: what, how, by, found }: PartTest): string {
  return `tested for ${what} (${how}${by === undefined ? '' : `, by ${by}`}), ${found} found`;
}

function describeRunout(
  { place, runout }: Extract<TriageReason, { readonly kind: 'runout not known' }>,
  { units }: Wording,
): string {
  const read =
    runout === undefined ? '' : ` (${say(runout, 'length', units)} on ${place} while it was bent)`;
  return `what was read while it was bent does not show how it will clean up: have it straightened, then read the runout of every journal again, mains first${read}; or give the runout that the shop promises`;
}

/** Describes a housing that is not fit for use. No shell makes up for it. */
function describeHousing(
  { place, finding }: Extract<TriageReason, { readonly kind: 'housing' }>,
  { section, because }: TriagedPart,
  wording: Wording,
): string {
  const must = `resize it${section === 'rods' ? ' or replace the rod' : ''} before you choose shells`;
  if (finding === undefined) {
    return `${place}: ${must}, but no limits are given to resize it to`;
  }
  const { min, max } = finding.limits;
  const lacking = min === undefined ? 'lower' : max === undefined ? 'upper' : undefined;
  const size = lacking ? `, but no ${lacking} limit is given to resize it to` : '';
  const spun = because.some((reason) => reason.kind === 'fault' && reason.fault === 'spun');
  const doubted = !spun && -finding.margin <= SURE_TO + NANOMETRE ? MEASURE_AGAIN : '';
  return `${sayFinding(finding, wording)}; ${must}${size}${doubted}`;
}

/** How far a bore gauge in a home shop can be trusted, 0.0002 in [m]. */
const SURE_TO = 0.0002 * 0.0254;

const MEASURE_AGAIN =
  '; no bore gauge in a home shop is surer than that: measure it again before it is resized';

/** No part in the shed or to buy fits, whatever is machined. */
export function nothingFits(section: Section, missing: Section): string {
  if (missing === 'blocks' && (section === 'pistonSets' || section === 'ringSets')) {
    return 'no block here takes this set at any oversize';
  }
  if (section === 'shells') {
    return 'no crankshaft here takes these shells at any undersize';
  }
  return missing === 'shells'
    ? 'no shells here give it a clearance within limits'
    : `no ${wordFor(missing)} here fits it`;
}

/** The sentences of a plan, with a label before the first. */
function labelled(label: string, [first = '', ...others]: readonly string[]): readonly string[] {
  return [`${label}: ${first}`, ...others];
}
