import type { UnitSystem } from '../quantities/index.js';
import type { Io } from './io.js';
import { runText } from './prompt/run-text.js';
import { Session } from './prompt/session.js';
import { toJson } from './prompt/to-json.js';
import { WrongCommand } from './wrong-command.js';

/** What to work out: an expression on the command line, or a file of them. */
export interface CalcRequest {
  readonly command: 'calc';
  readonly text?: string;
  readonly units: UnitSystem;
  readonly output: 'text' | 'json';
}

/** Works out every statement and prints what it comes to; tells whether all could be worked out. */
export async function calculate(
  { text: typed, units, output }: CalcRequest,
  io: Pick<Io, 'readInput' | 'inputIsTerminal' | 'print' | 'complain'>,
): Promise<boolean> {
  if (typed === undefined && io.inputIsTerminal) {
    throw new WrongCommand(
      "no expression given, such as '2-1/8 in to mm'; crankwright repl is a prompt",
    );
  }
  const text = typed ?? (await io.readInput());
  const session = await Session.begin(units);
  const { done, notes, wrong } = runText(session, text);
  for (const note of notes) io.complain(`crankwright: ${note}\n`);
  const told = done.filter(({ silent, value }) => !silent && value !== undefined);
  if (output === 'json') {
    if (!wrong)
      await io.print(
        `${JSON.stringify(
          told.map((each) => toJson(each, session)),
          null,
          2,
        )}\n`,
      );
  } else {
    for (const { value } of told) await io.print(`${session.show(value)}\n`);
  }
  if (!wrong) return true;
  const isOne = typed !== undefined && !typed.includes('\n');
  io.complain(`crankwright: ${isOne ? '' : `line ${wrong.line}: `}${wrong.message}\n`);
  return false;
}
