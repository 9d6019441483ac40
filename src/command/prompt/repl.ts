import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type REPLServer, Recoverable, start } from 'node:repl';
import type { Readable, Writable } from 'node:stream';
import type { UnitSystem } from '../../quantities/index.js';
import { codeOf, unwritable } from '../output.js';
import { unreadable } from '../unreadable-file.js';
import { aboutOwn } from './about-own.js';
import { complete } from './complete.js';
import { loadFile } from './load-file.js';
import { promptHelp, slipIn, unknownCommand } from './prompt-help.js';
import { Session, Unfinished } from './session.js';
import { toTypeScript } from './to-typescript.js';
import { WrongStatement } from './wrong-statement.js';

/** Where the prompt reads and writes. */
export interface PromptIo {
  readonly input: Readable;
  readonly output: Writable;
  /** Where what was typed is kept for the next time; nowhere if it is left out. */
  readonly history?: string;
  /** Reads a file. */
  readonly readFile: (path: string) => string;
  /** Writes a new file; a line after it may read it. */
  readonly writeFile: (path: string, text: string) => void;
  readonly version: string;
}

/** What is printed as it is. */
class Text {
  constructor(readonly text: string) {}
}

/** Runs the prompt until it is left. */
export async function runRepl(units: UnitSystem, io: PromptIo): Promise<void> {
  const session = await Session.begin(units);
  io.output.write(
    `crankwright ${io.version}: type sizes with their units, such as 2.105 inch; .about oilClearance\n` +
      'tells what a function takes, Tab completes, .help lists the rest.\n',
  );
  const typed: string[] = [];
  let isLeft = false;
  const server = start({
    prompt: '> ',
    input: io.input,
    output: io.output,
    preview: false,
    ignoreUndefined: true,
    writer: (value: unknown) => (value instanceof Text ? value.text : String(value)),
    completer: (line: string) => complete(line, session.names()),
    eval: (text, _context, _file, done) => {
      // Lines of a pipe behind `.exit` come all the same.
      if (isLeft) {
        done(null, undefined);
        return;
      }
      const slip = session.scope.has(text.trim()) ? undefined : slipIn(text);
      if (slip !== undefined) {
        done(null, new Text(slip));
        return;
      }
      try {
        const { said, isRight } = answer(session, text);
        // A file with a mistake in it would stop there when it is read.
        if (isRight && text.trim() !== '') typed.push(text.trimEnd());
        done(null, said === '' ? undefined : new Text(said));
      } catch (error) {
        if (error instanceof Unfinished) done(new Recoverable(error), undefined);
        else done(null, new Text(messageOf(error)));
      }
    },
  });
  // A pipe may have ended before the history is read.
  const left = new Promise<void>((resolve) => {
    server.once('exit', resolve);
  });
  server.defineCommand('exit', {
    help: 'Leaves the prompt',
    action() {
      isLeft = true;
      this.close();
    },
  });
  addCommands(server, session, typed, io);
  if (io.history !== undefined) await keepHistory(server, io.history);
  await left;
}

/** What a text comes to, a value a line. */
function answer(
  session: Session,
  text: string,
): { readonly said: string; readonly isRight: boolean } {
  const { nodes, notes } = session.parse(text);
  const lines = [...notes];
  let isRight = true;
  try {
    for (const node of nodes) {
      const { value, silent } = session.run(node);
      if (!silent && value !== undefined) lines.push(session.show(value));
    }
  } catch (error) {
    lines.push(messageOf(error));
    isRight = false;
  }
  return { said: lines.join('\n'), isRight };
}

const messageOf = (error: unknown): string =>
  error instanceof WrongStatement ? error.message : 'this cannot be worked out';

const whyUnwritten = (path: string, error: Error): string =>
  codeOf(error) === 'EEXIST'
    ? `${path} is there already; name another file`
    : unwritable(error, path).message;

function addCommands(server: REPLServer, session: Session, typed: string[], io: PromptIo): void {
  const say = (text: string) => {
    server.output.write(`${text}\n`);
    server.displayPrompt();
  };
  const write = (path: string, text: string) => {
    try {
      io.writeFile(path, text);
      say(`written to ${path}`);
    } catch (error) {
      say(whyUnwritten(path, error as Error));
    }
  };
  server.defineCommand('about', {
    help: 'What a function takes and gives: .about oilClearance',
    action: (name) =>
      say(
        name.trim() === ''
          ? 'name a function: .about oilClearance'
          : aboutOwn(session, name.trim()),
      ),
  });
  server.defineCommand('units', {
    help: 'The units of results: .units inch or .units metric',
    action: (name) => {
      const system = name.trim();
      if (system === 'inch' || system === 'metric') session.units = system;
      say(system === session.units ? `results in ${system} units` : '.units inch or .units metric');
    },
  });
  server.defineCommand('ts', {
    help: 'The session as TypeScript; .ts FILE writes it to a new file',
    action: (path) => {
      const text = toTypeScript(session);
      if (path.trim() === '') say(text.trimEnd());
      else write(path.trim(), text);
    },
  });
  server.defineCommand('save', {
    help: 'What was typed, to a new file that crankwright calc reads: .save FILE',
    action: (path) => {
      if (path.trim() === '') say('name a file: .save my-engine.txt');
      else write(path.trim(), `${typed.join('\n')}\n`);
    },
  });
  server.defineCommand('load', {
    help: 'Works out the lines of a file: .load FILE',
    action: (name) => {
      const path = name.trim();
      if (path === '') {
        say('name a file: .load my-engine.txt');
        return;
      }
      try {
        const { said, right } = loadFile(session, path, io.readFile(path));
        if (right !== '') typed.push(right);
        say(said);
      } catch (error) {
        say(unreadable(path, error).message);
      }
    },
  });
  server.defineCommand('help', { help: '', action: () => say(promptHelp()) });
  // They are for JavaScript.
  const commands = server.commands as unknown as Record<string, unknown>;
  for (const name of ['editor', 'clear']) delete commands[name];
  (server as unknown as { commands: object }).commands = new Proxy(server.commands, {
    get: (known, name) =>
      Reflect.get(known, name) ??
      (typeof name === 'string' && { action: () => say(unknownCommand(name)) }),
  });
}

/** Keeps what is typed for the next time. That there is no place for it is no reason to stop. */
async function keepHistory(server: REPLServer, path: string): Promise<void> {
  try {
    await mkdir(dirname(path), { recursive: true });
    await new Promise<void>((resolve) => server.setupHistory(path, () => resolve()));
  } catch {
    // Without a history it works as well.
  }
}
