import { RebuildInputError } from 'crankwright';
import { expect } from 'vitest';

/** Expects a refusal of a parameter, and words in its message. */
export function expectRefusal(run: () => unknown, parameter: string, words: string): void {
  let thrown: unknown;
  try {
    run();
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toBeInstanceOf(RebuildInputError);
  const { message, parameter: refused } = thrown as RebuildInputError;
  expect(refused).toBe(parameter);
  expect(message).toContain(words);
}
