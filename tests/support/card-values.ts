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
