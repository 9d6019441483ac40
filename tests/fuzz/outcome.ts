import { inspect, isDeepStrictEqual } from 'node:util';
import { RebuildInputError } from 'crankwright';
import type { Calls } from './calls/calls.js';
import { frozen } from './hostile.js';

type Outcome = { readonly result: unknown } | { readonly error: unknown };

/**
 * Calls a function twice with frozen arguments and says what is wrong with what
 * came of it; undefined if it is a clean result or a clean refusal. A `sound`
 * call must not be refused, and must come back from JSON to the bit; from one with a wrong value in it
 * -0 may come back as 0, and a field that is undefined may be gone.
 */
export async function complaint(
  target: Calls,
  args: readonly unknown[],
  kind: 'sound' | 'hostile' = 'hostile',
): Promise<string | undefined> {
  frozen(args);
  const first = await outcomeOf(target, args);
  const second = await outcomeOf(target, args);
  if ('error' in first) {
    const flaw = flawOfError(first.error);
    if (flaw !== undefined) return flaw;
    if (kind === 'sound') return `refuses a sound call: ${(first.error as Error).message}`;
    const again = 'error' in second && second.error instanceof Error ? second.error.message : '';
    return (first.error as Error).message === again ? undefined : 'a second call ends otherwise';
  }
  if (!('result' in second) || !isDeepStrictEqual(first.result, second.result)) {
    return 'a second call gives another result';
  }
  const flaw = flawOfValue(first.result, 'result');
  if (flaw !== undefined) return flaw;
  if (target.notJson !== undefined) return undefined;
  return flawOfJson(kind === 'sound' ? first.result : tidied(first.result));
}

async function outcomeOf(target: Calls, args: readonly unknown[]): Promise<Outcome> {
  try {
    return { result: await target.run(args) };
  } catch (error) {
    return { error };
  }
}

/** What is wrong with what was thrown. */
export function flawOfError(error: unknown): string | undefined {
  if (!(error instanceof RebuildInputError)) {
    return error instanceof Error
      ? `throws ${error.name}: ${error.message}`
      : `throws ${show(error)}`;
  }
  for (const field of ['parameter', 'expected', 'hint', 'message'] as const) {
    if (typeof error[field] !== 'string' || error[field].trim() === '') {
      return `throws a RebuildInputError without ${field}: ${error.message}`;
    }
  }
  // `[object Object]` and the like stand for a value that was not shown.
  if (error.message.includes('[object ')) return `shows no more than "${error.message}"`;
  const noise = numbersIn(error.message).find((number) => digitsOf(number) > 9);
  return noise === undefined ? undefined : `shows ${noise} in "${error.message}"`;
}

/** A number that nobody at a bench writes: with an exponent, or with more than nine digits. */
export const noiseIn = (message: string): string | undefined =>
  numbersIn(message).find((number) => /e/i.test(number) || digitsOf(number) > 9);

/** The numbers in a message. Text that was given is in quotes, and its numbers are not ours. */
const numbersIn = (message: string): readonly string[] =>
  message.replaceAll(/"(?:[^"\\]|\\.)*"/g, '').match(/(?<![\w.])\d+(?:\.\d+)?(?:e[+-]?\d+)?/gi) ??
  [];

/** How many digits of a number count: not the zeros that only hold its place. */
function digitsOf(number: string): number {
  const digits = number.replace(/e.*/i, '').replace(/^0\.?0*/, '');
  return (digits.includes('.') ? digits.replace('.', '') : digits.replace(/0+$/, '')).length;
}

/** The first number in a result that is none. */
function flawOfValue(value: unknown, at: string): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${at} is ${value}`;
  if (typeof value === 'string') {
    // What a JSON Schema calls the type of null.
    if (value === 'null' && at.endsWith('.type')) return undefined;
    return /\b(?:NaN|Infinity|undefined|null)\b|\[object /.test(value)
      ? `${at} is ${show(value)}`
      : undefined;
  }
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const flaw = flawOfValue(inner, `${at}.${key}`);
    if (flaw !== undefined) return flaw;
  }
  return undefined;
}

/** Whether a result is the same after a trip through JSON. */
function flawOfJson(result: unknown): string | undefined {
  try {
    const text: string | undefined = JSON.stringify(result);
    return difference(result, text === undefined ? undefined : JSON.parse(text), 'result');
  } catch (error) {
    return `the result cannot be JSON: ${String(error)}`;
  }
}

/** The first place where two values differ. */
function difference(a: unknown, b: unknown, at: string): string | undefined {
  if (isDeepStrictEqual(a, b)) return undefined;
  if (isRecord(a) && isRecord(b) && Array.isArray(a) === Array.isArray(b)) {
    for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
      const inner = difference(a[key], b[key], `${at}.${key}`);
      if (inner !== undefined) return inner;
    }
  }
  return `${at.slice(0, 80)} is ${show(a)}, after JSON ${show(b)}`;
}

/** Without -0, without fields that are undefined, and every object with a prototype as JSON gives it. */
function tidied(value: unknown): unknown {
  if (Object.is(value, -0)) return 0;
  if (Array.isArray(value)) return value.map(tidied);
  if (!isRecord(value)) return value;
  if (![Object.prototype, null].includes(Object.getPrototypeOf(value))) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) =>
      inner === undefined ? [] : [[key, tidied(inner)]],
    ),
  );
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const show = (value: unknown): string => {
  const text = inspect(value, { depth: 3, breakLength: Number.POSITIVE_INFINITY });
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
};
