import {
  type CardName,
  type CardTopic,
  cards,
  cardsAbout,
  check,
  exampleValues,
  printWorksheet,
  worksheet,
} from 'crankwright/teaching';
import { describe, expect, it } from 'vitest';
import { compute } from '../support/card-values.js';

const names = Object.keys(cards) as CardName[];
const sheet = worksheet({ about: 'bearings', seed: 7, units: 'inch', count: 5 });

describe('cardsAbout', () => {
  it('gives every card of a topic, and every card has one', () => {
    const topics = new Set(names.map((name) => cards[name].topic));
    const found = [...topics].flatMap((topic: CardTopic) => cardsAbout(topic));
    expect([...found].sort()).toEqual([...names].sort());
  });

  it.each([
    ['end play', 'endPlay'],
    ['ring gap', 'ringGapIn'],
    ['Sommerfeld number', 'sommerfeldNumber'],
    ['drip', 'dripFlow'],
    ['what is the swept volume', 'sweptVolume'],
  ])('finds by the words %j first %s', (words, name) => {
    expect(cardsAbout(words)[0]).toBe(name);
  });

  it('finds for drops of fuel no hub that goes over a shaft', () => {
    expect(cardsAbout('drops')).toEqual(['dropVolume', 'dripFlow']);
  });

  it('finds nothing for words that no formula is about, and for words that say nothing', () => {
    expect(cardsAbout('carburettor jets')).toEqual([]);
    expect(cardsAbout('how much is it')).toEqual([]);
  });
});

describe('examples', () => {
  it.each(names)('of %s are taken by the function, in both unit systems', (name) => {
    const metric = compute(cards[name], cards[name].example) ?? Number.NaN;
    expect(Number.isFinite(metric)).toBe(true);
    expect(metric).not.toBe(0);
    const inches = compute(cards[name], exampleValues(name, { units: 'inch' })) ?? Number.NaN;
    expect(inches / metric).toBeGreaterThan(0.5);
    expect(inches / metric).toBeLessThan(2);
  });
});

describe('a worksheet', () => {
  it('is the same for the same seed, and another for another', () => {
    expect(worksheet({ about: 'bearings', seed: 7, units: 'inch', count: 5 })).toEqual(sheet);
    const other = worksheet({ about: 'bearings', seed: 8, units: 'inch', count: 5 });
    expect(other.problems.map(({ values }) => values)).not.toEqual(
      sheet.problems.map(({ values }) => values),
    );
  });

  it('asks each formula once before it asks one twice', () => {
    const asked = sheet.problems.map(({ name }) => name);
    expect(new Set(asked).size).toBe(5);
    const { problems } = worksheet({
      about: 'Sommerfeld number',
      seed: 1,
      units: 'metric',
      count: 20,
    });
    const given = problems.map((problem) => JSON.stringify(problem.values));
    expect(new Set(given).size).toBe(20);
  });

  it('has a line for name and date, once, and none among the answers', () => {
    for (const format of ['text', 'markdown'] as const) {
      const printed = printWorksheet(sheet, { format, answers: true });
      const [before = '', after] = printed.split(/^Name: _+ {3}Date: _+$/m);
      expect(before).toMatch(/^(# )?Worksheet on bearings, seed 7, inch units\n\n$/);
      expect(after).toContain('Answers to the worksheet');
      expect(after).not.toMatch(/Name: _|Date: _/);
    }
  });

  it('prints every reading and no answer, unless answers are asked for', () => {
    for (const format of ['text', 'markdown'] as const) {
      const questions = printWorksheet(sheet, { format });
      for (const { given, answer, asks } of sheet.problems) {
        for (const { text } of given) expect(questions).toContain(text);
        expect(questions).not.toContain(`${asks.symbol} = ${answer.text}`);
      }
      const all = printWorksheet(sheet, { format, answers: true });
      expect(all.startsWith(questions)).toBe(true);
      for (const problem of sheet.problems) {
        expect(all).toContain(`${problem.asks.symbol} = ${problem.answer.text}`);
        expect(check(problem, problem.answer.text).outcome).toBe('right');
      }
    }
  });
});
