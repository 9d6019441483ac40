import type { Print } from './output.js';
import type { PromptIo } from './prompt/repl.js';

/** The inputs and outputs of a command. */
export interface Io {
  /** Reads a whole file as text. */
  readonly readFile: (path: string) => Promise<string>;
  /** Reads all of standard input as text. */
  readonly readInput: () => Promise<string>;
  /** Whether standard input is a keyboard. */
  readonly inputIsTerminal: boolean;
  /** Asks a question on the terminal and reads one line; undefined at the end of the input. */
  readonly ask: (question: string) => Promise<string | undefined>;
  /** Writes a file; one that is there already only with `force`. */
  readonly writeFile: (
    path: string,
    text: string,
    how: { readonly force: boolean },
  ) => Promise<void>;
  /** Prints to standard output. */
  readonly print: Print;
  /** Prints to standard error. */
  readonly complain: (text: string) => void;
  /** Whether standard error is a terminal, where a line can be erased. */
  readonly complaintsAreOnTerminal: boolean;
  /** Where the prompt of `repl` reads and writes. */
  readonly prompt: PromptIo;
  /** The day, as `2026-11-26`. */
  readonly today: string;
  /** The version of the package. */
  readonly version: string;
}
