import { runText } from './run-text.js';
import type { Session } from './session.js';

/** Works out a file of statements as if they were typed: what to print of it, and what of it was right. */
export function loadFile(
  session: Session,
  path: string,
  text: string,
): { readonly said: string; readonly right: string } {
  const { done, notes, wrong } = runText(session, text);
  const values = done.flatMap(({ value, silent }) =>
    silent || value === undefined ? [] : [session.show(value)],
  );
  const lines = text.trimEnd().split('\n');
  return {
    said: [
      ...notes,
      ...values,
      ...(wrong
        ? [
            `line ${wrong.line} of ${path}: ${wrong.message}`,
            'The lines above it were worked out; it and those below it were not.',
          ]
        : [`read from ${path}`]),
    ].join('\n'),
    right: lines
      .slice(0, wrong ? wrong.line - 1 : lines.length)
      .join('\n')
      .trimEnd(),
  };
}
