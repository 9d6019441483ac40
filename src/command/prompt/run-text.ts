import { type Done, type Session, Unfinished } from './session.js';
import { WrongStatement } from './wrong-statement.js';

/** What came of a text, line by line. */
export interface Ran {
  /** What was worked out, until the first mistake. */
  readonly done: readonly Done[];
  /** What was understood that a reader might have meant otherwise. */
  readonly notes: readonly string[];
  /** The first mistake, and the line that its statement begins on. */
  readonly wrong?: { readonly line: number; readonly message: string };
}

/**
 * Works out a text of many lines. A statement goes on where a bracket is open, an operator has nothing behind it, or a
 * line ends in a backslash.
 */
export function runText(session: Session, text: string): Ran {
  const done: Done[] = [];
  const notes: string[] = [];
  const lines = text.split(/\r?\n/);
  for (let at = 0; at < lines.length; ) {
    const first = at;
    let statement = '';
    for (;;) {
      const typed = lines[at++] ?? '';
      const line = statement === '' ? typed.replace(OWN_SIGN, '') : typed;
      const goesOn = /\\\s*$/.test(line);
      statement += goesOn ? line.replace(/\\\s*$/, ' ') : line;
      try {
        if (goesOn && at < lines.length) continue;
        if (isBlank(statement)) break;
        const { nodes, notes: said } = session.parse(statement);
        for (const note of said) notes.push(note);
        for (const node of nodes) done.push(session.run(node));
        break;
      } catch (error) {
        if (error instanceof Unfinished && at < lines.length) {
          statement += '\n';
          continue;
        }
        const message =
          error instanceof Unfinished
            ? `this ends too early: ${error.message.replace(/ \(char \d+\)$/, '').toLowerCase()}`
            : error instanceof WrongStatement
              ? error.message
              : 'this cannot be worked out';
        return { done, notes, wrong: { line: first + 1, message } };
      }
    }
  }
  return { done, notes };
}

/** The sign of the prompt, where a line was copied with it. */
const OWN_SIGN = /^\s*>(?=\s)/;

const isBlank = (text: string): boolean => /^\s*(?:#[^\n]*)?\s*$/.test(text);
