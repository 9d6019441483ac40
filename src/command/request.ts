import type { PlanOptions } from '../planning/index.js';
import { RebuildInputError, second, type UnitSystem } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';
import { parsePrice } from '../reading/index.js';
import { readArguments, type Typed } from './arguments.js';
import type { CalcRequest } from './calc-request.js';
import { type NewRequest, readNew } from './new-request.js';
import type { OptionName } from './options.js';
import { type DiffRequest, type DoneRequest, readDiff, readDone } from './record-request.js';
import { oneOf } from './values.js';
import { readWorksheet, type WorksheetCommand } from './worksheet.js';
import { WrongCommand } from './wrong-command.js';

/** The input of a command, and the units to print in. */
export interface Source {
  /** The file; `-` is standard input, and the default. */
  readonly file?: string;
  /** A CSV file with its readings. */
  readonly readings?: string;
  /** The units to print in; by default those of the file. */
  readonly units?: UnitSystem;
  /** Whether to tell why steps were passed over. */
  readonly why?: boolean;
  /** The web page to write instead of printing text. */
  readonly page?: { readonly output: string; readonly force: boolean };
}

/** The request on a command line. */
export type Request =
  | { readonly command: 'help' | 'version' }
  | { readonly command: 'schema'; readonly of: 'sheet' | 'shed' | 'work' }
  | NewRequest
  | CalcRequest
  | { readonly command: 'repl'; readonly units: UnitSystem }
  | DoneRequest
  | DiffRequest
  | WorksheetCommand
  | (Source & { readonly command: 'report'; readonly output: 'text' | 'json' })
  | (Source & {
      readonly command: 'plan';
      readonly output: 'text' | 'json' | 'build sheet' | 'build sheet in Markdown' | 'boxes';
      /** The engine whose boxes are wanted. */
      readonly boxes?: string;
      /** Whether the chances of each number of engines are wanted. */
      readonly chances?: true;
      readonly options: PlanOptions;
    });

/** Reads a command line and every value in it. */
export function readRequest(argv: readonly string[]): Request {
  const typed = readArguments(argv);
  const { command, options } = typed;
  switch (command) {
    case 'help':
    case 'version':
      return { command };
    case 'schema':
      return { command, of: oneOf(onlyOperand(typed), ['sheet', 'shed', 'work'], 'schema') };
    case 'calc':
      return readCalc(typed);
    case 'repl':
      if (typed.operands.length > 0) throw new WrongCommand('repl takes no operand');
      return { command, units: unitsIn(options) ?? 'inch' };
    case 'new':
      return readNew(typed);
    case 'done':
      return readDone(typed);
    case 'diff':
      return readDiff(typed);
    case 'worksheet':
      return readWorksheet(typed);
    case 'report':
      return { command, ...sourceOf(typed), output: options.has('json') ? 'json' : 'text' };
    case 'plan':
      return {
        command,
        ...sourceOf(typed),
        output: planOutput(options),
        ...boxesOf(options),
        ...(options.has('chances') && { chances: true }),
        options: planOptions(options),
      };
  }
}

function readCalc(typed: Typed): CalcRequest {
  const text = onlyOperand(typed);
  return {
    command: 'calc',
    ...(text !== undefined && text !== '-' && { text }),
    units: unitsIn(typed.options) ?? 'inch',
    output: typed.options.has('json') ? 'json' : 'text',
  };
}

type Options = Typed['options'];

function unitsIn(options: Options): UnitSystem | undefined {
  const units = first(options, 'units');
  return units === undefined ? undefined : oneOf<UnitSystem>(units, ['inch', 'metric'], '--units');
}

const first = (options: Options, name: OptionName): string | undefined => options.get(name)?.[0];

function onlyOperand({ command, operands }: Typed): string | undefined {
  const [operand, another] = operands;
  if (another === undefined) return operand;
  const quoted = command === 'calc' ? '; put the whole expression in quotes' : '';
  throw new WrongCommand(`${command} takes one operand; "${another}" is one too many${quoted}`);
}

function sourceOf(typed: Typed): Source {
  const file = onlyOperand(typed);
  const readings = first(typed.options, 'readings');
  const units = unitsIn(typed.options);
  if (readings === '-') throw new WrongCommand('--readings needs a file, not standard input');
  return {
    ...(file !== undefined && { file }),
    ...(readings !== undefined && { readings }),
    ...(units !== undefined && { units }),
    ...(typed.options.has('why') && { why: true }),
    ...pageOf(typed.options),
  };
}

/** The web page that is wanted, if one is; `-` is standard output. */
function pageOf(options: Options): Pick<Source, 'page'> {
  const output = first(options, 'html');
  const force = options.has('force');
  if (output !== undefined) return { page: { output, force } };
  if (force) throw new WrongCommand('--force needs --html');
  return {};
}

function boxesOf(options: Options): { readonly boxes?: string } {
  const boxes = first(options, 'boxes');
  return boxes === undefined ? {} : { boxes };
}

function planOutput(options: Options) {
  const sheet = options.has('build-sheet');
  if (options.has('markdown')) {
    if (sheet) return 'build sheet in Markdown';
    throw new WrongCommand('--markdown needs --build-sheet');
  }
  if (options.has('boxes')) return 'boxes';
  if (sheet) return 'build sheet';
  return options.has('json') ? 'json' : 'text';
}

function planOptions(options: Options): PlanOptions {
  const [atMost, cap, chance, limit] = (
    ['at-most', 'most-per-engine', 'holds-with', 'time-limit'] as const
  ).map((name) => first(options, name));
  const [reserved, mustBuild] = [options.get('reserve'), options.get('must-build')];
  return {
    ...(atMost !== undefined && { atMost: wholeNumber('--at-most', atMost) }),
    ...(options.has('no-buying') && { buying: false }),
    ...(cap !== undefined && { mostPerEngine: priceOf(cap) }),
    ...(reserved && { reserved }),
    ...(mustBuild && { mustBuild }),
    ...(chance !== undefined && { holdsWith: chanceOf('--holds-with', chance) }),
    ...(limit !== undefined && {
      timeLimit: second(secondsOf('--time-limit', limit)),
    }),
  };
}

function wholeNumber(option: string, text: string): number {
  if (/^\d{1,6}$/.test(text)) return Number(text);
  throw new WrongCommand(`${option}: "${text}" is not a whole number of engines`);
}

function chanceOf(option: string, text: string): number {
  if (/^0?\.\d{1,9}$/.test(text) && Number(text) > 0.5) return Number(text);
  throw new WrongCommand(`${option}: "${text}" is not a chance above 0.5 and below 1, e.g. 0.95`);
}

function secondsOf(option: string, text: string): number {
  if (/^\d{1,6}(\.\d+)?$/.test(text) && Number(text) > 0) return Number(text);
  throw new WrongCommand(`${option}: "${text}" is not a number of seconds above 0`);
}

function priceOf(text: string) {
  try {
    return parsePrice(text);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    throw new WrongCommand(`--most-per-engine: ${complaintOf(error)}. ${error.hint}`);
  }
}
