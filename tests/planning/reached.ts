import type { Plan } from 'crankwright/planning';
import type { BruteAnswer } from './brute-force.js';

/** The three numbers that plans are compared by. */
export function reached({ builds, cost, smallestMargin }: Plan): BruteAnswer {
  return {
    engines: builds.length,
    cost: Math.round(cost.amount * 1000),
    margin: smallestMargin === undefined ? undefined : Math.round(smallestMargin * 1e9) + 0,
  };
}
