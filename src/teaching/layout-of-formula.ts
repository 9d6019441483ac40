import type {
  ConstantNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
} from 'mathjs';
import { RebuildInputError } from '../quantities/index.js';
import { math } from './evaluate.js';
import { inPlainFunctions } from './unfold.js';

/** How the parts of a formula are set: in TeX, or in MathML. */
export interface Typesetter {
  readonly number: (text: string) => string;
  /** A letter of the formula, such as `D_j`, with its subscripts. */
  readonly letter: (name: string, subscripts: readonly string[]) => string;
  /** The name of a unit, such as `mm`. */
  readonly unit: (name: string) => string;
  readonly sign: (text: string) => string;
  /** Space between a number and its unit. */
  readonly space: string;
  readonly fraction: (above: string, below: string) => string;
  readonly power: (base: string, exponent: string) => string;
  readonly root: (inside: string) => string;
  readonly inParentheses: (inside: string) => string;
  readonly row: (parts: readonly string[]) => string;
  /** The name of a function, such as sin. */
  readonly named: (name: string) => string;
}

/** Sets a formula in mathjs syntax. The letters tell a symbol from a unit. */
export function typeset(formula: string, letters: ReadonlySet<string>, by: Typesetter): string {
  return setNode(parsed(formula), letters, by);
}

/** A formula that came back from a reader may be anything. */
function parsed(formula: string): MathNode {
  try {
    return math.parse(inPlainFunctions(formula));
  } catch {
    throw notAFormula(formula);
  }
}

const notAFormula = (value: string): RebuildInputError =>
  new RebuildInputError({
    parameter: 'formula',
    value,
    expected: 'a formula as mathjs writes it',
    hint: 'Pass on what worked, exercise or worksheet gave, unchanged.',
  });

type Letters = ReadonlySet<string>;

function setNode(node: MathNode, letters: Letters, by: Typesetter): string {
  switch (node.type) {
    case 'ConstantNode':
      return setNumber(String((node as ConstantNode).value), by);
    case 'SymbolNode':
      return setSymbol((node as SymbolNode).name, letters, by);
    case 'ParenthesisNode':
      return setParentheses(node as ParenthesisNode, letters, by);
    case 'FunctionNode':
      return setCall(node as FunctionNode<SymbolNode>, letters, by);
    case 'FunctionAssignmentNode': {
      const { name, params, expr } = node as unknown as {
        readonly name: string;
        readonly params: readonly string[];
        readonly expr: MathNode;
      };
      const inside = new Set([...letters, name, ...params]);
      const call = by.inParentheses(params.map((param) => setSymbol(param, inside, by)).join(''));
      return by.row([setSymbol(name, inside, by), call, by.sign('='), setNode(expr, inside, by)]);
    }
    case 'OperatorNode':
      return setOperator(node as OperatorNode, letters, by);
    default:
      // A list, an object, a string: no formula of ours has one.
      throw notAFormula(node.toString());
  }
}

/** A power of ten is set as one. */
function setNumber(text: string, by: Typesetter): string {
  const [digits = '', power] = text.split('e');
  if (power === undefined) return by.number(text);
  const ten = by.power(by.number('10'), by.number(power.replace('+', '').replace('-', '−')));
  return by.row([by.number(digits), by.sign('×'), ten]);
}

function setSymbol(name: string, letters: Letters, by: Typesetter): string {
  if (!letters.has(name) && name !== 'pi') return by.unit(name);
  const [head = '', ...subscripts] = name.split('_');
  return by.letter(head, subscripts);
}

/**
 * A fraction and a root hold together what is inside of them; a number with a unit needs nothing around it unless it is
 * below zero.
 */
function setParentheses({ content }: ParenthesisNode, letters: Letters, by: Typesetter): string {
  const inside = setNode(content, letters, by);
  const isFraction = content.type === 'OperatorNode' && (content as OperatorNode).op === '/';
  if (isMeasure(content, letters)) return isNegative(content) ? by.inParentheses(inside) : inside;
  return isFraction ? inside : by.inParentheses(inside);
}

function setCall({ fn, args }: FunctionNode<SymbolNode>, letters: Letters, by: Typesetter): string {
  const [first] = args as [MathNode];
  const inside = (node: MathNode) => setNode(bare(node), letters, by);
  if (fn.name === 'sqrt') return by.root(inside(first));
  if (fn.name === 'abs') return by.row([by.sign('|'), inside(first), by.sign('|')]);
  const name = letters.has(fn.name) ? setSymbol(fn.name, letters, by) : by.named(fn.name);
  const list = args.flatMap((arg, index) =>
    index === 0 ? [inside(arg)] : [by.sign(','), inside(arg)],
  );
  return by.row([name, by.inParentheses(by.row(list))]);
}

