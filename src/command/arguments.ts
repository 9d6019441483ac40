import { parseArgs } from 'node:util';
import { didYouMean } from '../reading/index.js';
import { APART, OPTIONS, type OptionName, REPEATED, TAKES } from './options.js';
import { closeName } from './prompt/close-name.js';
import { WrongCommand } from './wrong-command.js';

/** The name of a command. */
export type CommandName = keyof typeof TAKES;

/** A command line with valid options. */
export interface Typed {
  /** Which command; help and version take precedence. */
  readonly command: CommandName | 'help' | 'version';
  /** The words after the command. */
  readonly operands: readonly string[];
  /** The values of the given options, in order; a switch has an empty text. */
  readonly options: ReadonlyMap<OptionName, readonly string[]>;
}

/** Reads a command line. A refusal suggests what was probably meant. */
export function readArguments(argv: readonly string[]): Typed {
  // Not strict, because its messages do not suggest what was probably meant.
  const { tokens } = parseArgs({
    args: argv.filter((each) => !isExpression(each, argv)),
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words = tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : []));
  const given = tokens.filter((token) => token.kind === 'option');
  if (given.some(({ name }) => name === 'help')) return withoutOperands('help');
  if (given.some(({ name }) => name === 'version')) return withoutOperands('version');
  const [name, ...operands] = [...words, ...argv.filter((each) => isExpression(each, argv))];
  const command = commandOf(name);
  const options = new Map<OptionName, readonly string[]>();
  for (const token of given) {
    const option = knownOption(token.name, token.rawName, command);
    const value = optionValue(option, token);
    const before = options.get(option) ?? [];
    if (before.length > 0 && !REPEATED.includes(option)) {
      throw new WrongCommand(`--${option} is given twice`);
    }
    options.set(option, [...before, value]);
  }
  for (const [one, other] of APART) {
    if (options.has(one) && options.has(other)) {
      throw new WrongCommand(`--${one} and --${other} cannot be combined`);
    }
  }
  return { command, operands, options };
}

/** Whether an argument of calc begins with a minus and is no option: `-3 in`. */
const isExpression = (argument: string, [command]: readonly string[]): boolean =>
  command === 'calc' && /^-\s*[\d.(]/.test(argument);

const withoutOperands = (command: 'help' | 'version'): Typed => ({
  command,
  operands: [],
  options: new Map(),
});

function commandOf(name: string | undefined): CommandName {
  const names = Object.keys(TAKES) as CommandName[];
  if (name === undefined)
    throw new WrongCommand(`no command given; commands are ${names.join(', ')}`);
  const command = names.find((each) => each === name);
  if (command) return command;
  throw new WrongCommand(
    `"${name}" is not a command; ${didYouMean(name, names) ?? `commands are ${names.join(', ')}`}`,
  );
}

function knownOption(name: string, typed: string, command: CommandName): OptionName {
  const takes: readonly OptionName[] = [...TAKES[command], 'help', 'version'];
  const option = takes.find((each) => each === name);
  if (option) return option;
  const elsewhere = Object.hasOwn(OPTIONS, name);
  if (elsewhere) throw new WrongCommand(`${typed} is not an option of ${command}`);
  const near = closeOption(typed, takes);
  const hint = near ? `; did you mean "${near}"?` : ofAnother(typed);
  const said = hint || `; ${command} takes ${dashed(takes).join(', ')}`;
  throw new WrongCommand(`${typed} is not an option${said}`);
}

const dashed = (names: readonly OptionName[]): readonly string[] =>
  names.map((each) => `--${each}`);

/** The option that was most likely meant. */
const closeOption = (typed: string, names: readonly OptionName[]): string | undefined =>
  closeName(typed, dashed(names));

/** An option of other commands that was probably meant. */
function ofAnother(typed: string): string {
  const names = Object.keys(OPTIONS) as OptionName[];
  const name = closeOption(typed, names);
  const commands = (Object.keys(TAKES) as CommandName[]).filter((each) =>
    (TAKES[each] as readonly string[]).includes(name?.slice(2) ?? ''),
  );
  return commands.length === 0 ? '' : `; ${name} is one of ${commands.join(' and ')}`;
}

function optionValue(
  option: OptionName,
  {
    value,
    inlineValue,
  }: { readonly value?: string | undefined; readonly inlineValue?: boolean | undefined },
): string {
  if (OPTIONS[option].type === 'boolean') {
    if (value === undefined) return '';
    throw new WrongCommand(`--${option} takes no value`);
  }
  // A value that looks like an option is the next option: the value was left out.
  const isOption = inlineValue !== true && value !== undefined && /^-./.test(value);
  if (value === undefined || value.trim() === '' || isOption) {
    throw new WrongCommand(`--${option} needs a value`);
  }
  return value;
}
