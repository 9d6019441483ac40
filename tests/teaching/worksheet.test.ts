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

/** The one Greek letter that this sheet asks for. */
const inGreek = (symbol: string) => symbol.replace('sigma', 'σ').replace('epsilon', 'ε');
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
    ['stress of hub', 'hubBoreHoop'],
    ['what is the swept volume', 'sweptVolume'],
  ])('finds by the words %j first %s', (words, name) => {
    expect(cardsAbout(words)[0]).toBe(name);
  });

  it('finds a topic in the singular, too', () => {
    for (const topic of new Set(names.map((name) => cards[name].topic))) {
      expect(cardsAbout(topic.replace(/s$/, ''))).toEqual(cardsAbout(topic));
    }
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

  it('asks no two that are worked alike while there are others', () => {
    const alike: readonly (readonly CardName[])[] = [
      ['oilClearance', 'leastOilClearance', 'mostOilClearance'],
      ['recommendedOilClearance', 'recommendedLeastOilClearance', 'recommendedMostOilClearance'],
      ['leastShellWallToSuit', 'mostShellWallToSuit'],
      ['interferencePressure', 'pressFitPressure'],
      ['hubBoreHoop', 'hubBoreRadial', 'hubBoreEquivalent', 'hubOutsideHoop', 'shaftBoreHoop'],
    ];
    for (const [about, count] of [
      ['bearings', 10],
      ['fits', 6],
    ] as const) {
      for (let seed = 0; seed < 20; seed++) {
        const asked = new Set(worksheet({ about, seed, count }).problems.map(({ name }) => name));
        for (const group of alike) {
          const twins = group.filter((name) => asked.has(name));
          expect(twins.length, `${about} ${seed}: ${twins}`).toBeLessThan(2);
        }
      }
    }
  });

  it('is in inches where no units are asked for', () => {
    const asked = { about: 'bearings', seed: 7, count: 5 };
    expect(worksheet(asked)).toEqual(worksheet({ ...asked, units: 'inch' }));
  });

  it('says where a problem is in the units of the other system', () => {
    const printed = printWorksheet(worksheet({ about: 'drip', seed: 1, count: 1 }), {
      format: 'text',
    });
    expect(printed).toContain('1. Flow of a drip (in metric units)\n');
    const own = worksheet({ about: 'drip', seed: 1, count: 1, units: 'metric' });
    expect(printWorksheet(own, { format: 'text' })).toContain('1. Flow of a drip\n');
  });

  it('says in both formats what every definition stands for, and writes Greek letters', () => {
    const fits = worksheet({ about: 'compression ratio', seed: 1, count: 1 });
    const [text, markdown] = (['text', 'markdown'] as const).map((format) =>
      printWorksheet(fits, { format }),
    );
    expect(text).toContain('   where V_s = π / 4 * D^2 * s   swept volume\n');
    expect(markdown).toContain('- `V_s`: swept volume\n');
    for (const printed of [text, markdown]) {
      expect(printed).toMatch(/ε`? = /);
      expect(printed?.replaceAll(/\$\$.*?\$\$/gs, '')).not.toContain('epsilon');
    }
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
        expect(questions).not.toContain(`${inGreek(asks.symbol)} = ${answer.text}`);
      }
      const all = printWorksheet(sheet, { format, answers: true });
      expect(all.startsWith(questions)).toBe(true);
      for (const problem of sheet.problems) {
        expect(all).toContain(`${inGreek(problem.asks.symbol)} = ${problem.answer.text}`);
        expect(check(problem, problem.answer.text).outcome).toBe('right');
      }
    }
  });
});
