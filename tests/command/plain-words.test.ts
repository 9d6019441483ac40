import { describe, expect, it } from 'vitest';
import { complete } from '../../src/command/prompt/complete.js';
import { captured } from './captured.js';

const calc = async (text: string, ...options: readonly string[]) => {
  const { out, err } = await captured(['calc', text, ...options]);
  return [out.trimEnd(), err.replace('crankwright: ', '').split('\n')[0]];
};
const prompt = async (...lines: readonly string[]) => {
  const { out } = await captured(['repl'], { prompted: lines.map((line) => `${line}\n`) });
  return out.slice(out.indexOf('> '));
};

describe('a slip is told in the words of the trade', () => {
  it.each([
    ['22 tho', 'tho: did you mean thou?'],
    ['2 in to', 'to needs a unit after it, as to mm'],
    ['2,105 in', '2,105 cannot be read; if it is one number, write a point: 2.105'],
    [
      'oilClearance()',
      'oilClearance: it takes {housingBore, shellWall, journal}. Every size has its unit.',
    ],
    [
      'oilClearance(housingBore: 2.251 in)',
      'put the sizes in braces: oilClearance({housingBore: …})',
    ],
    ['8 in + 3 N', 'a length and a force are not of one kind: neither adds to the other'],
    ['20 degC * 2', 'a temperature cannot be multiplied; a difference of two can'],
    [
      '20 degC + 15 degC',
      '15 °C cannot be added to a temperature; a difference can, such as 25 celsiusDifference',
    ],
    [
      '1 ton',
      'ton: this may be a short ton (2000 lb), a long ton (2240 lb) or a tonne (1000 kg); say it in lb or kg',
    ],
    [
      '5 % + 1',
      'a % before + or - may be a share or a remainder; write a share as 0.05, a remainder as mod(5, 2)',
    ],
    [
      '120 psi gauge to bar',
      '120 psi gauge is a gauge pressure: write to barGauge, or absolutePressure(…, standardAtmosphere) to bar',
    ],
    ['2 )', 'this cannot be read from ")" on'],
    ['readings.txt', 'a file is read so: crankwright calc < readings.txt'],
  ])('%s', async (text, expected) => {
    expect(await calc(text)).toEqual(['', expected]);
  });

  it('a mixed number without its unit, every time', async () => {
    const said =
      '2-1/8 without a unit is a difference, 1.875; a mixed number has its unit: 2-1/8 in';
    expect(await calc('2-1/8')).toEqual(['1.875', said]);
    // With spaces it is the difference that was meant.
    expect(await calc('2 - 1/8')).toEqual(['1.875', '']);
  });

  it('a coefficient where the library has the material', async () => {
    const [, said] = await calc(
      'coldPistonClearance({bore: 70 mm, hotClearance: 0.05 mm, warmBore: {expansion: 0.000011, temperature: 100 degC}, warmPiston: {expansion: 0.000011, temperature: 100 degC}})',
    );
    expect(said).toContain('give meanExpansion("grey iron"), or that of your material');
  });

  it('a ratio to four digits, and to all of them in JSON', async () => {
    // 70 mm bore and stroke sweep 269.39 cm³; (269.39 + 20) / 20 = 14.47.
    const cylinder =
      'compressionRatio({gasket: "none", chamber: 20 cc, deckClearance: 0 mm, bore: 70 mm, stroke: 70 mm})';
    expect((await calc(cylinder))[0]).toContain('min: 14.47\n');
    const [{ value }] = JSON.parse((await calc(cylinder, '--json'))[0] ?? '');
    expect(value.ratio.min).toBeCloseTo(1 + (Math.PI * 0.07 ** 3) / 4 / 20e-6, 9);
    expect((await calc('1/3'))[0]).toBe('0.333333333333');
  });

  it.each([
    ['-3 in', '-3 in'],
    ['2 in * 3 in', '6 in²'],
    ['8 N-m', '8 N·m'],
    // 2.251 - 2 * 0.062 - 2.127 = 0 in.
    [
      'oilClearance({housingBore: 2.251 in, journal: 2.127 in, shellWall: 62 thou})',
      expect.stringMatching(/^0 thou: below 1\.6 thou/),
    ],
  ])('works out %s', async (text, expected) => {
    expect((await calc(text))[0]).toEqual(expected);
  });
});

describe('the commands of the prompt', () => {
  it('lists its own when there is none of that name', async () => {
    expect(await prompt('.foo')).toContain('.foo is not a command here; commands are\n.about NAME');
    expect(await prompt('.help')).not.toContain('REPL');
    expect(await prompt('quit')).toContain('type .exit');
  });

  it('tells of a name what it is', async () => {
    const out = await prompt('c = 2 thou', '.about c', '.about pi', '.about standardAtmosphere');
    expect(out).toContain('c is 2 thou');
    expect(out).toContain('pi is a constant: 3.14159…');
    expect(out).toContain('standardAtmosphere is a constant: 101325 Pa');
    expect(await prompt('.about judge')).not.toMatch(/\*|one of "[^,\n]*one of/);
  });
});

it.each([
  ['2.1 inc', ['inch', 'inches']],
  [
    'journal to micr',
    [
      'microinch',
      'microinches',
      'micrometer',
      'micrometers',
      'micrometre',
      'micrometres',
      'micron',
      'microns',
    ],
  ],
  ['.units m', ['metric']],
  ['.units ', ['inch', 'metric']],
])('completes %s', (line, expected) => {
  expect(complete(line, ['incline', 'micrOther'])[0]).toEqual(expected);
});
