import { GREEK } from './greek.js';
import type { Typesetter } from './layout-of-formula.js';

/** Text in an element of MathML. */
const element = (name: string, inside: string) => `<${name}>${inside}</${name}>`;
const upright = (text: string) => `<mi mathvariant="normal">${text}</mi>`;
const row = (parts: readonly string[]) => element('mrow', parts.join(''));

/** What stands below a letter: words, and numbers as such. */
function below(subscripts: readonly string[]): string {
  const parts = subscripts.map((text) => element(/^\d+$/.test(text) ? 'mn' : 'mtext', text));
  return parts.length === 1 ? (parts[0] as string) : row([parts.join(element('mo', ','))]);
}

/** Sets a formula in MathML, which browsers show and screen readers read. */
export const mathml: Typesetter = {
  number: (text) => element('mn', text),
  letter: (name, subscripts) => {
    const letter = GREEK.get(name) ?? name;
    const head = letter.length > 1 ? upright(letter) : element('mi', letter);
    return subscripts.length === 0 ? head : element('msub', `${head}${below(subscripts)}`);
  },
  unit: (name) => upright(name),
  sign: (text) => element('mo', text === '-' ? '−' : text),
  space: '<mspace width="0.17em"/>',
  fraction: (above, below) => element('mfrac', `${row([above])}${row([below])}`),
  power: (base, exponent) => element('msup', `${row([base])}${row([exponent])}`),
  root: (inside) => element('msqrt', inside),
  inParentheses: (inside) => row([element('mo', '('), inside, element('mo', ')')]),
  row,
  named: (name) =>
    name === 'log10'
      ? element('msub', `${upright('log')}${element('mn', '10')}`)
      : upright(ARCS.get(name) ?? name),
};

const ARCS: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['asin', 'arcsin'],
  ['acos', 'arccos'],
  ['atan', 'arctan'],
]);

/** An equation as an element of its own. */
export const inMath = (inside: string): string => element('math', inside);
