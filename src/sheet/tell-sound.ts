import type { ServedGrindPlan } from '../crankshaft/index.js';
import {
  groundWithOthers,
  mayAllStay,
  type SoundAlone,
  saySoundAlone,
} from '../crankshaft/internal.js';
import type { BorePlan, ServedBorePlan } from '../cylinders/index.js';
import { nameOversize } from '../cylinders/internal.js';
import type { Wording } from '../judging/index.js';
import type { Action } from './action-types.js';

/** An order to grind with the journals that read sound as they are: where all of them do, nothing has to be ground. */
export function tellSound(
  plan: ServedGrindPlan,
  sound: readonly SoundAlone[],
  order: string,
  wording: Wording,
): string {
  const all = groundWithOthers(plan, sound);
  const told = saySoundAlone(all, wording);
  if (told === undefined) return order;
  return mayAllStay(all) ? `${told}; else ${order}` : `${order}; ${told}`;
}

/** Whether each cylinder that is to be bored is sound at a size of its own. */
export const mayAllBoresStay = (plan: BorePlan, sound: readonly string[]): boolean =>
  plan.outcome !== 'none' &&
  plan.outcome !== 'use as it is' &&
  plan.cylinders.every(({ name, work }) => work === 'use as it is' || sound.includes(name));

/** An order to bore with the cylinders that read sound as they are: where all of them do, nothing has to be bored. */
export function tellSoundBores(
  plan: ServedBorePlan,
  sound: Extract<Action, { readonly kind: 'bore' }>['sound'],
  order: string,
  wording: Wording,
): string {
  if (sound.length === 0) return order;
  const names = sound.map(({ name }) => name);
  const { cylinders, oversize } = plan;
  if (!mayAllBoresStay(plan, names)) {
    return `${order}; ${names.join(', ')} ${names.length === 1 ? 'is' : 'are'} within every limit: ask what a sleeve in the others would cost`;
  }
  const told = sound.map(
    (each) => `${each.name} reads sound at ${nameOversize(each.oversize, wording)}`,
  );
  const others =
    names.length < cylinders.length ? `, the others at ${nameOversize(oversize, wording)}` : '';
  return `${told.join(', ')}${others}: with pistons and rings of each size, all pistons of one weight, none needs boring, if the manual allows it; else ${order}`;
}
