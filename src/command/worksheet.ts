import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';
import type { CheckedAnswer, Exercise, Worksheet } from '../teaching/index.js';
import type { Typed } from './arguments.js';
import { oneOf } from './values.js';
import { WrongCommand } from './wrong-command.js';

/** A request for a worksheet. */
export interface WorksheetCommand {
  readonly command: 'worksheet';
  readonly about: string;
  readonly seed: number;
  /** Whether a seed was given. */
  readonly isSeeded: boolean;
  readonly count: number;
  readonly units: UnitSystem;
  readonly format: 'text' | 'markdown';
  readonly answers: boolean;
  /** Answers to check, as `3: 22 thou`. */
  readonly checks: readonly string[];
}

/** Reads the request for a worksheet. */
export function readWorksheet({ operands, options }: Typed): WorksheetCommand {
  if (operands.length === 0)
    throw new WrongCommand(
      'worksheet needs a topic, such as bearings; crankwright --help lists them',
    );
  const first = (name: 'seed' | 'count' | 'units') => options.get(name)?.[0];
  return {
    command: 'worksheet',
    about: operands.join(' '),
    seed: wholeNumber('--seed', first('seed') ?? '1'),
    isSeeded: options.has('seed'),
    count: wholeNumber('--count', first('count') ?? '10'),
    units: oneOf(first('units') ?? 'inch', ['inch', 'metric'], '--units'),
    format: options.has('markdown') ? 'markdown' : 'text',
    answers: options.has('answers'),
    checks: options.get('check') ?? [],
  };
}

function wholeNumber(option: string, text: string): number {
  if (/^\d{1,7}$/.test(text)) return Number(text);
  throw new WrongCommand(`${option}: "${text}" is not a whole number`);
}

/** The words on a command line for what `worksheet` takes. */
const TYPED: Readonly<Record<string, string>> = {
  'request.about': 'the topic',
  'request.seed': '--seed',
  'request.count': '--count',
};

/** What is printed, and what of the command line was refused. */
interface WorksheetOutput {
  readonly text: string;
  readonly refused: readonly string[];
}

/** Prints a worksheet, or checks answers to it. */
export async function worksheetText(request: WorksheetCommand): Promise<WorksheetOutput> {
  // What the formulas are worked with is loaded by no other command.
  const { check, printWorksheet, worksheet } = await import('../teaching/index.js');
  const { about, seed, count, units, format, answers, checks } = request;
  try {
    const sheet = worksheet({ about, seed, count, units });
    if (checks.length > 0) {
      const { text, refused } = checkedText(checks, (one) => checkedLine(one, sheet, check));
      const isAllRight = text.split('\n').every((line) => /^(\d+: right|$)/.test(line));
      // What is right by a sheet that nobody named may be right by chance.
      const isSure = text === '' || (isAllRight && request.isSeeded);
      return { text: isSure ? text : `${text}Checked by ${sheetOf(request)}\n`, refused };
    }
    const text = `${printWorksheet(sheet, { format, answers })}\n${againLine(request)}\n`;
    return { text, refused: [] };
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    const typed = TYPED[error.parameter];
    if (typed === undefined) throw error;
    throw new WrongCommand(`${typed}: ${complaintOf(error)}. ${error.hint}`);
  }
}

/** What to type for the same sheet. */
const againLine = (request: WorksheetCommand) =>
  `The same sheet again: npx crankwright ${sheetOf(request)}`;

/** The sheet that was asked for. Answers to another are wrong by it, whatever they are by their own. */
const sheetOf = ({ about, seed, count, units }: WorksheetCommand) =>
  `worksheet ${quoted(about)} --seed ${seed} --count ${count} --units ${units}`;

const quoted = (words: string) => (/^[\w-]+$/.test(words) ? words : `"${words}"`);

/** How every answer stands. A bad one does not keep the others from being checked. */
function checkedText(checks: readonly string[], line: (text: string) => string): WorksheetOutput {
  const refused: string[] = [];
  const lines = checks.flatMap((text) => {
    try {
      return [line(text)];
    } catch (error) {
      if (!(error instanceof WrongCommand)) throw error;
      refused.push(error.message);
      return [];
    }
  });
  return { text: lines.join(''), refused };
}

/** How one answer stands. */
function checkedLine(
  text: string,
  { problems }: Worksheet,
  check: (problem: Exercise, answer: string) => CheckedAnswer,
): string {
  const [, number = '', answer = ''] = /^\s*(\d{1,3})\s*:\s*(.*)$/.exec(text) ?? [];
  if (number === '') {
    throw new WrongCommand(
      `--check: "${text}" is not the number of a problem, a colon and an answer, e.g. "3: 2.2 thou"`,
    );
  }
  const problem = problems[Number(number) - 1];
  if (problem === undefined) {
    throw new WrongCommand(
      `--check: there is no problem ${number}; the sheet has ${problems.length}`,
    );
  }
  const checked = check(problem, answer);
  const taken = checked.takenAs === undefined ? '' : `, taken as ${checked.takenAs}`;
  const hint = 'hint' in checked ? ` ${checked.hint}` : '';
  return `${number}: ${checked.outcome}${taken}.${hint}\n`;
}
