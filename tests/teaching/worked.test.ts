import { type Dimension, inch, parse, RebuildInputError } from 'crankwright';
import { type CardName, cards, type WorkedFormula, worked } from 'crankwright/teaching';
import { all, create, type FactoryFunctionMap, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { compute, usualValues } from '../support/card-values.js';

// A mathjs of our own, so that nothing of ours stands between a printed line and what it comes to.
const math = create(all as FactoryFunctionMap);
const names = Object.keys(cards) as CardName[];
const systems = ['inch', 'metric'] as const;

/** The unit of a printed quantity as mathjs reads it. */
const inMathjs = (unit: string) =>
  unit.replaceAll('·', ' ').replaceAll(
    /[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
    (raised) =>
      `^${[...raised]
        .map((sign) => '⁻⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(sign))
        .map((at) => (at === 0 ? '-' : at - 1))
        .join('')}`,
  );

/** The same to six digits; a difference that comes to nothing keeps the noise of what it was made of. */
const near = (got: number, printed: number) =>
  expect(Math.abs(got - printed)).toBeLessThanOrEqual(5.1e-6 * Math.abs(printed) + 1e-13);

const each = names.flatMap((name) => systems.map((units) => ({ name, units })));

describe.each(each)('card $name worked in $units', ({ name, units }) => {
  const card = cards[name];
  const tried = [card.example, usualValues(card, 0.3)].map((values) => ({
    values,
    shown: worked(name, values, { units }),
  }));

  it('puts a number in for every letter', () => {
    for (const { shown } of tried) {
      const lines = shown.steps.map(({ typed }) => typed).join('\n');
      const numbers = lines.match(/\d[\d.]*(?:e-?\d+)?/g)?.map(Number);
      for (const { given, converted } of shown.legend) {
        expect(numbers).toContain(Math.abs((converted?.gives ?? given).value));
      }
    }
  });

  it('shows every definition with its value, and no letter is left in a line', () => {
    for (const { shown } of tried) {
      const defined = card.where.filter((line) => !/^\w+\(/.test(line));
      const symbols = shown.steps.map(({ symbol }) => symbol);
      for (const line of defined) expect(symbols).toContain(line.split(' = ')[0]);
      expect(symbols.at(-1)).toBe(card.gives.symbol);
      for (const { typed } of shown.steps) expect(freeSymbols(typed)).toEqual([]);
    }
  });

  it('prints lines that give what stands after them, with their units and as they are typed', () => {
    for (const { shown } of tried) {
      for (const { typed, substituted, gives } of shown.steps) {
        near(evaluated(typed) as number, gives.value);
        near(numberIn(evaluated(substituted), inMathjs(gives.unit)), gives.value);
      }
      for (const { typed, gives } of conversionsIn(shown)) {
        near(evaluated(typed) as number, gives.value);
      }
    }
  });

  it('prints what was given, and what the function gives', () => {
    for (const { values, shown } of tried) {
      for (const { symbol, given } of shown.legend) {
        const { dimension } = (card.letters[symbol] ?? expect.fail()).domain;
        nearly(read(given.text, given.unit, dimension), values[symbol] ?? Number.NaN, 1e-6);
      }
      const computed = compute(card, values) ?? Number.NaN;
      expect(shown.value).toBe(computed);
      const { text, unit } = shown.converted?.gives ?? shown.result;
      if (shown.converted) nearly(read(text, unit, card.gives.dimension), computed, 1e-5);
    }
  });
});

describe('worked', () => {
  const values = { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) };
  const asked = (name: string, given: object, options: object = { units: 'inch' }) =>
    refusal(() => worked(name as CardName, given as never, options as never)).parameter;

  it('refuses what it is not asked with, by name', () => {
    expect(asked('toString', values)).toBe('name');
    expect(asked('oilClearance', { D_h: 0.05 })).toBe('t');
    expect(asked('oilClearance', { ...values, D_j: 2.125 })).toBe('D_j');
    expect(asked('oilClearance', { ...values, D: 1 })).toBe('values.D');
    expect(asked('oilClearance', values, { units: 'feet' })).toBe('options.units');
    expect(asked('oilClearance', values, { unit: 'inch' })).toBe('options.unit');
  });

  it('names the letter where the function refuses the values together', () => {
    expect(asked('oilClearance', { ...values, D_j: inch(1.8) })).toBe('D_j');
  });

  it('works a journal of 1.6 in, which is far from the example of 50 mm', () => {
    const of = (name: CardName, given: Readonly<Record<string, number>>) =>
      worked(name, given, { units: 'inch' }).result.text;
    const worn = { D_min: inch(1.598), o: inch(0.0005), r: inch(0.001), a: inch(0.001) };
    expect(of('journalLeft', worn)).toBe('1.5955 in');
    const step = { D_s: inch(1.6), u: inch(0.01) };
    expect(of('targetDiameter', step)).toBe('1.59 in');
    expect(of('leastGrindStock', { ...step, D_max: inch(1.5985) })).toBe('0.0085 in');
  });

  it('names the card that works the values, where the function has several formulas', () => {
    // An interference of 7.5 thou is that of shells for a ground journal, so the step is added.
    const tight = { c: inch(-0.0075), s: inch(0.01) };
    expect(worked('explainTightClearance', tight).converted?.gives.text).toBe('2.5 thou');
    const refused = refusal(() => worked('explainClearance', tight));
    expect(refused.parameter).toBe('values');
    expect(refused.message).toBe(
      'values: the formula "c - s" gives another result for them than the function. ' +
        'The card "explainTightClearance" of the same function works them.',
    );
  });

  it('says that the function decides otherwise, where it gives no such result', () => {
    // 2.5 thou too tight is no step of 10.
    const none = { c: inch(-0.0125), s: inch(0.01) };
    expect(refusal(() => worked('explainTightClearance', none)).message).toBe(
      'values: the formula "c + s" is not what the function works out for them. ' +
        'It decides otherwise: call it to see how.',
    );
  });

  it('refuses to work a card whose table row is not that of the values', () => {
    // The card holds the row of D2270 between 8.8 and 8.9 cSt; the function looks the right one up.
    const thick = { U: 60e-6, nu: 12e-6 };
    expect(asked('viscosityIndex', thick)).toBe('values');
    expect(refusal(() => worked('viscosityIndex', thick)).hint).toContain('one row of a table');
    expect(() => worked('viscosityIndex', thick, { units: 'metric' })).toThrow(RebuildInputError);
  });
});

/** What a line comes to; calculators call the natural logarithm ln. */
const evaluated = (line: string): unknown => math.evaluate(line, { ln: math.log });

const freeSymbols = (typed: string) =>
  math
    .parse(typed)
    .filter((node) => node.type === 'SymbolNode')
    .map((node) => (node as unknown as { readonly name: string }).name)
    .filter(
      (name) =>
        name !== 'pi' && !/^(?:a?(?:sin|cos|tan)|sqrt|exp|log|ln|log10|abs|min|max)$/.test(name),
    );

const numberIn = (result: unknown, unit: string) =>
  unit === '' ? (result as number) : (result as Unit).toNumber(unit);

const conversionsIn = ({ legend, converted }: WorkedFormula) =>
  [...legend.map(({ converted: own }) => own), converted].filter((found) => found !== undefined);

/** A printed quantity, read back by the library; one without a unit is plain. */
const read = (text: string, unit: string, dimension: Dimension): number =>
  unit === '' ? Number(text) : parse(text, dimension);

const nearly = (got: number, expected: number, relative: number) =>
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-15);
