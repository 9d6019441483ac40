import {
  type Angle,
  coherentUnit,
  type Dimension,
  degree,
  type Length,
  type Quantity,
  RebuildInputError,
  type Unit,
} from '../quantities/index.js';
import { outsideBounds, outsideLength, showLength, textHint, wordsOf } from './showing.js';

/** Refuses anything but an object that can hold named fields. */
export function guardObject(parameter: string, value: unknown): void {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'an object with named fields',
    hint: 'Write its fields in braces, e.g. { name: value }.',
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
    expected: 'a known field',
    problem: 'is given, but there is no such field',
    hint: `Known fields here: ${known.join(', ')}.`,
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
  const found = words.find((word) => word === value);
  if (found !== undefined) return found;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a known value',
    hint: `One of: ${words.join(', ')}.`,
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
): Quantity<D> {
  if (isSoundNumber(value)) return value;
  const example = dimension === 'length' ? ', e.g. inch(2.1248)' : '';
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a finite ${wordsOf(dimension)} [${coherentUnit[dimension]}]`,
    hint: textHint(value) ?? `Give it as a number, and wrap the reading in its unit${example}.`,
  });
}

/**
 * Refuses a quantity outside what an engine can have, most often a bare number
 * that was never wrapped in its unit. What is wrong is told in the unit that the
 * trade reads, the bounds are in coherent SI.
 */
export function guardBetween<D extends Dimension>(
  parameter: string,
  value: Quantity<D>,
  unit: Unit<D>,
  bounds: readonly [least: number, most: number],
  example: string,
): Quantity<D> {
  if (typeof value === 'number' && value >= bounds[0] && value <= bounds[1]) return value;
  guardQuantity(parameter, value, unit.dimension);
  throw outsideBounds(parameter, value, unit, bounds, example);
}

/** The least that is taken of what may also be nothing: a negative value is told that nothing is the least. */
export const noneOr = (least: number, value: unknown): number =>
  typeof value === 'number' && value <= 0 ? 0 : least;

/** Refuses a length outside what this part of an engine can have. */
export function guardLength(parameter: string, value: Length, least: number, most: number): Length {
  // NaN and the infinities fail the comparisons. The error is made elsewhere, so
  // that this stays small enough to be inlined.
  if (typeof value === 'number' && value >= least && value <= most) return value;
  throw outsideLength(parameter, value, least, most);
}

/** Journals, bores and pistons: anything from a model engine to a small ship's. */
export const guardDiameter = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, 0.003, 1);

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

/** Clearances, gaps and floats of either sign. */
export const guardClearance = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, -0.01, 0.01);

/** Out-of-round, taper and runout as they were measured: nothing or more. */
export const guardFlaw = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, 0, 0.01);

/** An undersize, from standard to far beyond what is made. */
export const guardUndersize = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, 0, 0.003);

/** Stock left to machine. */
export const guardStock = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, 0, 0.0005);

/** Wear or shape that may be let pass. */
export const guardTolerance = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, 0, 0.0002);

/** An angle, up to two turns either way. */
export const guardAngle = (parameter: string, value: Angle): Angle =>
  guardBetween(parameter, value, degree, TWO_TURNS, 'degree(90)');
const TWO_TURNS = [-12.566370614359172, 12.566370614359172] as const;

/** A place along a part. */
export const guardStation = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, -2, 2);
