import {
  describeClearance,
  explainClearance,
  flattenedThreadGap,
  format,
  inch,
  type Length,
  matchShells,
  minus,
  mm,
  oilClearance,
  oilClearanceSpan,
  plus,
  recommendedOilClearance,
  type Span,
  shellWallFor,
  thou,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const manual = 'TM 5-4320-302-14, p. 6-181';
/** Undersize, shell wall and bore of the shells in place, in mm, as the manual prints them. */
const table = [
  { undersize: 0, wall: [2.973, 2.985], bore: [60.04, 60.083] },
  { undersize: 0.5, wall: [3.223, 3.235], bore: [59.54, 59.583] },
  { undersize: 1, wall: [3.473, 3.485], bore: [59.04, 59.083] },
  { undersize: 1.5, wall: [3.723, 3.735], bore: [58.54, 58.583] },
] as const;
const span = ([min, max]: readonly [number, number]): Span<Length> => ({
  min: mm(min),
  max: mm(max),
});
/** The housing is not printed: it is the first bore with two of its walls about it. */
const housingBore = span([60.04 + 2 * 2.985, 60.083 + 2 * 2.973]);

describe('undersize shells', () => {
  for (const { undersize, wall, bore } of table) {
    // TM 9-2815-225-34&P adds the whole undersize to each wall; this table shows that it is half.
    check({
      source: manual,
      name: `${undersize} mm under: the wall of the shell grows by half the undersize`,
      given: [2.973, 2.985].map(mm),
      expected: wall.map((size) => mm(size)),
      got: (standard) =>
        standard.map((standardWall) => shellWallFor({ standardWall, undersize: mm(undersize) })),
    });
    check({
      source: manual,
      name: `${undersize} mm under: the bore that is left within the shells`,
      given: { housingBore, shellWall: span(wall), journal: mm(60 - undersize) },
      expected: span(bore),
      got: (sizes) => {
        const clearance = oilClearanceSpan(sizes);
        return { min: plus(clearance.min, sizes.journal), max: plus(clearance.max, sizes.journal) };
      },
    });
    check({
      source: manual,
      // The manual calls this clearance radial; by its own sizes it is diametral.
      name: `${undersize} mm under: a diametral clearance of 0.05 to 0.112 mm`,
      // The journal follows from the first row: 60.040 - 0.050 and 60.083 - 0.112.
      given: span([59.971 - undersize, 59.99 - undersize]),
      expected: span([0.05, 0.112]),
      tolerance: { absolute: 1e-9 },
      got: (journal) => oilClearanceSpan({ housingBore, shellWall: span(wall), journal }),
    });
  }
});

describe('clearances', () => {
  check({
    source: 'NAVEDTRA 14276, fig. 3-39',
    name: 'hole 1.500 to 1.502 in, shaft 1.495 to 1.497 in: 0.003 to 0.007 in',
    // The hole as a housing with shells of 1/16 in in it.
    given: {
      housingBore: { min: inch(1.625), max: inch(1.627) },
      shellWall: inch(0.0625),
      journal: { min: inch(1.495), max: inch(1.497) },
    },
    expected: { min: inch(0.003), max: inch(0.007) },
    got: oilClearanceSpan,
  });
  check({
    basis: 'common practice',
    name: '0.001 in of oil clearance for each inch of journal',
    given: [1, 2, 2.5].map(inch),
    expected: ['1.0 thou', '2.0 thou', '2.5 thou'],
    got: (journals) => journals.map((one) => format(recommendedOilClearance(one).target, thou)),
  });
  check({
    source: 'conservation of area, worked by hand: 0.017671 mm² over 0.3 mm',
    name: 'a thread of 0.15 mm flattened to 0.3 mm leaves 0.0589 mm',
    given: { threadDiameter: mm(0.15), flattenedWidth: mm(0.3) },
    expected: mm(0.058905),
    tolerance: { relative: 1e-5 },
    got: flattenedThreadGap,
  });
});

describe('a journal ground 0.020 in under in standard shells', () => {
  const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
  check({
    basis: 'common practice',
    name: 'has 0.020 in of extra clearance',
    given: sizes,
    expected: inch(0.02),
    got: (standard) => {
      const ground = { ...standard, journal: minus(standard.journal, thou(20)) };
      return minus(oilClearance(ground), oilClearance(standard));
    },
  });
  check({
    basis: 'common practice',
    name: 'knocks, and says which shells would not',
    given: { clearance: thou(22), journal: inch(2.105) },
    expected: [true, true, '20.0 thou', '2.0 thou'],
    got: (question) => {
      const why = explainClearance(question);
      const said = describeClearance(why, { units: 'inch' }).join();
      const step = why.outcome === 'journal ground, shells not' ? why : undefined;
      return [
        /\bknock\b/.test(said),
        said.includes('0.0200 in'),
        step ? format(step.mismatch, thou) : 'unexplained',
        step ? format(step.matched.value, thou) : 'unexplained',
      ];
    },
  });
  check({
    source: 'TM 5-3895-346-14',
    name: 'is far above a rod clearance of 0.0015 to 0.0045 in; matching shells are within',
    given: { clearance: thou(23), journal: inch(2.105) },
    expected: ['above', 'within'],
    got: (question) => {
      const limits = { min: inch(0.0015), max: inch(0.0045) };
      const why = explainClearance({ ...question, limits });
      return [why.finding.verdict, 'matched' in why ? why.matched.verdict : 'none'] as string[];
    },
  });
  check({
    basis: 'common practice',
    name: 'wants shells 0.020 in under, and no others of the shelf',
    given: [0, 10, 20, 30],
    expected: [20],
    got: (steps) =>
      matchShells({
        journal: inch(2.105),
        housingBore: sizes.housingBore,
        shells: steps.map((step) => ({
          name: `${step} under`,
          undersize: thou(step),
          wall: shellWallFor({ standardWall: sizes.shellWall, undersize: thou(step) }),
        })),
      })
        .filter(({ fits }) => fits)
        .map(({ shell }) => Number.parseInt(shell.name, 10)),
  });
});
