import { nameUndersize } from '../crankshaft/internal.js';
import { nameOversize } from '../cylinders/internal.js';
import type { Wording } from '../judging/index.js';
import { named, wordFor } from '../shed/internal.js';
import type { LackingPart, NextEngine } from './left-over-types.js';

/** `one more engine needs: 1 piston set 0.0200 in over; 1 pair of rod shells 0.0300 in under`. */
export function describeNextEngine(
  { lacks, alternatives, mayBeMore }: NextEngine,
  wording: Wording,
): string {
  if (lacks.length === 0) {
    return 'no part completes one more engine: the limits of a clearance are closer together than the sizes are finished or measured to. Check the limits, measure with better instruments, or ask for less';
  }
  const others = alternatives.map((parts) =>
    parts.map((part) => lacking(part, wording)).join(' and '),
  );
  const more = mayBeMore ? '. There may be more that would do' : '';
  return `one more engine needs: ${sayLacks(lacks, wording)}${others.length === 0 ? '' : `. As easy to get, and enough instead: ${others.join('; or ')}`}${more}`;
}

/** `1 piston set 0.0200 in over; 1 pair of rod shells 0.0300 in under`. */
export const sayLacks = (lacks: readonly LackingPart[], wording: Wording): string =>
  lacks.map((part) => lacking(part, wording)).join('; ');

function lacking(part: LackingPart, wording: Wording): string {
  const { section, kind, fits, count } = part;
  // A kind in its owner's words has no plural.
  if (kind !== undefined) return count === 1 ? `1 ${kind}` : named(kind, count);
  const word = wordFor(section, count);
  const what = fits === undefined ? word : word.replace('shells', `${bearingWord(fits)} shells`);
  return [`${count} ${what}`, sizeOf(part, wording)].filter((each) => each !== '').join(' ');
}

/** `0.0200 in over`, `of a size to be known once crankshaft B is measured`; empty if the part has no size. */
function sizeOf({ section, fits, step, sizedBy }: LackingPart, wording: Wording): string {
  if (sizedBy !== undefined) {
    return `of a size to be known once ${sizedBy.join(' and ')} ${sizedBy.length === 1 ? 'is' : 'are'} measured`;
  }
  if (step === undefined) {
    if (section === 'shells') return 'to suit that crankshaft';
    return section === 'pistonSets' || section === 'ringSets' ? 'to suit that block' : '';
  }
  const size = fits === undefined ? nameOversize(step, wording) : nameUndersize(step, wording);
  return size === 'standard' ? 'of standard size' : size;
}

/** `rod`, `main`. */
const bearingWord = (kind: 'rods' | 'mains'): string => (kind === 'rods' ? 'rod' : 'main');
