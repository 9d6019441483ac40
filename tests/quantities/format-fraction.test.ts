import { formatFraction, inch, type Length, mm, parseLength } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from './refusal.js';

describe('formatFraction', () => {
  it.each([
    [0, '0 in'],
    [2, '2 in'],
    [0.015625, '1/64 in'],
    [0.4375, '7/16 in'],
    [2.125, '2-1/8 in'],
    [-2.125, '-2-1/8 in'],
    [2.1248, '2-1/8 in - 0.0002 in'],
    [2.126, '2-1/8 in + 0.0010 in'],
    [-2.126, '-2-1/8 in - 0.0010 in'],
    [0.0005, '0 in + 0.0005 in'],
    [-0.0005, '0 in - 0.0005 in'],
    [2.12504, '2-1/8 in'],
    [0.9999, '1 in - 0.0001 in'],
  ])('%d in', (value, text) => {
    expect(formatFraction(inch(value))).toBe(text);
  });

  it('is as fine as asked for', () => {
    expect(formatFraction(inch(0.4375), 4)).toBe('1/2 in - 0.0625 in');
    expect(formatFraction(mm(3.175), 8)).toBe('1/8 in');
  });

  it('reads back as the same length, and is never off by more than half of the finest', () => {
    const finest = fc.constantFrom(2, 4, 8, 16, 32, 64, 128);
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), finest, (parts, of) => {
        const exact = inch(parts / of);
        expect(parseLength(formatFraction(exact, of))).toBeCloseTo(exact, 12);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), finest, (value, of) => {
        const [, fraction = '', sign = '+', off = '0'] =
          /^(\S+ in)(?: ([+-]) ([\d.]+) in)?$/.exec(formatFraction(inch(value), of)) ?? [];
        const read = Number(parseLength(fraction)) / 0.0254 + Number(`${sign}${off}`);
        expect(Math.abs(read - value)).toBeLessThanOrEqual(0.0000501);
        expect(Number(off)).toBeLessThanOrEqual(0.5 / of + 0.00005);
      }),
    );
  });

  it.each(notNumbers.map((value) => [value]))('refuses the length %s', (value) => {
    expect(refusal(() => formatFraction(value as Length)).parameter).toBe('length');
  });

  it.each([0, 3, 256, 63.5, Number.NaN])('refuses %d as the finest fraction', (finest) => {
    expect(refusal(() => formatFraction(inch(1), finest)).parameter).toBe('finest');
  });
});
