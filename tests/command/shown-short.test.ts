import { describe, expect, it } from 'vitest';
import { captured } from './captured.js';

const prompt = async (...lines: readonly string[]) => {
  const { out } = await captured(['repl'], { prompted: lines.map((line) => `${line}\n`) });
  return out.slice(out.indexOf('> '));
};
const said = async (text: string) => (await captured(['calc', text])).out.trimEnd();

const oil =
  '{line: [{temperature: 40 degC, viscosity: 100 cSt}, {temperature: 100 degC, viscosity: 11 cSt}], density: 0.88 g/mL}';
const film = `maxFuelDilutionSpan({journal: 1.5 inch, length: 1.1 inch, clearance: 1.9 thou, speed: 3000 rpm, load: 450 lbf, roughness: {journal: 0.4 micrometre, shell: 0.8 micrometre}, oil: ${oil}, inlet: 80 degC})`;

describe('a result at the prompt', () => {
  it('that is long begins with a sentence and fits on a screen; a part of it is shown whole', async () => {
    const whole = await said(film);
    const [first, span] = whole.split('\n');
    expect(first).toMatch(
      /^The film stands (\S+ vol%) of fuel at the least and (\S+ vol%) at the most, .*Go by the least: .* It hangs most on the \w+\.$/,
    );
    const [, least, most] =
      /stands (.*) of fuel at the least and (.*) at the most,/.exec(first ?? '') ?? [];
    expect(span).toBe(`span: ${least} to ${most}`);
    expect(whole.split('\n').length).toBeLessThan(40);
    expect(whole).toContain('clean: { temperature, rise, viscosity, range, … }');
    expect(whole.split('\n').at(-1)).toBe(
      'This is the short of it; type a part to see all of that, as ans.asGiven',
    );
    const part = await prompt(film, 'ans.asGiven.clean.film');
    expect(part).toMatch(/numbers:\n {2}eccentricity: 0\.\d+\n/);
  });

  it('is printed to four digits by itself as within the whole, and kept with all', async () => {
    // Four significant digits at most behind the zeros; what is typed and worked out has six.
    const out = await prompt(film, 'ans.asGiven.clean.film.eccentricity', '1/3');
    const [, shown = ''] = /\n> (0\.\d+)\n/.exec(out) ?? [];
    expect(shown).toMatch(/^0\.\d{1,4}$/);
    expect(out).toMatch(/\n> 0\.333333\n/);
    const { out: json } = await captured([
      'calc',
      `(${film}).asGiven.clean.film.eccentricity`,
      '--json',
    ]);
    expect(String(JSON.parse(json)[0]?.value ?? JSON.parse(json).value).length).toBeGreaterThan(8);
  });

  it.each([
    // A drop of petrol is 0.018 to 0.050 mL: 6 and 600 of them in a minute, and 600 in a second.
    ['drops: 6, time: 1 min', 'min: 6.5 mL/h\nmax: 18.0 mL/h'],
    ['drops: 600, time: 1 min', 'min: 10.80 mL/min\nmax: 30.00 mL/min'],
    ['drops: 600, time: 1 s', 'min: 0.648 L/min\nmax: 1.800 L/min'],
  ])('of a flow is in the unit that its size is read in: %s', async (count, words) => {
    expect(await said(`dripFlow({${count}})`)).toBe(words);
  });

  it('has both ends of a span in one unit, that of the larger', async () => {
    // 500 drops of 0.018 to 0.050 mL in 1.2 min: 450 mL/h, and 1250 mL/h or 20.83 mL/min.
    expect(await said('dripFlow({drops: 500, time: 1.2 min})')).toBe(
      'min: 7.50 mL/min\nmax: 20.83 mL/min',
    );
  });

  it('of a flow that is judged has one unit in its sentence', async () => {
    const judged = (value: string, least: string) =>
      said(
        `judge({feature: "pump", dimension: "flow", value: ${value}, limits: {min: ${least}}, basis: {kind: "specified"}})`,
      );
    expect(await judged('3 litrePerMinute', '0.5 litrePerMinute')).toBe(
      'pump 3.000 L/min: above the least of 0.500 L/min (specified)',
    );
    expect(await judged('36 mLPerHour', '20 mLPerHour')).toContain(
      '36.0 mL/h: above the least of 20.0 mL/h',
    );
  });

  it('of an oil clearance that no step explains says once where it stands, in one unit', async () => {
    const out = await said(
      'oilClearance({housingBore: 2.251 inch, journal: 2.1255 inch, shellWall: 62 thou})',
    );
    const [number, sentence] = out.split('\n');
    expect(number).toBe('1.5 thou');
    expect(sentence).toMatch(/^oil clearance 0\.0015 in: 0\.0001 in below the limit of 0\.0016 in/);
  });

  it.each([
    // 2.251 - 2 * 0.062 = 2.127 in.
    ['2.129 inch', 'it is 2 thou larger than the hole that they leave. Read all three again'],
    ['2.145 inch', 'it is 18 thou larger than the hole that they leave.\nshells for a smaller'],
  ])('of an interference says that the journal does not go in: %s', async (journal, words) => {
    const out = await said(
      `oilClearance({housingBore: 2.251 inch, journal: ${journal}, shellWall: 62 thou})`,
    );
    expect(out).toContain(`\na journal of ${journal.replace('inch', 'in')} does not go into`);
    expect(out).toContain(words);
    expect(out).not.toContain('common practice');
  });

  it('of a lash says where, when and of which valve it is', async () => {
    const piece = (size: string, degrees: string) =>
      `[{length: ${size}, expansion: meanExpansion("steel"), temperature: ${degrees}}]`;
    const train = `carrier: ${piece('6 in', '110 degC')}, train: ${piece('6 in', '180 degC')}`;
    expect(await said(`lashGrowth({${train}, hotLash: 6 thou})`)).toMatch(
      /coldLash is what to set on the cold engine, at the end of the valve's stem.* inlet and exhaust each by its own heat/,
    );
    expect(await said(`lashGrowth({${train}})`)).toContain('Add hotLash for what to set cold');
  });
});
