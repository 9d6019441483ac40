import { RebuildInputError } from '../quantities/index.js';
import { problemAt } from './file-error.js';
import type { FileProblem } from './file-problem.js';

/** A calculation to try on values of the file, and the path of those values. */
export interface Check {
  readonly path: string | ((parameter: string) => string);
  readonly run: () => unknown;
}

/** The problems that the checks find, each with its path. */
export function problemsFrom(checks: readonly Check[]): readonly FileProblem[] {
  return checks.flatMap(({ path, run }) => {
    try {
      run();
      return [];
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
      return [problemAt(typeof path === 'string' ? path : path(error.parameter), error)];
    }
  });
}

/** A check of a value, if there is one. */
export function checkIfGiven<T>(
  path: string,
  value: T | undefined,
  run: (value: T) => unknown,
): readonly Check[] {
  return value === undefined ? [] : [{ path, run: () => run(value) }];
}
