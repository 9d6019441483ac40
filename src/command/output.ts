import { writeFileSync } from 'node:fs';
import type { Writable } from 'node:stream';

/** Prints text; resolves when all of it is written. */
export type Print = (text: string) => Promise<void>;

/** Thrown when the output cannot be written; the message says why. */
export class UnwritableOutput extends Error {
  override readonly name = 'UnwritableOutput';
}

/** Prints to a pipe or a terminal. A reader such as `head` may close the pipe early: that is not an error. */
export function toStream(stream: Writable): Print {
  // Without a listener, a failed write would also end the process.
  stream.on('error', () => {});
  return (text) =>
    new Promise((resolve, reject) => {
      stream.write(text, (error) => {
        if (!error || codeOf(error) === 'EPIPE') resolve();
        else reject(unwritable(error));
      });
    });
}

/** Prints to a file. A stream would silently drop what a full disk does not take. */
export function toFile(file: number): Print {
  return async (text) => {
    try {
      writeFileSync(file, text);
    } catch (error) {
      throw unwritable(error as Error);
    }
  };
}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'no space is left there',
  EFBIG: 'the file would be too large',
  ENOENT: 'there is no such folder',
  ENOTDIR: 'there is no such folder',
  EISDIR: 'it is a folder',
  EACCES: 'you have no permission to write it',
  EROFS: 'nothing can be written there',
};

/** The code that Node gives an error. */
export const codeOf = (error: Error): string => (error as NodeJS.ErrnoException).code ?? '';

/** The output cannot be written; where, if it is a file with a name. */
export function unwritable(error: Error, path?: string): UnwritableOutput {
  const why = REASONS[codeOf(error)] ?? error.message;
  return new UnwritableOutput(path === undefined ? why : `${path}: ${why}`);
}
