/** The commands at the prompt and what each does, as `.help` lists them. */
const COMMANDS: Readonly<Record<string, string>> = {
  '.about NAME': 'what a function takes and gives',
  '.units inch|metric': 'the units that results are in from then on',
  '.ts, .ts FILE': 'the session as TypeScript, printed or in a new file',
  '.save FILE': 'keeps what was typed in a new file, for .load and calc',
  '.load FILE': 'works out its lines; at a mistake it stops and names the line',
  '.break': 'leaves a statement that is not finished',
  '.exit': 'leaves the prompt',
  '.help': 'this list',
};

/** What `.help` prints. */
export const promptHelp = (): string =>
  Object.entries(COMMANDS)
    .map(([command, what]) => `${command.padEnd(20)}${what}`)
    .join('\n');

/** Words for leaving and for help that are no commands here. */
const SLIPS: Readonly<Record<string, string>> = {
  '?': '.help',
  bye: '.exit',
  exit: '.exit',
  help: '.help',
  quit: '.exit',
  q: '.exit',
};

/** What to type instead of a bare word, if it is one that prompts elsewhere know. */
export const slipIn = (text: string): string | undefined => {
  const word = text.trim();
  return Object.hasOwn(SLIPS, word) ? `type ${SLIPS[word]}` : undefined;
};

/** What is said of a command that there is not. */
export const unknownCommand = (name: string): string =>
  `.${name} is not a command here; commands are\n${promptHelp()}`;
