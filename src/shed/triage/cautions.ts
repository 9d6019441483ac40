import type { Section } from '../sections.js';
import type { Job } from './triage-types.js';

/** What is to be heeded with the work on a part, as sentences without full stops. */
export function cautionsFor(
  section: Section,
  name: string,
  jobs: readonly Pick<Job, 'work'>[],
): readonly string[] {
  const works = jobs.map(({ work }) => work);
  const bends = works.includes('straighten');
  if (section === 'crankshafts' && works.length > 0) {
    return [
      `have ${name} crack-tested before it is machined${bends ? ', and again once it is straight' : ''}: a bent or ground crankshaft can hide a crack that breaks it`,
    ];
  }
  if (section === 'rods' && bends) {
    return [
      `have ${name} crack-tested before it is straightened and after: a rod that breaks goes through the block; if in doubt use another`,
    ];
  }
  if (works.includes('sleeve')) {
    return [
      `${name}: sleeves are pressed in with force or heat; leave that to the shop, and do not stand in line with the press`,
    ];
  }
  return [];
}
