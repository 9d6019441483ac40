import type { Io } from './io.js';
import type { Answer, Answers } from './new-request.js';
import { WrongCommand } from './wrong-command.js';

/** What is asked on a terminal, each with what counts if nothing is typed. */
const QUESTIONS: readonly {
  readonly answer: Answer;
  readonly question: string;
  readonly otherwise?: string;
  /** Whether it is asked for a shed only. */
  readonly ofShed?: true;
}[] = [
  { answer: 'name', question: 'Name of the engine', otherwise: 'my engine' },
  { answer: 'units', question: 'Units, inch or metric', otherwise: 'inch' },
  { answer: 'cylinders', question: 'Cylinders', otherwise: '1' },
  {
    answer: 'mains',
    question: 'Main bearings with shells, 0 for rolling bearings',
    otherwise: '2',
  },
  { answer: 'rod-journal', question: 'Standard rod journal, as 1.6245 to 1.6250' },
  { answer: 'main-journal', question: 'Standard main journal' },
  { answer: 'bore', question: 'Standard bore' },
  { answer: 'lubrication', question: 'Oil by splash or pump', ofShed: true },
  {
    answer: 'cores',
    question: 'How many engines do the parts come from',
    otherwise: '1',
    ofShed: true,
  },
];

/**
 * Asks for all that a new file must know. What has no answer and no default is left out. An answer that `whatIsWrong`
 * has a word against is asked for again, so that a slip at the end costs none of the answers before it.
 */
export async function askFor(
  of: 'sheet' | 'shed',
  whatIsWrong: (answers: Answers, last: Answer) => string | undefined,
  io: Pick<Io, 'ask' | 'complain'>,
): Promise<Answers> {
  let answers: Answers = {};
  for (const { answer, question, otherwise, ofShed } of QUESTIONS) {
    const isNone = answer === 'main-journal' && answers.mains === '0';
    if (isNone || (ofShed && of === 'sheet')) continue;
    const text = `${question}${otherwise === undefined ? '' : ` [${otherwise}]`}: `;
    for (;;) {
      const typed = await io.ask(text);
      if (typed === undefined) throw new WrongCommand('the questions were not answered');
      const said = typed.trim() === '' ? otherwise : typed.trim();
      const more = said === undefined ? answers : { ...answers, [answer]: said };
      const wrong = whatIsWrong(more, answer);
      if (wrong === undefined) {
        answers = more;
        break;
      }
      io.complain(`${wrong}\n`);
    }
  }
  return answers;
}
