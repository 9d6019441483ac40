import { RebuildInputError } from '../quantities/error.js';
import { guardObject } from './guards.js';

/**
 * Works on an object that only another function of the library makes. Such an
 * object is not checked leaf by leaf; one from elsewhere that does not hold what it
 * should is refused when that shows.
 */
export function madeHere<T>(parameter: string, value: unknown, maker: string, use: () => T): T {
  guardObject(parameter, value);
  try {
    const result = use();
    if (result !== undefined) return result;
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
  }
  throw new RebuildInputError({
    parameter,
    value,
    expected: `what ${maker} gives`,
    hint: 'Pass that result on as it came.',
  });
}
