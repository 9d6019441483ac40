import ts from 'typescript';
import { type Comment, commentsAfter } from './comments.js';
import { readLiteral } from './literal.js';

/** What a comment says of the code before it. */
export type Expectation =
  | { readonly kind: 'value'; readonly line: number; readonly value: unknown }
  | { readonly kind: 'prints'; readonly line: number; readonly texts: readonly string[] }
  | {
      readonly kind: 'throws';
      readonly line: number;
      readonly error: string;
      /** Messages that will do: the comment of the line, or with those of the lines below it. */
      readonly messages?: readonly string[];
    };

/** A block with its comments understood. */
export interface ReadBlock {
  /** The code, made to report to `__docs` what its comments speak of; its lines are where they were. */
  readonly code: string;
  /** What is expected, in the order that `__docs` counts. */
  readonly expectations: readonly Expectation[];
  /** What is wrong with the comments; lines count from 0. */
  readonly problems: readonly { readonly line: number; readonly problem: string }[];
  /** Whether it only declares things. */
  readonly onlyDefines: boolean;
}

/** `throws SomeError` or `throws SomeError: its message`. */
const THROWS = /^throws (?<error>\w+)(?:: (?<message>[\s\S]+))?$/;

/** Reads what a block's comments expect and rewrites its code to report it. */
export function readExpectations(code: string, language: 'ts' | 'js'): ReadBlock {
  const source = ts.createSourceFile(`block.${language}`, code, ts.ScriptTarget.Latest, true);
  const expectations: Expectation[] = [];
  const problems: { line: number; problem: string }[] = [];
  const edits: { readonly at: number; readonly text: string }[] = [];
  const claimed = new Set<number>();

  const expectAround = (node: ts.Node, expectation: Expectation, [before, after]: Wrap): void => {
    const index = expectations.push(expectation) - 1;
    edits.push({ at: node.getStart(source), text: before(index) });
    edits.push({ at: node.end, text: after(index) });
  };

  /** Reads inner statements first; says whether something is printed that no comment spoke of yet. */
  const visit = (node: ts.Node): boolean => {
    let prints = isConsoleLog(node);
    ts.forEachChild(node, (child) => {
      prints = visit(child) || prints;
    });
    if (!ts.isStatement(node) || !canHaveExpectation(node)) return prints;
    const comment = commentsAfter(source, node);
    if (!comment || claimed.has(comment.at)) return prints;
    const expectation = expectationOf(node, comment, prints);
    if (expectation === undefined) return prints;
    claimed.add(comment.at);
    if ('problem' in expectation) {
      problems.push({ line: comment.line, problem: expectation.problem });
    } else if (expectation.kind === 'value') {
      expectAround(valueNodeOf(node), expectation, WRAPS.value);
    } else {
      expectAround(node, expectation, WRAPS[expectation.kind]);
    }
    return false;
  };
  visit(source);
  return {
    code: applied(code, edits),
    expectations,
    problems,
    onlyDefines: source.statements.every(isDefinition),
  };
}

function expectationOf(
  node: ts.Statement,
  comment: Comment,
  prints: boolean,
): Expectation | { readonly problem: string } | undefined {
  const { line, sameLine, all } = comment;
  const candidates = sameLine === undefined ? [all] : [sameLine, all];
  const [thrown, ...others] = candidates
    .map((text) => THROWS.exec(text)?.groups)
    .filter((groups) => groups !== undefined);
  if (thrown) {
    const messages = [thrown, ...others].flatMap((groups) => groups['message'] ?? []);
    const error = thrown['error'] ?? '';
    return { kind: 'throws', line, error, ...(messages.length > 0 ? { messages } : {}) };
  }
  if (prints) {
    // Of a loop without braces the comment says what all its rounds print.
    const inLoop = ts.isIterationStatement(node.parent, false) || ts.isIfStatement(node.parent);
    return inLoop ? undefined : { kind: 'prints', line, texts: candidates };
  }
  const isVariable = ts.isVariableStatement(node);
  // Below a declaration, and after a loop, a comment speaks of what comes next.
  if (!ts.isExpressionStatement(node) && !(isVariable && sameLine !== undefined)) return undefined;
  if (isVariable && node.declarationList.declarations.length !== 1) {
    return { problem: `the comment "${all}" cannot say which of the variables it is for` };
  }
  for (const text of candidates) {
    const literal = readLiteral(text);
    if ('value' in literal) return { kind: 'value', line, value: literal.value };
  }
  return {
    problem: `the comment "${all}" is not a literal; prose stands on a line of its own before the code it describes, after a blank line`,
  };
}

/** What is compared: the expression itself, or what a variable is set to. */
function valueNodeOf(node: ts.Statement): ts.Node {
  if (ts.isExpressionStatement(node)) return node.expression;
  const declared = ts.isVariableStatement(node) ? node.declarationList.declarations[0] : undefined;
  return declared?.initializer ?? node;
}

type Wrap = readonly [before: (index: number) => string, after: (index: number) => string];

const WRAPS: Readonly<Record<Expectation['kind'], Wrap>> = {
  value: [(i) => `__docs.value(${i}, (`, () => '))'],
  prints: [(i) => `{ __docs.listen(${i}); `, (i) => `; __docs.heard(${i}); }`],
  throws: [
    () => 'try { ',
    (i) => `; __docs.passed(${i}); } catch (__error) { __docs.caught(${i}, __error); }`,
  ],
};

function canHaveExpectation(node: ts.Statement): boolean {
  return (
    ts.isExpressionStatement(node) ||
    ts.isVariableStatement(node) ||
    ts.isIterationStatement(node, false) ||
    ts.isIfStatement(node) ||
    ts.isSwitchStatement(node) ||
    ts.isTryStatement(node)
  );
}

function isConsoleLog(node: ts.Node): boolean {
  return (
    ts.isCallExpression(node) &&
    ts.isPropertyAccessExpression(node.expression) &&
    node.expression.name.text === 'log' &&
    ts.isIdentifier(node.expression.expression) &&
    node.expression.expression.text === 'console'
  );
}

function isDefinition(node: ts.Statement): boolean {
  return (
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isVariableStatement(node) ||
    ts.isFunctionDeclaration(node) ||
    ts.isClassDeclaration(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node) ||
    ts.isModuleDeclaration(node) ||
    ts.isEmptyStatement(node)
  );
}

/** Inserts from the end, so that no edit moves the place of another; of two at one place the later one stays outside. */
function applied(code: string, edits: readonly { readonly at: number; readonly text: string }[]) {
  return edits
    .map((edit, order) => ({ ...edit, order }))
    .sort((a, b) => b.at - a.at || a.order - b.order)
    .reduce((text, { at, text: added }) => text.slice(0, at) + added + text.slice(at), code);
}
