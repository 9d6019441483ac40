import {
  type FunctionAssignmentNode,
  isAssignmentNode,
  isConstantNode,
  isFunctionAssignmentNode,
  isFunctionNode,
  isOperatorNode,
  isParenthesisNode,
  isSymbolNode,
  type MathNode,
  parse,
  unit,
} from 'mathjs';

/** A formula card, as far as its arithmetic goes. */
interface Formula {
  readonly letters: Readonly<Record<string, unknown>>;
  readonly where: readonly string[];
  readonly expression: string;
}

/**
 * The bare arithmetic of a card as JavaScript: no guard, no result object, every unit a factor. `name` keeps V8 from
 * sharing what it learns of one formula with another.
 */
export function bareFormula(
  { letters, where, expression }: Formula,
  name: string,
): (values: Readonly<Record<string, number>>) => number {
  const names = new Set(Object.keys(letters));
  const lines = where.map((text) => `const ${definition(parse(text), names)};`);
  const body = `/* ${name} */ const { ${Object.keys(letters)
    .map((letter) => `${letter}: $${letter}`)
    .join(', ')} } = values; ${lines.join(' ')} return ${js(parse(expression), names)};`;
  return new Function('values', body) as ReturnType<typeof bareFormula>;
}

/** `x = …` or `f(x) = …`; its name is known from there on. */
function definition(node: MathNode, names: Set<string>): string {
  if (isAssignmentNode(node)) {
    const value = js(node.value, names);
    names.add(node.name);
    return `$${node.name} = ${value}`;
  }
  if (!isFunctionAssignmentNode(node)) throw new Error(`${node.toString()} defines nothing.`);
  const { params } = node as FunctionAssignmentNode;
  const value = js(node.expr, new Set([...names, ...params]));
  names.add(node.name);
  return `$${node.name} = (${params.map((param) => `$${param}`).join(', ')}) => ${value}`;
}

function js(node: MathNode, names: ReadonlySet<string>): string {
  const within = (inner: MathNode) => js(inner, names);
  if (isConstantNode(node)) return String(node.value);
  if (isParenthesisNode(node)) return `(${within(node.content)})`;
  if (isSymbolNode(node)) return symbol(node.name, names);
  if (isFunctionNode(node)) {
    const called = node.fn.name;
    const known = names.has(called)
      ? `$${called}`
      : `Math.${called === 'log10' ? 'log10' : called}`;
    return `${known}(${node.args.map(within).join(', ')})`;
  }
  if (!isOperatorNode(node)) throw new Error(`${node.toString()} has no JavaScript.`);
  const [first = '', second] = node.args.map((arg) => `(${within(arg)})`);
  if (second === undefined) return `${node.op}${first}`;
  return `${first} ${node.op === '^' ? '**' : node.op} ${second}`;
}

/** A letter, marked so that none is a word of JavaScript, π, or the factor of a unit. */
function symbol(name: string, names: ReadonlySet<string>): string {
  if (names.has(name)) return `$${name}`;
  if (name === 'pi') return 'Math.PI';
  return String(unit(1, name).toSI().toNumeric());
}
