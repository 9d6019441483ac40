import { flattenedThreadGap, format, type Length, mm } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const thread = fc
  .record({
    diameter: fc.integer({ min: 50, max: 500 }),
    times: fc.integer({ min: 101, max: 900 }),
  })
  .map(({ diameter, times }) => ({
    threadDiameter: mm(diameter / 1000),
    flattenedWidth: mm(((diameter / 1000) * times) / 100),
  }));

describe('flattenedThreadGap', () => {
  it('keeps the area of the section', () => {
    const gap = flattenedThreadGap({ threadDiameter: mm(0.2), flattenedWidth: mm(0.6) });
    expect(format(gap, mm)).toBe('0.052 mm');
    fc.assert(
      fc.property(thread, (any) => {
        const area = (Math.PI / 4) * any.threadDiameter ** 2;
        expect((flattenedThreadGap(any) * any.flattenedWidth) / area).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is thinner the wider it was flattened, and scales with the thread', () => {
    fc.assert(
      fc.property(thread, fc.integer({ min: 101, max: 300 }), (any, percent) => {
        const wider = { ...any, flattenedWidth: ((any.flattenedWidth * percent) / 100) as Length };
        expect(flattenedThreadGap(wider)).toBeLessThan(flattenedThreadGap(any));
        const twice = {
          threadDiameter: (2 * any.threadDiameter) as Length,
          flattenedWidth: (2 * any.flattenedWidth) as Length,
        };
        expect(flattenedThreadGap(twice)).toBe(2 * flattenedThreadGap(any));
      }),
    );
  });

  it('errs from rounded edges by less than 0.22 gap/width of the gap', () => {
    fc.assert(
      fc.property(thread, (any) => {
        const gap = roundedGap(any.threadDiameter, any.flattenedWidth);
        const error = (gap - flattenedThreadGap(any)) / gap;
        expect(error).toBeGreaterThanOrEqual(0);
        expect(error).toBeLessThanOrEqual((0.22 * gap) / any.flattenedWidth);
        expect(error).toBeGreaterThanOrEqual((0.21 * gap) / any.flattenedWidth);
      }),
    );
  });

  it('errs by two per cent at a width of ten gaps', () => {
    // A stadium of gap 1 and width 10: a rectangle of 9 and two half circles.
    const area = 9 + Math.PI / 4;
    const threadDiameter = Math.sqrt((4 * area) / Math.PI);
    const gap = flattenedThreadGap({
      threadDiameter: mm(threadDiameter / 10),
      flattenedWidth: mm(1),
    });
    expect((0.0001 - gap) / 0.0001).toBeCloseTo(0.0215, 4);
  });

  it.each(notNumbers.map((value) => [value]))('refuses the size %s', (value) => {
    const good = { threadDiameter: mm(0.2), flattenedWidth: mm(0.6) };
    for (const field of Object.keys(good)) {
      const wrong = { ...good, [field]: value } as typeof good;
      expect(refusal(() => flattenedThreadGap(wrong)).parameter).toBe(field);
    }
  });

  it('refuses a stripe narrower than its thread, and no object', () => {
    const error = refusal(() =>
      flattenedThreadGap({ threadDiameter: mm(0.6), flattenedWidth: mm(0.2) }),
    );
    expect(error.parameter).toBe('flattenedWidth');
    expect(error.hint).toContain('swapped');
    expect(refusal(() => flattenedThreadGap(null as never)).parameter).toBe('thread');
    const same = { threadDiameter: mm(0.2), flattenedWidth: mm(0.2) };
    expect(flattenedThreadGap(same)).toBeCloseTo(mm(0.2 * (Math.PI / 4)), 15);
  });
});

/** Thickness of a flattened thread whose edges are half circles, of the same area and width. */
function roundedGap(diameter: number, width: number): number {
  const area = (Math.PI / 4) * diameter ** 2;
  // gap · (width - gap) + π/4 gap² = area, the smaller root, without cancellation.
  const k = 1 - Math.PI / 4;
  return (2 * area) / (width + Math.sqrt(width * width - 4 * k * area));
}
