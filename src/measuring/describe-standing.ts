import { describe, type Wording } from '../judging/index.js';
import { noteOf, sayDistance } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { InDoubt } from './standing.js';

/** `0.0008 in below it`. */
export function outsideBy(outside: Length, { units }: Wording): string {
  return `${sayDistance(Math.abs(outside), 'length', units)} ${outside < 0 ? 'below' : 'above'} it`;
}

/** `rod 2, out-of-round 0.0007 in: …`, `rod 2, 0.0008 in below it (common practice: …)`. */
function describeDoubt({ name, finding, outside, basis }: InDoubt, wording: Wording): string {
  const flaw = finding === undefined ? [] : [describe(finding, wording)];
  const isOutside = outside !== undefined && basis !== undefined;
  const size = isOutside ? [`${outsideBy(outside, wording)} ${noteOf(basis, wording)}`] : [];
  return [name, ...flaw, ...size].join(', ');
}

/** What only rules of thumb stand against, so that less metal may come off: a sentence without a full stop. */
export function describeDoubts(
  step: string,
  doubts: readonly InDoubt[],
  work: 'grind' | 'bore',
  wording: Wording,
): string {
  const who = doubts.map((doubt) => describeDoubt(doubt, wording)).join('; ');
  return `in doubt: only a rule of thumb stands against leaving it at ${step}: ${who}; measure again and find the maker's service limit before you ${work}`;
}

/** `1 more undersize is left after it`. */
export function describeStepsLeft(left: number, word: 'undersize' | 'oversize'): string {
  if (left === 0) return `it is the last ${word}`;
  return `${left} more ${left === 1 ? `${word} is` : `${word}s are`} left after it`;
}
