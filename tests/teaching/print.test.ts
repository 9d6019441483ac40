import { inch } from 'crankwright';
import {
  type CardName,
  cardMathml,
  cards,
  cardTex,
  exampleValues,
  exercise,
  solution,
  worked,
  workedMarkdown,
  workedMathml,
  workedText,
} from 'crankwright/teaching';
import temml from 'temml';
import { describe, expect, it } from 'vitest';

const names = Object.keys(cards) as CardName[];
const systems = ['inch', 'metric'] as const;

/** What a page shows of MathML, without spaces and with every form of a letter as one. */
const shownIn = (markup: string) =>
  markup
    .replaceAll(/<[^>]*>/g, '')
    .normalize('NFKC')
    .replaceAll(/[\s\u2009\u2061\u200b]/g, '')
    .replaceAll('⋅', '·')
    .replaceAll('∣', '|')
    .replaceAll('ϕ', 'φ')
    .replaceAll('ϵ', 'ε')
    .replaceAll('µ', 'μ');

describe('formulas in TeX and in MathML', () => {
  it.each(names)('say the same of %s, read by another program', (name) => {
    const elements = cardMathml(name);
    cardTex(name).forEach((line, index) => {
      const theirs = shownIn(temml.renderToString(line, { throwOnError: true }));
      expect(shownIn(elements[index] ?? '')).toBe(theirs);
    });
  });

  it('set a formula as a book does', () => {
    expect(cardTex('oilClearance')).toEqual(['c = D_{\\mathrm{h}} - 2 \\cdot t - D_{\\mathrm{j}}']);
    // A number with its unit is one factor, a minus is taken out of a sum, and a digit needs no braces.
    const all = names.flatMap((name) => cardTex(name)).join('\n');
    expect(all).toContain('\\cdot 9.80665\\,\\mathrm{m}/{\\mathrm{s}}^{2}');
    expect(all).not.toMatch(/cdot 9\.80665\\,\\mathrm\{m\}\}/);
    expect(all).toContain('\\ln\\left(1 - \\frac{');
    expect(all).not.toContain('1 + \\frac{-');
    expect(all).toContain('d_2');
    expect(all).not.toMatch(/_\{\\mathrm\{\d\}\}/);
    expect(cardTex('ringGapHot').join(' ')).not.toContain('\\text{');
    expect(cardTex('combinedRoughness')[0]).toContain('\\sqrt{');
  });

  it('write a letter of the trade for everything, and say what each stands for', () => {
    for (const name of names) {
      const { gives, letters, where, defines } = cards[name];
      const defined = where
        .filter((line) => !/^\w+\(/.test(line))
        .map((line) => line.split(' ')[0]);
      expect(Object.keys(defines), name).toEqual(defined);
      const symbols = [gives.symbol, ...Object.keys(letters), ...Object.keys(defines)];
      for (const { meaning } of Object.values(defines)) expect(meaning, name).toMatch(/^[\p{L}]/u);
      // TeX knows Greek letters by their names; the index of viscosity is written VI everywhere.
      const heads = symbols.map((symbol) => symbol.split('_')[0] ?? '');
      const words = heads.filter((head) => head.length > 1 && head !== 'VI');
      for (const word of words) expect(cardTex(name).join(), name).toContain(`\\${word}`);
      // No letter stands for two things.
      const inside = [...Object.keys(letters), ...Object.keys(defines)];
      expect(new Set(inside).size, name).toBe(inside.length);
    }
  });

  it('hold no number with more digits than a table prints', () => {
    for (const name of names) {
      const { where, expression } = cards[name];
      expect([...where, expression].join('\n'), name).not.toMatch(/\d\.\d{7}/);
    }
  });
});

describe.each(systems)('a worked formula in %s units', (units) => {
  it.each(names)('is set whole: %s', (name) => {
    const working = worked(name, exampleValues(name, { units }), { units });
    const equations = [...workedMarkdown(working).matchAll(/\$\$(.*?)\$\$/gs)].map(
      ([, text = '']) => text,
    );
    expect(equations.length).toBeGreaterThanOrEqual(working.steps.length);
    // TeX knows raised figures, a dot, a degree and Greek letters by their commands.
    const set = [...workedMarkdown(working).matchAll(/\$\$(.*?)\$\$|\$(.+?)\$/gs)].map(
      ([, block, inline]) => block ?? inline,
    );
    expect(set.filter((text) => /[^ -~]/.test(text ?? ''))).toEqual([]);
    for (const text of equations) temml.renderToString(text, { throwOnError: true });
    const elements = workedMathml(working).join('');
    expect(elements).not.toMatch(/<mi[^>]*>[^<]*[⁻⁰¹²³⁴-⁹·/][^<]*<\/mi>/);
    expect(elements.match(/<math>/g)?.length).toBe(elements.match(/<\/math>/g)?.length);
    for (const text of [workedText(working), workedMarkdown(working), elements]) {
      expect(text).not.toMatch(/NaN|Infinity|undefined|quantity\d/);
    }
    for (const { meaning, given } of working.legend) {
      expect(workedText(working)).toContain(`${given.text}`);
      expect(workedText(working)).toContain(meaning);
    }
  });
});

