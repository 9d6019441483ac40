import ts from 'typescript';

/** A literal that was read, or why it is not one. */
export type Literal = { readonly value: unknown } | { readonly problem: string };

/**
 * Reads a JavaScript literal: string, number, boolean, null, undefined, and
 * arrays and objects of them. Nothing is evaluated.
 */
export function readLiteral(text: string): Literal {
  // In brackets, so that an object is not taken for a block; on a line of their own, after any comment.
  const code = `(${text}\n);`;
  const { diagnostics = [] } = ts.transpileModule(code, { reportDiagnostics: true });
  const source = ts.createSourceFile('literal.ts', code, ts.ScriptTarget.Latest, true);
  const [statement, ...more] = source.statements;
  if (
    diagnostics.length > 0 ||
    more.length > 0 ||
    !statement ||
    !ts.isExpressionStatement(statement) ||
    !ts.isParenthesizedExpression(statement.expression)
  ) {
    return { problem: 'is not a literal' };
  }
  try {
    return { value: literalOf(statement.expression.expression) };
  } catch (error) {
    if (!(error instanceof NotALiteral)) throw error;
    return { problem: error.message };
  }
}

class NotALiteral extends Error {}

const WORDS: Readonly<Record<string, unknown>> = {
  undefined: undefined,
  NaN: Number.NaN,
  Infinity: Number.POSITIVE_INFINITY,
};

function literalOf(node: ts.Expression): unknown {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isIdentifier(node) && Object.hasOwn(WORDS, node.text)) return WORDS[node.text];
  if (ts.isArrayLiteralExpression(node)) return node.elements.map(literalOf);
  if (ts.isObjectLiteralExpression(node)) {
    return Object.fromEntries(node.properties.map(propertyOf));
  }
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const value = literalOf(node.operand);
    if (typeof value === 'number') return -value;
  }
  switch (node.kind) {
    case ts.SyntaxKind.TrueKeyword:
      return true;
    case ts.SyntaxKind.FalseKeyword:
      return false;
    case ts.SyntaxKind.NullKeyword:
      return null;
    default:
      throw new NotALiteral(`is not a literal: ${node.getText()}`);
  }
}

function propertyOf(property: ts.ObjectLiteralElementLike): [string, unknown] {
  if (!ts.isPropertyAssignment(property)) {
    throw new NotALiteral(`is not a literal: ${property.getText()}`);
  }
  const { name, initializer } = property;
  if (ts.isIdentifier(name) || ts.isStringLiteralLike(name) || ts.isNumericLiteral(name)) {
    return [name.text, literalOf(initializer)];
  }
  throw new NotALiteral(`is not a literal: ${name.getText()}`);
}
