import { nameUndersize } from '../../crankshaft/internal.js';
import { nameOversize } from '../../cylinders/internal.js';
import type { Finding, Wording } from '../../judging/index.js';
import { guardBandOf, sayDistance, sayFinding } from '../../judging/internal.js';
import type { AgainReason } from './triage-types.js';

/** That limits are so narrow for these readings that no size could be judged by them. */
function tooNarrow(finding: Finding<'length'>, { units }: Wording): string {
  const { min, max } = finding.limits;
  if (min === undefined || max === undefined) return '';
  const band = guardBandOf<'length'>(finding);
  if (max - min >= 2 * band) return '';
  return `; readings to ±${sayDistance(band, 'length', units)} cannot judge limits ${sayDistance(max - min, 'length', units)} apart: measure it better`;
}

/** What to measure again and why: a sentence without a full stop. */
export function describeAgain(reason: AgainReason, wording: Wording): string {
  if (reason.kind === 'measure again') {
    const { finding } = reason;
    return `measure it again before anything is spent on it: ${sayFinding(finding, wording)}${tooNarrow(finding, wording)}`;
  }
  const { places, of, step } = reason;
  const name = of === 'bores' ? nameOversize : nameUndersize;
  const at = step === undefined ? '' : ` at ${name(step, wording)}`;
  const whose = places.length === 1 ? 'its size lies' : 'their sizes lie';
  return `measure ${places.join(', ')} again before anything is spent on it: ${whose} nearer to a bound${at} than the readings tell, and the work hangs on that`;
}
