#!/usr/bin/env node
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import module, { createRequire } from 'node:module';
import { Socket } from 'node:net';
import { homedir } from 'node:os';
import { createInterface } from 'node:readline/promises';
import type { Writable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { type Print, toFile, toStream } from './output.js';
import { historyFile } from './prompt/history-file.js';
import { run } from './run.js';
import { writeNewNow, writeWhole } from './whole-file.js';

const { version } = createRequire(import.meta.url)('crankwright/package.json') as {
  readonly version: string;
};

// Node keeps what it has compiled for the next time, where it can.
(module as { readonly enableCompileCache?: () => unknown }).enableCompileCache?.();

/** To Node, pipes and terminals are sockets; anything else is a file. */
const printTo = (stream: Writable, file: number): Print =>
  stream instanceof Socket ? toStream(stream) : toFile(file);

const complain = printTo(process.stderr, 2);

/** Asks on standard error, so that what is printed can go to a file. Ctrl-C or the end of the input gives no answer. */
async function ask(question: string): Promise<string | undefined> {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  const ended = new Promise<undefined>((resolve) => {
    lines.once('close', () => resolve(undefined));
  });
  const answer = await Promise.race([lines.question(question), ended]);
  lines.close();
  return answer;
}

/** The day where the command runs, as `2026-11-26`. */
function day(now: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

process.exitCode = await run(process.argv.slice(2), {
  readFile: (path) => readFile(path, 'utf8'),
  readInput: () => text(process.stdin),
  ask,
  writeFile: writeWhole,
  inputIsTerminal: process.stdin.isTTY === true,
  print: printTo(process.stdout, 1),
  complain: (output) => {
    // If standard error cannot be written either, only the exit code is left.
    complain(output).catch(() => {});
  },
  complaintsAreOnTerminal: process.stderr.isTTY === true,
  prompt: {
    input: process.stdin,
    output: process.stdout,
    history: historyFile(process.platform, process.env, homedir()),
    readFile: (path) => readFileSync(path, 'utf8'),
    writeFile: writeNewNow,
    version,
  },
  today: day(new Date()),
  version,
});
