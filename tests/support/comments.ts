import ts from 'typescript';

/** The comment after a statement. */
export interface Comment {
  /** Where it starts in the code. */
  readonly at: number;
  /** Its line, from 0. */
  readonly line: number;
  /** What stands behind the statement on its own line. */
  readonly sameLine?: string;
  /** That, and the comments alone on the lines right below it. */
  readonly all: string;
}

/**
 * The comment behind a statement on its last line, or alone on the lines right
 * below it. A blank line, or more code behind the statement, ends it.
 */
export function commentsAfter(source: ts.SourceFile, node: ts.Node): Comment | undefined {
  const code = source.text;
  const range = ts.getTrailingCommentRanges(code, node.end)?.[0];
  const behind = range && textOf(code.slice(range.pos, range.end));
  const from = source.getLineAndCharacterOfPosition(range?.end ?? node.end);
  const lines = code.split('\n');
  if (lines[from.line]?.slice(from.character).trim() !== '') {
    return range && behind !== undefined
      ? { at: range.pos, line: from.line, sameLine: behind, all: behind }
      : undefined;
  }
  const below: string[] = [];
  for (const line of lines.slice(from.line + 1)) {
    const text = line.trim();
    if (!text.startsWith('//') || text.startsWith('// @ts-')) break;
    below.push(textOf(text));
  }
  if (range && behind !== undefined) {
    const line = source.getLineAndCharacterOfPosition(range.pos).line;
    return { at: range.pos, line, sameLine: behind, all: [behind, ...below].join('\n') };
  }
  if (below.length === 0) return undefined;
  const start = source.getPositionOfLineAndCharacter(from.line + 1, 0);
  return { at: start, line: from.line + 1, all: below.join('\n') };
}

/** The text of a comment without its marks, and without the one space behind them. */
function textOf(comment: string): string {
  return comment
    .replace(/^\/\/ ?/, '')
    .replace(/^\/\*\s*|\s*\*\/$/g, '')
    .trimEnd();
}
