import type { Dimension, Quantity, Temperature, TemperatureDifference } from './dimensions.js';
import { RebuildInputError } from './error.js';

/**
 * Adds two quantities of one dimension, or a difference to a temperature.
 *
 * @param a - first [coherent SI unit]
 * @param b - second, of the same dimension [coherent SI unit]
 * @returns the sum [coherent SI unit]
 * @throws {RebuildInputError} when a value is not finite or the result is too large
 * @example
 * ```ts
 * format(plus(inch(2.105), thou(20)), inch); // "2.1250 in"
 * ```
 */
export function plus(a: Temperature, b: TemperatureDifference): Temperature;
export function plus<D extends Exclude<Dimension, 'temperature'>>(
  a: Quantity<D>,
  b: Quantity<NoInfer<D>>,
): Quantity<D>;
export function plus(a: number, b: number): number {
  return guardResult(guardNumber('a', a) + guardNumber('b', b), a);
}

/**
 * Subtracts a quantity from another of the same dimension. Two temperatures
 * leave a temperature difference.
 *
 * @param a - what is subtracted from [coherent SI unit]
 * @param b - what is subtracted [coherent SI unit]
 * @returns the difference [coherent SI unit]
 * @throws {RebuildInputError} when a value is not finite or the result is too large
 * @example
 * ```ts
 * format(minus(inch(2.125), thou(20)), inch); // "2.1050 in"
 * ```
 */
export function minus(a: Temperature, b: Temperature): TemperatureDifference;
export function minus(a: Temperature, b: TemperatureDifference): Temperature;
export function minus<D extends Exclude<Dimension, 'temperature'>>(
  a: Quantity<D>,
  b: Quantity<NoInfer<D>>,
): Quantity<D>;
export function minus(a: number, b: number): number {
  return guardResult(guardNumber('a', a) - guardNumber('b', b), a);
}

/**
 * A quantity so many times over.
 *
 * @param quantity - any quantity [coherent SI unit]
 * @param factor - a plain number [-]
 * @returns the product, of the same dimension [coherent SI unit]
 * @throws {RebuildInputError} when a value is not finite or the result is too large
 * @example
 * ```ts
 * format(times(thou(10), 2), thou); // "20.0 thou"
 * ```
 */
export function times<D extends Dimension>(quantity: Quantity<D>, factor: number): Quantity<D> {
  const product = guardNumber('quantity', quantity) * guardNumber('factor', factor);
  return guardResult(product, quantity) as Quantity<D>;
}

function guardNumber(parameter: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a finite number',
    hint: 'Wrap the reading in its unit, e.g. inch(2.1248).',
  });
}

function guardResult(result: number, value: number): number {
  if (Number.isFinite(result)) return result;
  throw new RebuildInputError({
    parameter: 'result',
    value,
    shown: 'it',
    expected: 'small enough for a double to hold',
    hint: 'No part of an engine is that large; check the readings.',
  });
}
