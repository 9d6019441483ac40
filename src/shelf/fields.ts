import { z } from 'zod';
import { guardClearance } from '../judging/guards.js';
import type { SizeOrSpan, Span } from '../judging/limits.js';
import type { Dimension, Length, Quantity } from '../quantities/dimensions.js';
import { RebuildInputError, showValue } from '../quantities/error.js';
import { parse, parseLength } from '../quantities/parse.js';
import type { StatedLimits } from './sheet.js';
import { problemAt } from './sheet-error.js';

type Guard<D extends Dimension> = (parameter: string, value: Quantity<D>) => Quantity<D>;

/** Text with a unit, such as `"2.1248 in"`, read and then checked against what the part can have. */
export function quantity<D extends Dimension>(dimension: D, guard: Guard<D>) {
  return read((text) => parse(text, dimension), guard);
}

/** An undersize: `"standard"`, `"20 under"`, `"0.50 mm under"`. */
export function undersize(guard: Guard<'length'>) {
  return read(
    (text) => (text.trim().toLowerCase() === 'standard' ? (0 as Length) : parseLength(text)),
    guard,
  );
}

/** Text that a reader turns into a quantity; what it or the guard refuses becomes a problem of the sheet. */
function read<D extends Dimension>(reader: (text: string) => Quantity<D>, guard: Guard<D>) {
  return z
    .string({
      error: ({ input }) =>
        input === undefined
          ? 'is missing'
          : `${showValue(input)} is not text; write number and unit in quotes, e.g. "2.1248 in"`,
    })
    .transform((text, context): Quantity<D> => {
      try {
        return guarded(text, reader(text), guard);
      } catch (error) {
        if (!(error instanceof RebuildInputError)) throw error;
        context.addIssue(problemAt('', error).message);
        return z.NEVER;
      }
    });
}

/** What the guard says, in the words of the sheet: the text as it was written. */
function guarded<D extends Dimension>(text: string, value: Quantity<D>, guard: Guard<D>) {
  try {
    return guard('text', value);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    const { expected } = error;
    const hint = 'Check the digits and the unit.';
    throw new RebuildInputError({ parameter: 'text', value: text, expected, hint });
  }
}

/** An object with just these fields; others are refused with the ones there are. */
export function fields<S extends z.ZodRawShape>(shape: S) {
  return z.strictObject(shape, {
    error: ({ code, input }) => {
      if (code === 'unrecognized_keys')
        return `known fields here: ${Object.keys(shape).join(', ')}`;
      return input === undefined ? 'is missing' : 'must be an object with named fields';
    },
  });
}

/** A list with at least so many items. */
export function list<T extends z.ZodType>(item: T, least = 1) {
  return z
    .array(item, {
      error: ({ input }) =>
        input === undefined ? 'is missing' : 'must be a list, in square brackets',
    })
    .min(least, `must have at least ${least} entry`);
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
export function word<const W extends readonly [string, ...string[]]>(...words: W) {
  return z.enum(words, {
    error: ({ input }) =>
      input === undefined
        ? `is missing: ${words.join(' or ')}`
        : `${showValue(input)} must be ${words.join(' or ')}`,
  });
}

/** A span, its ends the right way round. */
export function span(guard: Guard<'length'>) {
  const end = quantity('length', guard);
  return fields({ min: end, max: end }).refine(inOrder, { error: REVERSED, abort: true });
}

/** One size as text, or a span of them. */
export function sizeOrSpan(guard: Guard<'length'>) {
  const [size, range] = [quantity('length', guard), span(guard)];
  return chosen<SizeOrSpan<Length>>((value) => (typeof value === 'object' ? range : size));
}

/**
 * Reads a value by the schema that its look asks for. A union would report what
 * is wrong with it in every reading; only one is meant.
 */
export function chosen<T>(choose: (value: unknown) => z.ZodType<T>) {
  return z.unknown().transform((value, context): T => {
    const result = choose(value).safeParse(value);
    if (result.success) return result.data;
    for (const issue of result.error.issues) context.addIssue({ ...issue, code: 'custom' });
    return z.NEVER;
  });
}

/** Limits with at least one bound, and who set them. */
export function statedLimits(
  guard: Guard<'length'> = guardClearance,
): z.ZodType<StatedLimits<'length'>> {
  const bound = quantity('length', guard);
  return fields({
    min: bound.exactOptional(),
    max: bound.exactOptional(),
    source: name.exactOptional(),
  })
    .refine(({ min, max }) => min !== undefined || max !== undefined, 'needs a min, a max or both')
    .refine(inOrder, REVERSED) as unknown as z.ZodType<StatedLimits<'length'>>;
}

const REVERSED = 'min is above max; swap the two';

function inOrder({ min, max }: Partial<Span<number>>): boolean {
  return min === undefined || max === undefined || min <= max;
}
