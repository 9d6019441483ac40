import type { Span, Wording } from '../judging/index.js';
import { describeInward, describeSpan, sayFinding } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { RingReport } from './inspect-cylinder.js';

/** Describes what to do with one ring. */
export function describeRing({ name, filing }: RingReport, wording: Wording): string {
  const span = (size: Span<Length>) => describeSpan(size, 'length', wording.units);
  const inward = (size: Span<Length>) => describeInward(size, wording.units);
  const finding = sayFinding(filing.finding, wording);
  switch (filing.work) {
    case 'fit as it is':
      return `${name}: fit as it is; ${finding}`;
    case 'measure again':
      return `${name}: measure it again before you file or fit it; ${finding}`;
    case 'wider than a new fit':
      return `${name}: wider than a new ring is set, so go by the maker's wear limit; ${finding}`;
    case 'use another ring':
      return `${name}: use another ring, as this one is worn or not made for this bore; ${finding}`;
    case 'bore is worn': {
      const remedy = filing.serves
        ? `a ring with a gap of ${span(filing.serves)} at the smallest bore stays within its limits`
        : "bore or sleeve the cylinder, or go by the maker's wear limit";
      return `${name}: the bore is worn, not the ring; ${finding}; ${remedy}`;
    }
    case 'file': {
      const { min, max = min } = filing.remove;
      const worn = filing.worn
        ? `; once filed, ${sayFinding(filing.worn, wording)}: the bore is worn`
        : '';
      return `${name}: file ${inward({ min, max })} off its ends, a little at a time, and try it in the bore; ${finding}${worn}`;
    }
  }
}
