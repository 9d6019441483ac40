import { RebuildInputError } from '../quantities/index.js';

/** One thing wrong with a sheet or a shed. */
export interface FileProblem {
  /** Where: `rods[1].journal.readings[3].diameter`. */
  readonly path: string;
  /** What, in one or two sentences. */
  readonly message: string;
}

/** More problems than these are only counted in the message. */
const MOST_LISTED = 50;

/** Everything that is wrong with a sheet or a shed, in one error. */
export class FileError extends RebuildInputError {
  /** Every problem, in the order of the file. */
  readonly problems: readonly FileProblem[];

  /**
   * Lists the problems, one a line, up to fifty of them.
   *
   * @param value - the file as it came
   * @param problems - what is wrong with it, at least one
   * @param file - which file it is
   */
  constructor(value: unknown, problems: readonly FileProblem[], file: 'sheet' | 'shed' = 'sheet') {
    const listed = problems.slice(0, MOST_LISTED);
    const lines = listed.map(({ path, message }) => `\n  ${path}: ${message}`).join('');
    const more = problems.length - listed.length;
    const one = problems.length === 1;
    super({
      parameter: file,
      value,
      shown: one ? '1 problem' : `${problems.length} problems`,
      expected: `a ${file} without mistakes`,
      problem: 'found',
      hint: `Correct ${one ? 'it' : 'each'} at its place:${lines}${more > 0 ? `\n  and ${more} more` : ''}`,
    });
    this.name = 'FileError';
    this.problems = problems;
  }
}

/** A problem from an error that a calculation threw, in the words of a file. */
export function problemAt(path: string, { complaint, hint }: RebuildInputError): FileProblem {
  const advice = hint.includes('wrap the reading') ? 'Check the digits and the unit.' : hint;
  return { path, message: `${complaint}. ${advice}` };
}
