import type { Section } from '../sections.js';
import { isTest } from '../works.js';
import type { Job } from './triage-types.js';

/** Cautions for the work on a part, as sentences without full stops. */
export function cautionsFor(
  section: Section,
  name: string,
  jobs: readonly Pick<Job, 'work'>[],
): readonly string[] {
  const works = jobs.map(({ work }) => work).filter((work) => !isTest(work));
  if (section === 'crankshafts' && works.length > 0) {
    return [`${name}: a bent or ground crankshaft can hide a crack and break`];
  }
  if (section === 'rods' && works.length > 0) {
    return [
      `${name}: a broken rod goes through the block; if in doubt, use another, whatever the test said`,
    ];
  }
  if (works.includes('sleeve')) {
    return [
      `${name}: sleeves go in with force or heat; leave that to the shop, and do not stand in line with the press`,
    ];
  }
  return [];
}