function setOperator(written: OperatorNode, letters: Letters, by: Typesetter): string {
  const node = withMeasure(written, letters);
  const [left, right] = node.args as unknown as readonly [MathNode, MathNode?];
  const set = (part: MathNode) => setNode(part, letters, by);
  // The sign of a number stands close to it; spaces are for a sum.
  if (right === undefined) return by.row([by.sign(node.op).trim(), set(left)]);
  // A radian is no more than what dimensions ask for.
  if (/[*/]/.test(node.op) && bare(right).toString() === '1 rad') return set(left);
  switch (node.op) {
    case '/':
      return isOfUnits(node, letters)
        ? by.row([set(left), by.sign('/'), set(right)])
        : by.fraction(set(bare(left)), set(bare(right)));
    case '^':
      return by.power(
        needsParentheses(left, letters) ? by.inParentheses(set(bare(left))) : set(left),
        set(bare(right)),
      );
    case '*':
      if (isOfUnits(right, letters) && isMeasure(node, letters))
        return by.row([set(left), by.space, set(right)]);
      return by.row([set(left), by.sign('·'), set(right)]);
    default:
      return by.row([set(left), by.sign(node.op), set(right)]);
  }
}

/** A number with its unit is one factor: `rho * 9.80665 m / s^2` is read as rho times 9.80665 m/s². */
function withMeasure(node: OperatorNode, letters: Letters): OperatorNode {
  const [left, right] = node.args as unknown as readonly [MathNode, MathNode?];
  if (node.op !== '/' || right === undefined || !isOfUnits(right, letters)) return node;
  if (left.type !== 'OperatorNode') return node;
  const above = withMeasure(left as OperatorNode, letters);
  const [factor, measure] = above.args as unknown as readonly [MathNode, MathNode?];
  const isProduct = above.op === '*' && !isMeasure(above, letters);
  if (!isProduct || measure === undefined || !isMeasure(measure, letters)) return node;
  const whole = new math.OperatorNode('/', 'divide', [measure, right]);
  return new math.OperatorNode('*', 'multiply', [factor, whole]) as unknown as OperatorNode;
}

const bare = (node: MathNode): MathNode =>
  node.type === 'ParenthesisNode' ? bare((node as ParenthesisNode).content) : node;

/** What is raised to a power keeps parentheses unless it is one symbol or number. */
const needsParentheses = (node: MathNode, letters: Letters): boolean =>
  node.type === 'ParenthesisNode' || isMeasure(node, letters);

/** Whether it holds units alone: `mm^2/s`. */
function isOfUnits(node: MathNode, letters: Letters): boolean {
  if (node.type === 'SymbolNode') {
    const { name } = node as SymbolNode;
    return name !== 'pi' && !letters.has(name);
  }
  if (node.type !== 'OperatorNode') return false;
  const { op, args } = node as OperatorNode;
  const [left, right] = args as unknown as readonly [MathNode, MathNode?];
  if (right === undefined) return false;
  if (op === '^') return isOfUnits(left, letters);
  if (op === '/')
    return isOfUnits(left, letters) || isMeasure(left, letters) ? isOfUnits(right, letters) : false;
  return op === '*' && isOfUnits(left, letters) && isOfUnits(right, letters);
}

/** Whether it is a number with a unit: `2.251 in`, `5 N/mm^2`. */
function isMeasure(node: MathNode, letters: Letters): boolean {
  if (node.type !== 'OperatorNode') return false;
  const { op, args } = node as OperatorNode;
  const [left, right] = args as unknown as readonly [MathNode, MathNode?];
  if (right === undefined) return op === '-' && isMeasure(left, letters);
  if (op !== '*' && op !== '/') return false;
  return (isNumber(left) || isMeasure(left, letters)) && isOfUnits(right, letters);
}

const isMinus = (node: MathNode): boolean =>
  node.type === 'OperatorNode' && (node as OperatorNode).fn === 'unaryMinus';

/** Whether it is a number, perhaps below zero. */
const isNumber = (node: MathNode): boolean =>
  node.type === 'ConstantNode' ||
  (isMinus(node) && (node as OperatorNode).args[0]?.type === 'ConstantNode');

/** Whether a minus stands before all of it: `-5 N/mm^2`. */
const isNegative = (node: MathNode): boolean =>
  isMinus(node) ||
  (node.type === 'OperatorNode' && isNegative((node as OperatorNode).args[0] as MathNode));
