import configureMeasurements from 'convert-units';
import { convert, type UnitSymbol, unitTable } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

// The engine of convert-units, fed with this library's table: a conversion
// written by other people. Its own tables are not used, they round the inch.
type Engine = (value: number) => { from(symbol: string): { to(symbol: string): number } };

const units = Object.values(unitTable);

function engineFor(dimension: string): Engine {
  const system = Object.fromEntries(
    units
      .filter((unit) => unit.dimension === dimension)
      .map(({ symbol, numerator, denominator, offset }) => [
        symbol,
        {
          name: { singular: symbol, plural: symbol },
          to_anchor: numerator / denominator,
          anchor_shift: -offset / denominator,
        },
      ]),
  );
  return configureMeasurements<string, string, string>({ it: { systems: { all: system } } });
}

describe('convert beside the engine of convert-units', () => {
  it.each([...new Set(units.map(({ dimension }) => dimension))])('%s', (dimension) => {
    const engine = engineFor(dimension);
    const symbols = units.filter((unit) => unit.dimension === dimension).map((unit) => unit.symbol);
    const symbol = fc.constantFrom(...symbols);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), symbol, symbol, (x, from, to) => {
        const ours = convert(x, from, to as never as UnitSymbol & never);
        const theirs = engine(x).from(from).to(to);
        expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(theirs), 1));
      }),
    );
  });
});
