import { RebuildInputError } from 'crankwright';

/** The error that a call is refused with. Fails the test if it is not refused, or not by us. */
export function refusal(act: () => unknown): RebuildInputError {
  let result: unknown;
  try {
    result = act();
  } catch (error) {
    if (error instanceof RebuildInputError) return error;
    throw new Error(`refused, but not with a RebuildInputError: ${String(error)}`);
  }
  throw new Error(`not refused: gave ${JSON.stringify(result)}`);
}

/** Numbers that are none, as they come from elsewhere. */
export const notNumbers: readonly unknown[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  null,
  undefined,
  '1',
  '2-1/8 in',
  {},
  [1],
  true,
  1n,
];
