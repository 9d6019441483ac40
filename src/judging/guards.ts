import {
  coherentUnit,
  type Dimension,
  type Length,
  type Quantity,
  RebuildInputError,
  type Unit,
} from '../quantities/index.js';
import { hintFor, outsideBounds, outsideLength, showLength, wordsOf } from './showing.js';
import { wordsMeant } from './trade-words.js';

/** Refuses anything but an object that can hold named fields. */
export function guardObject(parameter: string, value: unknown): void {
  if (typeof value === 'object' && value && !Array.isArray(value)) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'an object',
    hint: 'Write { name: value }.',
  });
}

/** The names of the fields of an object, or of every kind of object that it may be. */
type FieldOf<T> = T extends unknown ? keyof T : never;

/**
 * Holds a list of names to a type: where one is forgotten, or is no field of it, the list does not
 * compile. Only where the type has no names of its own may the list be made at run time.
 */
type EveryFieldOf<T, Names extends readonly string[]> =
  string extends FieldOf<T>
    ? unknown
    : number extends Names['length']
      ? { readonly written: 'as const' }
      : [Exclude<FieldOf<T>, Names[number]>, Exclude<Names[number], FieldOf<T>>] extends [
            never,
            never,
          ]
        ? unknown
        : {
            readonly forgotten: Exclude<FieldOf<T>, Names[number]>;
            readonly unknown: Exclude<Names[number], FieldOf<T>>;
          };

/**
 * Refuses an object with a field that is not known, and what is no object. A misspelt option would
 * otherwise fall back to a rule of thumb without a word.
 */
export function guardFields<T extends object, const Names extends readonly string[]>(
  parameter: string,
  value: T,
  known: Names & EveryFieldOf<T, Names>,
): void {
  // This stands at every door. Fields mostly come in the order of the list, and then nothing is searched.
  let next = 0;
  for (const field in value) {
    if (field !== known[next]) next = known.indexOf(field);
    if (next < 0) throw strangeField(parameter, value, field, known);
    next++;
  }
  if (next === 0) guardObject(parameter, value);
}

function strangeField(
  parameter: string,
  value: object,
  field: string,
  known: readonly string[],
): RebuildInputError {
  // Letters of a text and items of a list are met here as fields, too.
  guardObject(parameter, value);
  return new RebuildInputError({
    parameter: `${parameter}.${field}`,
    value: (value as Readonly<Record<string, unknown>>)[field],
    shown: `"${field}"`,
    expected: 'a known field',
    hint: `Fields: ${known.join(', ')}.`,
  });
}

/** Refuses anything but a list with at least so many items, and one with a hole in it. */
export function guardList(parameter: string, value: unknown, least: number, of: string): void {
  if (!Array.isArray(value) || value.length < least) {
    throw new RebuildInputError({
      parameter,
      value,
      expected: least === 0 ? `a list of ${of}` : `a list of at least ${least} ${of}`,
      hint: Array.isArray(value) ? 'Is it the right list?' : 'Put them in square brackets.',
      ...(Array.isArray(value) && {
        shown: value.length === 0 ? 'an empty list' : `a list of ${value.length}`,
      }),
    });
  }
  if (!value.includes(undefined)) return;
  throw new RebuildInputError({
    // A copy holds undefined where the list has a hole; indexOf passes over holes.
    parameter: `${parameter}[${[...value].indexOf(undefined)}]`,
    value: undefined,
    expected: 'something at each place of the list',
    hint: 'A list has no holes: is there a comma too many?',
  });
}

/** Refuses anything but text with something in it. */
export function guardText(parameter: string, value: unknown): string {
  if (typeof value === 'string' && value.trim() !== '') return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a text that says something',
    hint: 'Write it in quotes, as you would on the bench, e.g. "rod 1".',
  });
}

/** Refuses what is not one of a few words. */
export function guardWord<W extends string>(
  parameter: string,
  value: unknown,
  words: readonly W[],
): W {
  if (words.includes(value as W)) return value as W;
  const meant = wordsMeant(value, words).map((each) => `"${each}"`);
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a known value',
    hint: `${meant.length > 0 ? `Did you mean ${meant.join(' or ')}? ` : ''}One of: ${words.join(', ')}.`,
  });
}

/** Refuses what is neither true nor false. */
export function guardTruth(parameter: string, value: unknown): void {
  if (typeof value === 'boolean') return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'true or false',
    hint: 'Without quotes.',
  });
}

/** Refuses what is not a whole number within bounds, a multiple of some other. */
export function guardWhole(
  parameter: string,
  value: number,
  [least, most]: readonly [least: number, most: number],
  hint: string,
  multipleOf = 1,
): number {
  const sound = typeof value === 'number' && value >= least && value <= most;
  if (sound && Number.isInteger(value / multipleOf)) return value;
  const kind = multipleOf === 1 ? 'a whole number' : `a multiple of ${multipleOf}`;
  throw new RebuildInputError({
    parameter,
    value,
    expected: `${kind} from ${least} to ${most}`,
    hint,
  });
}

/** Whether it is a finite number, and not one so large that sums and products could not be held. */
export const isSoundNumber = (value: unknown): value is number =>
  Number.isFinite(value) && Math.abs(value as number) < 1e100;

/** Refuses anything but a sound number. */
export function guardQuantity<D extends Dimension>(
  parameter: string,
  value: Quantity<D>,
  dimension: D,
  example = dimension === 'length' ? 'inch(2.1248)' : undefined,
): Quantity<D> {
  if (isSoundNumber(value)) return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a finite ${wordsOf(dimension)} [${coherentUnit[dimension]}]`,
    hint: hintFor(
      value,
      `Give it as a number, and wrap it in its unit${example ? `, e.g. ${example}` : ''}.`,
    ),
    example,
  });
}

/**
 * Refuses a quantity outside bounds that another value sets, most often a bare number that was never
 * wrapped in its unit. What is wrong is told in the unit that the trade reads, the bounds are in
 * coherent SI. Fixed bounds are a domain.
 */
export function guardBetween<D extends Dimension>(
  parameter: string,
  value: Quantity<D>,
  unit: Unit<D>,
  [least, most]: readonly [least: number, most: number],
  example: string,
): Quantity<D> {
  if (typeof value === 'number' && value >= least && value <= most) return value;
  guardQuantity(parameter, value, unit.dimension);
  throw outsideBounds(parameter, value, unit, { least, most, example });
}

/** Refuses a length outside bounds that another size sets. */
export function guardLength(
  parameter: string,
  value: Length,
  [least, most]: readonly [least: number, most: number],
  example: string,
): Length {
  // NaN and the infinities fail the comparisons.
  if (typeof value === 'number' && value >= least && value <= most) return value;
  throw outsideLength(parameter, value, { least, most, example });
}

/** Refuses a size that differs by more than 5 % from one it must nearly equal. */
export function guardAlike(parameter: string, value: Length, other: string, like: Length): Length {
  if (Math.abs(value - like) <= 0.05 * like) return value;
  throw new RebuildInputError({
    parameter,
    value,
    shown: showLength(value),
    expected: `within 5 % of ${other} (${showLength(like)})`,
    hint: 'They belong to one cylinder: a digit has slipped, or the units are mixed.',
  });
}
