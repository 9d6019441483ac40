import { inch } from 'crankwright';
import {
  type CardName,
  cardMathml,
  cards,
  cardTex,
  exampleValues,
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
    // Words are read as words, not as names of a program.
    expect(all).toContain('\\text{swept volume}');
    expect(all).toContain('\\text{seconds at 100F}');
    expect(all).not.toMatch(/\\text\{[^}]*[a-z][A-Z0-9]/);
  });
});

describe.each(systems)('a worked formula in %s units', (units) => {
  it.each(names)('is set whole: %s', (name) => {
    const working = worked(name, exampleValues(name, { units }), { units });
    const equations = [...workedMarkdown(working).matchAll(/\$\$(.*?)\$\$/gs)].map(
      ([, text = '']) => text,
    );
    expect(equations.length).toBeGreaterThanOrEqual(working.steps.length);
    for (const text of equations) temml.renderToString(text, { throwOnError: true });
    const elements = workedMathml(working).join('');
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

it('leaves nothing of a radian in a formula: a letter in its unit stands without parentheses', () => {
  const petroff = worked('petroffTorque', exampleValues('petroffTorque', { units: 'inch' }), {
    units: 'inch',
  });
  expect(workedText(petroff)).toContain('T = pi * mu * omega * D^3 * L / (2 * C)');
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
      expect(lines.filter((line) => /radians/.test(line)).length, name).toBe(told >= 0 ? 1 : 0);
    }
  });
});
