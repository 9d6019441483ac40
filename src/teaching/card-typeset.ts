import type { CardName } from './cards.js';
import { cardNamed } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';
import { type Typesetter, typeset } from './layout-of-formula.js';
import { inMath, mathml } from './mathml.js';
import { tex } from './tex.js';

/**
 * The formula of a card in TeX, and after it the definitions that go with it, a line each.
 *
 * @param name - name of the card
 * @returns lines of TeX, without the signs that begin and end it in a text
 * @throws {RebuildInputError} when there is no such card
 * @example
 * ```ts
 * cardTex('shellWallFor'); // ["t_{\\mathrm{u}} = t + \\frac{u}{2}"]
 * ```
 */
export const cardTex = (name: CardName): readonly string[] => linesOf(cardNamed(name), tex);

/**
 * The formula of a card in MathML, and after it the definitions that go with it, an element each.
 *
 * @param name - name of the card
 * @returns `math` elements
 * @throws {RebuildInputError} when there is no such card
 * @example
 * ```ts
 * cardMathml('explainClearance')[0]; // "<math><msub><mi>c</mi><mtext>m</mtext></msub><mo>=</mo><mrow><mi>c</mi><mo>−</mo><mi>s</mi></mrow></math>"
 * ```
 */
export const cardMathml = (name: CardName): readonly string[] =>
  linesOf(cardNamed(name), mathml).map(inMath);

function linesOf({ letters, gives, where, expression }: FormulaCard, by: Typesetter) {
  const known = new Set([
    ...Object.keys(letters),
    gives.symbol,
    ...where.map((line) => /^\w+/.exec(line)?.[0] ?? ''),
  ]);
  return [`${gives.symbol} = ${expression}`, ...where].map((line) => equation(line, known, by));
}

/** An equation, or the definition of a function, with its sign of equality. */
export function equation(line: string, letters: ReadonlySet<string>, by: Typesetter): string {
  const [symbol = '', formula = ''] = line.split(/ = (.*)/);
  if (symbol.includes('(')) return typeset(line, letters, by);
  return `${typeset(symbol, letters, by)}${by.sign('=')}${typeset(formula, letters, by)}`;
}
