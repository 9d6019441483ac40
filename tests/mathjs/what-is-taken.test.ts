import { crankwright } from 'crankwright/mathjs';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { expectRefusal } from './refusal.js';

const math = create(all as FactoryFunctionMap);
math.import(crankwright(math));

const thou = (typed: string): number => math.evaluate(typed).toNumber('thou');

describe('what our functions take from mathjs', () => {
  it.each(['fraction(11, 5) inch', 'bignumber(2.2) inch', '[2.2, 1][1] * 1 inch'])(
    'a size written as %s',
    (bore) => {
      // 2.2 - 2.076 - 2 × 0.0615 in, by hand.
      const typed = `oilClearance({housingBore: ${bore}, journal: 2.076 inch, shellWall: 61.5 thou})`;
      expect(thou(typed)).toBeCloseTo(1, 9);
    },
  );

  it.each([
    ['cup', 'fluidOunceUS or fluidOunceImperial'],
    ['fluidounce', 'fluidOunceUS or fluidOunceImperial'],
    ['pint', 'pintUS or pintImperial'],
    ['gallon', 'gallonUS or gallonImperial'],
    ['gallons', 'gallonUS or gallonImperial'],
    ['quart', 'quartUS or quartImperial'],
  ])('no %s, of which there are two', (unit, say) => {
    expectRefusal(
      () => math.evaluate(`fuelInSump({leak: 1 ${unit}})`),
      'leak',
      'may be a US or an imperial one',
    );
    expectRefusal(() => math.evaluate(`fuelInSump({leak: 1 ${unit}})`), 'leak', `Write ${say}.`);
  });

  it('no unit where a word or a plain number belongs', () => {
    const typed =
      'judge({feature: 2 inch, dimension: "length", value: 1 thou, limits: {}, basis: 1})';
    expectRefusal(() => math.evaluate(typed), 'feature', 'has a unit where none belongs');
  });
});
