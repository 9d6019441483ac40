import type { Plan } from 'crankwright/planning';
import { isTest } from '../../src/shed/works.js';
import type { BruteAnswer, BruteBest } from './brute-force.js';

/** The three numbers that plans are compared by. */
export function reached({ builds, cost, smallestMargin }: Plan): BruteAnswer {
  return {
    engines: builds.length,
    cost: Math.round(cost.amount * 1000),
    margin: smallestMargin === undefined ? undefined : Math.round(smallestMargin * 1e9) + 0,
  };
}

/** All that plans without a limit for each engine are compared by. Of a plan without guard bands. */
export function reachedInAll({ builds, cost }: Plan): BruteBest {
  const findings = builds.flatMap(({ bearings, cylinders, guides }) => [
    ...bearings.map(({ finding }) => finding),
    ...cylinders.flatMap(({ finding }) => finding ?? []),
    ...(guides?.finding ? [guides.finding] : []),
  ]);
  const strangers = builds.map(({ parts }) => {
    const block = parts.find(({ section }) => section === 'blocks');
    return parts.reduce((sum, { from, count }) => sum + (from === block?.from ? 0 : count), 0);
  });
  const work = builds.flatMap(({ jobs }) =>
    jobs.map(({ work: its, places }) => (isTest(its) ? 0 : Math.max(1, places.length))),
  );
  const sumOf = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
  return {
    engines: builds.length,
    cost: Math.round(cost.amount * 1000),
    margins: findings.map(({ margin }) => Math.round(margin * 1e9) + 0).sort((a, b) => a - b),
    work: sumOf(work),
    strangers: sumOf(strangers),
  };
}
