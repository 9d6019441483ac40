import type { Dimension, Quantity } from './dimensions.js';
import { RebuildInputError } from './error.js';
import { type Unit, valueIn } from './unit.js';

/**
 * Prints a quantity in a unit, to the decimals the trade reads that unit to
 * (inch 4, mm 3, thou 1) unless told otherwise. Rounds half away from zero on
 * the decimal number a person sees, so 1.00005 in is 1.0001 in, and never
 * prints -0.
 *
 * @param quantity - any quantity [coherent SI unit]
 * @param unit - the unit to print in
 * @param decimals - digits after the point, 0 to 12 [-]
 * @returns number, space, symbol
 * @throws {RebuildInputError} when a value is not finite, the unit is not one or the decimals are not a whole
 * number from 0 to 12
 * @example
 * ```ts
 * format(inch(2.1248), inch); // "2.1248 in"
 * format(inch(2.1248), mm); // "53.970 mm"
 * format(inch(2.1248), mm, 2); // "53.97 mm"
 * ```
 */
export function format<D extends Dimension>(
  quantity: Quantity<D>,
  unit: Unit<NoInfer<D>>,
  decimals?: number,
): string {
  return `${formatNumber(quantity, unit, decimals)} ${unit.symbol}`;
}

/** The number alone, for tables that name the unit in their heading. */
export function formatNumber<D extends Dimension>(
  quantity: Quantity<D>,
  unit: Unit<NoInfer<D>>,
  decimals?: number,
): string {
  const value = valueIn(quantity, unit);
  const digits = decimals ?? unit.decimals;
  if (!Number.isInteger(digits) || digits < 0 || digits > 12) {
    throw new RebuildInputError({
      parameter: 'decimals',
      value: decimals,
      expected: 'a whole number from 0 to 12',
      hint: 'Leave it out for the decimals the trade uses.',
    });
  }
  return roundHalfAway(value, digits);
}

/** The symbol of a unit as the trade writes it: a difference is in degrees, and words tell that it is one. */
export const scaleOf = ({ symbol }: Unit<Dimension>): string => symbol.replace('Δ', '');

/** One formatter for each number of decimals, made when it is first asked for. */
const formatters: Intl.NumberFormat[] = [];

/** Decimal rounding, half away from zero; 15 digits first, to shed binary noise. */
function roundHalfAway(value: number, decimals: number): string {
  formatters[decimals] ??= new Intl.NumberFormat('en-US', {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
    signDisplay: 'negative',
  });
  return formatters[decimals].format(value.toPrecision(15) as `${number}`);
}
