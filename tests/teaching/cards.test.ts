import * as crankwright from 'crankwright';
import { RebuildInputError } from 'crankwright';
import {
  type CardName,
  cards,
  evaluateCard,
  type FormulaCard,
  workedSteps,
} from 'crankwright/teaching';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '../../src/teaching/evaluate.js';
import { code } from './agreement.js';

const names = Object.keys(cards) as CardName[];

/** Random values for the letters of a card, within what is usual. */
function lettersOf(card: FormulaCard): fc.Arbitrary<Record<string, number>> {
  return fc.record(
    Object.fromEntries(
      card.inputs.map(({ symbol, between: [min, max] }) => [
        symbol,
        fc.double({ min, max, noNaN: true }),
      ]),
    ),
  );
}

function middleOf(card: FormulaCard): Record<string, number> {
  return Object.fromEntries(
    card.inputs.map(({ symbol, between: [least, most] }) => [symbol, 0.4 * least + 0.6 * most]),
  );
}

describe.each(names)('card %s', (name) => {
  const card = cards[name];

  it('agrees with the code to 1e-12 over random inputs, and its dimensions balance', () => {
    fc.assert(
      fc.property(lettersOf(card), (letters) => {
        const read = (symbol: string): never => {
          if (!(symbol in letters)) throw new Error(`the card has no letter ${symbol}`);
          return letters[symbol] as never;
        };
        const byCard = evaluateCard(name, letters);
        const byCode = code[name](read);
        // Differences of sizes lose digits that the sizes had: compare on their scale.
        const lengths = card.inputs.filter(({ dimension }) => dimension === card.result.dimension);
        const scale = Math.max(
          Math.abs(byCard),
          ...lengths.map(({ symbol }) => Math.abs(letters[symbol] ?? 0)),
        );
        expect(Math.abs(byCode - byCard)).toBeLessThanOrEqual(1e-12 * scale);
      }),
      { numRuns: 200 },
    );
  });

  it('cannot be worked out with a letter of another dimension', () => {
    const values = middleOf(card);
    for (const { symbol } of card.inputs) {
      const inputs = card.inputs.map((each) =>
        each.symbol === symbol
          ? {
              ...each,
              dimension: each.dimension === 'mass' ? ('time' as const) : ('mass' as const),
            }
          : each,
      );
      expect(() => evaluateFormula({ ...card, inputs }, values)).toThrow(RebuildInputError);
    }
    const result = { ...card.result, dimension: 'mass' as const };
    expect(() => evaluateFormula({ ...card, result }, values)).toThrow(RebuildInputError);
  });

  it('names a function of the library and a source', () => {
    expect(Object.keys(crankwright)).toContain(card.computedBy);
    expect(card.source.length).toBeGreaterThan(5);
  });

  it('is worked through from formula to result', () => {
    const lines = workedSteps(name, middleOf(card), { units: 'metric' });
    expect(lines[0]).toBe(`${card.result.symbol} = ${card.expression}`);
    expect(lines).toHaveLength(3 + card.where.length);
    for (const { symbol } of card.inputs) {
      expect(lines.at(-2)?.split(/[^A-Za-z_0-9]+/)).not.toContain(symbol);
    }
  });
});

describe('cards', () => {
  it('refuses an unknown card, a missing letter and a result that is no number', () => {
    expect(() => evaluateCard('toString' as CardName, {})).toThrow(/the name of a card/);
    expect(() => evaluateCard('dripFlow', { n: 1 })).toThrow(/V_d/);
    expect(() => evaluateCard('timeToDilution', { q: 0, V_o: 1e-3, x: 0.02 })).toThrow(
      /does not give a time/,
    );
  });
});
