import { RebuildInputError } from '../quantities/index.js';
import { type FileProblem, problemAt } from './file-error.js';

/** Something to try, and where in the file it stands. */
export interface Check {
  readonly path: string | ((parameter: string) => string);
  readonly run: () => unknown;
}

/** What the checks refuse, each at its place. */
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

/** Something to try of a value, if there is one. */
export function where<T>(
  path: string,
  value: T | undefined,
  run: (value: T) => unknown,
): readonly Check[] {
  return value === undefined ? [] : [{ path, run: () => run(value) }];
}
