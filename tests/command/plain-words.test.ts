import { describe, expect, it } from 'vitest';
import { complete } from '../../src/command/prompt/complete.js';
import { Session } from '../../src/command/prompt/session.js';
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
    [
      '20 degC * 2',
      'a temperature cannot be multiplied; a difference of two can, such as 60 celsiusDifference',
    ],
    [
      '100 degC / 2',
      'a temperature cannot be divided; a difference of two can, such as 60 celsiusDifference',
    ],
    [
      't = 212 degF; t / 2',
      'a temperature cannot be divided; a difference of two can, such as 60 celsiusDifference',
    ],
    [
      '2-9/8 in',
      '2-9/8 in: 9/8 is not a fraction below one; write 3-1/8 in, or 2 in - 9/8 in for a difference',
    ],
    ['2 8/8"', '2 8/8": 8/8 is not a fraction below one; write 3", or 2" - 8/8" for a difference'],
    ['2-1/0 in to mm', '2-1/0 in: 1/0 is not a fraction below one'],
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
      '120 psi gauge is a gauge pressure: write to barGauge, or for the absolute one absolutePressure(…, standardAtmosphere) to bar',
    ],
    ['2 )', 'there is one ) too many'],
    ['2 @ 3', 'this cannot be read from "@ 3" on'],
    [
      'oilClearance({housingBore: 2.251 inch; journal: 2 in})',
      'in braces a comma stands between two sizes, not a semicolon: put a comma before journal',
    ],
    [
      'oilClearance({housingBore = 2.251 inch})',
      'in braces a colon stands behind a name, not =: write housingBore: …',
    ],
    [
      'oilClearance({housingBore 2.251 inch})',
      'a colon is missing behind housingBore: write housingBore: …',
    ],
    [
      'oilClearance({housingBore: 2.251 inch\njournal: 2.105 inch})',
      'line 1: a comma is missing before journal',
    ],
    [
      'oilClearance({housingBore: (2 in + 1/4 in) journal: 2 in})',
      'a comma is missing before journal',
    ],
    [
      'oilClearance({housingBore: 2.251 inch)',
      'a } is missing before this ): the { of oilClearance is still open',
    ],
    [
      'lashGrowth({carrier: [{length: 2 in}, train: [{length: 2 in}]})',
      'a ] is missing before this }: the [ of carrier is still open',
    ],
    [
      'oilClearance({housingBore: 2.251 inch',
      'this ends too early: the { is not closed; put }) at its end',
    ],
    [
      'oilClearance({housingBore: 2,251 in, journal: 2,105 in, shellWall: 0,062 in})',
      '2,251 cannot be read; if it is one number, write a point: 2.251',
    ],
    [
      'oilClearance({pair: [1, 2], journal: 2,105.5 mm})',
      '2,105.5 cannot be read; a number has no comma: write 2105.5',
    ],
    ['readings.txt', 'a file is read so: crankwright calc < readings.txt'],
  ])('%s', async (text, expected) => {
    expect(await calc(text)).toEqual(['', expected]);
  });

  it('a bound in the units that results are in, and a size as it was typed', async () => {
    const far = 'oilClearance({housingBore: 2.251 in, journal: 200 in, shellWall: 62 thou})';
    expect((await calc(far))[1]).toBe(
      'journal: 200 in is outside 0.1181 in … 39.3701 in. Check the unit and the decimal point, e.g. 2.1248 inch.',
    );
    // 2.1248 in * 25.4 = 53.97 mm.
    expect((await calc(far, '--units', 'metric'))[1]).toBe(
      'journal: 5.08 m is outside 3 mm … 1 m. Check the unit and the decimal point, e.g. 53.97 mm.',
    );
    const [, out] = await calc(far.replace('200 in', '2 mm'));
    expect(out).toMatch(/^journal: 2 mm is outside 0\.1181 in/);
  });

  it('halves what may be halved', async () => {
    expect(await calc('300 K / 2')).toEqual(['150 K', '']);
    expect(await calc('(85 degC - 25 degC) / 2')).toEqual(['30 °C of difference', '']);
    // A difference without a fraction needs no note.
    expect(await calc('12-9/4')).toEqual(['9.75', '']);
  });

  it('where to find how hot a hub may be made', async () => {
    const fit =
      'diameter: 40 mm, diametralInterference: 0.059 mm, handlingGap: 0.04 mm, hub: meanExpansion("steel"), shaft: meanExpansion("steel"), shaftTemperature: 20 degC';
    const [bare] = await calc(`shrinkTemperature({${fit}})`);
    expect(bare).toContain('add heating: heatingLimit("mild steel")');
    const [limited] = await calc(
      `shrinkTemperature({${fit}, heating: heatingLimit("mild steel")})`,
    );
    expect(limited).toContain('mild steel is heated to 350 °C at most');
    expect(limited).not.toContain('add heating');
  });

  it('first that a piston stands proud of the deck, and that a torque overloads the bolt', async () => {
    // 6 - 3 / 2 - 3 - 1.52 = -0.020 in.
    const [standDown] = await calc(
      'pistonStandDown({deckHeight: 6 in, stroke: 3 in, rodLength: 3 in, pinHeight: 1.52 in})',
    );
    expect(standDown).toMatch(
      /^the piston stands proud of the deck by 0\.0200 in: check its clearance to the head, with the gasket as it is pressed, before the engine is turned\n/,
    );
    const cylinder =
      'bore: 3 in, stroke: 3 in, chamber: 50 mL, gasket: {thickness: 40 thou, bore: 3.1 in}';
    const [ratio] = await calc(`compressionRatio({${cylinder}, deckClearance: -30 thou})`);
    expect(ratio).toMatch(/^the piston stands proud of the deck by 0\.0300 in: /);
    expect((await calc(`compressionRatio({${cylinder}, deckClearance: 30 thou})`))[0]).toMatch(
      /^compression ratio /,
    );
    const [torque] = await calc(
      'torqueSetting({thread: threadOf("3/8-24 UNF"), proofStress: 85000 psi, condition: "oiled", makers: 35 lbfFoot})',
    );
    expect(torque).toMatch(/^the maker's torque may overload the bolt if its thread is slippery/);
  });

  it('a mixed number without its unit, every time', async () => {
    const said =
      'note: 2-1/8 without a unit is a difference, 1.875; a mixed number has its unit: 2-1/8 in';
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
    // 141.5 * 999.016 / 900 - 131.5 = 25.5675, by the definition of API gravity; water weighs 999.016 kg/m³ at 60 °F.
    const api = 'apiGravity(0.9 gramPerCubicCm)';
    expect((await calc(api))[0]).toBe('25.57');
    const [{ value }] = JSON.parse((await calc(api, '--json'))[0] ?? '');
    expect(value).toBeCloseTo((141.5 * 999.016) / 900 - 131.5, 6);
  });

  it.each([
    // No reading of a shop has more than six digits; what ends sooner was typed so, and a whole number is a count.
    ['1/3', '0.333333'],
    ['10000000/3', '3333333'],
    ['2.125 * 1.0005', '2.1260625'],
    ['2^40', '1099511627776'],
    ['-(0.1 + 0.2)', '-0.3'],
  ])('a plain number to the digits that mean something: %s', async (typed, expected) => {
    expect((await calc(typed))[0]).toBe(expected);
    const [{ value }] = JSON.parse((await calc('1/3', '--json'))[0] ?? '');
    expect(value).toBe(1 / 3);
  });

  it.each([
    ['-3 in', '-3 in'],
    ['2 in * 3 in', '6 in²'],
    ['2 in × 3', '6 in'],
    ['6 in ÷ 3', '2 in'],
    ['3 in − 1 in', '2 in'],
    ['{a: true ? 1 in : 2 in, b: 1:3, "c d": [1, 2; 3, 4]}.a', '1 in'],
    ['8 N-m', '8 N·m'],
    // 2.251 - 2 * 0.062 - 2.127 = 0 in.
    [
      'oilClearance({housingBore: 2.251 in, journal: 2.127 in, shellWall: 62 thou})',
      expect.stringMatching(
        /^0 thou\noil clearance 0\.0000 in: 0\.0016 in below the limit of 0\.0016 in/,
      ),
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
    expect(await prompt('.about ringgap')).toContain(
      'ringGapAlongBore, ringGapHot and ringGapIn begin so',
    );
    expect(await prompt('?')).toContain('type .help');
    expect(await prompt('x = {a: 1}', 'x.foo')).toContain('there is no foo in it; it has a\n');
    expect(await prompt('c = 2 thou', 'c.max')).toContain('this is one value and has no max');
    expect(await prompt('torqueSetting')).toContain('.about torqueSetting tells what it takes');
  });

  it.each([
    ['elasticConstants()', 'it takes metal, one of "aluminium alloy", "brass", '],
    ['elasticConstants()', 'For example elasticConstants("aluminium alloy").'],
    ['elasticConstants("cast iron")', 'Did you mean "grey iron"?'],
    [
      'judge()',
      'it takes {feature, dimension, value, limits, basis}. A value is judged against limits',
    ],
    [
      'judge(4.1 thou)',
      'judgement: 4.1 thou is one size where several belong. A value is judged against limits',
    ],
    [
      'judge({feature: "play", dimension: "length", value: 4.1 thou})',
      'limits: is missing. A value is judged against limits',
    ],
    [
      'compressionInAir({reading: 85 psi, from: standardAtmosphere, to: standardAtmosphere})',
      'reading: 85 psi is not a gauge pressure. If a gauge showed it, type 85 psiGauge; if it is absolute, type gaugePressure(85 psi).',
    ],
    [
      'compressionInAir({reading: 1 MPa, from: standardAtmosphere, to: standardAtmosphere})',
      'type it in psiGauge or kPaGauge; if it is absolute, type gaugePressure(1 MPa).',
    ],
    [
      'compressionInAir({reading: 85 psiGauge, from: 85 psiGauge, to: standardAtmosphere})',
      'from: 85 psi gauge is not an absolute pressure. Type absolutePressure(85 psiGauge).',
    ],
    [
      'pressFit({diameter: 2 in, diametralInterference: 2 thou, hub: "cast iron", shaft: {}})',
      'hub: "cast iron" is a word where sizes belong. Write hub: {outside: … inch, elasticity: elasticConstants("grey iron").elasticity, poisson: elasticConstants("grey iron").poisson}.',
    ],
    [
      'torqueSetting({thread: "3/8-16 UNC", proofStress: 85 ksi, condition: "oiled"})',
      'Write thread: threadOf("3/8-16 UNC").',
    ],
    [
      'lashGrowth({carrier: {length: 6 in}, train: []})',
      'carrier: this is one where a list belongs, even a list of one. Write carrier: [{length: … inch, expansion: meanExpansion("steel"), temperature: 180 fahrenheit}].',
    ],
    [
      'lashGrowth({carrier: [{length: 6 in}], train: []})',
      'carrier 1, expansion: is missing, e.g. meanExpansion("steel"); so is temperature, e.g. 180 fahrenheit.',
    ],
    [
      'pressFit({diameter: 2 in, diametralInterference: 2 thou, hub: {outside: 3 in}, shaft: {}})',
      'shaft.elasticity: is missing, e.g. elasticConstants("steel").elasticity; so is poisson',
    ],
    ['endPlay(5 thou)', 'Write readings: [{pushed: … inch, pulled: … inch}].'],
    [
      'compressionRatio(3 in, 3 in)',
      '{gasket: …, chamber: …, deckClearance: …, bore: …, stroke: …}',
    ],
    ['85 psi to psiGauge', 'write gaugePressure(…, standardAtmosphere) to psiGauge'],
  ])('says what to type instead: %s', async (typed, said) => {
    expect((await calc(typed))[1]).toContain(said);
  });

  it('names all fields that are missing, each with what its own check takes', async () => {
    const [, said = ''] = await calc('compressionRatio({bore: 3 in})');
    expect(said).toMatch(/^stroke: is missing, e\.g\. [\d.]+ inch; so are /);
    for (const field of ['chamber', 'deckClearance']) {
      expect(said).toMatch(new RegExp(`\\b${field}, e\\.g\\. [\\d.]+ \\w+`));
    }
    expect(said).toContain('gasket, e.g. {thickness: … inch}');
    expect(said).not.toMatch(/\bbore,|crown/);
    // What it says to type, with the gasket filled in, is worked out.
    const typed = [...said.matchAll(/(\w+)(?:: is missing)?, e\.g\. ([\d.]+ \w+)/g)];
    const fields = typed.map(([, name, value]) => `${name}: ${value}`).join(', ');
    const whole = `compressionRatio({bore: 3 in, gasket: {thickness: 40 thou, bore: 3.1 in}, ${fields}})`;
    expect((await calc(whole))[0]).toContain('compression ratio');
  });

  it('says of a fit without a strength that nothing is judged', async () => {
    const steel = 'elasticConstants("steel")';
    const hub = `{outside: 3 in, elasticity: ${steel}.elasticity, poisson: ${steel}.poisson}`;
    const fit = `diameter: 2 in, diametralInterference: 2 thou, shaft: ${steel}`;
    const bare = `pressFit({${fit}, hub: ${hub}})`;
    expect((await calc(bare))[0]).toContain('the fit is not known to be sound: add yieldStrength');
    const known = bare.replace('{outside', '{yieldStrength: 50000 psi, outside');
    expect((await calc(known))[0]).not.toContain('not known to be sound');
  });

  it('takes what it says to type', async () => {
    // 85 psi by a gauge at sea level, where the air has 14.696 psi.
    expect(await calc('absolutePressure(85 psiGauge)')).toEqual(['99.7 psi', '']);
    expect(await calc('gaugePressure(85 psi)')).toEqual(['70.3 psi gauge', '']);
    const typed = (await calc('judge()'))[1] ?? '';
    const [example = ''] = /judge\(\{feature: .*/.exec(typed) ?? [];
    expect((await calc(example))[0]).toContain('above the limit of 0.0100 in (specified)');
  });

  it('knows the constants of the library, in the units asked for, completed and told of', async () => {
    const out = await prompt(
      ...[
        'petrolSpanAt20C',
        '.about petrolSpanAt20C',
        '.about petrolSpanAt20',
        'petrolDrop.max = 1 mL',
      ],
      ...['.units metric', 'petrol', '.ts'],
    );
    expect(out).toContain('min: 0.50 cSt\nmax: 1.00 cSt');
    expect(out).toMatch(
      /petrolSpanAt20C is a constant\n.*from fresh to weathered.*\n {2}it is \{ min, max \}/,
    );
    expect(out).toContain('did you mean petrolSpanAt20C?');
    expect(out).toContain('no part of it can be changed');
    expect(out).toMatch(/temperature: 20\.0 °C\n/);
    expect(out).toContain('export const result1 = petrolSpanAt20C;');
    const session = await Session.begin('inch');
    expect(complete('x = petrolSp', session.names())[0]).toEqual(['petrolSpanAt20C']);
    expect(complete('.about petrolSp', session.names())[0]).toEqual(['petrolSpanAt20C']);
  });

  it('tells of a name what it is', async () => {
    const out = await prompt('c = 2 thou', '.about c', '.about pi', '.about standardAtmosphere');
    expect(out).toContain('c is 2 thou');
    expect(out).toContain('pi is a constant: 3.14159…');
    expect(out).toMatch(/standardAtmosphere is a constant\n.*101325 Pa exactly/);
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
