import { parseArgs } from 'node:util';
import { didYouMean } from '../reading/index.js';
import { APART, OPTIONS, type OptionName, REPEATED, TAKES } from './options.js';
import { WrongCommand } from './wrong-command.js';

/** The name of a command. */
export type CommandName = keyof typeof TAKES;

/** A command as it was typed, every option known and where it belongs. */
export interface Typed {
  /** Which command; help and version go before all others. */
  readonly command: CommandName | 'help' | 'version';
  /** What stands after the command. */
  readonly operands: readonly string[];
  /** The values of the options that were given, in their order; of a switch an empty text. */
  readonly options: ReadonlyMap<OptionName, readonly string[]>;
}

/** Reads a command line. What it cannot mean is refused with what was probably meant. */
export function readArguments(argv: readonly string[]): Typed {
  // Not strict: its messages do not say what was probably meant.
  const { tokens } = parseArgs({
    args: [...argv],
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words = tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : []));
  const given = tokens.filter((token) => token.kind === 'option');
  if (given.some(({ name }) => name === 'help')) return bare('help');
  if (given.some(({ name }) => name === 'version')) return bare('version');
  const [name, ...operands] = words;
  const command = commandOf(name);
  const options = new Map<OptionName, readonly string[]>();
  for (const token of given) {
    const option = known(token.name, token.rawName, command);
    const value = optionValue(option, token);
    const before = options.get(option) ?? [];
    if (before.length > 0 && !REPEATED.includes(option)) {
      throw new WrongCommand(`--${option} is given twice`);
    }
    options.set(option, [...before, value]);
  }
  for (const [one, other] of APART) {
    if (options.has(one) && options.has(other)) {
      throw new WrongCommand(`--${one} and --${other} do not go together`);
    }
  }
  return { command, operands, options };
}

const bare = (command: 'help' | 'version'): Typed => ({
  command,
  operands: [],
  options: new Map(),
});

function commandOf(name: string | undefined): CommandName {
  const names = Object.keys(TAKES) as CommandName[];
  if (name === undefined) throw new WrongCommand(`say what to do: ${names.join(', ')}`);
  const command = names.find((each) => each === name);
  if (command) return command;
  throw new WrongCommand(
    `"${name}" is not a command; ${didYouMean(name, names) ?? `commands are ${names.join(', ')}`}`,
  );
}

function known(name: string, typed: string, command: CommandName): OptionName {
  const takes: readonly OptionName[] = [...TAKES[command], 'help', 'version'];
  const option = takes.find((each) => each === name);
  if (option) return option;
  const elsewhere = Object.hasOwn(OPTIONS, name);
  if (elsewhere) throw new WrongCommand(`${typed} is not an option of ${command}`);
  const near = didYouMean(
    typed,
    takes.map((each) => `--${each}`),
  );
  throw new WrongCommand(`${typed} is not an option${near ? `; ${near}` : ''}`);
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
  // A value that looks like an option is one whose own value was left out.
  const isOption = inlineValue !== true && value !== undefined && /^-./.test(value);
  if (value === undefined || value.trim() === '' || isOption) {
    throw new WrongCommand(`--${option} needs a value`);
  }
  return value;
}
