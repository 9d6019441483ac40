import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';
import { NEW_FILE, printJson } from '../reading/index.js';
import { newShed, readingsToFill } from '../shed/index.js';
import { newSheet } from '../sheet/index.js';
import { askFor } from './ask-for.js';
import { guardFile } from './guard-file.js';
import type { Io } from './io.js';
import type { Answer, Answers, NewRequest } from './new-request.js';
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
  const typed = isAsked ? await askFor(of, io) : request.answers;
  try {
    if (of === 'sheet') return json(newSheet(sheetAnswers(typed)));
    const file = newShed(shedAnswers(typed));
    return request.csv ? readingsToFill(file) : json(file);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    const option = OPTION_OF[error.parameter];
    if (option === undefined) throw error;
    throw new WrongCommand(`--${option}: ${complaintOf(error)}. ${error.hint}`);
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
  refuseMissing('sheet', typed, ['name', 'cylinders', 'mains']);
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
  const main = typed.mains === '0' ? [] : (['main-journal'] as const);
  refuseMissing('shed', typed, ['name', 'cylinders', 'mains', 'rod-journal', ...main, 'bore']);
  const { lubrication } = typed;
  return {
    ...sheetAnswers(typed),
    rodJournal: typed['rod-journal'] ?? '',
    bore: typed.bore ?? '',
    ...(lubrication !== undefined && {
      lubrication: oneOf(lubrication, ['splash', 'pump'], '--lubrication'),
    }),
    ...(typed.cores !== undefined && { cores: countOf(typed, 'cores') }),
  };
}

function refuseMissing(of: string, typed: Answers, needed: readonly Answer[]): void {
  const missing = needed.filter((each) => typed[each] === undefined).map((each) => `--${each}`);
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
