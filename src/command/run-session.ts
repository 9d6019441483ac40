import type { CalcRequest } from './calc-request.js';
import type { Io } from './io.js';
import { aboutOwn } from './prompt/about-own.js';
import { runText } from './prompt/run-text.js';
import { Session } from './prompt/session.js';
import { whatHas } from './prompt/taken-names.js';
import { toJson } from './prompt/to-json.js';

/** The one command of the prompt that needs no prompt. */
const ABOUT = /^\s*\.about\s+(\w+)\s*$/;

/** Works out every statement of a text and prints what it comes to; tells whether all could be worked out. */
export async function runSession(
  text: string,
  { text: typed, units, output }: CalcRequest,
  io: Pick<Io, 'print' | 'complain'>,
): Promise<boolean> {
  const session = await Session.begin(units);
  const [, asked] = output === 'text' ? (ABOUT.exec(text) ?? []) : [];
  if (asked !== undefined) {
    const said = aboutOwn(session, asked);
    const isKnown = whatHas(asked, session.loaded) !== undefined;
    if (isKnown) await io.print(`${said}\n`);
    else io.complain(`crankwright: ${said}\n`);
    return isKnown;
  }
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
