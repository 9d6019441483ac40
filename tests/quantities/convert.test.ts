import { convert, mm, type Unit, type UnitSymbol, unitTable, valueIn } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spellings } from '../../src/quantities/spellings.js';
import { unitNamed } from '../../src/quantities/unit-names.js';
import { definitions, toNumber } from './definitions.js';
import { notNumbers, refusal } from './refusal.js';

// Symbols as plain text: what the types forbid is tried too.
const convertText = convert as (value: number, from: string, to: string) => number;
const units = Object.values(unitTable) as readonly Unit<'length'>[];
const pairs = units.flatMap((a) =>
  units.filter((b) => b.dimension === a.dimension).map((b) => [a, b] as const),
);
const anyPair = fc.constantFrom(...pairs);
const sane = fc
  .tuple(fc.double({ min: 1e-9, max: 1e6, noNaN: true }), fc.constantFrom(-1, 0, 1))
  .map(([size, sign]) => size * sign);
/** Temperatures lose to their offset what they gain by it. */
const scaleOf = (unit: Unit<'length'>, value: number) =>
  Math.abs(value) + (unit.offset === 0 ? 0 : 1000);

describe('convert', () => {
  it('gives the nearest double to the millimetre for 100 000 whole inches', () => {
    const missed: number[] = [];
    for (let n = 1; n <= 100_000; n++) {
      const tenths = BigInt(n) * 254n;
      const nearest = Number(`${tenths / 10n}.${tenths % 10n}`);
      if (convert(n, 'in', 'mm') !== nearest) missed.push(n);
    }
    expect(missed).toEqual([]);
  });

  it('gives the nearest double to the inch for 100 000 whole thou', () => {
    const missed: number[] = [];
    for (let n = 1; n <= 100_000; n++) {
      if (convert(n, 'thou', 'in') !== Number(`${n}e-3`)) missed.push(n);
    }
    expect(missed).toEqual([]);
  });

  it('agrees with the definitions for every compatible pair', () => {
    const apart = pairs.flatMap(([a, b]) => {
      const [from, to] = [definitions[a.symbol as UnitSymbol], definitions[b.symbol as UnitSymbol]];
      if (from.zero || to.zero) return [];
      const piOf = (definition: { readonly halfTurns?: true }) =>
        definition.halfTurns ? Math.PI : 1;
      const exact = toNumber([7n * from.factor[0] * to.factor[1], from.factor[1] * to.factor[0]]);
      const wanted = (exact * piOf(from)) / piOf(to);
      const off = Math.abs(convertText(7, a.symbol, b.symbol) / wanted - 1);
      return off <= 1e-15 ? [] : [`${a.symbol} to ${b.symbol}: off by ${off}`];
    });
    expect(apart).toEqual([]);
  });

  it('agrees with the unit called and read for every compatible pair', () => {
    fc.assert(
      fc.property(anyPair, sane, ([a, b], some) => {
        // Nothing is colder than nothing.
        const x = a.dimension === ('temperature' as string) ? Math.abs(some) : some;
        const read = valueIn(a(x), b);
        const off = Math.abs(convertText(x, a.symbol, b.symbol) - read);
        expect(off).toBeLessThanOrEqual(2e-15 * Math.max(scaleOf(a, read), scaleOf(b, read)));
      }),
      { numRuns: 2000 },
    );
  });

  it('comes back from every compatible unit', () => {
    fc.assert(
      fc.property(anyPair, sane, ([a, b], some) => {
        const x = a.dimension === ('temperature' as string) ? Math.abs(some) : some;
        const back = convertText(convertText(x, a.symbol, b.symbol), b.symbol, a.symbol);
        const room = 2e-15 * Math.max(scaleOf(a, x), scaleOf(b, x));
        expect(Math.abs(back - x)).toBeLessThanOrEqual(room);
      }),
      { numRuns: 2000 },
    );
  });

  it('is linear where there is no offset', () => {
    fc.assert(
      fc.property(anyPair, sane, ([a, b], x) => {
        fc.pre(a.dimension !== ('temperature' as string));
        const doubled = convertText(2 * x, a.symbol, b.symbol);
        expect(doubled).toBe(2 * convertText(x, a.symbol, b.symbol));
      }),
    );
  });

  it('leaves a number alone between a unit and itself', () => {
    for (const { symbol } of units) expect(convertText(0.1 + 0.2, symbol, symbol)).toBe(0.1 + 0.2);
  });

  it.each([
    [32, '°F', '°C', 0],
    [68, '°F', '°C', 20],
    [212, '°F', '°C', 100],
    [-40, '°C', '°F', -40],
    [0, '°C', 'K', 273.15],
    [491.67, '°R', '°C', 0],
    [18, 'Δ°F', 'Δ°C', 10],
  ] as const)('converts %d %s to %s', (value, from, to, wanted) => {
    expect(convertText(value, from, to)).toBeCloseTo(wanted, 10);
  });
});

