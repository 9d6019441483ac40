import { beforeAll, describe, expect, it } from 'vitest';
import { about } from '../../src/command/prompt/about.js';
import { complete } from '../../src/command/prompt/complete.js';
import { rewriteText } from '../../src/command/prompt/rewrite-text.js';
import { runText } from '../../src/command/prompt/run-text.js';
import { Session } from '../../src/command/prompt/session.js';
import { sayRatio, sayResult } from '../../src/command/prompt/show-quantity.js';
import { toJson } from '../../src/command/prompt/to-json.js';
import { toTypeScript } from '../../src/command/prompt/to-typescript.js';
import { fieldsOf, functions, unitByName } from '../../src/mathjs/internal.js';
import { exampleOfShape } from '../../src/mathjs/say-example.js';
import { captured } from './captured.js';

describe('.about', () => {
  it.each([...functions.keys()])('%s', (name) => {
    const { takes, gives } = functions.get(name)?.signature ?? { takes: [], gives: 'anything' };
    for (const units of ['inch', 'metric'] as const) {
      const said = about(name, units);
      const [first, sentence, ...rest] = said.split('\n');
      expect(first?.startsWith(`${name}(`)).toBe(true);
      expect(sentence).toMatch(/^ {2}[A-Z].*\.$/);
      // Nothing of the machinery shows: no reference, no mark-up, no value that is not there.
      expect(said).not.toMatch(/#|\*\*|`|undefined|\[object/);
      for (const { name: parameter, shape } of [...takes, { name: 'gives', shape: gives }]) {
        expect(said).toContain(parameter);
        for (const field of Object.keys(fieldsOf(shape))) expect(said).toContain(field);
      }
      // Every unit that it names can be typed.
      for (const [, unit = ''] of rest.join('\n').matchAll(/\ban? [a-z ]+ in (\w+)/g)) {
        expect([unit, unitByName.has(unit)]).toEqual([unit, true]);
      }
    }
  });

  it.each([
    ['pi', 'a constant', 'pi is a constant: 3.14159…'],
    ['LN2', 'a constant', 'LN2 is a constant'],
    ['thou', undefined, 'thou: a unit of length, printed as thou'],
    ['oilCleerance', undefined, 'oilCleerance: did you mean oilClearance?'],
    ['qqqqqqqqqq', undefined, 'qqqqqqqqqq: nothing here has that name'],
  ])('%s', (name, what, said) => {
    expect(about(name, 'inch', what)).toBe(said);
  });
});

describe('an example of what a function takes', () => {
  it.each([...functions.keys()])('%s', (name) => {
    for (const { shape } of functions.get(name)?.signature.takes ?? []) {
      const example = exampleOfShape(shape);
      expect(example).not.toMatch(/undefined|\[object|#|\?/);
      // Every unit that it names can be typed.
      for (const [, unit = ''] of example.matchAll(/: (?:…|[\d.]+) ([A-Za-z]\w*)/g)) {
        expect([unit, unitByName.has(unit)]).toEqual([unit, true]);
      }
    }
  });
});

describe('Tab', () => {
  const names = ['clearance', 'oilClearance', 'oilClearanceSpan'];
  it.each([
    ['', [], ''],
    ['.un', ['.units'], '.un'],
    ['.about oilClearanceS', ['oilClearanceSpan'], 'oilClearanceS'],
    ['.units m', ['metric'], 'm'],
    ['oilC', ['oilClearance', 'oilClearanceSpan'], 'oilC'],
    ['2.5 tho', ['thou', 'thous', 'thousandth', 'thousandths'], 'tho'],
    ['clearance to tho', ['thou', 'thous', 'thousandth', 'thousandths'], 'tho'],
    ['oilClearance({', ['housingBore: ', 'journal: ', 'shellWall: '], ''],
    ['oilClearance({journal: 2 in, ', ['housingBore: ', 'shellWall: '], ''],
    ['oilClearance({journal: 2 in, sh', ['shellWall: '], 'sh'],
    ['oilClearance({journal: cl', ['clearance'], 'cl'],
    ['max(1, oilClearance({journal: (2 in + 3 in), s', ['shellWall: '], 's'],
    ['viscosityAt([{', ['temperature: ', 'viscosity: '], ''],
    ['viscosityAt([{temperature: 40 degC, viscosity: 100 cSt}, {t', ['temperature: '], 't'],
    ['viscosityAt([{temperature: 40 degC}], cl', ['clearance'], 'cl'],
    ['explainClearance({basis: {kind: "sp', ['"specified"'], '"sp'],
    ['{oi', [], 'oi'],
    ['nothing({', [], ''],
  ])('after %j', (line, found, typed) => {
    expect(complete(line, names)).toEqual([found, typed]);
  });
});

// Worked by hand: 1 in = 25.4 mm, 1 psi = 6.894757 kPa, 1 US qt = 57.75 in³.
describe('a result', () => {
  it.each([
    [0.0254 * 0.05, 'length', 'inch', '50 thou'],
    [0.0254 * 0.0021, 'length', 'inch', '2.1 thou'],
    [0.0254 * 2, 'length', 'inch', '2.0000 in'],
    [5e-5, 'length', 'metric', '50 µm'],
    [0.05, 'length', 'metric', '50.000 mm'],
    [0, 'length', 'metric', '0 µm'],
    [2e-9, 'length', 'inch', '0.000079 thou'],
    [2.5e6, 'pressure', 'metric', '2.50 MPa'],
    [101_325, 'pressure', 'metric', '101.3 kPa'],
    [101_325, 'pressure', 'inch', '14.7 psi'],
    [57.75 * 0.0254 ** 3 * 2, 'volume', 'inch', '2.000 US qt'],
    [0.0254 ** 3 * 5, 'volume', 'inch', '5.000 in³'],
    [5e-5, 'volume', 'metric', '50.0 mL'],
    [30, 'time', 'inch', '30.0 s'],
    [120, 'time', 'metric', '2.0 min'],
    [7200, 'time', 'metric', '2.0 h'],
    [0.25, 'ratio', 'inch', '0.25'],
  ] as const)('of %d, a %s, reads in %s units as %s', (value, dimension, units, said) => {
    expect(sayResult(value, dimension, units)).toBe(said);
  });

  it.each([
    [5.74903424594, '5.749'],
    [0.886924084793, '0.8869'],
    [12345.678, '12346'],
    [-0, '0'],
    [7, '7'],
  ])('that is the ratio %d reads as %s', (value, said) => {
    expect(sayRatio(value)).toBe(said);
  });
});

describe('text as people type it', () => {
  it.each([
    ['2-1/8 in', '(17/8) inch', 1],
    ['2 1/8 in', '(17/8) inch', 0],
    ['"2-1/8 in" # 2-1/8 in', '"2-1/8 in" # 2-1/8 in', 0],
    ["'2-1/8 in'", "'2-1/8 in'", 0],
  ])('%s', (typed, text, notes) => {
    const read = rewriteText(typed);
    expect(read.text).toBe(text);
    expect(read.notes).toHaveLength(notes);
  });
});

describe('a session', () => {
  let session: Session;
  beforeAll(async () => {
    session = await Session.begin('inch');
  });
  const last = (text: string) => {
    const { done, wrong } = runText(session, text);
    expect(wrong?.message).toBeUndefined();
    return done.at(-1) as NonNullable<(typeof done)[0]>;
  };

  it('as JSON gives every kind of value in SI', () => {
    expect(toJson(last('bore = 2 in'), session)).toEqual({
      name: 'bore',
      value: 0.0508,
      unit: 'm',
      dimension: 'length',
    });
    expect(toJson(last('[1 in, "a", true]'), session)).toEqual({
      value: [{ value: 0.0254, unit: 'm', dimension: 'length' }, 'a', true],
    });
    expect(toJson(last('{journal: 2 in, note: null}'), session)).toEqual({
      value: { journal: { value: 0.0508, unit: 'm', dimension: 'length' }, note: null },
    });
    expect(toJson(last('f(y) = y + 1'), session)).toEqual({ name: 'f', value: 'a function' });
    expect(toJson(last('{g: f}'), session)).toEqual({ value: { g: 'a function' } });
    expect(toJson(last('inch'), session)).toEqual({ value: 'inch' });
    // A span of the library is given as the library gives it: 6 drops a minute of 18 to 50 µL each.
    const drip = toJson(last('dripFlow({drops: 6, time: 1 min})'), session);
    expect(drip).toEqual({ value: { min: expect.any(Number), max: expect.any(Number) } });
  });

  it('as TypeScript writes what it can, and says what it cannot', async () => {
    const own = await Session.begin('inch');
    const lines = (text: string) => {
      expect(runText(own, text).wrong?.message).toBeUndefined();
      return toTypeScript(own).trimEnd().split('\n').at(-1);
    };
    expect(lines('-(2 + 3)^2')).toMatch(/^export const result1 = .*\*\* 2/);
    expect(lines('+1')).toBe('export const result2 = +1;');
    expect(lines('2 * pi')).toBe('export const result3 = (2 * Math.PI);');
    expect(lines('sqrt(2)')).toBe('export const result4 = Math.sqrt(2);');
    expect(lines('ln(2)')).toBe('export const result5 = Math.log(2);');
    expect(lines('delete = 3')).toBe('export const delete2 = 3;');
    expect(lines('{"a b": 1, c: [1, 2]}')).toContain('{ "a b": 1, c: [1, 2] as const } as const');
    expect(lines('true')).toBe('export const result8 = true;');
    expect(lines('standardAtmosphere')).toBe('export const result9 = standardAtmosphere;');
    expect(lines('mod(7, 4)')).toBe('// mod(7, 4): mod is not written');
    expect(lines('5!')).toMatch(/^\/\/ 5!: factorial is not written$/);
    expect(lines('f(y) = y + 1')).toContain('a function of your own is not written');
    expect(lines('[1, 2][1]')).toContain('is not written');
    expect(lines('2 in to mm')).toBe('export const result14 = inch(2);');
  });
});

describe('the prompt', () => {
  it.each([
    ['.about', 'name a function: .about oilClearance'],
    ['.save', 'name a file: .save my-engine.txt'],
    ['.units metric', 'results in metric units'],
    ['.nothing', '.nothing'],
    ['.ts', 'export const'],
  ])('answers %s', async (command, said) => {
    const { out } = await captured(['repl'], { prompted: ['x = 1 + 1\n', `${command}\n`] });
    expect(out).toContain(said);
  });

  // An oil laboratory's alarms, 10 and 20 %; 60 psi held of 80 is a quarter lost.
  it.each([
    [
      'thinningFinding({oil: 100 cSt, sample: 85 cSt})',
      ['act: 10.00 %', 'critical: 20.00 %', 'lost 15.00 %: 5.00 % above the limit of 10.00 %'],
    ],
    [
      'leakDown({supply: 80 psiGauge, held: 60 psiGauge, limits: {max: 0.2}})',
      ['lost: 25.00 %', '25.00 %: 5.00 % above the limit of 20.00 %'],
    ],
    ['leakDown({supply: 80 psiGauge, held: 60 psiGauge})', ['lost: 0.25']],
  ])('says ratios as the finding beside them says its own: %s', async (typed, said) => {
    const { out } = await captured(['repl'], { prompted: [`${typed}\n`] });
    for (const each of said) expect(out).toContain(each);
  });
});
