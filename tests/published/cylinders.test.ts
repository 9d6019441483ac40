import {
  format,
  inch,
  minus,
  mm,
  pistonClearanceSpan,
  recommendedRingGap,
  ringFilingNeeded,
  ringGapAlongBore,
  ringGapIn,
  thou,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

describe('pistons', () => {
  check({
    source: 'TM 10-3930-653-14&P, p. 61',
    name: 'piston 87.165 to 87.215, bore 87.20 to 87.25 mm: -0.015 to 0.085 mm, so they are selected',
    given: {
      bore: { min: mm(87.2), max: mm(87.25) },
      piston: { min: mm(87.165), max: mm(87.215) },
    },
    expected: { min: mm(-0.015), max: mm(0.085) },
    got: pistonClearanceSpan,
  });
  check({
    source: 'NAVEDTRA 14276, fig. 3-39',
    name: 'hole 1.500 to 1.502 in, shaft 1.495 to 1.497 in: 0.003 to 0.007 in',
    given: {
      bore: { min: inch(1.5), max: inch(1.502) },
      piston: { min: inch(1.495), max: inch(1.497) },
    },
    expected: { min: inch(0.003), max: inch(0.007) },
    got: pistonClearanceSpan,
  });
});

describe('ring gaps', () => {
  check({
    source: 'TM 5-6115-593-34, p. 1-9',
    // The text says "wall"; the number is that of the diameter, π rounded to three.
    name: '0.003 in of gap for each 0.001 in of wear, printed to the thousandth',
    given: [1, 2, 4].map(thou),
    expected: ['0.003 in', '0.006 in', '0.013 in'],
    got: (wear) =>
      wear.map((by) => {
        const bore = mm((inch(3) + by) * 1000);
        const gap = ringGapIn({ gap: thou(10), measuredIn: inch(3), bore });
        return format(minus(gap, thou(10)), inch, 3);
      }),
  });
  check({
    source: 'TM 5-6115-593-34, p. 1-9',
    name: '0.003 in for 0.001 in, to the half thousandth that was rounded away',
    given: { gap: thou(10), measuredIn: inch(3), bore: inch(3.001) },
    expected: thou(13),
    tolerance: { absolute: thou(0.5) },
    got: ringGapIn,
  });
  check({
    basis: 'common practice',
    name: 'a ring opens as it rises to the worn end of its bore',
    given: [
      { station: inch(0.5), mean: inch(3.004) },
      { station: inch(3), mean: inch(3) },
    ],
    expected: [true, '12.0 thou'],
    got: (stations) => {
      const { span } = ringGapAlongBore({ gap: thou(12), measuredIn: inch(3), stations });
      return [span.max > thou(24), format(span.min, thou)];
    },
  });
  check({
    basis: 'common practice',
    name: '0.003 to 0.004 in of gap for each inch of bore',
    given: [2, 3, 4].map(inch),
    expected: ['0.006 to 0.008', '0.009 to 0.012', '0.012 to 0.016'],
    got: (bores) =>
      bores.map((bore) => {
        const { min = bore, max = bore } = recommendedRingGap(bore).limits;
        return `${(min / inch(1)).toFixed(3)} to ${(max / inch(1)).toFixed(3)}`;
      }),
  });
  check({
    basis: 'common practice',
    name: 'a gap that is too tight is filed, one wider than a new fit is left to the maker’s limit',
    given: [thou(5), thou(10), thou(40)],
    expected: ['file', 'fit as it is', 'wider than a new fit'],
    got: (gaps) => gaps.map((gap) => ringFilingNeeded({ gap, measuredIn: inch(3) }).work as string),
  });
  check({
    basis: 'common practice',
    name: 'a gap too wide at the worn end alone is wear of the bore, at the smallest place a worn or wrong ring',
    given: [thou(12), thou(30)],
    expected: ['bore is worn', 'use another ring'],
    got: (gaps) =>
      gaps.map(
        (gap) =>
          ringFilingNeeded({
            gap,
            measuredIn: inch(3),
            largestBore: inch(3.006),
            limits: { min: thou(9), max: thou(25) },
          }).work as string,
      ),
  });
});
