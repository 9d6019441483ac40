import type { Dimension } from './dimensions.js';
import { RebuildInputError, showValue } from './error.js';
import { greatestCommonDivisor } from './fractions.js';
import { belowAbsoluteZero, type Unit } from './unit.js';
import { type CompatibleSymbol, type UnitSymbol, unitTable } from './unit-table.js';

const allUnits: readonly Unit<Dimension>[] = /* @__PURE__ */ Object.values(unitTable);

/** The units of one dimension, in the order of the table. */
export function unitsOf(dimension: Dimension): readonly Unit<Dimension>[] {
  return allUnits.filter((unit) => unit.dimension === dimension);
}

/** A unit's place on the scale of its dimension. */
interface Scale {
  readonly dimension: Dimension;
  /** How many anchors one of the unit is. */
  readonly factor: number;
  /** Anchors at zero of the unit; other than zero for temperature scales only. */
  readonly shift: number;
}

/**
 * Every unit counted in an anchor of its dimension, so small that every factor
 * is a whole number: a conversion is then one product and one division.
 */
function buildScales(): Readonly<Record<string, Scale>> {
  const scales: Record<string, Scale> = Object.create(null);
  for (const dimension of new Set(allUnits.map((unit) => unit.dimension))) {
    const units = unitsOf(dimension);
    const anchors = units
      .map((unit) => unit.denominator)
      .reduce((all, next) => (all / greatestCommonDivisor(all, next)) * next, 1);
    for (const { symbol, numerator, denominator, offset } of units) {
      const scale = anchors / denominator;
      scales[symbol] = { dimension, factor: numerator * scale, shift: offset * scale };
    }
  }
  return scales;
}

const scales = /* @__PURE__ */ buildScales();

/**
 * Converts a plain number between units named by their symbols, for embedding
 * in other tools. Between units of one dimension only; the types say which.
 *
 * @param value - the number to convert, in unit `from` [-]
 * @param from - symbol of the unit it is in
 * @param to - symbol of the unit wanted
 * @returns the number in unit `to` [-]
 * @throws {RebuildInputError} when value is not finite, or a symbol is unknown or of another dimension
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
