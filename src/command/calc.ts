import type { CalcRequest } from './calc-request.js';
import type { Io } from './io.js';
import { plainConversion } from './prompt/plain-conversion.js';
import { WrongCommand } from './wrong-command.js';

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
  const plain = request.output === 'text' ? plainConversion(text) : undefined;
  if (plain) {
    for (const note of plain.notes) io.complain(`${note}\n`);
    await io.print(`${plain.said}\n`);
    return true;
  }
  const { runSession } = await import('./run-session.js');
  return runSession(text, request, io);
}
