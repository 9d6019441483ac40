import type { Dimension, Quantity } from './dimensions.js';
import { RebuildInputError } from './error.js';
import type { Fraction } from './fractions.js';

/**
 * A unit of measure, as a value: called, it makes a quantity; passed to
 * `valueIn`, `format` or `judge`, it says what to read or print in.
 *
 * A number x of this unit is (x · numerator + offset) / denominator coherent
 * SI units, all three exact but for π in angles and the last bit of the
 * mechanical horsepower: one product, one division.
 */
export interface Unit<D extends Dimension, S extends string = string> {
  /**
   * Makes a quantity of `value` of this unit.
   *
   * @param value - the reading, in this unit [-]
   * @returns the quantity [coherent SI unit]
   * @throws {RebuildInputError} when value is not a finite number
   */
  (value: number): Quantity<D>;
  /** Symbol as `convert` takes it and `format` prints it. */
  readonly symbol: S;
  /** The dimension of the quantities it makes. */
  readonly dimension: D;
  /** Factor to the coherent SI unit, upper part. */
  readonly numerator: number;
  /** Factor to the coherent SI unit, lower part. */
  readonly denominator: number;
  /** Added after the upper part; zero but for temperature scales. */
  readonly offset: number;
  /** Decimals the trade reads this unit to. */
  readonly decimals: number;
}

/** Makes a unit. Not public: the table in `units.ts` is the only place factors stand. */
export function unit<D extends Dimension, S extends string>(
  symbol: S,
  dimension: D,
  [numerator, denominator]: Fraction,
  decimals: number,
  offset = 0,
): Unit<D, S> {
  const make = (value: number): Quantity<D> => {
    if (!Number.isFinite(value)) throw notANumber(symbol, value);
    const quantity = finite(symbol, value, (value * numerator + offset) / denominator);
    if (quantity < 0 && dimension === 'temperature') throw belowAbsoluteZero(symbol, value);
    return quantity as Quantity<D>;
  };
  const made = Object.assign(make, {
    symbol,
    dimension,
    numerator,
    denominator,
    offset,
    decimals,
  });
  return Object.defineProperties(made, {
    name: { value: symbol },
    toString: { value: () => symbol },
    // A prompt prints the unit by this: "in, a unit of length".
    [INSPECT]: { value: () => `${symbol}, a unit of ${dimension}` },
  });
}

const INSPECT = /* @__PURE__ */ Symbol.for('nodejs.util.inspect.custom');

/**
 * The number that a quantity is in a unit.
 *
 * @param quantity - any quantity [coherent SI unit]
 * @param unit - a unit of the same dimension
 * @returns the plain number of that unit [-]
 * @throws {RebuildInputError} when a value is not finite, the unit is not one or the result is too large
 * @example
 * ```ts
 * valueIn(inch(2.1248), mm); // 53.96992
 * ```
 */
export function valueIn<D extends Dimension>(
  quantity: Quantity<D>,
  unit: Unit<NoInfer<D>>,
): number {
  guardUnit(unit);
  if (!Number.isFinite(quantity)) throw notANumber('quantity', quantity);
  const { numerator, denominator, offset, symbol } = unit;
  return finite(symbol, quantity, (quantity * denominator - offset) / numerator);
}

/** Refuses what is not a unit of ours, most often its symbol in quotes. */
function guardUnit(unit: unknown): void {
  if (typeof unit !== 'function' || !('numerator' in unit)) {
    throw new RebuildInputError({
      parameter: 'unit',
      value: unit,
      expected: 'a unit',
      hint: 'Pass the unit itself, e.g. inch or mm, without quotes.',
    });
  }
}

function notANumber(parameter: string, value: unknown): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    expected: 'a finite number',
    hint: 'Give the reading as a number; text is read by parse, e.g. parseLength("2-1/8 in").',
  });
}

/** A temperature that there is not. */
export function belowAbsoluteZero(parameter: string, value: number): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    expected: 'a temperature above absolute zero',
    hint: 'A difference of temperatures has units of its own, e.g. celsiusDifference(-5).',
  });
}

function finite(parameter: string, value: number, result: number): number {
  if (Number.isFinite(result)) return result;
  throw new RebuildInputError({
    parameter,
    value,
    shown: 'the reading',
    expected: 'a number that a double can still hold after conversion',
    hint: 'No part of an engine is that large; check the reading.',
  });
}
