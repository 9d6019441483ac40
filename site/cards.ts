import type { CardLetter } from '../src/judging/internal.js';
import type { UnitSystem } from '../src/quantities/index.js';
import { type CardName as Written, cards as written } from '../src/teaching/cards.js';
import { exampleOf } from '../src/teaching/example.js';
import type { FormulaCard } from '../src/teaching/formula-card.js';
import { readingOf } from '../src/teaching/shop-values.js';
import { leastFilm } from './film-card.js';
import type { AnyUnit } from './units.js';

// The pages take cards from here alone. Importing the teaching room itself would load mathjs with every page.
export type { CardLetter } from '../src/judging/internal.js';
export type { CardTopic, FormulaCard } from '../src/teaching/formula-card.js';
export { resultUnit } from '../src/teaching/shop-values.js';

/** The cards that have a page: those of the library, and the film of a bearing. */
export const cards: Readonly<Record<CardName, FormulaCard>> = { ...written, leastFilm };
export type CardName = Written | 'leastFilm';

/** Whether a page has a card of the library, whose formula can be worked out by hand. */
export const isWritten = (name: CardName): name is Written => name !== 'leastFilm';

/** A number for each letter of a card, in SI. */
export type Values = Readonly<Record<string, number>>;

/** The names of all cards, in their order. */
export const cardNames = Object.keys(cards) as readonly CardName[];

/** What the card's own function gives for its formula. */
export const compute = ({ of, call, read }: FormulaCard, values: Values): number | undefined =>
  read(of(...(call(values) as never[])));

/** Values that a page begins with, as a shop reads them: what `exampleValues` gives, without mathjs. */
export const beginWith = (card: FormulaCard, units: UnitSystem): Values => exampleOf(card, units);

/** The unit that a shop reads a letter in. */
export const unitOfLetter = (card: FormulaCard, letter: string, units: UnitSystem): AnyUnit =>
  readingOf(card, card.letters[letter] as CardLetter, units).unit;
