import type { Section } from '../sections.js';
import type { Job } from './triage-types.js';

/** Cautions for the work on a part, as sentences without full stops. */
export function cautionsFor(
  section: Section,
  name: string,
  jobs: readonly Pick<Job, 'work'>[],
): readonly string[] {
  const works = jobs.map(({ work }) => work);
  const bends = works.includes('straighten');
  if (section === 'crankshafts' && works.length > 0) {
    return [
      `have ${name} crack-tested before it is machined${bends ? ', and again once it is straight' : ''}: a bent or ground crankshaft can hide a crack and break`,
    ];
  }
  if (section === 'rods' && bends) {
    return [
      `have ${name} crack-tested before and after it is straightened: a broken rod goes through the block; if in doubt, use another`,
    ];
  }
  if (works.includes('sleeve')) {
    return [
      `${name}: sleeves go in with force or heat; leave that to the shop, and do not stand in line with the press`,
    ];
  }
  return [];
}
