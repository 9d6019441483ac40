import type { AccessorNode, AssignmentNode, MathJsInstance, MathNode } from 'mathjs';
import { type DoneCall, freeze, isMathUnit } from '../../mathjs/internal.js';
import type { UnitSystem } from '../../quantities/index.js';
import { bracketSlip, whatIsOpen } from './bracket-slip.js';
import { loadMath, type PromptMath } from './load-math.js';
import { rewriteNodes } from './rewrite-nodes.js';
import { rewriteText } from './rewrite-text.js';
import { show } from './show.js';
import { refuseTaken } from './taken-names.js';
import { whatIsWrong } from './what-is-wrong.js';
import { NOT_FINITE, WrongStatement } from './wrong-statement.js';
import { lacksUnit, whyUnreadable } from './wrong-text.js';

/** A statement that was worked out. */
export interface Done {
  /** What was typed, as mathjs reads it. */
  readonly node: MathNode;
  /** The name that it gave its value, if it gave one. */
  readonly name?: string;
  readonly value: unknown;
  /** Whether a semicolon behind it keeps the value from being printed. */
  readonly silent: boolean;
}

/** Refuses a field that what it is asked of has not. */
function refuseNoField(math: MathJsInstance, node: MathNode, scope: Map<string, unknown>): void {
  if (node.type !== 'AccessorNode') return;
  const { name, object } = node as AccessorNode;
  const owner: unknown = rewriteNodes(object, {
    math,
    isVariable: (each) => scope.has(each),
    typed: '',
  })
    .compile()
    .evaluate(scope);
  const fields = owner instanceof Map ? [...owner.keys()] : Object.keys(owner ?? {});
  const listed = fields.length === 0 ? '' : `; it has ${fields.join(', ')}`;
  throw new WrongStatement(`there is no ${name} in it${listed}`);
}

/** All that was typed and worked out, one statement after the other. */
export class Session {
  /** The units that results are shown in. */
  units: UnitSystem;
  readonly scope = new Map<string, unknown>();
  readonly done: Done[] = [];
  readonly #calls: WeakMap<object, DoneCall>;
  readonly #ratios: ReadonlySet<number>;
  readonly #noted = new Set<string>();

  private constructor(
    readonly loaded: PromptMath,
    calls: WeakMap<object, DoneCall>,
    ratios: ReadonlySet<number>,
    units: UnitSystem,
  ) {
    this.units = units;
    this.#calls = calls;
    this.#ratios = ratios;
  }

  /** Begins one; mathjs is loaded by now. */
  static async begin(units: UnitSystem): Promise<Session> {
    const calls = new WeakMap<object, DoneCall>();
    const ratios = new Set<number>();
    const system: { at: UnitSystem; of?: Session } = { at: units };
    const loaded = await loadMath(
      () => system.of?.units ?? system.at,
      (call) => {
        keepNumbers(call.shown, ratios);
        if (typeof call.shown !== 'object' || call.shown === null) return;
        calls.set(call.shown, call);
        // What was told of a result must stay true of it.
        freeze(call.shown);
      },
    );
    const session = new Session(loaded, calls, ratios, units);
    system.of = session;
    return session;
  }

  /** The statements in a text. Throws `Unfinished` if more must follow. */
  parse(typed: string): {
    readonly nodes: readonly Statement[];
    readonly notes: readonly string[];
  } {
    const { text, notes, warnings } = rewriteText(typed);
    const node = this.#parsed(typed, text);
    const blocks =
      node.type === 'BlockNode'
        ? (node as unknown as { blocks: { node: MathNode; visible: boolean }[] }).blocks
        : [{ node, visible: true }];
    const nodes = blocks
      .filter((block) => !isNothing(block.node))
      .map((block) => ({ node: block.node, silent: !block.visible, typed }));
    const fresh = notes.filter(
      (note) => !this.#noted.has('mixed') && this.#noted.add('mixed') && note,
    );
    return { nodes, notes: [...fresh, ...warnings] };
  }

