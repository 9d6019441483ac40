import { format, inch, type Length, mm, pistonClearance, pistonClearanceSpan } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const micrometres = (min: number, max: number) => fc.integer({ min, max }).map((n) => mm(n / 1000));
const span = fc
  .tuple(micrometres(60_000, 62_000), micrometres(0, 100))
  .map(([min, width]) => ({ min, max: (min + width) as Length }));

describe('pistonClearance', () => {
  it('is what the piston leaves of the bore', () => {
    const sizes = { bore: inch(3.0005), piston: inch(2.997) };
    expect(format(pistonClearance(sizes), inch)).toBe('0.0035 in');
    const swapped = { bore: sizes.piston, piston: sizes.bore };
    expect(format(pistonClearance(swapped), inch)).toBe('-0.0035 in');
  });

  it('of spans holds that of every member, and reaches its ends', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(span, span, share, share, (bore, piston, a, b) => {
        const found = pistonClearanceSpan({ bore, piston });
        const member = pistonClearance({
          bore: (bore.min + a * (bore.max - bore.min)) as Length,
          piston: (piston.min + b * (piston.max - piston.min)) as Length,
        });
        expect(member).toBeGreaterThanOrEqual(found.min - 1e-15);
        expect(member).toBeLessThanOrEqual(found.max + 1e-15);
        expect(pistonClearance({ bore: bore.min, piston: piston.max })).toBe(found.min);
        expect(pistonClearance({ bore: bore.max, piston: piston.min })).toBe(found.max);
      }),
    );
  });

  it('of sizes is a span of no width', () => {
    const sizes = { bore: mm(87.2), piston: mm(87.165) };
    const clearance = pistonClearance(sizes);
    expect(pistonClearanceSpan(sizes)).toEqual({ min: clearance, max: clearance });
  });

  it.each(notNumbers.map((value) => [value]))('refuses the size %s', (value) => {
    const wrong = value as Length;
    expect(refusal(() => pistonClearance({ bore: wrong, piston: mm(87) })).parameter).toBe('bore');
    expect(refusal(() => pistonClearance({ bore: mm(87), piston: wrong })).parameter).toBe(
      'piston',
    );
    expect(refusal(() => pistonClearanceSpan({ bore: wrong, piston: mm(87) })).parameter).toContain(
      'bore',
    );
    const reversed = { min: mm(88), max: mm(87) };
    expect(refusal(() => pistonClearanceSpan({ bore: mm(87), piston: reversed })).parameter).toBe(
      'piston',
    );
  });

  it('refuses a piston of another engine', () => {
    const wrong = { bore: mm(87), piston: mm(80) };
    expect(refusal(() => pistonClearance(wrong)).parameter).toBe('piston');
    expect(refusal(() => pistonClearanceSpan(wrong)).parameter).toBe('piston');
  });

  it.each([undefined, null, 5, []])('refuses %j', (value) => {
    expect(refusal(() => pistonClearance(value as never)).parameter).toBe('sizes');
    expect(refusal(() => pistonClearanceSpan(value as never)).parameter).toBe('sizes');
  });
});
