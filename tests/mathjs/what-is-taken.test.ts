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
    const step = 'undersizeSteps(10 thou)';
    expectRefusal(() => math.evaluate(step), 'system', 'Write one of "inch", "metric".');
  });

  it.each<[string, string]>([
    ['fraction(12)', 'fraction'],
    ['bignumber(12)', 'big number'],
  ])('a count as a %s', (count) => {
    // 12 drops of 0.05 mL in a minute are 36 mL in an hour, by hand.
    const flow = math.evaluate(`dripFlow({drops: ${count}, time: 1 minute, dropVolume: 0.05 mL})`);
    expect(flow.min.toNumber('mL / hour')).toBeCloseTo(36, 9);
  });

  it('a size in a map of JavaScript, as in an object', () => {
    const lash = (limits: unknown) =>
      math['judge' as 'evaluate']({
        feature: 'lash',
        dimension: 'length',
        value: math.unit(5, 'thou'),
        limits,
        basis: { kind: 'specified' },
      } as never);
    const limits = { min: math.unit(6, 'thou'), max: math.unit(9, 'thou') };
    expect(lash(limits)).toMatchObject({ verdict: 'below' });
    expect(lash(new Map(Object.entries(limits)))).toEqual(lash(limits));
  });

  it('no span where one size belongs, in a map or in an object', () => {
    const bore = { min: math.unit(2.25, 'inch'), max: math.unit(2.251, 'inch') };
    for (const span of [bore, new Map(Object.entries(bore))]) {
      const sizes = { housingBore: span, journal: math.unit(2, 'inch'), shellWall: 1 };
      expectRefusal(
        () => math['oilClearance' as 'evaluate'](sizes as never),
        'housingBore',
        'is a span where one value belongs',
      );
    }
  });

  it.each<[string, string, string]>([
    ['value: 1 s', 'value', '1 s is not a length'],
    ['value: 1', 'value', '1 has no unit; expected a length'],
  ])('no %s where the limits are those of a length', (value, parameter, words) => {
    const typed = `judge({feature: "lash", dimension: "length", ${value}, limits: {max: 9 thou}, basis: {kind: "specified"}})`;
    expectRefusal(() => math.evaluate(typed), parameter, words);
  });

  it.each<[string, string, string]>([
    ['endPlay(5 thou)', 'readings', 'even a list of one. Write readings: [{pushed'],
    ['boreShape([1 inch])', 'readings[0]', 'It takes {station, angle, diameter}.'],
    ['boreShape([{station: 1 inch}])', 'readings[0].angle', 'so is diameter'],
  ])('%s only as a list of what it takes', (typed, parameter, words) => {
    expectRefusal(() => math.evaluate(typed), parameter, words);
  });
});
