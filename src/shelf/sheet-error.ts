import { RebuildInputError } from '../quantities/error.js';

/** One thing wrong with a sheet. */
export interface SheetProblem {
  /** Where: `rods[1].journal.readings[3].diameter`. */
  readonly path: string;
  /** What, in one or two sentences. */
  readonly message: string;
}

/** Everything that is wrong with a sheet, in one error. */
export class SheetError extends RebuildInputError {
  /** Every problem, in the order of the sheet. */
  readonly problems: readonly SheetProblem[];

  /**
   * Lists the problems, one a line.
   *
   * @param value - the sheet as it came
   * @param problems - what is wrong with it, at least one
   */
  constructor(value: unknown, problems: readonly SheetProblem[]) {
    const lines = problems.map(({ path, message }) => `\n  ${path}: ${message}`).join('');
    super({
      parameter: 'sheet',
      value,
      shown: problems.length === 1 ? '1 problem' : `${problems.length} problems`,
      expected: 'a sheet without mistakes',
      problem: 'to correct before anything is inspected',
      hint: `Each with its place:${lines}`,
    });
    this.name = 'SheetError';
    this.problems = problems;
  }
}

/** A problem from an error that a calculation threw, in the words of a sheet. */
export function problemAt(path: string, { complaint, hint }: RebuildInputError): SheetProblem {
  const advice = hint.includes('wrap the reading') ? 'Check the digits and the unit.' : hint;
  return { path, message: `${complaint}. ${advice}` };
}
