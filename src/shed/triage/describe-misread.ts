import type { Wording } from '../../judging/index.js';
import { describeSpan, say } from '../../judging/internal.js';
import { sayOddReading } from '../../measuring/internal.js';
import type { Misread } from './misread-types.js';

/** What is to be read again of a part, and why. */
export function describeMisread(reason: Misread, wording: Wording): string {
  const { place } = reason;
  switch (reason.kind) {
    case 'read again':
      return `${place}: ${sayOddReading(reason.odd, wording)}`;
    case 'readings apart': {
      const apart = describeSpan(reason.readings, 'length', wording.units);
      return `${place}: read it again first: it reads ${apart}, and no housing is so far out of round; one of these readings is wrong`;
    }
    case 'at no step':
      return `${place}: read it again: round, yet ${say(reason.below, 'length', wording.units)} below standard, which is no step; a whole turn of the thimble (0.025 in or 0.5 mm) is easily miscounted. If it reads the same again, list both readings`;
    case 'as large as its bore':
      return `${sayAgainstBore(reason, wording)}; every piston is smaller than its bore. If it reads the same again, the set is larger than the file says: look for the oversize stamped on a crown, and write that in the file as the oversize of the set`;
    case 'far under its bore':
      return `${sayAgainstBore(reason, wording)}; no piston for that bore is so small. If it reads the same again, the set is smaller than the file says, or of another engine: look for the oversize stamped on a crown`;
    case 'apart from its set': {
      const { size, other } = reason;
      const [its, theirs] = [size, other.size].map((each) => say(each, 'length', wording.units));
      return `${place}: read it again: it reads ${its}, and ${other.place} of the same set ${theirs}`;
    }
  }
}

/** `piston 2: read it again: it reads 3.0100 in, and a bore of standard size is 3.0000 to 3.0005 in`. */
function sayAgainstBore(
  {
    place,
    size,
    oversize,
    bore,
  }: Extract<Misread, { readonly kind: 'as large as its bore' | 'far under its bore' }>,
  { units }: Wording,
): string {
  const step = oversize === 0 ? 'of standard size' : `${say(oversize, 'length', units)} over`;
  return `${place}: read it again: it reads ${say(size, 'length', units)}, and a bore ${step} is ${describeSpan(bore, 'length', units)}`;
}
