import type { ConstantNode, MathNode, OperatorNode } from 'mathjs';
import type { Dimension } from '../quantities/index.js';
import { type CardValues, math } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';
import { planOf } from './formula-plan.js';

/** What is done to a formula by mistake. */
export interface Miswritten {
  /** What is put in for π. */
  readonly pi?: number;
  /** Which of its twos is left out, counted from the first. */
  readonly two?: number;
  /** A letter that is worked out on the way and then not put in. */
  readonly without?: string;
}

/** What each line of the formula comes to in SI, without asking whether an engine has such sizes. */
function linesOf(
  card: FormulaCard,
  values: CardValues,
  { pi = Math.PI, two, without }: Miswritten = {},
): readonly number[] {
  const { lines, quantities } = planOf(card);
  const scope = new Map<string, number>([...Object.entries(values), ['pi', pi]]);
  for (const [symbol, { size }] of quantities) scope.set(symbol, size);
  let passed = 0;
  return lines.map(({ compiled, node, symbol }) => {
    const twos = two === undefined ? 0 : twosIn(node).length;
    const place = (two ?? 0) - passed;
    passed += twos;
    const isHere = place >= 0 && place < twos;
    const written = isHere ? withoutTwo(node, place).compile() : compiled;
    const result: unknown = written.evaluate(scope as never);
    // A root of what is negative is no number here.
    const number = typeof result === 'number' ? result : Number.NaN;
    scope.set(symbol, symbol === without ? 0 : number);
    return number;
  });
}

/** What the last line comes to. */
export const lastLine = (card: FormulaCard, values: CardValues, by?: Miswritten): number =>
  linesOf(card, values, by).at(-1) ?? Number.NaN;

/** What the lines before the last come to, where they give the same kind of thing. */
export function earlierLines(
  card: FormulaCard,
  values: CardValues,
  asked: Dimension,
): readonly number[] {
  const { lines } = planOf(card);
  const last = lines.at(-1)?.exponents.join();
  const isPlain = asked === 'ratio';
  return linesOf(card, values).filter(
    (_, index) => index < lines.length - 1 && !isPlain && lines[index]?.exponents.join() === last,
  );
}

/** How many twos the lines of a formula have. */
export const countTwos = (card: FormulaCard): number =>
  planOf(card).lines.reduce((sum, { node }) => sum + twosIn(node).length, 0);

const isTwo = (node: MathNode) =>
  node.type === 'ConstantNode' && (node as unknown as ConstantNode).value === 2;

const isPower = (node: MathNode | null) =>
  node?.type === 'OperatorNode' && (node as OperatorNode).op === '^';

/** The twos that something is multiplied or divided by; that of a square is none. */
function twosIn(node: MathNode): readonly MathNode[] {
  const found: MathNode[] = [];
  node.traverse((part, _path, parent) => {
    if (isTwo(part) && !isPower(parent)) found.push(part);
  });
  return found;
}

function withoutTwo(node: MathNode, place: number): MathNode {
  const left = twosIn(node)[place];
  return node.transform((part) => (part === left ? new math.ConstantNode(1) : part));
}
