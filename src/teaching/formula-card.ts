import type { WrittenCard } from '../judging/internal.js';
import { exampleOf } from './example.js';

/** What a formula is about: the room of the library that it comes from, and of bearings the film apart. */
export type CardTopic =
  | 'measuring'
  | 'crankshaft'
  | 'bearings'
  | 'oil film'
  | 'cylinders'
  | 'fits'
  | 'fasteners'
  | 'motion'
  | 'timing'
  | 'valves'
  | 'oil';

/** One formula of the library, with what it is about and values to try it with. */
export interface FormulaCard extends WrittenCard {
  /** What it is about. */
  readonly topic: CardTopic;
  /** A sound value for each letter, as a metric shop would read it [SI]. */
  readonly example: Readonly<Record<string, number>>;
}

/** The cards of a topic. */
export const onTopic = <C extends Readonly<Record<string, WrittenCard>>>(
  topic: CardTopic,
  cards: C,
): { readonly [K in keyof C]: FormulaCard } =>
  Object.fromEntries(
    Object.entries(cards).map(([name, card]) => [
      name,
      Object.freeze({ ...card, topic, example: exampleOf({ ...card, topic }, 'metric') }),
    ]),
  ) as { readonly [K in keyof C]: FormulaCard };
