import { describeGrindPlan } from '../../crankshaft/index.js';
import { describeBorePlan } from '../../cylinders/index.js';
import { describe, type Wording } from '../../judging/index.js';
import { journalWords } from '../../reading/index.js';
import { wordFor } from '../section-words.js';
import type { Section } from '../sections.js';
import { doing, need } from './describe-job.js';
import type { TriagedPart, TriageReason } from './triage-types.js';

/** Describes a reason: what was seen or judged, and the consequence. */
export function describeReason(
  reason: TriageReason,
  part: TriagedPart,
  wording: Wording,
): readonly string[] {
  switch (reason.kind) {
    case 'fault':
      return [`seen: ${describeFault(reason)}; ${consequenceOf(reason, part.section)}`];
    case 'journals':
      return labelled(journalWords(reason.journals), describeGrindPlan(reason.plan, wording));
    case 'bores':
      return labelled('bores', describeBorePlan(reason.plan, wording));
    case 'housing':
      return [`${reason.place}: ${describeHousing(reason, part.section, wording)}`];
    case 'face':
      return [describe(reason.finding, wording)];
    case 'no shop':
      return [`no shop on the list offers ${doing(reason.work)}`];
    case 'fits nothing':
      // The first sentence of a spare says so.
      return [];
  }
}

/** In a few words, what rules a part out; undefined if the reason does not. */
export function obstacle(reason: TriageReason, { section, jobs }: TriagedPart): string | undefined {
  switch (reason.kind) {
    case 'fault':
      return reason.consequence.kind === 'scrap' ? reason.fault : undefined;
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
        : `housing ${reason.place} is not fit for use`;
    case 'fits nothing':
      return nothingFits(section, reason.section);
    default:
      return undefined;
  }
}

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

function consequenceOf({ place, consequence }: FaultReason, section: Section): string {
  switch (consequence.kind) {
    case 'scrap':
      return 'scrap it';
    case 'machine':
      return `${place ?? 'it'} must be ${section === 'blocks' ? 'bored' : 'ground'}`;
    case 'repair':
      return need(consequence.work);
  }
}

/** Describes a housing that is not fit for use. No shell makes up for it. */
function describeHousing(
  { finding }: Extract<TriageReason, { readonly kind: 'housing' }>,
  section: Section,
  wording: Wording,
): string {
  const must = `resize it${section === 'rods' ? ' or replace the rod' : ''} before you choose shells`;
  if (finding === undefined) return `${must}, but no limits are given to resize it to`;
  const { min, max } = finding.limits;
  const lacking = min === undefined ? 'lower' : max === undefined ? 'upper' : undefined;
  const size = lacking ? `, but no ${lacking} limit is given to resize it to` : '';
  return `${describe(finding, wording)}; ${must}${size}`;
}

/** No part in the shed or to buy fits, whatever is machined. */
function nothingFits(section: Section, missing: Section): string {
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
