import type { ServedGrindPlan } from '../crankshaft/index.js';
import {
  groundWithOthers,
  mayAllStay,
  type SoundAlone,
  saySoundAlone,
} from '../crankshaft/internal.js';
import type { ServedBorePlan } from '../cylinders/index.js';
import type { Wording } from '../judging/index.js';

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

/** What to ask where cylinders need no boring by themselves. */
export function soundBores({ cylinders }: ServedBorePlan, sound: readonly string[]): string {
  if (sound.length === 0) return '';
  const names = sound.join(', ');
  const bored = cylinders.filter(({ work }) => work !== 'use as it is');
  return bored.every(({ name }) => sound.includes(name))
    ? `; ${names}: each reads sound at its own size; with pistons and rings of those sizes, and pistons of one weight, none needs boring, if the manual allows it`
    : `; ${names} ${sound.length === 1 ? 'is' : 'are'} within every limit: ask what a sleeve in the others would cost`;
}
