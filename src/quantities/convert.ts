import configureMeasurements from 'convert-units';
import type { Dimension } from './dimensions.js';
import { RebuildInputError, showValue } from './error.js';
import { greatestCommonDivisor } from './fractions.js';
import type { Unit } from './unit.js';
import { type CompatibleSymbol, type UnitSymbol, unitTable } from './units.js';

const allUnits: readonly Unit<Dimension>[] = /* @__PURE__ */ Object.values(unitTable);

/** The units of one dimension, in the order of the table. */
export function unitsOf(dimension: Dimension): readonly Unit<Dimension>[] {
  return allUnits.filter((unit) => unit.dimension === dimension);
}

/**
 * The table as the engine takes it. The anchor of a dimension is so small that
 * every factor is a whole number, so a conversion is one product and one division.
 */
function measureOf(dimension: Dimension) {
  const units = unitsOf(dimension);
  const anchorsInOne = units
    .map((unit) => unit.denominator)
    .reduce((all, next) => (all / greatestCommonDivisor(all, next)) * next, 1);
  const system = Object.fromEntries(
    units.map(({ symbol, numerator, denominator, offset }) => {
      const scale = anchorsInOne / denominator;
      const name = { singular: symbol, plural: symbol };
      return [symbol, { name, to_anchor: numerator * scale, anchor_shift: -offset * scale }];
    }),
  );
  return { systems: { all: system } };
}

function buildEngine() {
  const dimensions = [...new Set(allUnits.map((unit) => unit.dimension))];
  return configureMeasurements<string, string, string>(
    Object.fromEntries(dimensions.map((dimension) => [dimension, measureOf(dimension)])),
  );
}

const engine = /* @__PURE__ */ buildEngine();

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
  // The engine turns NaN, null and undefined into 0 and lets Infinity through.
  if (!Number.isFinite(value)) {
    throw new RebuildInputError({
      parameter: 'value',
      value,
      expected: 'a finite number',
      hint: 'Text is read by parse, e.g. parseLength("2-1/8 in").',
    });
  }
  let result: number;
  try {
    result = engine(value).from(from).to(to);
  } catch {
    throw unknownSymbol('from', from) ?? unknownSymbol('to', to) ?? incompatible(from, to);
  }
  if (!Number.isFinite(result)) {
    throw new RebuildInputError({
      parameter: 'value',
      value,
      expected: `a number that a double can still hold in ${to}`,
      hint: 'No part of an engine is that large; check the reading.',
    });
  }
  return result;
}

function unknownSymbol(parameter: string, symbol: string): RebuildInputError | undefined {
  if (typeof symbol === 'string' && Object.hasOwn(unitTable, symbol)) return undefined;
  return new RebuildInputError({
    parameter,
    value: symbol,
    expected: 'the symbol of a unit',
    hint: `Known symbols: ${Object.keys(unitTable).join(', ')}.`,
  });
}

function incompatible(from: UnitSymbol, to: UnitSymbol): RebuildInputError {
  const { dimension } = unitTable[from];
  const compatible = unitsOf(dimension).map((unit) => unit.symbol);
  return new RebuildInputError({
    parameter: 'to',
    value: to,
    expected: `a unit of ${dimension}, as ${showValue(from)} is`,
    hint: `Compatible with ${from}: ${compatible.join(', ')}.`,
  });
}
