import { describeGrindPlan } from '../../crankshaft/index.js';
import { describeBorePlan } from '../../cylinders/index.js';
import { describe, type Wording } from '../../judging/index.js';
import { journalWords } from '../../reading/index.js';
import { wordFor } from '../section-words.js';
import type { Section } from '../sections.js';
import { doing, need } from './describe-job.js';
import type { TriagedPart, TriageReason } from './triage-types.js';

/** Says a reason in full: what was seen or judged, and what follows. */
export function describeReason(
  reason: TriageReason,
  part: TriagedPart,
  wording: Wording,
): readonly string[] {
  switch (reason.kind) {
    case 'fault':
      return [`seen: ${sightOf(reason)}; ${consequenceOf(reason, part.section)}`];
    case 'journals':
      return labelled(journalWords(reason.journals), describeGrindPlan(reason.plan, wording));
    case 'bores':
      return labelled('bores', describeBorePlan(reason.plan, wording));
    case 'housing':
      return [`${reason.place}: ${describeHousing(reason, part.section, wording)}`];
    case 'face':
      return [describe(reason.finding, wording)];
    case 'no shop':
      return [`no shop on the list does ${doing(reason.work)}`];
    case 'fits nothing':
      // A spare's first sentence says so.
      return [];
  }
}

/** What alone keeps a part out of use, in a few words; undefined if the reason does not. */
export function obstacle(reason: TriageReason, { section, jobs }: TriagedPart): string | undefined {
  switch (reason.kind) {
    case 'fault':
      return reason.consequence.kind === 'scrap' ? reason.fault : undefined;
    case 'journals': {
      const { plan, journals } = reason;
      if (plan.outcome !== 'none') return undefined;
      const who = plan.defeatedBy.length > 0 ? ` (${plan.defeatedBy.join(', ')})` : '';
      return `the ${journalWords(journals)} cannot be saved by grinding${who}`;
    }
    case 'bores':
      return reason.plan.outcome === 'none' ? 'there are no pistons for its bores' : undefined;
    case 'housing':
      return jobs.some(({ work }) => work === 'resize housings')
        ? undefined
        : `housing ${reason.place} cannot be used as it is`;
    case 'fits nothing':
      return nothingFits(section, reason.section);
    default:
      return undefined;
  }
}

type FaultReason = Extract<TriageReason, { readonly kind: 'fault' }>;

function sightOf({ fault, place }: FaultReason): string {
  const where = place === undefined ? '' : ` on ${place}`;
  switch (fault) {
    case 'frost-heaved':
      return `frost-heaved${where}, ice in its water spaces has forced the metal apart`;
    case 'spun':
      return `spun${where}, shells have turned where they should sit still`;
    default:
      return `${fault}${where}`;
  }
}

function consequenceOf({ place, consequence }: FaultReason, section: Section): string {
  switch (consequence.kind) {
    case 'scrap':
      return 'it is past use';
    case 'machine':
      return `${place ?? 'it'} must be ${section === 'blocks' ? 'bored' : 'ground'}`;
    case 'repair':
      return need(consequence.work);
  }
}

/** A housing that cannot be used as it is. No shell makes up for it. */
function describeHousing(
  { finding }: Extract<TriageReason, { readonly kind: 'housing' }>,
  section: Section,
  wording: Wording,
): string {
  const replaced = section === 'rods' ? ', or the rod replaced,' : '';
  const must = `it must be resized${replaced} before shells are chosen`;
  if (finding === undefined) return `${must}, and there are no limits to resize it to`;
  const { min, max } = finding.limits;
  const lacking = min === undefined ? 'a least' : max === undefined ? 'a most' : undefined;
  const size = lacking ? `, and the limits lack ${lacking} to resize it to` : '';
  return `${describe(finding, wording)}; ${must}${size}`;
}

/** Nothing in the shed or to be bought, whatever is machined. */
function nothingFits(section: Section, missing: Section): string {
  if (missing === 'blocks' && (section === 'pistonSets' || section === 'ringSets')) {
    return 'no block here takes this set, whatever it is bored to';
  }
  if (section === 'shells') {
    return 'no crankshaft here takes these shells, whatever it is ground to';
  }
  return missing === 'shells'
    ? 'no shells here leave it its clearance'
    : `no ${wordFor(missing)} here goes with it`;
}

/** Sentences of a plan, the first saying what they are of. */
function labelled(label: string, [first = '', ...others]: readonly string[]): readonly string[] {
  return [`${label}: ${first}`, ...others];
}
