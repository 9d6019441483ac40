/** What a {@link RebuildInputError} is made from. */
export interface InputProblem {
  /** Name of the parameter or path that is wrong, for example `sizes.journal`. */
  readonly parameter: string;
  /** The value as it came. */
  readonly value: unknown;
  /** What was expected, as a noun phrase: `a finite number`. */
  readonly expected: string;
  /** What probably went wrong and what to do about it. */
  readonly hint: string;
  /** The value as it should be shown; by default it is printed as JavaScript shows it. */
  readonly shown?: string;
  /** The complaint, if "is not {expected}" does not say it well. */
  readonly problem?: string;
  /** A value that is taken, as a caller writes it, if the unit may have been left off: `inch(2.1248)`. */
  readonly example?: string | undefined;
}

/** The code of every such error, whichever copy of the class below made it: each entry point holds one. */
const CODE = 'RebuildInputError';

/**
 * Wrong input. Thrown by every public function, before anything is computed,
 * when an argument cannot mean what it should. A bad part is never an error;
 * it is a verdict.
 */
export class RebuildInputError extends RangeError {
  /** The same for every error of this kind, `FileError` included. */
  declare readonly code: typeof CODE;
  /** Name of the parameter or path that is wrong. */
  declare readonly parameter: string;
  /** The value as it came. */
  declare readonly value: unknown;
  /** What was expected. */
  declare readonly expected: string;
  /** What probably went wrong. */
  declare readonly hint: string;
  /** A value that is taken, as a caller writes it, where the unit may have been left off. */
  declare readonly example?: string;

  /**
   * Tells an error of this kind, whichever entry point of the package threw it.
   *
   * @param value - anything
   * @returns whether it is one
   */
  static override [Symbol.hasInstance](value: unknown): boolean {
    // biome-ignore lint/complexity/noThisInStatic: a class below this one asks for its own
    if (this !== RebuildInputError) return super[Symbol.hasInstance](value);
    return (value as RebuildInputError | undefined)?.code === CODE;
  }

  /**
   * Makes the message from the parts.
   *
   * @param problem - the parameter, its value, what was expected and a hint
   */
  constructor({ shown, problem, ...told }: InputProblem) {
    const { parameter, value, expected, hint } = told;
    const complaint =
      value === undefined && problem === undefined
        ? `is missing; expected ${expected}`
        : `${shown ?? showValue(value)} ${problem ?? `is not ${expected}`}`;
    super(`${parameter}: ${complaint}. ${hint}`);
    Object.assign(this, told, { name: CODE, code: CODE });
  }
}

/** What is wrong, in the words of the message: without the parameter before it and the hint behind it. */
export const complaintOf = ({ message, parameter, hint }: RebuildInputError): string =>
  message.slice(parameter.length + 2, -hint.length - 2);

/** Prints any value, however hostile, in a few characters. */
export function showValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'an array';
  if (typeof value === 'object' && value) return 'an object';
  if (typeof value === 'function') return 'symbol' in value ? 'a unit' : 'a function';
  if (typeof value === 'number') return rounded(value, 9);
  if (typeof value !== 'string') return String(value);
  return JSON.stringify(value.length > 60 ? `${value.slice(0, 60)}…` : value);
}

/** A number without the noise of binary fractions. */
export const rounded = (value: number, digits = 7): string =>
  String(Number(value.toPrecision(digits)));
