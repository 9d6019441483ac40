import {
  format,
  inch,
  type Length,
  metre,
  mm,
  tenth,
  thou,
  tradeUnit,
  unitTable,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber } from '../../src/quantities/format.js';
import { notNumbers, refusal } from './refusal.js';

describe('format prints', () => {
  it.each([
    [inch(2.1248), inch, undefined, '2.1248 in'],
    [inch(2.1248), mm, undefined, '53.970 mm'],
    [inch(2.1248), mm, 2, '53.97 mm'],
    [inch(2.5), thou, undefined, '2500.0 thou'],
    [thou(0.5), tenth, undefined, '5.0 tenth'],
    [inch(1.00005), inch, undefined, '1.0001 in'],
    [inch(-1.00005), inch, undefined, '-1.0001 in'],
    [inch(-0.00005), inch, undefined, '-0.0001 in'],
    [inch(0.00005), inch, undefined, '0.0001 in'],
    [inch(1.00015), inch, undefined, '1.0002 in'],
    [inch(2.67545), inch, undefined, '2.6755 in'],
    [mm(2.5), mm, 0, '3 mm'],
    [mm(-2.5), mm, 0, '-3 mm'],
    [mm(1.005), mm, 2, '1.01 mm'],
    [mm(0.0005), mm, undefined, '0.001 mm'],
    [inch(-0.00004), inch, undefined, '0.0000 in'],
    [inch(-0), inch, undefined, '0.0000 in'],
    [mm(-0.4), mm, 0, '0 mm'],
    [mm(1_234_567.5), mm, 1, '1234567.5 mm'],
    [mm(1 / 3), mm, 12, '0.333333333333 mm'],
  ])('%d m', (length, unit, decimals, wanted) => {
    expect(format(length, unit, decimals)).toBe(wanted);
  });

  it('the decimals of the trade: four in inches, three in millimetres, one in thou', () => {
    expect([inch, mm, thou].map((unit) => unit.decimals)).toEqual([4, 3, 1]);
  });

  it('every unit with its own symbol', () => {
    for (const unit of Object.values(unitTable)) {
      const print = format as (quantity: number, unit: unknown) => string;
      expect(print(unit(1), unit).endsWith(` ${unit.symbol}`)).toBe(true);
    }
  });

  it('the number alone for tables', () => {
    expect(formatNumber(inch(2.1248), inch)).toBe('2.1248');
    expect(formatNumber(inch(2.1248), tradeUnit('length', 'metric'))).toBe('53.970');
  });
});

/** What a person with a pencil makes of a decimal: half away from zero, no sign on nothing. */
function byHand(units: bigint, has: number, wanted: number): string {
  const sized = (units < 0n ? -units : units) * 10n ** BigInt(wanted);
  const scale = 10n ** BigInt(has);
  const rounded = (2n * sized + scale) / (2n * scale);
  const digits = rounded.toString().padStart(wanted + 1, '0');
  const whole = digits.slice(0, digits.length - wanted);
  const sign = units < 0n && rounded !== 0n ? '-' : '';
  return sign + whole + (wanted > 0 ? `.${digits.slice(-wanted)}` : '');
}

/** A decimal as it is written on a bench: digits, and how many of them stand behind the point. */
const decimal = fc.record({
  digits: fc.bigInt({ min: -(10n ** 11n), max: 10n ** 11n }),
  behind: fc.nat({ max: 9 }),
});
/** The same, but with a five just where it is cut off. */
const half = fc
  .record({ digits: fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }), behind: fc.nat({ max: 6 }) })
  .map(({ digits, behind }) => ({
    digits: digits * 10n + (digits < 0n ? -5n : 5n),
    behind: behind + 1,
    cut: behind,
  }));

describe('rounding', () => {
  it('is that of the hand, for any decimal', () => {
    fc.assert(
      fc.property(decimal, fc.nat({ max: 12 }), fc.constantFrom(metre, mm, inch), (d, to, unit) => {
        const value = Number(`${d.digits}e-${d.behind}`);
        expect(formatNumber(unit(value), unit, to)).toBe(byHand(d.digits, d.behind, to));
      }),
      { numRuns: 3000 },
    );
  });

  it('is half away from zero, for any five', () => {
    fc.assert(
      fc.property(half, fc.constantFrom(metre, mm, inch, thou), ({ digits, behind, cut }, unit) => {
        const value = Number(`${digits}e-${behind}`);
        expect(formatNumber(unit(value), unit, cut)).toBe(byHand(digits, behind, cut));
      }),
      { numRuns: 3000 },
    );
  });

  it('never prints a minus before nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 0, noNaN: true }), fc.nat({ max: 12 }), (x, to) => {
        expect(formatNumber(x as Length, metre, to)).not.toMatch(/^-0(\.0*)?$/);
      }),
    );
  });
});

describe('format refuses', () => {
  it.each(notNumbers.map((value) => [value]))('the quantity %s', (value) => {
    expect(refusal(() => format(value as Length, inch)).parameter).toBe('quantity');
  });

  it.each(['in', undefined, null, {}, () => 1])('the unit %s', (unit) => {
    const error = refusal(() => format(inch(1), unit as unknown as typeof inch));
    expect(error.parameter).toBe('unit');
  });

  it.each([-1, 13, 0.5, Number.NaN, '2'])('%s decimals', (decimals) => {
    expect(refusal(() => format(inch(1), inch, decimals as number)).parameter).toBe('decimals');
  });

  it('a quantity that overflows in the unit', () => {
    expect(refusal(() => format(1e308 as Length, mm)).value).toBe(1e308);
  });
});
