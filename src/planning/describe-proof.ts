import type { Wording } from '../judging/index.js';
import { sayDistance } from '../judging/internal.js';
import type { Plan } from './plan-types.js';
import type { Preference } from './preferences.js';
import type { Proof, Unproven } from './proof-types.js';
import { sayCost } from './say-cost.js';

/** What plans are compared by, in words. */
const COMPARED: Readonly<Record<Preference, string>> = {
  engines: 'engines',
  cost: 'cost',
  'tightest margin': 'tightest margin',
  'next tightest margins': 'next tightest margins',
  'least work': 'amount of work',
  'belongs together': 'parts that belong together',
  'engines that ran': 'engines that ran and stay whole',
  origin: 'parts that stay with their engine',
  'one make of shell': 'one make of shell on a crankshaft',
  'not home-made': 'parts that are not home-made',
  'order of the file': 'order of the file',
};

/** `Proven: no plan is better, compared by engines, cost and tightest margin, in this order.` */
function bestIn({ compared }: Plan): string {
  const words = compared.map((each) => COMPARED[each]);
  // A plan that came back from a file may lack what it was compared by.
  if (words.length < 2) return 'Proven: no plan is better.';
  return `Proven: no plan is better, compared by ${words.slice(0, -1).join(', ')} and ${words.at(-1)}, in this order.`;
}

const noneOf = ({ holdsWith }: Plan): string =>
  `Proven: no choice of parts makes a complete engine${holdsWith === undefined ? '' : ` whose clearances each hold with a chance of ${holdsWith} or more`}.`;

const REPORT_IT = 'Please report the shed: this should not happen.';

/** What ended a proof, and what to do about it. */
const ENDED: Readonly<
  Record<Unproven['outcome'], { readonly because: string; readonly advice: string }>
> = {
  'time limit': { because: 'the time was up', advice: 'Allow more time to be sure.' },
  'solver failure': {
    because: 'the solver failed',
    advice: `A smaller question may help: allow fewer engines, or drop the cost limit for each engine. ${REPORT_IT}`,
  },
};

/** Describes what is proven about a plan, or how far the proof came. */
export function describeProof(plan: Plan, wording: Wording): string {
  const { proof, builds, cost } = plan;
  const none = noneOf(plan);
  if (proof.outcome === 'optimal') {
    return builds.length === 0 ? none : bestIn(plan);
  }
  const { stage, found, bound } = proof;
  const { because, advice } = ENDED[proof.outcome];
  const money = (amount: number) => sayCost({ ...cost, amount });
  const margin = (size: number) => sayDistance(size, 'length', wording.units);
  switch (stage) {
    case 'most engines':
      return `NOT PROVEN: found ${sayEngines(found)} before ${because}; at most ${bound} ${bound === 1 ? 'is' : 'are'} possible. ${advice}`;
    case 'least cost':
      return `NOT PROVEN to cost the least: ${because}. This plan costs ${money(found)}; ${bound > 0 ? `no plan for as many engines costs less than ${money(bound)}` : 'how much less as many engines can cost is not known'}. Proven: no plan makes more engines. ${advice}`;
    case 'widest margin':
      return `NOT PROVEN to have the widest margin: ${because}. Its smallest margin is ${margin(found)}; no plan at this cost has more than ${margin(bound)}. Proven: no plan makes more engines, or as many for less. ${advice}`;
    case 'equal plans':
      return `NOT PROVEN to be the best of equal plans: ${because}. ${bestIn(plan)} ${advice}`;
    case 'next engine':
      return `${builds.length === 0 ? none : bestIn(plan)} What one more engine needs is not known, because ${because}.`;
    case 'measure first':
      return `${builds.length === 0 ? none : bestIn(plan)} What to measure first is not known in full, because ${because}.`;
  }
}

/** `no complete engine`, `1 complete engine`, `3 complete engines`. */
export const sayEngines = (count: number): string =>
  `${count === 0 ? 'no' : count} complete ${count > 1 ? 'engines' : 'engine'}`;

/** Whether no engine was asked for: a proven plan tells what the next engine needs unless there are enough. */
export const isNoneAsked = ({ builds, proof, nextEngine }: Plan): boolean =>
  builds.length === 0 && proof.outcome === 'optimal' && nextEngine === undefined;

/** Whether the largest number of engines is proven. */
export const isCountProven = (proof: Proof): boolean =>
  proof.outcome === 'optimal' || proof.stage !== 'most engines';

/** Whether it is proven that no plan is better. */
export const isPlanProven = (proof: Proof): boolean =>
  proof.outcome === 'optimal' ||
  ['next engine', 'equal plans', 'measure first'].includes(proof.stage);
