import { coherentUnit, convert as ours, type UnitSymbol } from 'crankwright';
import { exactMeasures } from 'crankwright/convert-units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { definitions } from '../quantities/definitions.js';
import { convert, engine, isTemperature, pairs, ROUNDED, reading, units } from './engine.js';
import { exactly, fractionOf, minus, ratioOf, shareOf } from './exactly.js';

/** The largest share by which one rounding to a double can be off. */
const ROUNDING = 2 ** -53;
const linear = pairs.filter((pair) => !isTemperature(pair));
const warm = pairs.filter(isTemperature);
const oursText = ours as (x: number, from: string, to: string) => number;
const anchorsIn = (symbol: string): number => {
  const found = Object.values(exactMeasures)
    .flatMap(({ systems }) =>
      Object.values<Readonly<Record<string, { to_anchor: number }>>>(systems),
    )
    .find((system) => symbol in system);
  return found?.[symbol]?.to_anchor ?? Number.NaN;
};

describe('the factors', () => {
  it('are those of the definitions, to the last digit that a double holds', () => {
    const rounded = units.filter(({ symbol, dimension }) => {
      const coherent = coherentUnit[dimension] as UnitSymbol;
      const [share, under] = ratioOf(symbol, coherent);
      const [of, times] = [fractionOf(anchorsIn(symbol)), fractionOf(anchorsIn(coherent))];
      return of[0] * times[1] * under !== of[1] * times[0] * share;
    });
    expect(rounded.map(({ symbol }) => symbol)).toEqual(ROUNDED);
  });

  it('are whole numbers, which an engine of decimals takes without rounding', () => {
    const broken = units.filter(({ symbol }) => !Number.isInteger(anchorsIn(symbol)));
    expect(broken.map(({ symbol }) => symbol)).toEqual(['deg', 'rpm']);
  });
});

describe('the engine of convert-units with our measures', () => {
  it('has 2.1248 in as 53.96992 mm, and comes back', () => {
    expect(engine(2.1248, 'in', 'mm')).toBe(53.96992);
    expect(engine(53.96992, 'mm', 'in')).toBe(2.1248);
  });

  it('rounds only where it multiplies and divides, for every pair of units', () => {
    const tries = [1, 7, 0.1, 2.1248, -53.97, 1e-7, 98765.4321];
    const off = linear.flatMap(({ from, to }) => {
      const roundings = 2 + [from, to].filter((symbol) => ROUNDED.includes(symbol)).length;
      return tries.flatMap((x) => {
        const wanted = exactly(x, from, to);
        const share = shareOf(minus(fractionOf(engine(x, from, to)), wanted), wanted);
        // Both roundings together, and the little that the one adds to the other.
        return share <= roundings * ROUNDING * (1 + 1e-9)
          ? []
          : [`${x} ${from} to ${to}: off by ${share / ROUNDING} roundings`];
      });
    });
    expect(off).toEqual([]);
  });

  it('gives to the last digit what convert gives', () => {
    const pair = fc.constantFrom(...linear);
    fc.assert(
      fc.property(reading, pair, (x, { from, to }) => {
        expect(engine(x, from, to)).toBe(oursText(x, from, to));
      }),
      { numRuns: 2000 },
    );
  });

  it('comes back from every unit', () => {
    const pair = fc.constantFrom(...linear);
    fc.assert(
      fc.property(reading, pair, (x, { from, to }) => {
        const back = engine(engine(x, from, to), to, from);
        // Two roundings there and two back; a factor that is itself rounded cancels.
        expect(Math.abs(back - x)).toBeLessThanOrEqual(4 * ROUNDING * (1 + 1e-9) * Math.abs(x));
      }),
      { numRuns: 2000 },
    );
  });

  it('gives the nearest double for whole inches, and for 96 of 100 readings in tenths', () => {
    const missed = (decimals: number, upTo: number) => {
      let count = 0;
      for (let n = 1; n <= upTo; n++) {
        const nearest = Number(`${BigInt(n) * 254n}e-${decimals + 1}`);
        if (engine(Number(`${n}e-${decimals}`), 'in', 'mm') !== nearest) count++;
      }
      return count;
    };
    expect(missed(0, 100_000)).toBe(0);
    expect(missed(4, 200_000)).toBeLessThan(200_000 * 0.04);
  });

  it('takes temperatures to 1000 degrees within 1e-12 of a degree', () => {
    const celsius = fc.double({ min: -273.15, max: 1000, noNaN: true });
    fc.assert(
      fc.property(celsius, fc.constantFrom(...warm), (start, { from, to }) => {
        const x = engine(start, '°C', from);
        const off = minus(fractionOf(engine(x, from, to)), exactly(x, from, to));
        expect(shareOf(off, [1n, 1n])).toBeLessThanOrEqual(1e-12);
      }),
      { numRuns: 2000 },
    );
  });

  it.each([
    [32, '°F', '°C', 0],
    [68, '°F', '°C', 20],
    [20, '°C', '°F', 68],
    [-40, '°C', '°F', -40],
    [0, '°C', 'K', 273.15],
    [293.15, 'K', '°C', 20],
    [491.67, '°R', '°C', 0],
    [18, 'Δ°F', 'Δ°C', 10],
  ] as const)('has %d %s as %d', (x, from, to, wanted) => {
    expect(engine(x, from, to)).toBe(wanted);
  });

  it('knows every unit that has a definition', () => {
    expect([...convert().possibilities()].sort()).toEqual(Object.keys(definitions).sort());
  });
});
