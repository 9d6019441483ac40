import {
  type Angle,
  coherentUnit,
  type Dimension,
  type Length,
  type Quantity,
} from '../quantities/dimensions.js';
import { RebuildInputError } from '../quantities/error.js';

/** Refuses anything but an object that can hold named fields. */
export function guardObject(parameter: string, value: unknown): void {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'an object with named fields',
    hint: 'More than one argument goes in one object, e.g. { journal: inch(2.125) }.',
  });
}

/**
 * Refuses an object with a field that is not known. A misspelt option would
 * otherwise fall back to a rule of thumb without a word.
 */
export function guardFields(parameter: string, value: object, known: readonly string[]): void {
  guardObject(parameter, value);
  const stranger = Object.keys(value).find((key) => !known.includes(key));
  if (stranger === undefined) return;
  throw new RebuildInputError({
    parameter: `${parameter}.${stranger}`,
    value: (value as Readonly<Record<string, unknown>>)[stranger],
    expected: 'a known field',
    problem: 'is given, but there is no such field',
    hint: `Known fields here: ${known.join(', ')}.`,
  });
}

/** Refuses anything but a list with at least so many items. */
export function guardList(parameter: string, value: unknown, least: number, of: string): void {
  if (Array.isArray(value) && value.length >= least && !value.includes(undefined)) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a list of at least ${least} ${of}`,
    hint: 'Put them in square brackets, without holes.',
  });
}

/** Refuses anything but text with something in it. */
export function guardText(parameter: string, value: unknown): string {
  if (typeof value === 'string' && value.trim() !== '') return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a name',
    hint: 'Name it as it is marked on the bench.',
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
    expected: 'one of the words it may be',
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
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a finite ${wordsOf(dimension)} [${coherentUnit[dimension]}]`,
    hint: wrapHint(value, dimension === 'length' ? 'inch(2.1248)' : undefined),
  });
}

/**
 * Refuses a quantity outside what an engine can have, most often a bare number
 * that was never wrapped in its unit.
 */
export function guardBetween<D extends Dimension>(
  parameter: string,
  value: Quantity<D>,
  dimension: D,
  [least, most]: readonly [least: number, most: number],
  wrap: string,
): Quantity<D> {
  guardQuantity(parameter, value, dimension);
  if (value >= least && value <= most) return value;
  const plain = coherentUnit[dimension] === '-';
  const unit = plain ? '' : ` ${coherentUnit[dimension]}`;
  const range = `${Number(least.toPrecision(4))} … ${Number(most.toPrecision(4))}${unit}`;
  throw new RebuildInputError({
    parameter,
    value,
    shown: `${value}${unit}`,
    expected: range,
    problem: `is outside ${range}`,
    hint: plain
      ? `A ${wordsOf(dimension)} is a plain number here, e.g. ${wrap}.`
      : `The unit of ${wordsOf(dimension)} is${unit} here; wrap the reading in its own, e.g. ${wrap}.`,
  });
}

/** Refuses a length outside what this part of an engine can have. */
export function guardLength(parameter: string, value: Length, least: number, most: number): Length {
  // NaN and the infinities fail the comparisons. The error is made elsewhere, so
  // that this stays small enough to be inlined.
  if (typeof value === 'number' && value >= least && value <= most) return value;
  throw outsideLength(parameter, value, least, most);
}

function outsideLength(
  parameter: string,
  value: Length,
  least: number,
  most: number,
): RebuildInputError {
  const range = `${showLength(least)} … ${showLength(most)}`;
  const problem = {
    parameter,
    value,
    expected: `a length of ${range}`,
    hint: `Lengths are metres here; ${wrapHint(value, 'inch(2.1248)')}`,
  };
  if (!Number.isFinite(value)) return new RebuildInputError(problem);
  return new RebuildInputError({
    ...problem,
    shown: `${value} m`,
    problem: `is outside ${range}`,
  });
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
    expected: `within 5 % of ${other}, ${showLength(like)}`,
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
  guardBetween(parameter, value, 'angle', [-4 * Math.PI, 4 * Math.PI], 'degree(90)');

/** A place along a part. */
export const guardStation = (parameter: string, value: Length): Length =>
  guardLength(parameter, value, -2, 2);

/** The same dimension in words: `kinematic viscosity`. */
const wordsOf = (dimension: Dimension) =>
  dimension.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

function wrapHint(value: unknown, example?: string): string {
  if (typeof value === 'string') return 'text is read by parse, e.g. parseLength("2-1/8 in").';
  return `wrap the reading in its unit${example === undefined ? '' : `, e.g. ${example}`}.`;
}

/** A length as a person would read it. */
export function showLength(metres: number): string {
  if (metres === 0 || Math.abs(metres) >= 1) return `${metres} m`;
  return `${Number((metres * 1000).toPrecision(7))} mm`;
}
