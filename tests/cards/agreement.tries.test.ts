import { RebuildInputError } from 'crankwright';
import { type CardName, cards, evaluateCard } from 'crankwright/teaching';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '../../src/teaching/evaluate.js';
import {
  compute,
  randomValues,
  scaledExample,
  usualValues,
  type Values,
} from '../support/card-values.js';
import { tries } from '../support/tries.js';

const names = Object.keys(cards) as CardName[];

describe.each(names)('card %s', (name) => {
  const card = cards[name];
  const { gives, letters } = card;
  /** Differences of sizes lose digits that the sizes had: results are compared on their scale. */
  const scale = (values: Values, result: number) =>
    Math.max(
      ...Object.entries(letters).map(([letter, { domain }]) =>
        domain.dimension === gives.dimension ? Math.abs(values[letter] ?? 0) : 0,
      ),
      Math.abs(result),
    );

  it('agrees with the code to 1e-12 over random values, and its dimensions balance', () => {
    fc.assert(
      fc.property(randomValues(card), (values) => {
        const byCard = evaluateCard(name, values);
        const byCode = compute(card, values);
        expect(byCode).toBeTypeOf('number');
        expect(Math.abs((byCode as number) - byCard)).toBeLessThanOrEqual(
          1e-12 * scale(values, byCard),
        );
      }),
      { numRuns: tries(50, 400) },
    );
  });

  it('agrees with the code for an engine of half or twice the size', () => {
    for (const times of [0.5, 2]) {
      const values = scaledExample(card, times);
      if (values === undefined) continue;
      const byCard = evaluateCard(name, values);
      const byCode = compute(card, values) ?? expect.fail('it gives no result');
      expect(Math.abs(byCode - byCard)).toBeLessThanOrEqual(1e-12 * scale(values, byCard));
    }
  });

  it('cannot be worked out with a letter of another dimension', () => {
    const values = usualValues(card);
    const other = (dimension: string) => (dimension === 'mass' ? 'time' : 'mass');
    for (const [letter, written] of Object.entries(letters)) {
      const takesAny = (_: string, value: never) => value;
      const dimension = other(written.domain.dimension);
      const domain = Object.assign(takesAny, written.domain, { dimension }) as never;
      const wrong = { ...letters, [letter]: { ...written, domain } };
      expect(() => evaluateFormula({ ...card, letters: wrong }, values)).toThrow(RebuildInputError);
    }
    const wrong = { ...gives, dimension: 'mass' as const };
    expect(() => evaluateFormula({ ...card, gives: wrong }, values)).toThrow(RebuildInputError);
  });

  it('names what is usual inside of what can be', () => {
    for (const { domain, usual } of Object.values(letters)) {
      expect(usual[0]).toBeLessThanOrEqual(usual[1]);
      for (const value of usual) expect(domain('usual', value as never)).toBe(value);
    }
    expect(card.source.length).toBeGreaterThan(5);
  });
});

describe('cards', () => {
  it('refuses an unknown card, a missing letter and a result that is no number', () => {
    const refusal = (parameter: string) => expect.objectContaining({ parameter });
    expect(() => evaluateCard('toString' as CardName, {})).toThrow(refusal('name'));
    expect(() => evaluateCard('dripFlow' as CardName, { n: 1, t: 60 })).toThrow(refusal('V_d'));
    expect(() => evaluateCard('timeToDilution' as CardName, { q: 0, V_o: 1e-3, x: 0.02 })).toThrow(
      refusal('values'),
    );
  });
});
