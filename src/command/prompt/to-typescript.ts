import type { ArrayNode, FunctionNode, MathNode, ObjectNode, ParenthesisNode } from 'mathjs';
import {
  choicesOf,
  constants,
  fieldsOf,
  functions,
  isDimension,
  isMathUnit,
  nameOfUnit,
  unitByName,
  type ValueShape,
} from '../../mathjs/internal.js';
import { isConstant, isFunction, isOperator, isSymbol } from './rewrite-nodes.js';
import type { Done, Session } from './session.js';

/** What of mathjs is the same in JavaScript. */
const SAME: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    ['abs', 'ceil', 'exp', 'floor', 'hypot', 'max', 'min', 'round', 'sqrt', 'cbrt']
      .concat(['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2', 'log10'])
      .map((name) => [name, `Math.${name}`]),
  ),
  ln: 'Math.log',
};

const CONSTANTS: Readonly<Record<string, string>> = {
  pi: 'Math.PI',
  tau: '(2 * Math.PI)',
  e: 'Math.E',
  percent: '0.01',
  ppm: '1e-6',
};

/** Thrown for what cannot be written as TypeScript. */
class Unwritable extends Error {}

/** The session as a module of TypeScript that gives the same numbers, in SI. */
export function toTypeScript(session: Session): string {
  const writer = new Writer(session);
  const lines = session.done.map((done, i) => writer.statement(done, i));
  return [...writer.imports(), '', ...lines, ''].join('\n');
}

class Writer {
  readonly #used = new Set<string>();
  /** What each name is called in the module by now. */
  readonly #names = new Map<string, string>();
  readonly #taken = new Set<string>();
  #types = false;

  constructor(private readonly session: Session) {}

  imports(): readonly string[] {
    const names = [...this.#used].sort().concat(this.#types ? ['type Quantity'] : []);
    return names.length === 0 ? [] : [`import { ${names.join(', ')} } from 'crankwright';`];
  }

  statement({ node, name, value }: Done, i: number): string {
    try {
      const inner =
        node.type === 'AssignmentNode' ? (node as unknown as { value: MathNode }).value : node;
      if (node.type === 'FunctionAssignmentNode') throw new Unwritable('a function of your own');
      if (isOperator(inner) && typeof value === 'object' && !isMathUnit(value)) {
        throw new Unwritable('arithmetic with both ends of a span');
      }
      const text = this.#cast(
        inner,
        this.#write(inner, 'anything'),
        dimensionOf(value, this.session),
      );
      const own = this.#fresh(name ?? `result${i + 1}`);
      if (name !== undefined) this.#names.set(name, own);
      this.#names.set('ans', own);
      return `export const ${own} = ${text};`;
    } catch (error) {
      if (!(error instanceof Unwritable)) throw error;
      return `// ${node.toString().replaceAll('\n', ' ')}: ${error.message} is not written`;
    }
  }

