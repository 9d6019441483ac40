import {
  all,
  create,
  type FactoryFunctionMap,
  type FunctionNode,
  type MathNode,
  type SymbolNode,
} from 'mathjs';
import temml from 'temml';
import type { FormulaCard } from '../cards.js';

const math = create(all as FactoryFunctionMap);

const GREEK = new Set(
  'alpha beta gamma delta epsilon zeta eta theta kappa lambda mu nu xi pi rho sigma tau phi chi psi omega'.split(
    ' ',
  ),
);

/** Part of a symbol: a letter, a Greek letter by its name, or words written together. */
function partTex(part: string): string {
  if (part.length === 1 || /^\d+$/.test(part)) return part;
  if (GREEK.has(part)) return `\\${part}`;
  const words = part.replace(/[A-Z](?=[a-z])/g, (capital) => ` ${capital.toLowerCase()}`);
  return `\\mathrm{${words.replaceAll(' ', '\\ ')}}`;
}

/** A symbol of a formula in TeX: `D_h` with its index below. */
export function symbolTex(symbol: string): string {
  const [head = '', ...indices] = symbol.split('_');
  if (indices.length === 0) return partTex(head);
  return `${partTex(head)}_{${indices.map(partTex).join(',')}}`;
}

/** Functions that books write by a sign or a name of their own. */
const NAMES: Readonly<Record<string, string>> = {
  log: '\\ln',
  log10: '\\log_{10}',
  atan: '\\arctan',
  asin: '\\arcsin',
  acos: '\\arccos',
};

/** A unit by which a formula divides or multiplies to get a plain number: `1 mm^2/s`. */
const ONE_OF = /^1 ((?:mm|m|kg|s|K|N|Pa|rad|in)[\w^/ ]*)$/;

/** An expression in mathjs syntax in TeX; `letters` are those that stand for a quantity in it. */
export function expressionTex(expression: string, letters: ReadonlySet<string>): string {
  const handler = (node: MathNode, options: object): string | undefined => {
    const [, unit] =
      ONE_OF.exec(node.toString({ parenthesis: 'keep' }).replace(/^\((.*)\)$/, '$1')) ?? [];
    if (unit) return ` 1\\,${unitTex(unit)}`;
    if (node.type === 'SymbolNode') return ` ${symbolIn((node as SymbolNode).name, letters)}`;
    if (node.type !== 'FunctionNode') return undefined;
    const { fn, args } = node as FunctionNode;
    const tex = args.map((each) => each.toTex(options));
    const name = fn.toString();
    if (name === 'expm1') return `\\left(e^{${tex[0]}} - 1\\right)`;
    if (name === 'log1p') return `\\ln\\left(1 + ${tex[0]}\\right)`;
    if (name === 'exp') return `\\exp\\left(${tex[0]}\\right)`;
    if (['sqrt', 'abs'].includes(name)) return undefined;
    const sign = /^(?:sin|cos|tan|max|min)$/.test(name) ? `\\${name}` : NAMES[name];
    return ` ${sign ?? symbolTex(name)}\\left(${tex.join(', ')}\\right)`;
  };
  return math.parse(expression).toTex({ handler, parenthesis: 'auto', implicit: 'hide' });
}

/** Units stand upright. */
const UNITS = new Set(['m', 'mm', 'kg', 's', 'K', 'N', 'Pa', 'rad', 'in', 'J', 'W', 'degC']);
const unitTex = (unit: string) =>
  `\\mathrm{${unit.replaceAll(' ', '').replace(/\^(-?\d+)/g, '^{$1}')}}`;
const symbolIn = (name: string, letters: ReadonlySet<string>): string =>
  UNITS.has(name) && !letters.has(name) ? `\\mathrm{${name}}` : symbolTex(name);

/** The formula of a card in TeX, then its definitions. */
export function formulaTex({ gives, letters, where, expression }: FormulaCard): readonly string[] {
  const defined = where.flatMap((each) => /^\w+/.exec(each)?.[0] ?? []);
  const all = new Set([...Object.keys(letters), gives.symbol, ...defined]);
  return [
    `${symbolTex(gives.symbol)} = ${expressionTex(expression, all)}`,
    ...where.map((each) => expressionTex(each, new Set([...all, ...argumentsOf(each)]))),
  ];
}

/** The letters that a definition takes: `W(v) = …`. */
const argumentsOf = (definition: string): readonly string[] =>
  /^\w+\(([^)]*)\) =/.exec(definition)?.[1]?.split(', ') ?? [];

/** TeX as MathML. Temml writes styles that a page without inline styles cannot have; none of them is needed here. */
export const mathML = (tex: string, displayMode = false): string =>
  temml.renderToString(tex, { displayMode, throwOnError: true }).replace(/ style="[^"]*"/g, '');
