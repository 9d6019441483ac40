import type {
  AssignmentNode,
  ConstantNode,
  FunctionAssignmentNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
} from 'mathjs';
import type { WrittenCard } from '../judging/internal.js';
import { math } from './evaluate.js';

/** One line of the working: a symbol and what it is worked out from. */
export interface FormulaLine {
  readonly symbol: string;
  /** As a person reads it, in letters. */
  readonly symbolic: string;
  /** To be worked out; a quantity of the formula stands in it as a symbol. */
  readonly node: MathNode;
  /** Whether its numbers come out of a table. */
  readonly isTabled: boolean;
}

/** A formula, taken apart into lines that a calculator can follow one after the other. */
export interface Unfolded {
  readonly lines: readonly FormulaLine[];
  /** Functions that the formula defines, as it writes them. */
  readonly functions: readonly string[];
  /** The quantities that the formula itself holds, such as `293.15 K`, by the symbol that stands for them in a line. */
  readonly quantities: ReadonlyMap<string, string>;
}

/**
 * Takes a formula apart. A call of a function that it defines becomes two lines: what the function is put to, and
 * the function itself with that put in.
 */
export function unfold({ gives, letters, where, tabled, expression }: WrittenCard): Unfolded {
  const definitions = where.map((line) => math.parse(line));
  const functions = new Map(
    definitions.filter(isFunction).map((definition) => [definition.name, definition]),
  );
  const taken = new Set([
    ...Object.keys(letters),
    ...definitions.map((definition) => nameOf(definition)),
    ...[...functions.values()].flatMap(({ params }) => params),
    gives.symbol,
  ]);
  const symbols = new Map<string, string>();
  const lines: FormulaLine[] = [];
  const called = new Map<string, string>();

  const fresh = (name: string): string => {
    let number = 1;
    while (taken.has(`${name}_${number}`)) number++;
    taken.add(`${name}_${number}`);
    return `${name}_${number}`;
  };

  /** Puts a symbol in for every quantity. */
  const lift = (node: MathNode): MathNode => {
    // The name of a function is no unit, though `min` could be one.
    if (isCall(node)) return new math.FunctionNode(node.fn, node.args.map(lift));
    if (!isQuantity(node, taken)) return node.map(lift);
    const text = plainText(node).replaceAll(' / ', '/');
    const symbol = symbols.get(text) ?? `quantity${symbols.size}`;
    symbols.set(text, symbol);
    return new math.SymbolNode(symbol);
  };

  /** Makes lines of every call of a function that the formula defines, the innermost first. */
  const expand = (node: MathNode): MathNode => {
    const inside = node.map(expand);
    const definition = isCall(inside) ? functions.get(inside.fn.name) : undefined;
    if (definition === undefined) return inside;
    const key = inside.toString();
    const known = called.get(key);
    if (known !== undefined) return new math.SymbolNode(known);
    const { body, symbolic } = putIn(definition, inside as FunctionNode);
    const symbol = fresh(definition.name);
    called.set(key, symbol);
    lines.push({ symbol, symbolic, node: body, isTabled: false });
    return new math.SymbolNode(symbol);
  };

  const putIn = (definition: FunctionAssignmentNode, call: FunctionNode) => {
    const [parameter = ''] = definition.params;
    const [argument] = call.args as [MathNode];
    const symbol = isSymbol(argument) ? argument.name : fresh(parameter);
    if (!isSymbol(argument)) {
      lines.push({ symbol, symbolic: written(argument), node: argument, isTabled: false });
    }
    const put = (node: MathNode) =>
      isSymbol(node) && node.name === parameter ? new math.SymbolNode(symbol) : node;
    return {
      body: lift(definition.expr).transform(put),
      symbolic: `${definition.name}(${symbol})`,
    };
  };

  const written = (node: MathNode) => {
    const texts = new Map([...symbols].map(([text, symbol]) => [symbol, text]));
    return plainText(node, (part) => (isSymbol(part) ? texts.get(part.name) : undefined));
  };

  const add = (symbol: string, text: string, isTabled: boolean) => {
    const before = lines.length;
    const whole = lift(math.parse(text));
    const outermost = isCall(whole) ? functions.get(whole.fn.name) : undefined;
    if (outermost === undefined) {
      const node = expand(whole);
      const symbolic = lines.length === before ? onPaper(text) : written(node);
      lines.push({ symbol, symbolic, node, isTabled });
      return;
    }
    const { body, symbolic } = putIn(outermost, whole.map(expand) as FunctionNode);
    lines.push({ symbol, symbolic, node: body, isTabled });
  };

  where.forEach((line, index) => {
    if (isFunction(definitions[index] as MathNode)) return;
    const [name = '', text = ''] = line.split(/ = (.*)/);
    add(name, text, tabled.includes(name));
  });
  add(gives.symbol, expression, false);
  return {
    lines,
    functions: where.filter((_, index) => isFunction(definitions[index] as MathNode)),
    quantities: new Map([...symbols].map(([text, symbol]) => [symbol, text])),
  };
}

