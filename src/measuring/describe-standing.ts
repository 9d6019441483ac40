import type { Wording } from '../judging/index.js';
import { noteOf, sayDistance, sayFinding } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { InDoubt } from './standing.js';

/** `0.0008 in below it`. */
export function outsideBy(outside: Length, { units }: Wording): string {
  return `${sayDistance(Math.abs(outside), 'length', units)} ${outside < 0 ? 'below' : 'above'} it`;
}

/** `rod 2, out-of-round 0.0007 in: …`, `rod 2, 0.0008 in below it (common practice: …)`. */
function describeDoubt({ name, finding, outside, basis }: InDoubt, wording: Wording): string {
  const flaw = finding === undefined ? [] : [sayFinding(finding, wording)];
  const isOutside = outside !== undefined && basis !== undefined;
  const size = isOutside
    ? [`its size ${outsideBy(outside, wording)} ${noteOf(basis, wording)}`]
    : [];
  return [name, ...flaw, ...size].join(', ');
}

/** Whether better readings alone may settle a doubt: its shape is undecided, or its size too near a bound. */
export const isReadTooCoarsely = ({ finding, outside, band }: InDoubt): boolean =>
  (finding === undefined || finding.verdict === 'undecided') &&
  (outside === undefined || band !== undefined);

/** What only rules of thumb stand against, so that less metal may come off: a sentence without a full stop. */
export function describeDoubts(
  step: string,
  doubts: readonly InDoubt[],
  work: 'grind' | 'bore',
  wording: Wording,
): string {
  const who = doubts.map((doubt) => describeDoubt(doubt, wording)).join('; ');
  const byReadings = doubts.every(isReadTooCoarsely);
  const [what, todo] = byReadings
    ? ['the readings do not tell whether it may be left', 'measure again']
    : [
        'only a rule of thumb stands against leaving it',
        "measure again and find the maker's service limit",
      ];
  return `in doubt: ${what} at ${step}: ${who}; ${todo} before you ${work}`;
}

/** A step that better readings may allow: a sentence without a full stop. */
export function describeNearly(
  step: string,
  parts: readonly string[],
  work: 'grind' | 'bore',
): string {
  const misses = parts.length === 1 ? 'it misses' : 'they miss';
  return `in doubt: measure ${parts.join(', ')} again before you ${work}, as ${misses} ${step} by less than the readings tell`;
}

/** `1 more undersize is left after it`. */
export function describeStepsLeft(left: number, word: 'undersize' | 'oversize'): string {
  if (left === 0) return `it is the last ${word}`;
  return `${left} more ${left === 1 ? `${word} is` : `${word}s are`} left after it`;
}
