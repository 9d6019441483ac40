import { RebuildInputError, showValue } from './error.js';
import { scales, unitsOf } from './scales.js';
import { belowAbsoluteZero } from './unit.js';
import { type CompatibleSymbol, type UnitSymbol, unitTable } from './unit-table.js';

/**
 * Converts a plain number between units named by their symbols, for embedding
 * in other tools. Between units of one dimension only; the types say which.
 *
 * @param value - the number to convert, in unit `from` [-]
 * @param from - symbol of the unit it is in
 * @param to - symbol of the unit wanted
 * @returns the number in unit `to` [-]
 * @throws {RebuildInputError} when a value is not finite, a symbol is unknown, the two are of different
 * dimensions, a temperature is below absolute zero or the result is too large
 * @see Source: NIST SP 811 (2008), appendix B
 * @example
 * ```ts
 * convert(2.1248, 'in', 'mm'); // 53.96992
 * convert(68, '°F', '°C'); // 20
 * ```
 */
export function convert<S extends UnitSymbol>(
  value: number,
  from: S,
  to: CompatibleSymbol<S>,
): number {
  if (!Number.isFinite(value)) throw notConvertible(value);
  if (typeof from !== 'string' || typeof to !== 'string') throw refusal(from, to);
  const origin = scales[from];
  const wanted = scales[to];
  if (origin === undefined || origin.dimension !== wanted?.dimension) throw refusal(from, to);
  if (origin.dimension === 'temperature' && value * origin.factor + origin.shift < 0) {
    throw belowAbsoluteZero('value', value);
  }
  if (origin === wanted) return value;
  const result = (value * origin.factor + (origin.shift - wanted.shift)) / wanted.factor;
  if (!Number.isFinite(result)) throw notConvertible(value);
  return result;
}

function notConvertible(value: number): RebuildInputError {
  return new RebuildInputError({
    parameter: 'value',
    value,
    ...(Number.isFinite(value) && { shown: 'it' }),
    expected: 'a finite number, small enough to be held after conversion',
    hint: 'Text is read by parse, e.g. parseLength("2-1/8 in").',
  });
}

/** Which of the two symbols is wrong, and what it might have been. */
function refusal(from: UnitSymbol, to: UnitSymbol): RebuildInputError {
  const origin = isSymbol(from) ? unitTable[from].dimension : undefined;
  if (origin === undefined || !isSymbol(to)) {
    return new RebuildInputError({
      parameter: origin === undefined ? 'from' : 'to',
      value: origin === undefined ? from : to,
      expected: 'the symbol of a unit',
      hint: `Known symbols: ${Object.keys(unitTable).join(', ')}.`,
    });
  }
  const compatible = unitsOf(origin).map((unit) => unit.symbol);
  return new RebuildInputError({
    parameter: 'to',
    value: to,
    expected: `a unit of ${origin}, as ${showValue(from)} is`,
    hint: `Compatible with ${from}: ${compatible.join(', ')}.`,
  });
}

const isSymbol = (symbol: unknown): symbol is UnitSymbol =>
  typeof symbol === 'string' && Object.hasOwn(unitTable, symbol);
