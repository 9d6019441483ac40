import { z } from 'zod';
import { showValue } from '../quantities/internal.js';
import { marked } from './marks.js';
import { either, unknownField, wordMeant } from './nearest.js';

/** An object with exactly these fields; any other is refused, with the nearest known field. The example is of such an object. */
export function fields<S extends z.ZodRawShape>(shape: S, example?: string) {
  return z.strictObject(shape, {
    error: (issue) => {
      // One line for each field; `problemsOf` splits them again.
      if (issue.code === 'unrecognized_keys')
        return issue.keys.map((key) => unknownField(key, Object.keys(shape))).join('\n');
      if (issue.input === undefined) return 'is missing';
      const own = example ?? ('min' in shape && 'max' in shape ? SPAN : undefined);
      const shown = own === undefined ? '' : `, e.g. ${own}`;
      return `must be an object with named fields: ${Object.keys(shape).join(', ')}${shown}`;
    },
  });
}

/** How a span is written in a file. */
const SPAN = '{ "min": "1.6245 in", "max": "1.6250 in" }';

/** The same, but if a field is wrong the others are still checked. Do not refine it. */
export function partial<S extends z.ZodRawShape>(shape: S) {
  return marked(fields(shape), { partial: true });
}

/** A list with at least `least` items. */
export function list<T extends z.ZodType>(item: T, least = 1) {
  const any = z.array(item, {
    error: ({ input }) =>
      input === undefined ? 'is missing' : 'must be a list, in square brackets',
  });
  return least === 0
    ? any
    : any.min(least, `must have at least ${least} ${least === 1 ? 'entry' : 'entries'}`);
}

/** A list of words or names without repeats. */
export function listOfDifferent<T extends z.ZodType<string>>(item: T, least = 0) {
  return list(item, least).refine(
    (all) => new Set(all).size === all.length,
    'lists an entry twice',
  );
}

/** A name, as marked on the bench. A name ends up in tables that a spreadsheet opens, and there it must stay text. */
export const name = z
  .string({
    error: ({ input }) => (input === undefined ? 'is missing' : 'must be text, in quotes'),
  })
  .trim()
  .min(1, 'must not be empty')
  .max(60, 'must have at most 60 characters')
  .regex(/^[^\n\r\u2028\u2029]*$/, 'must be on one line')
  .regex(/^(?:\P{Cc}|[\n\r])*$/u, { error: ({ input }) => controlCharacter(String(input)) })
  .regex(/^(?![=@]|[+-](?![\d.]))/, { error: ({ input }) => formula(String(input)) });

function controlCharacter(text: string): string {
  const at = text.search(/(?![\n\r])\p{Cc}/u);
  const code = text.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0');
  return `has a character at place ${at + 1} that cannot be seen (U+${code}); remove it`;
}

function formula(text: string): string {
  const numbers = /^[+-]/.test(text) ? ', unless a number follows' : '';
  return `${showValue(text)} must not begin with ${text[0]}${numbers}: a spreadsheet would run it as a formula`;
}

/** One of the given words. */
export function word<const W extends string>(...words: readonly W[]) {
  return z.enum(words, {
    error: ({ input }) => {
      if (input === undefined) return `is missing: ${either(words)}`;
      const question = wordMeant(input, words);
      return `${showValue(input)} must be ${either(words)}${question ? `; ${question}` : ''}`;
    },
  });
}

/** A whole number of things, from `least` to `most`. */
export function count(things: string, least: number, most = 10_000) {
  const error = `must be a whole number of ${things}, ${least} to ${most}, without quotes`;
  return z.int({ error }).min(least, error).max(most, error);
}

/**
 * Reads a value with the schema chosen by its form. A union would report the problems of every
 * schema, though only one is meant.
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