describe('convert refuses', () => {
  it('a temperature below absolute zero', () => {
    expect(refusal(() => convert(-300, '°C', 'K')).parameter).toBe('value');
    expect(convert(-300, 'Δ°C', 'ΔK')).toBe(-300);
  });

  it.each(notNumbers.map((value) => [value]))('the value %s', (value) => {
    expect(refusal(() => convert(value as number, 'in', 'mm')).parameter).toBe('value');
  });

  it('a number that overflows', () => {
    expect(refusal(() => convert(1e308, 'm', 'µm')).parameter).toBe('value');
  });

  it.each([
    'inchs',
    '',
    'inchMM',
    '__proto__',
    'toString',
    'constructor',
    'hasOwnProperty',
    'valueOf',
  ])('the symbol %j, and lists those it knows', (symbol) => {
    const from = refusal(() => convertText(1, symbol, 'mm'));
    const to = refusal(() => convertText(1, 'in', symbol));
    expect([from.parameter, from.value]).toEqual(['from', symbol]);
    expect([to.parameter, to.value]).toEqual(['to', symbol]);
    expect(from.hint).toContain('thou');
    expect(to.hint).toContain('lbf·ft');
  });

  it.each([undefined, null, 5, mm])('what is no text: %s', (symbol) => {
    expect(refusal(() => convertText(1, symbol as unknown as string, 'mm')).parameter).toBe('from');
    expect(refusal(() => convertText(1, 'in', symbol as unknown as string)).parameter).toBe('to');
  });

  it('every pair of two dimensions, and lists what is compatible', () => {
    for (const a of units) {
      const other = units.find((b) => b.dimension !== a.dimension) as Unit<'length'>;
      const error = refusal(() => convertText(1, a.symbol, other.symbol));
      const compatible = units.filter((b) => b.dimension === a.dimension).map((b) => b.symbol);
      expect(error.parameter).toBe('to');
      expect(error.hint).toBe(`Compatible with ${a.symbol}: ${compatible.join(', ')}.`);
    }
  });

  it.each([
    ['lbf', 'lb'],
    ['psi', 'psi gauge'],
    ['°C', 'Δ°C'],
    ['cSt', 'cP'],
    ['lbf·ft', 'ft·lbf energy'],
    ['vol%', 'mass%'],
    ['rpm', '1/s'],
  ])('%s to %s, which people confuse', (from, to) => {
    expect(refusal(() => convertText(1, from, to)).parameter).toBe('to');
  });

  it.each([
    ['millimeter s', 'millimeters'],
    ['lbf-fot', 'lbf-ft'],
    ['thuo', 'thou'],
  ])('%s, and asks whether %s was meant', (typed, meant) => {
    expect(refusal(() => convertText(1, typed, 'mm')).hint).toContain(`Did you mean "${meant}"?`);
  });

  it.each(['gal', 'Quarts', 'pt', 'fl oz'])('%s, which names two measures', (name) => {
    expect(refusal(() => convertText(1, name, 'L'))).toMatchObject({
      parameter: 'from',
      hint: expect.stringContaining('a US or an imperial'),
    });
  });

  it.each([
    ['C', 'Δ°F'],
    ['Δ°C', 'F'],
    ['ft-lbf', 'J'],
    ['psig', 'bar'],
  ])('%s to %s: a spelling stands for one unit', (from, to) => {
    expect(refusal(() => convertText(1, from, to)).parameter).toBe('to');
  });
});

describe('convert reads a unit as parse does', () => {
  const spelt = Object.entries(spellings).flatMap(([symbol, names]) =>
    names.filter(Boolean).map((name) => [name, symbol as UnitSymbol] as const),
  );

  it.each(spelt)('%s', (name, symbol) => {
    const { dimension } = unitTable[symbol];
    const other = units.find((each) => each.dimension === dimension)?.symbol as string;
    const isSecond = ['Δ°C', 'Δ°F', 'ΔK', 'ft·lbf energy'].includes(symbol);
    if (isSecond && unitNamed(name)?.symbol !== symbol) {
      // It stands for the temperature, or the torque.
      expect(refusal(() => convertText(3, name, other)).parameter).toBe('to');
    } else {
      expect(convertText(3, name, other)).toBe(convertText(3, symbol, other));
    }
  });

  it('with capitals that fit one unit only', () => {
    expect(convertText(1, 'Inches', 'MM')).toBe(25.4);
    expect(convertText(18, 'FT-LB', 'nm')).toBe(convert(18, 'lbf·ft', 'N·m'));
  });
});
