import type { CalcRequest } from './calc-request.js';
import type { Io } from './io.js';
import { runText } from './prompt/run-text.js';
import { Session } from './prompt/session.js';
import { toJson } from './prompt/to-json.js';

/** Works out every statement of a text and prints what it comes to; tells whether all could be worked out. */
export async function runSession(
  text: string,
  { text: typed, units, output }: CalcRequest,
  io: Pick<Io, 'print' | 'complain'>,
): Promise<boolean> {
  const session = await Session.begin(units);
  const { done, notes, wrong } = runText(session, text);
  for (const note of notes) io.complain(`${note}\n`);
  const told = done.filter(({ silent, value }) => !silent && value !== undefined);
  if (output === 'text') {
    for (const { value } of told) await io.print(`${session.show(value)}\n`);
  } else if (!wrong) {
    const values = told.map((each) => toJson(each, session));
    await io.print(`${JSON.stringify(values, null, 2)}\n`);
  }
  if (!wrong) return true;
  const isOne = typed !== undefined && !typed.includes('\n');
  io.complain(`crankwright: ${isOne ? '' : `line ${wrong.line}: `}${wrong.message}\n`);
  return false;
}
