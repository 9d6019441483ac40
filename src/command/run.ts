import { RebuildInputError } from '../quantities/index.js';
import { BAD_COMMAND, BAD_FILE, DONE, NO_SOLVER, UNWRITTEN } from './exit-codes.js';
import { HELP } from './help.js';
import type { Io } from './io.js';
import { type Request, readRequest } from './request.js';
import { WrongCommand } from './wrong-command.js';

/** Runs a command line and returns its exit code. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  try {
    return await execute(readRequest(argv), io);
  } catch (error) {
    // The pieces of the built command are loaded apart, and each has classes of its own: the name tells.
    const { name, message } = error as Error;
    if (name === 'WrongCommand') {
      io.complain(`crankwright: ${message}\nTry crankwright --help.\n`);
      return BAD_COMMAND;
    }
    if (name === 'UnreadableFile' || error instanceof RebuildInputError) {
      io.complain(`crankwright: ${message}\n`);
      return BAD_FILE;
    }
    if (name === 'UnwritableOutput') {
      io.complain(`crankwright: cannot write the output: ${message}\n`);
      return UNWRITTEN;
    }
    if (name === 'SolverNotLoaded') {
      io.complain(`crankwright: ${message}\n`);
      return NO_SOLVER;
    }
    throw error;
  }
}

/** What is not asked for is not loaded: a calculation needs no planner, and a plan no mathjs. */
async function execute(request: Request, io: Io): Promise<number> {
  switch (request.command) {
    case 'help':
      await io.print(HELP);
      return DONE;
    case 'version':
      await io.print(`${io.version}\n`);
      return DONE;
    case 'calc': {
      const { calculate } = await import('./calc.js');
      return (await calculate(request, io)) ? DONE : BAD_COMMAND;
    }
    case 'repl': {
      const { runRepl } = await import('./prompt/repl.js');
      await runRepl(request.units, io.prompt);
      return DONE;
    }
    case 'worksheet': {
      const { worksheetText } = await import('./worksheet.js');
      const { text, refused } = await worksheetText(request);
      await io.print(text);
      if (refused.length > 0) throw new WrongCommand(refused.join('\ncrankwright: '));
      return DONE;
    }
    default: {
      const { runOnFiles } = await import('./run-on-files.js');
      return runOnFiles(request, io);
    }
  }
}
