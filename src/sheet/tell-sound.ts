import type { ServedGrindPlan } from '../crankshaft/index.js';
import type { ServedBorePlan } from '../cylinders/index.js';
import { mayAllStay } from './bearing-plan.js';

/** An order to grind with the journals that read sound as they are: where all of them do, nothing has to be ground. */
export function tellSound(
  plan: ServedGrindPlan,
  sound: ReadonlyMap<string, string>,
  order: string,
  step: string,
): string {
  if (sound.size === 0) return order;
  const told = [...sound.values()].join(', ');
  if (!mayAllStay(plan, (name) => sound.has(name))) {
    return `${order}; ${told}: ask the grinder whether the others can be ground alone, with the webs marked`;
  }
  const others = plan.journals.some(({ name }) => !sound.has(name))
    ? `, the others at ${step}`
    : '';
  return `${told}${others}: with a pair of shells of each size, and the webs marked, none needs grinding, if the manual allows two sizes on one crankshaft; else ${order}`;
}

/** What to ask where cylinders need no boring by themselves. */
export function soundBores({ cylinders }: ServedBorePlan, sound: readonly string[]): string {
  if (sound.length === 0) return '';
  const names = sound.join(', ');
  const bored = cylinders.filter(({ work }) => work !== 'use as it is');
  return bored.every(({ name }) => sound.includes(name))
    ? `; ${names}: each reads sound at its own size; with pistons and rings of those sizes, and pistons of one weight, none needs boring, if the manual allows it`
    : `; ${names} ${sound.length === 1 ? 'is' : 'are'} within every limit: ask what a sleeve in the others would cost`;
}
