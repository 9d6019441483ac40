#!/usr/bin/env node
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { text } from 'node:stream/consumers';
import { run } from './run.js';

// A reader that has seen enough, such as `head`, closes the pipe: that is no mistake.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const { version } = createRequire(import.meta.url)('crankwright/package.json') as {
  readonly version: string;
};

process.exitCode = await run(process.argv.slice(2), {
  readFile: (path) => readFile(path, 'utf8'),
  readInput: () => text(process.stdin),
  inputIsTerminal: process.stdin.isTTY === true,
  print: (output) => {
    process.stdout.write(output);
  },
  complain: (output) => {
    process.stderr.write(output);
  },
  complaintsAreOnTerminal: process.stderr.isTTY === true,
  version,
});
