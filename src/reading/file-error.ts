import { RebuildInputError } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';
import type { FileProblem } from './file-problem.js';
import { isObject } from './given.js';
import { inInches } from './in-inches.js';
import { problemLines } from './problem-lines.js';

/** The most problems that the message lists; it only counts the others. */
const MOST_LISTED = 50;

/** All problems of an inspection sheet or a shed file, in one error. */
export class FileError extends RebuildInputError {
  /** Every problem, in the order of the file. */
  readonly problems: readonly FileProblem[];

  /**
   * Lists the problems, one per line, at most fifty lines. Each line says whose the place is, and one line is enough for a
   * mistake made again and again.
   *
   * @param value - the raw file
   * @param found - the problems, at least one
   * @param file - which file it is
   * @param given - the object in the file: for its names, and its units
   */
  constructor(
    value: unknown,
    found: readonly FileProblem[],
    file: 'sheet' | 'shed' | 'work' = 'sheet',
    given = value,
  ) {
    const isInch = isObject(given) && given['units'] === 'inch';
    const problems = isInch
      ? found.map(({ path, message }) => ({ path, message: inInches(message) }))
      : found;
    const all = problemLines(problems, given);
    const lines = all
      .slice(0, MOST_LISTED)
      .map((line) => `\n  ${line}`)
      .join('');
    const more = all.length - MOST_LISTED;
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
