import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';
import { NEW_FILE, printJson } from '../reading/index.js';
import { newShed, readingsToFill } from '../shed/index.js';
import { newSheet } from '../sheet/index.js';
import { askFor } from './ask-for.js';
import { guardFile } from './guard-file.js';
import type { Io } from './io.js';
import type { Answer, Answers, NewRequest } from './new-request.js';
import { asTyped } from './prompt/as-typed.js';
import { readSource } from './read-source.js';
import { oneOf } from './values.js';
import { deliver } from './write-file.js';
import { WrongCommand } from './wrong-command.js';

/** Prints or writes a new file. */
export async function makeNew(request: NewRequest, io: Io): Promise<void> {
  const { of, file, output, force } = request;
  const text = of === 'readings' ? await rowsToFill(file, io) : await starter(of, request, io);
  await deliver(text, { ...(output !== undefined && { output }), force }, io);
}

async function rowsToFill(file: string | undefined, io: Io): Promise<string> {
  const { text } = await readSource({ ...(file !== undefined && { file }) }, io);
  guardFile('shed', file, text);
  return readingsToFill(text);
}

async function starter(of: 'sheet' | 'shed', request: NewRequest, io: Io): Promise<string> {
  const isAsked = Object.keys(request.answers).length === 0 && io.inputIsTerminal;
  const wrong = (answers: Answers, last: Answer) => whatIsWrong(of, answers, last);
  const typed = isAsked ? await askFor(of, wrong, io) : request.answers;
  return inOptions(() => {
    if (of === 'sheet') return json(newSheet(sheetAnswers(typed)));
    const file = newShed(shedAnswers(typed));
    return request.csv ? readingsToFill(file) : json(file);
  });
}

/** What is wrong with the last answer, as far as the others are known. */
function whatIsWrong(of: 'sheet' | 'shed', answers: Answers, last: Answer): string | undefined {
  if (of === 'shed' && answers[last] === undefined && neededFor('shed', answers).includes(last)) {
    return 'a shed needs this size: parts are sorted by it';
  }
  try {
    inOptions(() => {
      if (last === 'cores') newShed(shedAnswers(answers));
      else newSheet(sheetAnswers({ name: 'my engine', cylinders: '1', mains: '0', ...answers }));
      lubricationOf(answers);
    });
    return undefined;
  } catch (error) {
    if (!(error instanceof WrongCommand)) throw error;
    return error.message.replace(/^--[\w-]+: /, '');
  }
}

/** Makes something of answers, and names the option of one that is wrong. */
function inOptions<T>(make: () => T): T {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    const option = OPTION_OF[error.parameter];
    if (option === undefined) throw error;
    throw new WrongCommand(`--${option}: ${asTyped(`${complaintOf(error)}. ${error.hint}`)}`);
  }
}

/** The option that an answer was typed in. */
const OPTION_OF: Readonly<Record<string, Answer>> = {
  'answers.name': 'name',
  'answers.cylinders': 'cylinders',
  'answers.mains': 'mains',
  'answers.rodJournal': 'rod-journal',
  'answers.mainJournal': 'main-journal',
  'answers.bore': 'bore',
  'answers.cores': 'cores',
};

function sheetAnswers(typed: Answers) {
  refuseMissing('sheet', typed);
  const { 'rod-journal': rodJournal, 'main-journal': mainJournal, bore } = typed;
  return {
    name: typed.name ?? '',
    units: unitsOf(typed),
    cylinders: countOf(typed, 'cylinders'),
    mains: countOf(typed, 'mains'),
    ...(rodJournal !== undefined && { rodJournal }),
    ...(mainJournal !== undefined && { mainJournal }),
    ...(bore !== undefined && { bore }),
  };
}

function shedAnswers(typed: Answers) {
  refuseMissing('shed', typed);
  const lubrication = lubricationOf(typed);
  return {
    ...sheetAnswers(typed),
    rodJournal: typed['rod-journal'] ?? '',
    bore: typed.bore ?? '',
    ...(lubrication && { lubrication }),
    ...(typed.cores !== undefined && { cores: countOf(typed, 'cores') }),
  };
}

const lubricationOf = ({ lubrication }: Answers) =>
  lubrication === undefined
    ? undefined
    : oneOf(lubrication, ['splash', 'pump'] as const, '--lubrication');

/** What a file cannot be made without. */
function neededFor(of: 'sheet' | 'shed', { mains }: Answers): readonly Answer[] {
  if (of === 'sheet') return ['name', 'cylinders', 'mains'];
  const main = mains === '0' ? [] : (['main-journal'] as const);
  return ['name', 'cylinders', 'mains', 'rod-journal', ...main, 'bore'];
}

function refuseMissing(of: 'sheet' | 'shed', typed: Answers): void {
  const missing = neededFor(of, typed)
    .filter((each) => typed[each] === undefined)
    .map((each) => `--${each}`);
  if (missing.length > 0) throw new WrongCommand(`new ${of} needs ${missing.join(', ')}`);
}

/** The units asked for; otherwise those that the sizes are in. */
function unitsOf(typed: Answers): UnitSystem {
  if (typed.units !== undefined) return oneOf(typed.units, ['inch', 'metric'], '--units');
  const sizes = [typed['rod-journal'], typed['main-journal'], typed.bore];
  return sizes.some((size) => size !== undefined && /mm/.test(size)) ? 'metric' : 'inch';
}

function countOf(typed: Answers, option: 'cylinders' | 'mains' | 'cores'): number {
  const text = (typed[option] ?? '').trim();
  if (/^\d{1,6}$/.test(text)) return Number(text);
  throw new WrongCommand(`--${option}: "${text}" is not a whole number`);
}

const json = (value: unknown): string => `${printJson(value, NEW_FILE)}\n`;
