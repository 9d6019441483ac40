import type { Print } from './output.js';

/** What a command reads from and writes to. */
export interface Io {
  /** Reads a file to its end, as text. */
  readonly readFile: (path: string) => Promise<string>;
  /** Reads standard input to its end, as text. */
  readonly readInput: () => Promise<string>;
  /** Whether standard input is a keyboard, on which nobody types JSON. */
  readonly inputIsTerminal: boolean;
  /** Prints to standard output. */
  readonly print: Print;
  /** Prints to standard error. */
  readonly complain: (text: string) => void;
  /** Whether standard error is a screen that a line can be erased on. */
  readonly complaintsAreOnTerminal: boolean;
  /** The version of the package. */
  readonly version: string;
}
