import type { FormulaCard } from '../src/judging/internal.js';
import { type Dimension, type Quantity, valueIn } from '../src/quantities/index.js';
import { type CardName, cards } from '../src/teaching/cards.js';
import { unitOf } from './units.js';

// The pages take cards from here alone. Importing the teaching room itself would load mathjs with every page.
export type { CardLetter, FormulaCard } from '../src/judging/internal.js';
export { type CardName, cards };

/** A number for each letter of a card, in SI. */
export type Values = Readonly<Record<string, number>>;

/** The names of all cards, in their order. */
export const cardNames = Object.keys(cards) as readonly CardName[];

/** What the card's own function gives for its formula. */
export const compute = ({ of, call, read }: FormulaCard, values: Values): number | undefined =>
  read(of(...(call(values) as never[])));

/** How far up the usual range a page begins. In the middle some differences would be nothing. */
const SHARE = 0.6;

/** Values that a page begins with: usual ones, rounded as a shop reads them if the function takes them so. */
export function exampleOf(card: FormulaCard): Values {
  const letters = Object.entries(card.letters);
  const usual = letters.map(
    ([
      letter,
      {
        usual: [least, most],
      },
    ]) => [letter, least + SHARE * (most - least)],
  );
  const rounded = letters.map(([letter, each], i) => {
    const unit = unitOf(each.domain, 'inch');
    const value = valueIn(usual[i]?.[1] as Quantity<Dimension>, unit);
    return [letter, unit(Number(value.toFixed(decimalsFor(value, unit.decimals))))];
  });
  const [asRead, exact] = [Object.fromEntries(rounded), Object.fromEntries(usual)];
  return isTaken(card, asRead) ? asRead : exact;
}

/** Decimals that a shop reads, or what three digits take where these would round most of it away. */
const decimalsFor = (value: number, read: number): number =>
  value === 0 ? read : Math.min(20, Math.max(read, 2 - Math.floor(Math.log10(Math.abs(value)))));

function isTaken(card: FormulaCard, values: Values): boolean {
  try {
    return compute(card, values) !== undefined;
  } catch {
    return false;
  }
}
