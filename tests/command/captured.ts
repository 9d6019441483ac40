import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { Readable, Writable } from 'node:stream';
import type { Io } from '../../src/command/io.js';
import { run } from '../../src/command/run.js';
import { root } from '../support/repo.js';

/** What became of a command. */
export interface Captured {
  readonly code: number;
  /** What it printed. */
  readonly out: string;
  /** What it complained of. */
  readonly err: string;
}

/** Runs a command in the root of the repository, with files, standard input and lines at the prompt as given. */
export async function captured(
  argv: readonly string[],
  {
    files = {},
    input,
    prompted = [],
    ...io
  }: Partial<Io> & {
    files?: Readonly<Record<string, string>>;
    input?: string;
    prompted?: readonly string[];
  } = {},
): Promise<Captured> {
  let [out, err] = ['', ''];
  const code = await run(argv, {
    readFile: async (path) => files[path] ?? readFile(`${root}/${path}`, 'utf8'),
    readInput: async () => input ?? '',
    ask: async () => undefined,
    writeFile: async (path) => {
      throw new Error(`${path} is written, and nobody said where to`);
    },
    inputIsTerminal: input === undefined,
    print: async (text) => {
      out += text;
    },
    complain: (text) => {
      err += text;
    },
    complaintsAreOnTerminal: false,
    prompt: {
      input: Readable.from(prompted),
      output: new Writable({
        write: (chunk, _encoding, done) => {
          out += String(chunk);
          done();
        },
      }),
      readFile: (path) => files[path] ?? readFileSync(`${root}/${path}`, 'utf8'),
      writeFile: async (path) => {
        throw new Error(`${path} is written, and nobody said where to`);
      },
      version: '1.2.3',
    },
    today: '2026-11-26',
    version: '1.2.3',
    ...io,
  });
  return { code, out, err };
}
