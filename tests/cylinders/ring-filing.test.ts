import {
  format,
  inch,
  type Length,
  mm,
  type RingFiling,
  ringFilingNeeded,
  ringGapIn,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const measuredIn = inch(3);
const removed = (filing: RingFiling) => (filing.work === 'file' ? filing.remove : undefined);

describe('ringFilingNeeded', () => {
  it('files a gap that is too tight, by so much', () => {
    const filing = ringFilingNeeded({ gap: thou(5), measuredIn });
    expect(filing.work).toBe('file');
    expect(removed(filing)?.min).toBeCloseTo(thou(4), 12);
    expect(removed(filing)?.max).toBeCloseTo(thou(7), 12);
    expect(filing.finding.verdict).toBe('below');
    expect(filing.finding.basis.kind).toBe('common practice');
  });

  it('fits a gap within its limits, and condemns one too wide by the caller’s limits only', () => {
    for (const gap of [9, 10, 12]) {
      expect(ringFilingNeeded({ gap: thou(gap), measuredIn }).work).toBe('fit as it is');
    }
    expect(ringFilingNeeded({ gap: thou(13), measuredIn }).work).toBe('wider than a new fit');
  });

  it('judges the gap in the smallest bore of the travel', () => {
    const ring = { gap: thou(12), measuredIn: inch(3.008) };
    const filing = ringFilingNeeded({ ...ring, smallestBore: inch(3) });
    expect(filing.work).toBe('file');
    expect(format(filing.finding.value, thou)).toBe('-13.1 thou');
    expect(filing.finding.value).toBe(ringGapIn({ ...ring, bore: inch(3) }));
    expect(ringFilingNeeded({ ...ring, smallestBore: inch(3.008) }).work).toBe('fit as it is');
  });

  it('takes the caller’s limits, one bound alone too', () => {
    const limits = { min: thou(15), max: thou(20) };
    const own = ringFilingNeeded({ gap: thou(12), measuredIn, limits });
    expect(removed(own)?.min).toBeCloseTo(thou(3), 12);
    expect(own.finding.basis).toEqual({ kind: 'specified' });
    const least = ringFilingNeeded({ gap: thou(12), measuredIn, limits: { min: thou(15) } });
    expect(removed(least)).toEqual({ min: expect.closeTo(thou(3), 12) });
    const most = { limits: { max: thou(10) } };
    expect(ringFilingNeeded({ gap: thou(5), measuredIn, ...most }).work).toBe('fit as it is');
    expect(ringFilingNeeded({ gap: thou(12), measuredIn, ...most }).work).toBe('use another ring');
  });

  it('leaves a gap within its limits when it was filed as told', () => {
    const micro = fc.integer({ min: 0, max: 600 }).map((n) => mm(n / 1000));
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(micro, fc.integer({ min: 40_000, max: 100_000 }), share, (gap, size, s) => {
        const bore = mm(size / 1000);
        const filing = ringFilingNeeded({ gap, measuredIn: bore });
        if (filing.work !== 'file') return;
        const { min, max } = filing.remove;
        expect(min).toBeGreaterThan(0);
        const filed = (gap + min + s * ((max as number) - min)) as Length;
        expect(ringFilingNeeded({ gap: filed, measuredIn: bore }).work).toBe('fit as it is');
      }),
    );
  });

  it('never files less from a tighter ring', () => {
    const micro = fc.integer({ min: 1, max: 600 });
    fc.assert(
      fc.property(micro, micro, (a, b) => {
        const [tight, wide] = [Math.min(a, b), Math.max(a, b)].map((n) => {
          const filing = ringFilingNeeded({ gap: mm(n / 1000), measuredIn: mm(75) });
          return removed(filing)?.min ?? 0;
        });
        expect(tight).toBeGreaterThanOrEqual(wide as number);
      }),
    );
  });

  it.each([
    ['gap', Number.NaN as Length, 'gap'],
    ['gap', thou(-1), 'gap'],
    ['measuredIn', 3 as Length, 'measuredIn'],
    ['smallestBore', 3 as Length, 'smallestBore'],
    ['limits', {}, 'ring.limits'],
    ['basis', { kind: 'x' }, 'ring.basis.kind'],
  ])('refuses a %s of %j', (field, value, parameter) => {
    const ring = { gap: thou(5), measuredIn, [field]: value };
    expect(refusal(() => ringFilingNeeded(ring)).parameter).toBe(parameter);
  });

  it('refuses no object', () => {
    expect(refusal(() => ringFilingNeeded(undefined as never)).parameter).toBe('ring');
  });

  it('takes a limit up to 3 % of the bore', () => {
    const ring = { gap: thou(10), measuredIn: inch(3) };
    expect(() => ringFilingNeeded({ ...ring, limits: { max: thou(89) } })).not.toThrow();
    expect(() => ringFilingNeeded({ ...ring, limits: { max: thou(91) } })).toThrow(/outside/);
  });
});
