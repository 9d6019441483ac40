import { format, inch, type Length, mm } from 'crankwright';
import { FileError, inspect, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { accuracyOf, certaintyOf } from '../../src/reading/index.js';
import { exampleText, type Json, spoilt } from './sheets.js';

const problemsOf = (changes: Readonly<Record<string, Json | undefined>>) => {
  try {
    readSheet(spoilt({ oil: undefined, ...changes }));
  } catch (error) {
    if (error instanceof FileError) return error.problems;
    throw error;
  }
  return [];
};
const budget = { division: '0.0001 in', error: '±0.0001 in', repeats: ['2.1241 in', '2.1242 in'] };

describe('how well a sheet was measured is refused by its path', () => {
  it.each<[string, Readonly<Record<string, Json>>, string, RegExp]>([
    [
      'a misspelt instrument',
      { instruments: { micrometre: '±0.0001 in' } },
      'instruments.micrometre',
      /did you mean "?micrometer/,
    ],
    [
      'an unknown instrument',
      { instruments: { ruler: '±0.0001 in' } },
      'instruments.ruler',
      /boreGauge/,
    ],
    [
      'no ± at all',
      { instruments: { micrometer: '0 in' } },
      'instruments.micrometer',
      /is not a length of 0\.00000039 in … 0\.0394 in/,
    ],
    [
      'less than none',
      { instruments: { micrometer: '-0.0001 in' } },
      'instruments.micrometer',
      /is not a length of 0\.00000039 in … 0\.0394 in/,
    ],
    [
      'a ± without a unit',
      { instruments: { micrometer: '±0.0001' } },
      'instruments.micrometer',
      /unit/,
    ],
    [
      'a bare number',
      { instruments: { micrometer: 0.0001 } },
      'instruments.micrometer',
      /text|quotes|unit/,
    ],
    [
      'a budget with one repeat',
      { instruments: { micrometer: { ...budget, repeats: ['2.1241 in'] } } },
      'instruments.micrometer.repeats',
      /2 entr/,
    ],
    [
      'a budget without a division',
      { instruments: { micrometer: { error: '0.0001 in', repeats: ['1 in', '1 in'] } } },
      'instruments.micrometer.division',
      /missing/,
    ],
    [
      'a budget with a misspelt field',
      { instruments: { micrometer: { ...budget, repeat: [] } } },
      'instruments.micrometer.repeat',
      /did you mean "?repeats/,
    ],
    [
      'a repeat that is no length',
      { instruments: { boreGauge: { ...budget, repeats: ['2.1241 in', '2 lb'] } } },
      'instruments.boreGauge.repeats[1]',
      /length/,
    ],
    [
      'an unknown rule',
      { decisionRule: 'simple acceptanse' },
      'decisionRule',
      /did you mean "simple acceptance"/,
    ],
    [
      'warmth without how warm the parts were',
      { warmth: { bores: 'grey iron' } },
      'warmth.parts',
      /missing/,
    ],
    [
      'an unknown material',
      { warmth: { parts: '10 °C', bores: 'gray iron' } },
      'warmth.bores',
      /did you mean "grey iron"/,
    ],
    [
      'a part that is not read warm',
      { warmth: { parts: '10 °C', piston: 'steel' } },
      'warmth.piston',
      /did you mean "?pistons/,
    ],
    ['parts hotter than any workshop', { warmth: { parts: '400 °C' } }, 'warmth.parts', /300/],
  ])('%s', (_, changes, path, message) => {
    const problems = problemsOf(changes);
    expect(problems.map((problem) => problem.path)).toEqual([path]);
    expect(problems[0]?.message).toMatch(message);
  });

  it('and taken with ±, with +/- or with neither', () => {
    for (const micrometer of ['±0.0001 in', '+/-0.0001 in', '+-0.0001 in', '0.0001 in']) {
      const { instruments } = readSheet(spoilt({ instruments: { micrometer } }));
      expect(instruments?.micrometer).toEqual({ within: inch(0.0001) });
    }
  });
});

/** How well the size of a journal is known [mm], by what is told of the bench. */
const journalKnown = (...told: Parameters<typeof accuracyOf>) =>
  certaintyOf('journal size', accuracyOf(...told)).uncertainty;

describe('how well a size is known', () => {
  it('is what its owner states', () => {
    expect(journalKnown({ instruments: { micrometer: { within: mm(0.002) } } })).toBeCloseTo(
      mm(0.002),
      10,
    );
    expect(journalKnown({ instruments: { boreGauge: { within: mm(0.002) } } })).toBeUndefined();
  });

  it('is the scatter of repeats in the readings, by how many they are, where they contradict what is stated', () => {
    // Student's t for 95.45 %: 3.31 for 3 degrees of freedom, 2.87 for 4 (JCGM 100:2008, table G.2).
    const again = (standardDeviation: number) => ({
      micrometer: [{ standardDeviation: mm(standardDeviation), degreesOfFreedom: 3 }, undefined],
    });
    const stated = { instruments: { micrometer: { within: mm(0.002) } } };
    expect(journalKnown(stated, again(0.003))).toBeCloseTo(mm(0.003 * 3.31), 7);
    expect(journalKnown(stated, again(0.0009))).toBeCloseTo(mm(0.002), 10);
    // Of two places: √((3 · 3² + 1 · 1²) / 4) = √7 µm.
    const two = {
      micrometer: [
        again(0.003).micrometer[0],
        { standardDeviation: mm(0.001), degreesOfFreedom: 1 },
      ],
    };
    expect(journalKnown(stated, two)).toBeCloseTo(mm(0.001 * 2.87 * Math.sqrt(7)), 7);
  });

  it('of a clearance is the root of the sum of squares: bore gauge, two walls, micrometer', () => {
    const instruments = {
      boreGauge: { within: mm(0.004) },
      wallGauge: { within: mm(0.002) },
      micrometer: { within: mm(0.003) },
    };
    const { uncertainty } = certaintyOf('oil clearance', accuracyOf({ instruments }));
    // √(4² + (2 · 2)² + 3²) = √41 µm.
    expect(uncertainty).toBeCloseTo(mm(Math.sqrt(41) / 1000), 10);
  });

  it('of a bore gauge has the micrometer in it that it was set with', () => {
    const gauge = {
      division: mm(0.002),
      error: mm(0),
      repeats: Array.from({ length: 10 }, (_, i) => mm(50 + 0.002 * (i % 2))),
    };
    const known = (within?: number) =>
      certaintyOf(
        'bore size',
        accuracyOf({
          instruments: {
            boreGauge: gauge,
            ...(within !== undefined && { micrometer: { within: mm(within) } }),
          },
        }),
      ).uncertainty as Length;
    // By hand: half a division is 1 µm, rectangular: 1 / √3 µm. Ten readings, five of them 2 µm larger, scatter by
    // √(10 / 9) = 1.054 µm. √(1/3 + 10/9) = 1.202 µm, and by Welch and Satterthwaite 1.202⁴ · 9 / 1.054⁴ = 15.2 degrees of
    // freedom, for which NIST TN 1297, table B.1, has 2.18 (15) and 2.17 (16).
    expect(known() / mm(0.001)).toBeCloseTo(1.202 * 2.18, 1);
    // The micrometer adds 10 / 2 = 5 µm: √(1/3 + 10/9 + 25) = 5.142 µm, with thousands of degrees of freedom.
    expect(known(0.01) / mm(0.001)).toBeCloseTo(5.142 * 2, 1);
  });

  it('of a bore gauge leaves out in a difference what it was set with', () => {
    const gauge = {
      division: mm(0.002),
      error: mm(0.05),
      repeats: [1, 2, 3, 4].map((i) => mm(50 + i / 1000)),
    };
    const known = (within: number) =>
      certaintyOf(
        'bore shape',
        accuracyOf({ instruments: { boreGauge: gauge, micrometer: { within: mm(within) } } }),
      ).uncertainty;
    expect(known(0.02)).toBe(known(0.001));
  });
});

describe('sizes that were read in the cold', () => {
  const cold = (materials: Readonly<Record<string, Json>>) =>
    inspect(readSheet(spoilt({ oil: undefined, warmth: { parts: '0 °C', ...materials } })))
      .cylinders[0];
  const warm = () => inspect(readSheet(exampleText('inch'))).cylinders[0];
  const micrometres = (length: Length | undefined) => (length ?? Number.NaN) * 1e6;

  it('are those at 20 °C: an aluminium piston and an iron bore by hand', () => {
    const [before, now] = [warm(), cold({ bores: 'grey iron', pistons: 'cast piston alloy' })];
    // The table of expansions: cast piston alloy 19.5 to 21.5, mean 20.5; grey iron 10.4 to 11.4, mean 10.9; the
    // instruments are of steel, 11.2 to 12.1, mean 11.65 ppm/K, and 20 K colder than at 20 °C.
    // Bore: 3.0012 in = 76.230 mm grows by 76.230 · 20 · (10.9 - 11.65) ppm = -1.14 µm.
    const bore = micrometres(now?.shape.largest) - micrometres(before?.shape.largest);
    expect(bore).toBeCloseTo(-1.14, 1);
    // Piston: 2.9968 in = 76.119 mm grows by 76.119 · 20 · (20.5 - 11.65) ppm = 13.47 µm, so the clearance closes by 14.61 µm.
    const clearance =
      micrometres(now?.piston?.clearance.max) - micrometres(before?.piston?.clearance.max);
    expect(clearance).toBeGreaterThan(-14.61 - 0.1);
    expect(clearance).toBeLessThan(-14.61 + 0.1);
  });

  it('may be those of any metal that they may be made of, where none is named', () => {
    const known = cold({ bores: 'grey iron', pistons: 'cast piston alloy' });
    const unknown = cold({});
    expect(warm()?.piston?.finding?.uncertainty).toBeUndefined();
    const doubt = (report: typeof known) => micrometres(report?.piston?.finding?.uncertainty);
    // By hand: pistons from grey iron, about 10, to forged alloy, 22.3 ppm/K: half of that over 20 K of 76 mm is 9 µm.
    expect(doubt(unknown)).toBeGreaterThan(8);
    expect(doubt(unknown)).toBeGreaterThan(3 * doubt(known));
  });

  it('are shown as they were read where one is to be read again', () => {
    const misread = spoilt({
      oil: undefined,
      warmth: { parts: '0 °C', bores: 'grey iron', journals: 'steel' },
      'cylinders[0].bore.readings[3].diameter': '3.0105 in',
    });
    const [odd] = inspect(readSheet(misread)).cylinders[0]?.readAgain ?? [];
    expect(odd && format(odd.reading.diameter, inch)).toBe('3.0105 in');
  });
});
