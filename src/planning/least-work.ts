import { isTest } from '../shed/internal.js';
import type { Draft } from './draft.js';
import type { Term } from './model.js';
import type { PricedJob } from './money.js';

/** The number of journals, bores, housings and parts that are machined: terms of a model. */
export function workOf({ uses, taken }: Draft): readonly Term[] {
  const repairs = [...taken].flatMap(([kind, terms]) => {
    const work = piecesOf(kind.repairs);
    return terms.map(([variable, count]): Term => [variable, count * work]);
  });
  const ways = uses.map((use, i): Term => [i, 'way' in use ? piecesOf(use.way.jobs) : 0]);
  return [...repairs, ...ways].filter(([, work]) => work > 0);
}

/** A job on the whole part is one piece of work; a test is none. */
const piecesOf = (jobs: readonly PricedJob[]): number =>
  jobs.reduce((sum, { work, places }) => sum + (isTest(work) ? 0 : Math.max(1, places.length)), 0);
