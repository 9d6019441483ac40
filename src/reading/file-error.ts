import { RebuildInputError } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';

/** One problem in an inspection sheet or a shed file. */
export interface FileProblem {
  /** Its place: `rods[1].journal.readings[3].diameter`. */
  readonly path: string;
  /** What is wrong, in one or two sentences. */
  readonly message: string;
}

/** The most problems that the message lists; it only counts the others. */
const MOST_LISTED = 50;

/** All problems of an inspection sheet or a shed file, in one error. */
export class FileError extends RebuildInputError {
  /** Every problem, in the order of the file. */
  readonly problems: readonly FileProblem[];

  /**
   * Lists the problems, one per line, at most fifty.
   *
   * @param value - the raw file
   * @param problems - the problems, at least one
   * @param file - which file it is
   */
  constructor(
    value: unknown,
    problems: readonly FileProblem[],
    file: 'sheet' | 'shed' | 'work' = 'sheet',
  ) {
    const listed = problems.slice(0, MOST_LISTED);
    const lines = listed.map(({ path, message }) => `\n  ${path}: ${message}`).join('');
    const more = problems.length - listed.length;
    const one = problems.length === 1;
    super({
      parameter: file,
      value,
      shown: one ? '1 problem' : `${problems.length} problems`,
      expected: `a ${file === 'work' ? 'record of work' : file} without mistakes`,
      problem: 'found',
      hint: `Correct ${one ? 'it' : 'them'}:${lines}${more > 0 ? `\n  and ${more} more` : ''}`,
    });
    this.name = 'FileError';
    this.problems = problems;
  }
}

/** A problem of the file from an error that a calculation threw. */
export function problemAt(path: string, error: RebuildInputError): FileProblem {
  const { hint, example } = error;
  // A file has its units in it. What was left off in a program is mistyped here.
  const advice = example === undefined ? hint : 'Check the digits and the unit.';
  return { path, message: `${complaintOf(error)}. ${advice}` };
}
