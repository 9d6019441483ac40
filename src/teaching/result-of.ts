import { guardFields, namedFrom } from '../judging/internal.js';
import { RebuildInputError } from '../quantities/index.js';
import type { CardValues } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';

/** What the function of a card gives for values of its letters; a refusal names the letter. */
export function resultOf(card: FormulaCard, values: CardValues): number {
  const { letters, of, call, read } = card;
  guardFields('values', values, Object.keys(letters));
  for (const [letter, { domain }] of Object.entries(letters)) {
    domain(letter, values[letter] as never);
  }
  const names = () =>
    Object.fromEntries(Object.entries(letters).map(([letter, { field }]) => [field, letter]));
  const result = namedFrom(names, () => read(of(...(call(values) as never[]))));
  if (result !== undefined) return result;
  throw new RebuildInputError({
    parameter: 'values',
    value: card.expression,
    expected: 'values for which the formula of the card gives a result',
    shown: `the formula "${card.expression}"`,
    problem: 'is not what the function works out for them',
    hint: 'It decides otherwise: call it to see how.',
  });
}
