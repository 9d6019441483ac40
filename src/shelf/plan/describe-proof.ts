import { sayDistance, type Wording } from '../../judging/describe.js';
import type { Plan } from './plan-types.js';
import { sayCost } from './say-cost.js';

const BEST =
  'Proven: no other plan makes more engines, or as many for less, or as many for as little with a wider smallest margin.';

/** Says what is proven of a plan, or how far the proof came. */
export function describeProof({ proof, builds, cost }: Plan, wording: Wording): string {
  if (proof.kind === 'optimal') {
    return builds.length === 0 ? 'Proven: no choice of parts makes a complete engine.' : BEST;
  }
  const { stage, found, bound } = proof;
  const money = (amount: number) => sayCost({ ...cost, amount });
  const margin = (size: number) => sayDistance(size, 'length', wording.units);
  switch (stage) {
    case 'most engines':
      return `NOT PROVEN: the time was up while engines were counted. Found are ${found}; more than ${Math.floor(bound + 1e-6)} cannot be. Allow more time to be sure.`;
    case 'least cost':
      return `NOT PROVEN to cost the least: the time was up. This plan costs ${money(found)}; none of as many engines can cost less than ${money(bound)}. That no plan makes more engines is proven.`;
    case 'widest margin':
      return `NOT PROVEN to have the widest margin: the time was up. Its smallest margin is ${margin(found)}; none at this cost can have more than ${margin(bound)}. That no plan makes more engines, or as many for less, is proven.`;
    case 'next engine':
      return `${BEST} What one more engine would need could not be told in the time.`;
  }
}
