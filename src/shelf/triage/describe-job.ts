import { nameUndersize } from '../../crankshaft/describe-grind-plan.js';
import { nameOversize } from '../../cylinders/describe-bore-plan.js';
import { describeSpan, type Wording } from '../../judging/describe.js';
import type { Work } from '../shelf.js';
import type { Job } from './triage-types.js';

/** Each work as an order, and as something that is done. */
const WORDS: { readonly [W in Work]: readonly [order: string, doing: string] } = {
  'grind rod journals': ['grind rod journals', 'grinding rod journals'],
  'grind main journals': ['grind main journals', 'grinding main journals'],
  bore: ['bore and hone', 'boring and honing'],
  sleeve: ['sleeve', 'sleeving'],
  straighten: ['straighten', 'straightening'],
  'resize housings': ['resize housings', 'resizing housings'],
  'skim head': ['skim its face', 'skimming its face'],
};

/** An order for the shop: `grind rod journals rod 1, rod 2 to 0.0200 in under, 1.6045 to 1.6050 in`. */
export function describeJob(job: Job, wording: Wording): string {
  return saying(WORDS[job.work][0], job, wording);
}

/** The same as something that is done: `grinding rod journals rod 1 to …`. */
export function describeDoing(job: Job, wording: Wording): string {
  return saying(WORDS[job.work][1], job, wording);
}

/** The work alone: `straightening`. */
export function doing(work: Work): string {
  return WORDS[work][1];
}

function saying(verb: string, { work, places, step, to }: Job, wording: Wording): string {
  const what = places.length === 0 ? verb : `${verb} ${places.join(', ')}`;
  const size = to && describeSpan(to, 'length', wording.units);
  if (step === undefined) return size === undefined ? what : `${what} to measure ${size}`;
  const bored = work === 'bore' || work === 'sleeve';
  const name = bored ? nameOversize(step, wording) : nameUndersize(step, wording);
  return size === undefined ? `${what} to ${name}` : `${what} to ${name}, ${size}`;
}
