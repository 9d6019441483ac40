import { z } from 'zod';
import { showValue } from '../quantities/internal.js';
import { marked } from './marks.js';
import { didYouMean, either, strangeField } from './nearest.js';

/** An object with just these fields; others are refused, each with the nearest there is. */
export function fields<S extends z.ZodRawShape>(shape: S) {
  return z.strictObject(shape, {
    error: (issue) => {
      // One line for each: they part again where the issue becomes problems.
      if (issue.code === 'unrecognized_keys')
        return issue.keys.map((key) => strangeField(key, Object.keys(shape))).join('\n');
      return issue.input === undefined ? 'is missing' : 'must be an object with named fields';
    },
  });
}

/** The same, but where a field is wrong the others are still looked at. It is not to be refined. */
export function partial<S extends z.ZodRawShape>(shape: S) {
  return marked(fields(shape), { partial: true });
}

/** A list with at least so many items. */
export function list<T extends z.ZodType>(item: T, least = 1) {
  const any = z.array(item, {
    error: ({ input }) =>
      input === undefined ? 'is missing' : 'must be a list, in square brackets',
  });
  return least === 0 ? any : any.min(least, `must have at least ${least} entry`);
}

/** A list of words or names of which none stands twice. */
export function listOfDifferent<T extends z.ZodType<string>>(item: T, least = 0) {
  return list(item, least).refine(
    (all) => new Set(all).size === all.length,
    'lists something twice',
  );
}

/** A name as it is marked on the bench. */
export const name = z
  .string({
    error: ({ input }) => (input === undefined ? 'is missing' : 'must be text, in quotes'),
  })
  .trim()
  .min(1, 'must not be empty')
  .max(60, 'must have at most 60 characters')
  .regex(/^\P{Cc}*$/u, 'must stand on one line');

/** One of a few words. */
export function word<const W extends string>(...words: readonly W[]) {
  return z.enum(words, {
    error: ({ input }) => {
      if (input === undefined) return `is missing: ${either(words)}`;
      const question = didYouMean(input, words);
      return `${showValue(input)} must be ${either(words)}${question ? `; ${question}` : ''}`;
    },
  });
}

/** A whole number of things, from so many to so many. */
export function count(things: string, least: number, most = 10_000) {
  const error = `must be a whole number of ${things}, ${least} to ${most}, without quotes`;
  return z.int({ error }).min(least, error).max(most, error);
}

/**
 * Reads a value by the one of several schemas that its look asks for. A union would
 * report what is wrong with it in every reading; only one is meant.
 */
export function chosen<T>(
  options: readonly z.ZodType<T>[],
  choose: (value: unknown) => z.ZodType<T>,
) {
  const read = z.unknown().transform((value, context): T => {
    const result = choose(value).safeParse(value);
    if (result.success) return result.data;
    for (const issue of result.error.issues) context.addIssue({ ...issue, code: 'custom' });
    return z.NEVER;
  });
  return marked(read, { options });
}
