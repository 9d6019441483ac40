import type {
  ConstantNode,
  FunctionNode,
  MathJsInstance,
  MathNode,
  OperatorNode,
  RangeNode,
  SymbolNode,
} from 'mathjs';
import { callOf } from '../../mathjs/internal.js';
import { OFF } from './load-math.js';
import { partAsTyped } from './part-as-typed.js';
import { READING } from './reading-functions.js';
import { WrongStatement } from './wrong-statement.js';

/** What a statement is read with. */
interface Reading {
  readonly math: MathJsInstance;
  readonly isVariable: (name: string) => boolean;
  /** The statement as it was typed, for what is said of a part of it. */
  readonly typed: string;
}

/** Puts our reading of numbers with units, conversions and sums where mathjs has its own. */
export function rewriteNodes(node: MathNode, { math, isVariable, typed }: Reading): MathNode {
  const call = (name: string, args: MathNode[]) => new math.FunctionNode(name, args);
  const text = (value: string) => new math.ConstantNode(value as never);
  const change = (at: MathNode, path: string, before: MathNode): MathNode => {
    const { name = '' } = at as { readonly name?: string };
    if (OFF.includes(name) && !isVariable(name)) {
      const instead = name === 'help' ? '; .about oilClearance tells what a function takes' : '';
      throw new WrongStatement(`${name} is off here${instead}`);
    }
    if (isSymbol(at) && at.name === 'min' && path !== 'fn') return new math.SymbolNode('minute');
    const ratio = path.startsWith('dimensions') ? undefined : ratioIn(at);
    if (ratio !== undefined) return new math.ConstantNode(ratio as never);
    if (!isOperator(at) || at.args.length !== 2) return at;
    const [left, right] = at.args as unknown as [MathNode, MathNode];
    const unit = unitNameOf(math, right, isVariable);
    const adding = (name: string) => {
      const both = (before as OperatorNode).args.map((each) =>
        text(partAsTyped(each.toString(), typed)),
      );
      return call(name, [left, right, ...both]);
    };
    switch (at.fn as string) {
      case 'multiply':
        if (isSymbol(left) && !isVariable(left.name)) refuseBareCall(left.name);
        return unit === undefined
          ? call(READING.times, [left, right])
          : call(READING.of, [left, text(unit)]);
      case 'divide':
        return call(READING.over, [left, right]);
      case 'to':
        return unit === undefined ? at : call(READING.to, [left, text(unit)]);
      case 'subtract':
        return adding(READING.minus);
      case 'add':
        return adding(READING.plus);
      case 'mod':
        // `5 % + 1` is the remainder of 5 by +1, and nobody means that.
        if (!isOperator(right) || !(right.fn as string).startsWith('unary')) return at;
        throw new WrongStatement(
          'a % before + or - may be a share or a remainder; write a share as 0.05, a remainder as mod(5, 2)',
        );
      default:
        return at;
    }
  };
  // From the inside out, so that what is put in is not changed again.
  const visit = (at: MathNode, path: string): MathNode =>
    change(
      at.map((child, childPath) => visit(child, childPath)),
      path,
      at,
    );
  return visit(node, '');
}

/** Refuses `judge 3.2 thou`, which mathjs takes for a product. */
function refuseBareCall(name: string): void {
  const call = callOf(name);
  if (call !== undefined) throw new WrongStatement(`${name} takes its sizes in brackets: ${call}`);
}

/** `8.5:1`, which mathjs takes for the numbers from 8.5 up to 1: none. */
function ratioIn(node: MathNode): number | undefined {
  if (node.type !== 'RangeNode') return undefined;
  const { start, end, step } = node as RangeNode;
  if (step || !isConstant(start) || !isConstant(end)) return undefined;
  const [over, under] = [Number(start.value), Number(end.value)];
  return over > under && under > 0 ? over / under : undefined;
}

export const isSymbol = (node: MathNode): node is SymbolNode => node.type === 'SymbolNode';
export const isOperator = (node: MathNode): node is OperatorNode => node.type === 'OperatorNode';
export const isFunction = (node: MathNode): node is FunctionNode => node.type === 'FunctionNode';
export const isConstant = (node: MathNode): node is ConstantNode => node.type === 'ConstantNode';

/** The name of a unit that a node is, if no variable hides it. */
export function unitNameOf(
  math: MathJsInstance,
  node: MathNode,
  isVariable: (name: string) => boolean,
): string | undefined {
  if (!isSymbol(node) || isVariable(node.name)) return undefined;
  return math.Unit.isValuelessUnit(node.name) ? node.name : undefined;
}