  /** A name that nothing else in the module has. */
  #fresh(name: string): string {
    let own = name;
    for (
      let n = 2;
      this.#taken.has(own) || functions.has(own) || unitByName.has(own) || RESERVED.has(own);
      n++
    ) {
      own = `${name}${n}`;
    }
    this.#taken.add(own);
    return own;
  }

  #use(name: string): string {
    this.#used.add(name);
    return name;
  }

  /** Arithmetic gives the compiler a plain number; the dimension is said again. */
  #cast(node: MathNode, text: string, dimension: string | undefined): string {
    if (dimension === undefined || !isArithmetic(node)) return text;
    this.#types = true;
    return `(${text}) as Quantity<'${dimension}'>`;
  }

  #write(node: MathNode, shape: ValueShape): string {
    if (isConstant(node)) return JSON.stringify(node.value) ?? 'undefined';
    if (isSymbol(node)) return this.#symbol(node.name);
    if (isOperator(node)) return this.#operator(node.fn as string, node.args as MathNode[]);
    if (isFunction(node)) return this.#call(node);
    switch (node.type) {
      case 'ParenthesisNode':
        return `(${this.#write((node as ParenthesisNode).content, shape)})`;
      case 'ObjectNode':
        return this.#object(node as ObjectNode, shape);
      case 'ArrayNode':
        return this.#list(node as ArrayNode, shape);
      default:
        throw new Unwritable(node.type === 'AccessorNode' ? 'a part of a result' : 'this');
    }
  }

  #symbol(name: string): string {
    const own = this.#names.get(name);
    if (own !== undefined) return own;
    const constant = CONSTANTS[name];
    if (constant !== undefined) return constant;
    if (['true', 'false', 'undefined'].includes(name)) return name;
    if (constants.has(name)) return this.#use(name);
    throw new Unwritable(name);
  }

  #operator(fn: string, args: readonly MathNode[]): string {
    const [left, right] = args as readonly [MathNode, MathNode | undefined];
    if (right && fn === 'multiply' && isSymbol(right) && !this.#names.has(right.name)) {
      const unit = unitByName.get(right.name);
      if (unit) return `${this.#use(nameOfUnit(unit))}(${bare(this.#write(left, 'anything'))})`;
    }
    if (fn === 'to') return this.#write(left, 'anything');
    const written = args.map((arg) => this.#write(arg, 'anything'));
    if (fn === 'unaryMinus') return `-${written[0]}`;
    if (fn === 'unaryPlus') return `+${written[0]}`;
    const sign = SIGNS[fn];
    if (sign === undefined || written.length !== 2) throw new Unwritable(fn);
    const [a = '', b = ''] = written;
    return `(${a} ${sign} ${b})`;
  }

  #call(node: FunctionNode): string {
    const { name } = node.fn as unknown as { readonly name: string };
    const known = functions.get(name);
    if (!known) {
      const same = SAME[name];
      if (same === undefined) throw new Unwritable(name);
      return `${same}(${node.args.map((arg) => this.#write(arg, 'anything')).join(', ')})`;
    }
    const args = node.args.map((arg, i) =>
      this.#value(arg, known.signature.takes[i]?.shape ?? 'anything'),
    );
    return `${this.#use(name)}(${args.join(', ')})`;
  }

  /** A value where a function takes it. */
  #value(node: MathNode, shape: ValueShape): string {
    const dimension = choicesOf(shape).find(isDimension);
    return this.#cast(node, this.#write(node, shape), dimension);
  }

  #object(node: ObjectNode, shape: ValueShape): string {
    const known = fieldsOf(shape);
    const fields = Object.entries(node.properties).map(([key, item]) => {
      const name = /^[A-Za-z_]\w*$/.test(key) ? key : JSON.stringify(key);
      return `${name}: ${this.#value(item, known[key] ?? known[`${key}?`] ?? 'anything')}`;
    });
    return `{ ${fields.join(', ')} }${shape === 'anything' ? ' as const' : ''}`;
  }

  #list(node: ArrayNode, shape: ValueShape): string {
    const list = choicesOf(shape).find((one) => typeof one === 'object' && 'list' in one);
    const item = typeof list === 'object' && 'list' in list ? list.list : 'anything';
    const items = node.items.map((each) => this.#value(each, item));
    return `[${items.join(', ')}]${shape === 'anything' ? ' as const' : ''}`;
  }
}

const SIGNS: Readonly<Record<string, string>> = {
  add: '+',
  subtract: '-',
  multiply: '*',
  divide: '/',
  pow: '**',
};

const RESERVED: ReadonlySet<string> = new Set(
  'break case catch class const continue default delete do else enum export extends finally for function if import in instanceof new null return super switch this throw try typeof var void while with yield let static await Math'.split(
    ' ',
  ),
);

/** Whether a node is a sum, a product or the like, and not a number with its unit. */
function isArithmetic(node: MathNode): boolean {
  if (node.type === 'ParenthesisNode') return isArithmetic((node as ParenthesisNode).content);
  if (isFunction(node)) return !functions.has((node.fn as unknown as { name: string }).name);
  if (!isOperator(node)) return isConstant(node) && typeof node.value === 'number';
  const [left, right] = node.args as unknown as readonly [MathNode, MathNode | undefined];
  if ((node.fn as string) === 'to') return isArithmetic(left);
  return !(
    right &&
    (node.fn as string) === 'multiply' &&
    isSymbol(right) &&
    unitByName.has(right.name)
  );
}

/** Parentheses that a call puts round it anyway are left off. */
const bare = (text: string): string => /^\(([^()]*)\)$/.exec(text)?.[1] ?? text;

function dimensionOf(value: unknown, { loaded }: Session): string | undefined {
  return isMathUnit(value) && value.value !== null ? loaded.exact.dimensionOf(value) : undefined;
}
