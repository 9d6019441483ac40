import { nameUndersize } from '../../crankshaft/internal.js';
import { nameOversize } from '../../cylinders/internal.js';
import type { Wording } from '../../judging/index.js';
import { describeSpan } from '../../judging/internal.js';
import type { Work } from '../works.js';
import type { Job } from './triage-types.js';

/** Each kind of work as an order, as an activity, and as what a part needs. */
const WORDS: {
  readonly [W in Work]: readonly [order: string, doing: string, need: string];
} = {
  'crack test': ['crack-test it', 'crack-testing it', 'it must be crack-tested'],
  straighten: ['straighten', 'straightening', 'it must be straightened'],
  'grind main journals': [
    'grind main journals',
    'grinding main journals',
    'its main journals must be ground',
  ],
  'grind rod journals': [
    'grind rod journals',
    'grinding rod journals',
    'its rod journals must be ground',
  ],
  bore: ['bore and hone', 'boring and honing', 'it must be bored'],
  sleeve: ['sleeve', 'sleeving', 'it must be sleeved'],
  'resize housings': ['resize housings', 'resizing housings', 'its housings must be resized'],
  stitch: ['stitch its crack', 'stitching its crack', 'its crack must be stitched'],
  weld: ['weld its crack', 'welding its crack', 'its crack must be welded'],
  'pressure test': ['pressure-test it', 'pressure-testing it', 'it must be pressure-tested'],
  'skim head': ['skim its face', 'skimming its face', 'its face must be skimmed'],
  'recut seats': [
    'recut its valve seats',
    'recutting its valve seats',
    'its valve seats must be recut',
  ],
  'reface valves': ['reface them', 'refacing them', 'they must be refaced'],
};

/** An order for the shop: `grind rod journals rod 1, rod 2 to 0.0200 in under, 1.6045 to 1.6050 in`. */
export function describeJob(job: Job, wording: Wording): string {
  return withSize(WORDS[job.work][0], job, wording);
}

/** The same as an activity: `grinding rod journals rod 1 to …`. */
export function describeDoing(job: Job, wording: Wording): string {
  return withSize(WORDS[job.work][1], job, wording);
}

/** The activity alone: `straightening`. */
export function doing(work: Work): string {
  return WORDS[work][1];
}

/** What a shop is told to do: `grind rod journals`. */
export function order(work: Work): string {
  return WORDS[work][0];
}

/** What a part needs: `its housings must be resized`. */
export function need(work: Work): string {
  return WORDS[work][2];
}

function withSize(verb: string, { work, places, step, to }: Job, wording: Wording): string {
  const what = places.length === 0 ? verb : `${verb} ${places.join(', ')}`;
  const size = to && describeSpan(to, 'length', wording.units);
  if (step === undefined) return size === undefined ? what : `${what} to measure ${size}`;
  const bored = work === 'bore' || work === 'sleeve';
  const name = bored ? nameOversize(step, wording) : nameUndersize(step, wording);
  return size === undefined ? `${what} to ${name}` : `${what} to ${name}, ${size}`;
}
