import {
  coherentUnit,
  type Dimension,
  type Length,
  type Quantity,
  RebuildInputError,
  type Unit,
  valueIn,
} from '../quantities/index.js';
import { rounded } from '../quantities/internal.js';

/** A length as a person would read it. */
export function showLength(metres: number): string {
  if (metres === 0 || Math.abs(metres) >= 1) return `${rounded(metres)} m`;
  return `${rounded(metres * 1000)} mm`;
}

/** A number as a person would write it: no noise of binary fractions, and no exponent. */
export function showNumber(value: number): string {
  const text = rounded(value);
  if (!text.includes('e')) return text;
  return Math.abs(value) > 1
    ? 'a huge number'
    : Number(text)
        .toFixed(20)
        .replace(/\.?0+$/, '');
}

/** A quantity in a unit, as a person would read it. */
export const showIn = <D extends Dimension>(quantity: Quantity<D>, unit: Unit<D>): string =>
  withUnit(showNumber(valueIn<D>(quantity, unit)), unit.symbol);

/** A quantity of any dimension: a length as a person would read it, anything else in its coherent SI unit. */
export const showQuantity = (quantity: number, dimension: Dimension): string =>
  dimension === 'length'
    ? showLength(quantity)
    : withUnit(showNumber(quantity), coherentUnit[dimension]);

const withUnit = (number: string, symbol: string) =>
  symbol === '-' ? number : `${number} ${symbol}`;

/** The same dimension in words: `kinematic viscosity`. */
export const wordsOf = (dimension: Dimension): string =>
  dimension.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

/** What to do with text where a number belongs, or with what is no text. */
export const hintFor = (value: unknown, otherwise: string): string =>
  typeof value === 'string' ? 'Use parse for text.' : otherwise;

/** What a quantity must lie between, both bounds in coherent SI and taken. */
export interface Bounds {
  /** Least that is taken. */
  readonly least: number;
  /** Most that is taken. */
  readonly most: number;
  /** Whether 0 is taken besides, though the least is more: a leak is none, or one that can be measured. */
  readonly orNone?: boolean;
  /** One that is taken, as a caller writes it: `inch(2.1248)`. */
  readonly example: string;
}

/** Refuses a length that no such part has, or what is no length; most often one that was not wrapped in its unit. */
export function outsideLength(
  parameter: string,
  value: Length,
  { least, most, example }: Omit<Bounds, 'example'> & { readonly example?: string },
  hint = `Lengths are metres here; wrap it in its unit, e.g. ${example}.`,
): RebuildInputError {
  const from = showLength(least);
  const to = showLength(most);
  return new RebuildInputError({
    parameter,
    value,
    example,
    expected: `a length of ${from} … ${to}`,
    hint: hintFor(value, hint),
    ...(Number.isFinite(value) && {
      shown: showLength(value),
      problem: outside(showLength(value), from, to),
    }),
  });
}

/** Refuses a finite quantity outside its bounds, in the unit that the trade reads; the hint tells what was given. */
export function outsideBounds<D extends Dimension>(
  parameter: string,
  value: Quantity<D>,
  unit: Unit<D>,
  { least, most, orNone, example }: Bounds,
): RebuildInputError {
  const inUnit = (quantity: number) => showNumber(valueIn<D>(quantity as Quantity<D>, unit));
  const [from, to, shown] = [inUnit(least), inUnit(most), inUnit(value)];
  const tail = unit.symbol === '-' ? '' : ` ${unit.symbol}`;
  const coherent = coherentUnit[unit.dimension];
  const words = wordsOf(unit.dimension);
  const name = `${words[0]?.toUpperCase()}${words.slice(1)}`;
  const given = unit.symbol === coherent ? '' : `, and ${showNumber(value)} was given`;
  return new RebuildInputError({
    parameter,
    value,
    shown: shown + tail,
    example,
    expected: `${orNone ? '0, or ' : ''}${from} … ${to}${tail}`,
    problem: `${orNone ? `is neither 0 nor within ${from} … ${to}` : outside(shown, from, to)}${tail}`,
    hint:
      coherent === '-'
        ? `${name} is a plain number here, e.g. ${example}.`
        : `${name} is in ${coherent} here${given}; wrap it in its unit, e.g. ${example}.`,
  });
}

/** What is said of a number outside its bounds. One that reads like a bound lies just past it. */
const outside = (shown: string, from: string, to: string) =>
  `is ${[from, to].includes(shown) ? 'just ' : ''}outside ${from} … ${to}`;
