import type { Section } from '../sections.js';
import { isTest, type Work } from '../works.js';
import type { NeededTest } from './needed-test.js';
import type { Job } from './triage-types.js';

/** Cautions for the work on a part, and for what only tests have cleared, as sentences without full stops. */
export function cautionsFor(
  section: Section,
  name: string,
  jobs: readonly Pick<Job, 'work'>[],
  tests: readonly Pick<NeededTest, 'test'>[],
): readonly string[] {
  const works = jobs.map(({ work }) => work).filter((work) => !isTest(work));
  if (section === 'crankshafts' && works.length > 0) {
    return [`${name}: a bent or ground crankshaft can hide a crack and break`];
  }
  // A rod is checked for a bend where it was bent or hot.
  const wasHot = tests.some(({ test }) => test === 'check it for bend and twist');
  if (section === 'rods' && (works.length > 0 || wasHot)) {
    return [
      `${name}: a broken rod goes through the block; if in doubt, use another, whatever the test said`,
    ];
  }
  return works.flatMap((work) => {
    const caution = CAUTIONS[work];
    return caution === undefined ? [] : [`${name}: ${caution}`];
  });
}

const CAUTIONS: { readonly [W in Work]?: string } = {
  sleeve:
    'sleeves go in with force or heat; leave that to the shop, and do not stand in line with the press',
  stitch: 'a crack in a main web or into a bore is no job for stitching',
  'skim head':
    'no depth limit of the skim is known here: check the compression, valve-to-piston and piston-to-head clearance after it',
};