/** A formula as text, in the way that the cards are written. */
export const plainText = (
  node: MathNode,
  handler: (part: MathNode, options: object) => string | undefined = () => undefined,
): string =>
  node
    .toString({
      // mathjs would write 0.0002 as 2e-4.
      handler: (part: MathNode, options: object) => {
        const own = handler(part, options);
        if (own !== undefined) return own;
        if (part.type === 'ConstantNode') return String((part as ConstantNode).value);
        if (isCall(part)) return onCalculator(part, handler);
        const [negated] = isMinus(part) ? childrenOf(part) : [];
        if (negated === undefined || !isCall(negated) || negated.fn.name !== 'expm1')
          return undefined;
        return `(1 - exp(${plainText(negated.args[0] as MathNode, handler)}))`;
      },
    })
    .replaceAll(' ^ ', '^');

/** A formula in the functions that books and calculators have. */
export const inPlainFunctions = (formula: string): string =>
  /\b(?:expm1|log1p|log)\(/.test(formula) ? plainText(math.parse(formula)) : formula;

/** A formula of a card as people write it: a radian in it is there for the dimensions alone. */
export const onPaper = (formula: string): string =>
  inPlainFunctions(formula)
    .replaceAll(/(?<!\w)\((\w+) \/ \(1 rad\)\)/g, '$1')
    .replaceAll(/ (?:\* 1 rad|\/ \(1 rad\))(?![\w^])/g, '');

/** Whether a formula needs radians, and not only adds up and shares out angles. */
export const countsRadians = (formula: string): boolean =>
  /\brad\b/.test(formula.replaceAll('pi * 1 rad', ''));

/** The natural logarithm as calculators name it, and what a card writes for the sake of the last digits. */
function onCalculator(
  { fn, args }: FunctionNode<SymbolNode>,
  handler: Parameters<typeof plainText>[1],
): string | undefined {
  const inside = () => plainText(args[0] as MathNode, handler);
  switch (fn.name) {
    case 'log':
      return `ln(${inside()})`;
    case 'expm1':
      return `(exp(${inside()}) - 1)`;
    case 'log1p':
      return `ln(1 + ${inside()})`.replace('1 + -', '1 - ');
    default:
      return undefined;
  }
}

const isFunction = (node: MathNode): node is FunctionAssignmentNode =>
  node.type === 'FunctionAssignmentNode';
const isSymbol = (node: MathNode): node is SymbolNode => node.type === 'SymbolNode';
const isMinus = (node: MathNode): boolean =>
  node.type === 'OperatorNode' && (node as OperatorNode).fn === 'unaryMinus';
const isCall = (node: MathNode): node is FunctionNode<SymbolNode> => node.type === 'FunctionNode';

const nameOf = (definition: MathNode): string =>
  isFunction(definition)
    ? definition.name
    : ((definition as AssignmentNode).object as SymbolNode).name;

/** Whether a part of a formula is a number with a unit and no letter. */
const isQuantity = (node: MathNode, letters: ReadonlySet<string>): boolean =>
  isConstant(node, letters) && node.filter((part) => isUnit(part, letters)).length > 0;

function isConstant(node: MathNode, letters: ReadonlySet<string>): boolean {
  switch (node.type) {
    case 'ConstantNode':
      return true;
    case 'SymbolNode':
      return (node as SymbolNode).name === 'pi' || isUnit(node, letters);
    case 'ParenthesisNode':
      return isConstant((node as ParenthesisNode).content, letters);
    case 'OperatorNode':
      return childrenOf(node).every((child) => isConstant(child, letters));
    default:
      return false;
  }
}

function childrenOf(node: MathNode): readonly MathNode[] {
  const children: MathNode[] = [];
  node.forEach((child) => {
    children.push(child);
  });
  return children;
}

const isUnit = (node: MathNode, letters: ReadonlySet<string>): boolean =>
  isSymbol(node) && !letters.has(node.name) && math.Unit.isValuelessUnit(node.name);
