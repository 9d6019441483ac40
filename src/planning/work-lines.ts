import { doing, isTest, order } from '../shed/internal.js';
import { isToSettle } from './job-doubts.js';
import type { BuildJob, ShopOrder } from './job-types.js';
import type { Build, Plan } from './plan-types.js';
import { sayCost } from './say-cost.js';
import { countParts, type Line, type Topic } from './topic.js';
import { workIn } from './work-in.js';

/** The machining and repair of one part of one engine. */
interface PartWork {
  readonly name: string;
  readonly works: readonly BuildJob['work'][];
}

/** The parts of every engine that take machining or repair. */
export const partsWithWork = (builds: readonly Build[]): readonly PartWork[] =>
  builds.flatMap((build) => byPart(workIn(build)));

const byPart = (jobs: readonly BuildJob[]): readonly PartWork[] =>
  [...new Set(jobs.map(({ part }) => part))].map((name) => ({
    name,
    works: [...new Set(jobs.filter(({ part }) => part === name).map(({ work }) => work))],
  }));

/** What work the engines wait for: none of it is done, and the count stands on it. */
export function workLine(work: readonly PartWork[]): Line {
  if (work.length === 0) return ['That counts on no machining and no repair.'];
  const start = 'That counts on work still to be done';
  const each = work.map(({ name, works }) => `${name} (${works.map(doing).join(', ')})`);
  const works = [...new Set(work.flatMap((one) => one.works.map(order)))];
  return [
    `${start}: ${[...new Set(each)].join('; ')}.`,
    `${start}: ${alike(work, doing).join('; ')}.`,
    `Work still to do: ${alike(work, order).join('; ')}.`,
    `That counts on work on ${countParts(work.length)} (${works.join(', ')}): see MACHINING ORDERS.`,
    `${start} on ${countParts(work.length)}: see MACHINING ORDERS.`,
  ];
}

/** The parts that take the same work together, apart from those in doubt: `block A, block C (boring and honing)`. */
function alike(
  work: readonly PartWork[],
  say: (work: BuildJob['work']) => string,
  doubtful: ReadonlySet<string> = new Set(),
): readonly string[] {
  const names = new Map<string, readonly string[]>();
  for (const { name, works } of work) {
    const key = [...works.map(say), ...(doubtful.has(name) ? ['in doubt'] : [])].join(', ');
    names.set(key, [...(names.get(key) ?? []), name]);
  }
  return [...names].map(([works, its]) => `${[...new Set(its)].join(', ')} (${works})`);
}

/** What goes to which shop, and what for. */
export function shopLines({ orders, cost: { currency } }: Plan): Topic {
  const amount = orders.reduce((sum, { cost }) => sum + cost.amount, 0);
  const all = sayCost({ amount, ...(currency !== undefined && { currency }) });
  const isDoubted = orders.some(({ jobs }) => jobs.some(isToSettle));
  return {
    lines: orders.map(shopLine),
    summed: [
      `To ${orders.length} shops, for ${all}${isDoubted ? ', some in doubt' : ''}: see MACHINING ORDERS.`,
    ],
  };
}

function shopLine({ shop, jobs, cost }: ShopOrder): Line {
  const doubtful = new Set(jobs.filter(isToSettle).map(({ part }) => part));
  const first = doubtful.size > 0 ? ' Settle it first: see MACHINING ORDERS.' : '';
  const start = `, for ${sayCost(cost)}${doubtful.size > 0 ? ', IN DOUBT' : ''}`;
  const work = byPart(jobs.filter((job) => !isTest(job.work)));
  const mark = (name: string) => (doubtful.has(name) ? `${name} (in doubt)` : name);
  const named = testsIn(jobs).map(({ what, names }) => `${what} of ${names.map(mark).join(', ')}`);
  const counted = testsIn(jobs).map(({ what, names }) => `${what} of ${countParts(names.length)}`);
  const count = countParts(new Set(jobs.map(({ part }) => part)).size);
  const toDo = [
    ...new Set(jobs.map((job) => (isTest(job.work) ? job.work : order(job.work)))),
  ].join(', ');
  return [
    `To ${shop}, for ${sayCost(cost)}: ${[...alike(work, doing, doubtful), ...named].join('; ')}.${first}`,
    `To ${shop}, for ${sayCost(cost)}: ${[...alike(work, order, doubtful), ...named].join('; ')}.${first}`,
    `To ${shop}${start}: ${[...alike(work, order), ...counted].join('; ')}; see MACHINING ORDERS.`,
    `To ${shop}${start}: ${count} (${toDo}); see MACHINING ORDERS.`,
    `To ${shop}${start}: ${count} (${toDo}).`,
    `To ${shop}${start}: ${count}, see MACHINING ORDERS.`,
    `To one more shop${start}: ${count}, see MACHINING ORDERS.`,
  ];
}

/** The tests that a shop makes, each with its parts: `crack tests of crankshaft A, head B`. */
const testsIn = (jobs: readonly BuildJob[]) =>
  [...new Set(jobs.map(({ work }) => work))].filter(isTest).map((test) => {
    const names = [...new Set(jobs.filter(({ work }) => work === test).map(({ part }) => part))];
    return { what: names.length === 1 ? `a ${test}` : `${test}s`, names };
  });
