import { GREEK } from './greek.js';
import type { Typesetter } from './layout-of-formula.js';

const upright = (text: string) => `\\mathrm{${text}}`;

/** Sets a formula in TeX. */
export const tex: Typesetter = {
  number: (text) => text.replace('−', '-'),
  letter: (name, subscripts) => {
    const head = GREEK.has(name) ? `\\${name}` : name.length > 1 ? upright(name) : name;
    const below = subscripts.join(',');
    if (below === '') return head;
    return /^\d$/.test(below) ? `${head}_${below}` : `${head}_{${upright(below)}}`;
  },
  unit: (name) =>
    name.replaceAll(
      /[°µΔ]|[^°µΔ]+/g,
      (part) => MARKS.get(part) ?? upright(part.replaceAll('%', '\\%')),
    ),
  sign: (text) => SIGNS.get(text) ?? ` ${text} `,
  space: '\\,',
  fraction: (above, below) => `\\frac{${above}}{${below}}`,
  power: (base, exponent) => `{${base}}^{${exponent}}`,
  root: (inside) => `\\sqrt{${inside}}`,
  inParentheses: (inside) => `\\left(${inside}\\right)`,
  row: (parts) => parts.join(''),
  named: (name) => FUNCTIONS.get(name) ?? `\\operatorname{${name}}`,
};

/** What stands before the name of a unit. */
const MARKS: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['°', '{}^{\\circ}'],
  ['µ', '\\mu '],
  ['Δ', '\\Delta '],
]);

const SIGNS: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['|', '|'],
  ['·', ' \\cdot '],
  ['×', ' \\times '],
  [',', ',\\, '],
  ['/', '/'],
]);

const FUNCTIONS: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['sin', '\\sin'],
  ['cos', '\\cos'],
  ['tan', '\\tan'],
  ['asin', '\\arcsin'],
  ['acos', '\\arccos'],
  ['atan', '\\arctan'],
  ['exp', '\\exp'],
  ['ln', '\\ln'],
  ['log10', '\\log_{10}'],
  ['max', '\\max'],
  ['min', '\\min'],
]);
