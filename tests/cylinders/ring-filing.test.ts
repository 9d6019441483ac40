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

  it('names the place of the gap that decides, where there is more than one', () => {
    const ring = { gap: thou(10), measuredIn };
    const feature = (bores: object) => ringFilingNeeded({ ...ring, ...bores }).finding.feature;
    expect(feature({})).toBe('ring gap');
    expect(feature({ smallestBore: inch(3), largestBore: inch(3) })).toBe('ring gap');
    // 1.0 thou above the least; π times 0.2 thou leaves 1.4 to the most, π times 0.4 only 0.7.
    expect(feature({ largestBore: inch(3.0002) })).toBe('ring gap at the smallest bore');
    expect(feature({ largestBore: inch(3.0004) })).toBe('ring gap at the largest bore');
  });

  it('says of a gap too wide at the largest bore only that the bore is worn', () => {
    const limits = { min: thou(9), max: thou(20) };
    // By hand: 12 + π * 3 = 21.4 thou at the top; 20 - π * 3 = 10.6 thou may it be at the bottom.
    const filing = ringFilingNeeded({
      gap: thou(12),
      measuredIn,
      largestBore: inch(3.003),
      limits,
    });
    expect(filing).toMatchObject({
      work: 'bore is worn',
      finding: { feature: 'ring gap at the largest bore', verdict: 'above', limits },
    });
    expect(format(filing.finding.value, thou)).toBe('21.4 thou');
    const serves = filing.work === 'bore is worn' ? filing.serves : undefined;
    expect([serves?.min, serves?.max].map((gap) => format(gap as Length, thou))).toEqual([
      '9.0 thou',
      '10.6 thou',
    ]);
    // By 4 thou it opens by 12.6, and the limits are 11 apart.
    const worn = ringFilingNeeded({ gap: thou(12), measuredIn, largestBore: inch(3.004), limits });
    expect(worn.work).toBe('bore is worn');
    expect(worn).not.toHaveProperty('serves');
    const most = { limits: { max: thou(20) } };
    const unbound = ringFilingNeeded({
      gap: thou(12),
      measuredIn,
      largestBore: inch(3.003),
      ...most,
    });
    expect(unbound.work).toBe('bore is worn');
    expect(unbound).not.toHaveProperty('serves');
  });

  it('blames no bore where the gap may be too wide already where it is smallest', () => {
    // 20.2 thou is past 20.0, but by less than the 0.5 thou it is known to; π thou on it is past it for certain.
    const ring = { gap: thou(20.2), measuredIn, largestBore: inch(3.001), uncertainty: thou(0.5) };
    expect(ringFilingNeeded({ ...ring, limits: { min: thou(9), max: thou(20) } })).toMatchObject({
      work: 'measure again',
      finding: { feature: 'ring gap at the smallest bore', verdict: 'undecided' },
    });
  });

  it('says of a gap too wide at the smallest bore that the ring is worn or wrong', () => {
    const limits = { min: thou(9), max: thou(20) };
    const ring = { gap: thou(21), measuredIn, largestBore: inch(3.003), limits };
    expect(ringFilingNeeded(ring)).toMatchObject({
      work: 'use another ring',
      finding: { feature: 'ring gap at the smallest bore', verdict: 'above' },
    });
  });

  it('condemns nothing at the largest bore by the rule of new rings', () => {
    const filing = ringFilingNeeded({ gap: thou(10), measuredIn, largestBore: inch(3.008) });
    expect(filing).toMatchObject({
      work: 'wider than a new fit',
      finding: { feature: 'ring gap at the largest bore', basis: { kind: 'common practice' } },
    });
  });

  it('files no more off than the largest bore allows, and says where even that is too much', () => {
    const limits = { min: thou(9), max: thou(20) };
    const filed = (largest: number) =>
      ringFilingNeeded({ gap: thou(5), measuredIn, largestBore: inch(largest), limits });
    // By hand: 9 - 5 = 4 thou at least; 20 - 5 - π * 3 = 5.6 thou at most.
    const some = filed(3.003);
    expect(
      [removed(some)?.min, removed(some)?.max].map((by) => format(by as Length, thou)),
    ).toEqual(['4.0 thou', '5.6 thou']);
    expect(some.finding.feature).toBe('ring gap at the smallest bore');
    expect(some).not.toHaveProperty('worn');
    // By 4 thou it opens by 12.6: filed to 9.0 below it is 21.6 thou above.
    const all = filed(3.004);
    expect([removed(all)?.min, removed(all)?.max].map((by) => format(by as Length, thou))).toEqual([
      '4.0 thou',
      '15.0 thou',
    ]);
    const worn = all.work === 'file' ? all.worn : undefined;
    expect(worn).toMatchObject({ feature: 'ring gap at the largest bore', verdict: 'above' });
    expect(format(worn?.value as Length, thou)).toBe('21.6 thou');
  });

  it('leaves a ring within its limits at both ends, if any ring is, when its advice is followed', () => {
    const micro = (max: number) => fc.integer({ min: 0, max }).map((n) => mm(n / 1000));
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const limits = { min: mm(0.2), max: mm(0.6) };
    fc.assert(
      fc.property(micro(800), micro(200), share, (gap, wear, s) => {
        const bores = { measuredIn: mm(75), largestBore: (mm(75) + wear) as Length, limits };
        const within = (at: Length) => {
          const low = at >= limits.min - 1e-9;
          return low && at + Math.PI * wear <= limits.max + 1e-9;
        };
        const filing = ringFilingNeeded({ ...bores, gap });
        expect(filing.work === 'fit as it is').toBe(within(gap));
        const to =
          filing.work === 'bore is worn' && filing.serves
            ? filing.serves
            : filing.work === 'file' && !filing.worn && filing.remove.max !== undefined
              ? { min: gap + filing.remove.min, max: gap + filing.remove.max }
              : undefined;
        if (to) expect(within((to.min + s * (to.max - to.min)) as Length)).toBe(true);
        const hopeless = Math.PI * wear > limits.max - limits.min + 2e-9;
        if (hopeless) expect(to).toBeUndefined();
      }),
      { numRuns: 1000 },
    );
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
    ['largestBore', 3 as Length, 'largestBore'],
    ['largestBore', inch(3.2), 'largestBore'],
    ['largestBore', inch(2.999), 'largestBore'],
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
