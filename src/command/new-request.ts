import { didYouMean } from '../reading/index.js';
import type { Typed } from './arguments.js';
import { WrongCommand } from './wrong-command.js';

/** The options that answer what a new file must know, in the order of asking. */
export const ANSWERS = [
  'name',
  'cylinders',
  'mains',
  'rod-journal',
  'main-journal',
  'bore',
  'units',
  'lubrication',
  'cores',
] as const;
export type Answer = (typeof ANSWERS)[number];

/** Answers as they were typed. */
export type Answers = Partial<Readonly<Record<Answer, string>>>;

/** A request for a new file. */
export interface NewRequest {
  readonly command: 'new';
  readonly of: 'sheet' | 'shed' | 'readings';
  /** The shed whose readings are to be filled in. */
  readonly file?: string;
  readonly answers: Answers;
  /** Whether the CSV to fill is wanted, not the shed. */
  readonly csv: boolean;
  readonly output?: string;
  readonly force: boolean;
}

const WHICH = ['sheet', 'shed', 'readings'] as const;

/** Reads the command line of `new`. */
export function readNew({ operands: [which, file, more], options }: Typed): NewRequest {
  const of = WHICH.find((each) => each === which);
  if (of === undefined) {
    const near = didYouMean(which, WHICH);
    throw new WrongCommand(
      which === undefined
        ? 'new needs sheet, shed or readings'
        : `new: "${which}" is not sheet, shed or readings${near ? `; ${near}` : ''}`,
    );
  }
  const extra = of === 'readings' ? more : file;
  if (extra !== undefined) throw new WrongCommand(`new ${of}: "${extra}" is one too many`);
  const answers: Answers = Object.fromEntries(
    ANSWERS.flatMap((answer) => {
      const [text] = options.get(answer) ?? [];
      return text === undefined ? [] : [[answer, text]];
    }),
  );
  refuseStrange(of, [...Object.keys(answers), ...(options.has('csv') ? ['csv'] : [])]);
  const [output] = options.get('output') ?? [];
  if (options.has('force') && output === undefined) {
    throw new WrongCommand('--force needs --output');
  }
  return {
    command: 'new',
    of,
    ...(file !== undefined && { file }),
    answers,
    csv: options.has('csv'),
    ...(output !== undefined && { output }),
    force: options.has('force'),
  };
}

const OF_A_SHED = ['lubrication', 'cores', 'csv'];

/** Refuses an option that this kind of file has no use for. */
function refuseStrange(of: NewRequest['of'], given: readonly string[]): void {
  const strange = given.find(
    (each) => of === 'readings' || (of === 'sheet' && OF_A_SHED.includes(each)),
  );
  if (strange !== undefined) throw new WrongCommand(`--${strange} is not an option of new ${of}`);
}
