import { nameUndersize } from '../../crankshaft/internal.js';
import { nameOversize } from '../../cylinders/internal.js';
import { describe, type Wording } from '../../judging/index.js';
import type { AgainReason } from './triage-types.js';

/** What to measure again and why: a sentence without a full stop. */
export function describeAgain(reason: AgainReason, wording: Wording): string {
  if (reason.kind === 'measure again') {
    return `measure it again before anything is spent on it: ${describe(reason.finding, wording)}`;
  }
  const { places, of, step } = reason;
  const name = of === 'bores' ? nameOversize : nameUndersize;
  const at = step === undefined ? '' : ` at ${name(step, wording)}`;
  const whose = places.length === 1 ? 'its size lies' : 'their sizes lie';
  return `measure ${places.join(', ')} again before anything is spent on it: ${whose} nearer to a bound${at} than the readings tell, and the work hangs on that`;
}
