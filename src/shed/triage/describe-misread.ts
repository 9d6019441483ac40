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
    case 'as large as its bore': {
      const { size, oversize, bore } = reason;
      const step =
        oversize === 0 ? 'of standard size' : `${say(oversize, 'length', wording.units)} over`;
      return `${place}: read it again: it reads ${say(size, 'length', wording.units)}, and a bore ${step} is ${describeSpan(bore, 'length', wording.units)}; every piston is smaller than its bore. If it reads the same again, these pistons are for a larger bore than their set says`;
    }
  }
}
