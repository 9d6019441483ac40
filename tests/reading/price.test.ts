import { RebuildInputError } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parsePrice } from '../../src/reading/price.js';

describe('parsePrice', () => {
  it.each<[string, number, string]>([
    ['14.50 EUR', 14.5, 'EUR'],
    ['EUR 14.50', 14.5, 'EUR'],
    ['14.50EUR', 14.5, 'EUR'],
    ['  USD   3 ', 3, 'USD'],
    ['0 GBP', 0, 'GBP'],
    ['.5 GBP', 0.5, 'GBP'],
    ['2.125 KWD', 2.125, 'KWD'],
    ['123456789 JPY', 123456789, 'JPY'],
  ])('reads %s', (text, amount, currency) => {
    expect(parsePrice(text)).toEqual({ amount, currency });
  });

  it.each<[string, RegExp]>([
    ['', /has no amount/],
    ['EUR', /has no amount/],
    ['NaN EUR', /has no amount/],
    ['Infinity EUR', /has no amount/],
    ['14.50', /has no currency/],
    ['14 EUR USD', /more than one currency/],
    ['14 EUR/USD', /more than one currency/],
    ['EUR 14 EUR', /more than one currency/],
    ['14 eur', /three capital letters/],
    ['14 EURO', /three capital letters/],
    ['14 ЕUR', /three capital letters/],
    ['$14', /write the three letters/],
    ['€ 14', /write the three letters/],
    ['14 £', /write the three letters/],
    ['-14 EUR', /is negative/],
    ['EUR −14', /is negative/],
    ['14,50 EUR', /no readable amount.*decimals after a point/],
    ['1,450.00 EUR', /no separator between thousands/],
    ['1.2345 EUR', /at most three decimals/],
    ['1234567890 EUR', /no readable amount/],
    [
      '1e9 EUR',
      /^price: "1e9 EUR" is written with an exponent\. Write the amount out, e\.g\. 1000 EUR\.$/,
    ],
    ['EUR 1E3', /is written with an exponent/],
    ['1.5e+2EUR', /is written with an exponent/],
    ['1.e-2 EUR', /is written with an exponent/],
    ['EUR1e3', /is written with an exponent/],
    ['1e EUR', /more than one currency/],
    ['14 EUR 50', /no readable amount/],
    ['14 16 EUR', /no readable amount/],
  ])('refuses %j', (text, message) => {
    expect(() => parsePrice(text)).toThrow(message);
    expect(() => parsePrice(text)).toThrow(RebuildInputError);
  });

  it('reads back every amount of thousandths', () => {
    fc.assert(
      fc.property(fc.nat({ max: 10 ** 9 }), fc.boolean(), (thousandths, first) => {
        const amount = (thousandths / 1000).toFixed(3);
        const text = first ? `CHF ${amount}` : `${amount} CHF`;
        expect(Math.round(parsePrice(text).amount * 1000)).toBe(thousandths);
      }),
    );
  });

  it('meets any text with a price or a refusal', () => {
    const pieces = fc.constantFrom('1', '14.50', '.', ',', ' ', 'EUR', 'USD', '$', '-', 'e', '/');
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(pieces).map((all) => all.join('')),
        ),
        (text) => {
          try {
            const { amount, currency } = parsePrice(text);
            expect(Number.isFinite(amount) && amount >= 0 && /^[A-Z]{3}$/.test(currency)).toBe(
              true,
            );
          } catch (error) {
            expect(error).toBeInstanceOf(RebuildInputError);
          }
        },
      ),
    );
  });
});