describe('a number below zero in a formula', () => {
  const set = (name: CardName, values: Readonly<Record<string, number>>) => {
    const working = worked(name, values, { units: 'inch' });
    return [workedMarkdown(working), workedMathml(working).join('\n')] as const;
  };

  it('keeps its unit and gets parentheses in a sum, and none alone', () => {
    const [inTex, inMathml] = set('explainTightClearance', { c: inch(-0.0075), s: inch(0.01) });
    expect(inTex).toContain('\\left(-0.0075\\,\\mathrm{in}\\right) + 0.01\\,\\mathrm{in}');
    expect(inMathml).toContain(
      '<mo>(</mo><mrow><mrow><mo>−</mo><mn>0.0075</mn></mrow><mspace width="0.17em"/>' +
        '<mi mathvariant="normal">in</mi></mrow><mo>)</mo>',
    );
    const [pressed] = set('hubBoreRadial', exampleValues('hubBoreRadial'));
    expect(pressed).toMatch(/ &= -[\d.]+\\,\\mathrm\{lbf\}/);
  });

  it.each(systems)('is nowhere multiplied by its unit, in %s units', (units) => {
    let below = 0;
    for (const name of names) {
      for (const seed of [1, 2, 3]) {
        const working = solution(exercise(name, seed, { units }));
        if (!working.steps.some(({ substituted }) => /\(-\d[^()]* /.test(substituted))) continue;
        below += 1;
        expect(workedMarkdown(working), name).not.toMatch(
          /\d(?:\\right\))? \\cdot (?:\{\}|\\mathrm)/,
        );
        expect(workedMathml(working).join(''), name).not.toMatch(
          /<\/mn>(?:<\/mrow>)*<mo>·<\/mo><mi mathvariant="normal">/,
        );
      }
    }
    expect(below).toBeGreaterThan(3);
  });
});

it('sets a subscript that is a number as a number in MathML', () => {
  expect(cardMathml('ringGapIn')[0]).toContain('<msub><mi>g</mi><mn>0</mn></msub>');
  const all = names.flatMap((name) => cardMathml(name)).join('');
  expect(all).not.toMatch(/<mtext>[^<]*\d/);
  expect(cardMathml('explainClearance')[0]).toContain('<mtext>m</mtext>');
});

it.each([
  ['hubBoreRadial', 'metric', '\\mathrm{N}/{\\mathrm{mm}}^{2}', 'N/mm2'],
  ['dilutedExpansion', 'inch', '\\mathrm{ppm}/{}^{\\circ}\\mathrm{F}', 'ppm/°F'],
  ['combinedRoughness', 'inch', '\\,\\mu \\mathrm{in}', 'μin'],
] as const)('sets the units of %s, %s, as formulas', (name, units, inTex, shown) => {
  const working = worked(name, exampleValues(name, { units }), { units });
  expect(workedMarkdown(working)).toContain(inTex);
  expect(workedMathml(working).map(shownIn).join('\n')).toContain(shown);
});

it('leaves nothing of a radian in a formula: a letter in its unit stands without parentheses', () => {
  const petroff = worked('petroffTorque', exampleValues('petroffTorque', { units: 'inch' }), {
    units: 'inch',
  });
  expect(workedText(petroff)).toContain('T = π * μ * ω * D^3 * L / (2 * C)');
});

it('prints a worked formula as text that can be typed line by line', () => {
  const values = { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) };
  // 2.251 - 0.124 - 2.125 = 0.002, by hand.
  expect(workedText(worked('oilClearance', values, { units: 'inch' }))).toBe(
    `oil clearance
  D_h = 2.251 in   housing bore, cap torqued, no shells
  t = 0.062 in   wall of one half shell at its crown
  D_j = 2.125 in   journal diameter
c = D_h - 2 * t - D_j
  = 2.251 - 2 * 0.062 - 2.125
  = 0.002 in
  = 0.002 * 1000 = 2 thou
Source: geometry
`,
  );
});

it('prints Greek letters, says what a line works out, and ends in the unit that is asked for', () => {
  // 17/12 and 3/4 of the height of the triangle, √3/2 of the pitch, and half of their sum: ISO 68-1 and ISO 898-1.
  const stress = workedText(
    worked('threadStressArea', { d: 0.01, P: 0.0015 }, { units: 'metric' }),
  );
  expect(stress).toContain(
    'f = 3 * sqrt(3) / 8   outside less pitch diameter, over the pitch\n  = 0.6495191\n',
  );
  const pressed = worked('hubBoreRadial', exampleValues('hubBoreRadial'));
  expect(workedText(pressed)).toMatch(/σ_r = -p\n.* lbf\/in²\n {4}= -[\d.]+ psi\nSource/s);
  expect(workedMarkdown(pressed)).toContain('- $p$: pressure at the fit\n');
});

describe('the calculator', () => {
  const isOfAngle = (line: string) => /\ba?(?:sin|cos|tan)\(/.test(line);

  it('is set to radians before the first function of an angle, and nowhere else', () => {
    const workings = (Object.keys(cards) as CardName[]).map((name) => {
      const lines = workedText(worked(name, cards[name].example, { units: 'metric' })).split('\n');
      return { name, lines, told: lines.indexOf('Set the calculator to radians.') };
    });
    expect(workings.filter(({ told }) => told >= 0).length).toBeGreaterThan(20);
    for (const { name, lines, told } of workings) {
      const first = lines.findIndex(isOfAngle);
      expect(told >= 0, name).toBe(first >= 0);
      expect(told, name).toBeLessThanOrEqual(first);
      expect(lines.filter((line) => line.startsWith('Set the calculator')).length, name).toBe(
        told >= 0 ? 1 : 0,
      );
    }
  });
});
