import type { CalcRequest } from './calc-request.js';
import type { Io } from './io.js';
import { plainConversion } from './prompt/plain-conversion.js';
import { WrongCommand } from './wrong-command.js';

const HELP_ON_CALC = `2-1/8 in to mm      works out sizes with their units
.about oilClearance tells what a function takes and gives
Type one of them behind crankwright calc, in quotes. crankwright repl is a prompt;
crankwright --help lists all commands.
`;

/** Works out every statement and prints what it comes to; tells whether all could be worked out. */
export async function calculate(
  request: CalcRequest,
  io: Pick<Io, 'readInput' | 'inputIsTerminal' | 'print' | 'complain'>,
): Promise<boolean> {
  if (request.text === undefined && io.inputIsTerminal) {
    throw new WrongCommand(
      "no expression given, such as '2-1/8 in to mm'; crankwright repl is a prompt",
    );
  }
  if (/^[\w./\\: -]+\.(?:txt|md|json|csv)$/i.test(request.text ?? '')) {
    throw new WrongCommand(`a file is read so: crankwright calc < ${request.text}`);
  }
  const text = request.text ?? (await io.readInput());
  if (request.output === 'text' && /^\s*(?:\.?help|\?)\s*$/.test(text)) {
    await io.print(HELP_ON_CALC);
    return true;
  }
  const plain = request.output === 'text' ? plainConversion(text) : undefined;
  if (plain) {
    for (const note of plain.notes) io.complain(`${note}\n`);
    await io.print(`${plain.said}\n`);
    return true;
  }
  const { runSession } = await import('./run-session.js');
  return runSession(text, request, io);
}
