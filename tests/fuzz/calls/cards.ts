import { cards, type FormulaCard } from 'crankwright/teaching';
import { usualValues } from '../../support/card-values.js';
import { type Calls, calls, refused } from './calls.js';

/** The calls that follow from the cards, by the function that computes them. */
export function callsOfCards(
  functions: Readonly<Record<string, unknown>>,
): Readonly<Record<string, Calls>> {
  const all = Object.values(cards);
  return Object.fromEntries(
    Object.entries(functions).flatMap(([name, value]) => {
      const own = all.filter(({ of }) => of === value);
      return own.length > 0 ? [[name, callsOf(own)]] : [];
    }),
  );
}

function callsOf(cards: readonly FormulaCard[]): Calls {
  const run = cards[0]?.of as (...args: readonly unknown[]) => unknown;
  return calls(run as never, {
    sound: cards.flatMap((card) =>
      [0.25, 0.75].map((share) => card.call(usualValues(card, share)) as never),
    ),
    provoked: Object.assign({}, ...cards.map(refusalsOf)),
  });
}

/** One of every cause; tests/cards tries every letter. */
function refusalsOf(card: FormulaCard): Calls['provoked'] {
  const values = usualValues(card);
  const [letter = '', { field, domain }] = Object.entries(card.letters)[0] ?? expectLetter(card);
  const spoilt = (value: number) => refused(field, ...card.call({ ...values, [letter]: value }));
  return {
    'a value is not finite': spoilt(Number.NaN),
    'out of range': spoilt(2 * domain.most),
    ...Object.fromEntries(
      Object.entries(card.refuses).map(([cause, { with: wrong, names }]) => [
        cause,
        refused(names, ...card.call({ ...values, ...wrong })),
      ]),
    ),
  };
}

function expectLetter({ name }: FormulaCard): never {
  throw new Error(`The card of the ${name} has no letter.`);
}
