import { RebuildInputError } from '../quantities/index.js';
import { type CardName, cards } from './cards.js';
import type { FormulaCard } from './formula-card.js';

/** A refusal of values that the function works by another formula than that of the card, and where that stands. */
export function worksByAnotherFormula(
  name: CardName,
  isWorkedBy: (other: CardName) => boolean,
): RebuildInputError {
  const card = cards[name];
  const { expression, tabled } = card;
  const others = cardsLike(card)
    .filter(isWorkedBy)
    .map((other) => `"${other}"`);
  const hint =
    others.length > 0
      ? `The card${others.length === 1 ? '' : 's'} ${others.join(' and ')} of the same function ${others.length === 1 ? 'works' : 'work'} them.`
      : tabled.length > 0
        ? 'Some of its numbers come from one row of a table. Stay within what is usual for its letters.'
        : 'The function works them in another way. Stay within what is usual for its letters.';
  return new RebuildInputError({
    parameter: 'values',
    value: expression,
    expected: `values for which the card "${name}" is written`,
    shown: `the formula "${expression}"`,
    problem: 'gives another result for them than the function',
    hint,
  });
}

/** The other cards of a function that give the same from the same letters. */
function cardsLike(card: FormulaCard): readonly CardName[] {
  const asked = (of: FormulaCard) => [of.gives.symbol, ...Object.keys(of.letters).sort()].join();
  return (Object.keys(cards) as CardName[]).filter(
    (name) =>
      cards[name] !== card && cards[name].of === card.of && asked(cards[name]) === asked(card),
  );
}
