import type { Dimension } from 'crankwright';
import type { FormulaCard } from 'crankwright/teaching';
import fc from 'fast-check';

/** Values for the letters of a card, by letter, in SI. */
export type Values = Readonly<Record<string, number>>;

/** A value for each letter, so far between the least and the most that is usual. */
export const usualValues = ({ letters }: FormulaCard, share = 0.6): Values =>
  Object.fromEntries(
    Object.entries(letters).map(
      ([
        letter,
        {
          usual: [least, most],
        },
      ]) => [letter, least + share * (most - least)],
    ),
  );

/** What the function of a card gives for its formula. */
export const compute = ({ of, call, read }: FormulaCard, values: Values): number | undefined =>
  read(of(...(call(values) as never[])));

/** How much a quantity grows where all lengths grow so many times. */
const GROWTH: Partial<Record<Dimension, number>> = { length: 1, area: 2, volume: 3 };

/**
 * The example of a card of sizes, with every one of them so many times as large; nothing where a card has no lengths, or
 * where no part is made in one of them.
 */
export function scaledExample(
  { letters, example }: FormulaCard,
  times: number,
): Values | undefined {
  const scaled = Object.entries(letters).map(([letter, { domain }]) => {
    const power = GROWTH[domain.dimension] ?? 0;
    return { letter, domain, power, value: (example[letter] as number) * times ** power };
  });
  const isSize = scaled.some(({ domain }) => domain.dimension === 'length');
  const isMade = scaled.every(({ domain, value }) => value >= domain.least && value <= domain.most);
  return isSize && isMade
    ? Object.fromEntries(scaled.map(({ letter, value }) => [letter, value]))
    : undefined;
}

/** Random values for the letters, within what is usual. */
export const randomValues = ({ letters }: FormulaCard): fc.Arbitrary<Values> =>
  fc.record(
    Object.fromEntries(
      Object.entries(letters).map(
        ([
          letter,
          {
            usual: [min, max],
          },
        ]) => [letter, fc.double({ min, max, noNaN: true })],
      ),
    ),
  );