  /** Works out one statement. */
  run({ node, silent, typed }: Statement): Done {
    const { math } = this.loaded;
    const isVariable = (name: string) => this.scope.has(name);
    try {
      refuseTaken(node, this.loaded);
      const value: unknown = rewriteNodes(node, { math, isVariable, typed })
        .compile()
        .evaluate(this.scope);
      refuseNoNumber(value);
      if (value === undefined) refuseNoField(math, node, this.scope);
      const name = nameIn(node);
      const done = { node, value, silent, ...(name !== undefined && { name }) };
      this.done.push(done);
      if (value !== undefined) this.scope.set('ans', value);
      return done;
    } catch (error) {
      const where = { names: this.names(), units: this.units, typed: node.toString() };
      throw new WrongStatement(whatIsWrong(error, where));
    }
  }

  /** A value as a person reads it. */
  show(value: unknown): string {
    return show(value, {
      exact: this.loaded.exact,
      units: this.units,
      isGiven: (number) => this.#ratios.has(number),
      callOf: (of) => (typeof of === 'object' && of !== null ? this.#calls.get(of) : undefined),
    });
  }

  /** The call that a value came of. */
  callOf(value: object): DoneCall | undefined {
    return this.#calls.get(value);
  }

  /** Every name that an expression can use. */
  names(): readonly string[] {
    return [...this.scope.keys(), ...this.loaded.names];
  }

  #parsed(typed: string, text: string): MathNode {
    const slip = bracketSlip(text);
    if (slip !== undefined) throw new WrongStatement(slip);
    try {
      return this.loaded.parse(text);
    } catch (error) {
      const { char, message } = error as { readonly char?: number; readonly message: string };
      if (lacksUnit(text)) throw new WrongStatement('to needs a unit after it, as to mm');
      if (char !== undefined && char > text.trimEnd().length)
        throw new Unfinished(whatIsOpen(text) ?? message);
      throw new WrongStatement(whyUnreadable(typed, text, char));
    }
  }
}

/** One statement, read and not yet worked out. */
export interface Statement {
  readonly node: MathNode;
  readonly silent: boolean;
  /** The text that it stands in, as it was typed. */
  readonly typed: string;
}

/** Thrown where a bracket is open at the end, or an operator has nothing behind it. */
export class Unfinished extends Error {}

const isNothing = (node: MathNode): boolean =>
  node.type === 'ConstantNode' && (node as unknown as { value: unknown }).value === undefined;

/** The name that a statement gives its value. */
function nameIn(node: MathNode): string | undefined {
  if (node.type === 'AssignmentNode') {
    const { object, index } = node as AssignmentNode;
    return index === null ? (object as unknown as { name: string }).name : undefined;
  }
  return node.type === 'FunctionAssignmentNode'
    ? (node as unknown as { name: string }).name
    : undefined;
}

/** Keeps every plain number of a result, so that a part of it is printed as it is within the whole. */
function keepNumbers(shown: unknown, numbers: Set<number>): void {
  if (typeof shown === 'number') numbers.add(shown);
  if (typeof shown !== 'object' || shown === null || isMathUnit(shown)) return;
  for (const item of Object.values(shown)) keepNumbers(item, numbers);
}

/** Refuses what is no number: a division by zero, a root of less than nothing. */
function refuseNoNumber(value: unknown): void {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    throw new WrongStatement(NOT_FINITE);
  }
  if (typeof value !== 'object' || value === null) return;
  if ((value as { readonly type?: unknown }).type === 'Complex') {
    throw new WrongStatement('this has no real value; is it the root of something below zero?');
  }
  if (isMathUnit(value)) {
    if (value.value !== null) refuseNoNumber(value.value);
    return;
  }
  const items = value instanceof Map ? [...value.values()] : Object.values(value);
  for (const item of items) refuseNoNumber(item);
}
