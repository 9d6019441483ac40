import type { ServedGrindPlan } from '../crankshaft/index.js';
import type { ServedBorePlan } from '../cylinders/index.js';
import { nameOversize } from '../cylinders/internal.js';
import type { Wording } from '../judging/index.js';
import type { Action } from './action-types.js';
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

/** An order to bore with the cylinders that read sound as they are: where all of them do, nothing has to be bored. */
export function tellSoundBores(
  { cylinders, oversize }: ServedBorePlan,
  sound: Extract<Action, { readonly kind: 'bore' }>['sound'],
  order: string,
  wording: Wording,
): string {
  if (sound.length === 0) return order;
  const names = sound.map(({ name }) => name);
  const bored = cylinders.filter(({ work }) => work !== 'use as it is');
  if (!bored.every(({ name }) => names.includes(name))) {
    return `${order}; ${names.join(', ')} ${names.length === 1 ? 'is' : 'are'} within every limit: ask what a sleeve in the others would cost`;
  }
  const told = sound.map(
    (each) => `${each.name} reads sound at ${nameOversize(each.oversize, wording)}`,
  );
  const others =
    bored.length < cylinders.length ? `, the others at ${nameOversize(oversize, wording)}` : '';
  return `${told.join(', ')}${others}: with pistons and rings of each size, all pistons of one weight, none needs boring, if the manual allows it; else ${order}`;
}
