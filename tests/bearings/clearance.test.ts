import {
  type BearingSizes,
  type BearingSpans,
  format,
  inch,
  type Length,
  mm,
  oilClearance,
  oilClearanceSpan,
  recommendedOilClearance,
  type Span,
  shellWallFor,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
const micrometres = (min: number, max: number) => fc.integer({ min, max }).map((n) => mm(n / 1000));
const anySizes = fc
  .record({
    housingBore: fc.integer({ min: 40_000, max: 80_000 }),
    shellWall: fc.integer({ min: 1000, max: 4000 }),
    clearance: fc.integer({ min: -900, max: 900 }),
  })
  .map(({ housingBore, shellWall, clearance }) => ({
    housingBore: mm(housingBore / 1000),
    shellWall: mm(shellWall / 1000),
    journal: mm((housingBore - 2 * shellWall - clearance) / 1000),
  }));
const tolerances = fc.record({
  housingBore: micrometres(0, 300),
  shellWall: micrometres(0, 150),
  journal: micrometres(0, 300),
});
const spanFrom = (least: Length, tolerance: Length): Span<Length> => ({
  min: least,
  max: (least + tolerance) as Length,
});

describe('oilClearance', () => {
  it('is what bore, two walls and journal leave', () => {
    expect(format(oilClearance(sizes), thou)).toBe('2.0 thou');
    expect(oilClearance({ ...sizes, journal: inch(2.128) })).toBeCloseTo(thou(-1), 12);
  });

  it('grows with the bore, shrinks by the journal and by twice the wall', () => {
    fc.assert(
      fc.property(anySizes, micrometres(0, 500), (sizes, by) => {
        const one = oilClearance(sizes);
        const changed = (field: keyof BearingSizes) =>
          oilClearance({ ...sizes, [field]: sizes[field] + by }) - one;
        expect(changed('housingBore')).toBeCloseTo(by, 14);
        expect(changed('journal')).toBeCloseTo(-by, 14);
        expect(changed('shellWall')).toBeCloseTo(-2 * by, 14);
      }),
    );
  });

  it('doubles with the engine', () => {
    fc.assert(
      fc.property(anySizes, (sizes) => {
        const twice = Object.fromEntries(Object.entries(sizes).map(([k, v]) => [k, 2 * v]));
        expect(oilClearance(twice as unknown as BearingSizes)).toBe(2 * oilClearance(sizes));
      }),
    );
  });

  it.each(notNumbers.map((value) => [value]))('refuses the size %s', (value) => {
    for (const field of Object.keys(sizes)) {
      const wrong = { ...sizes, [field]: value } as BearingSizes;
      expect(refusal(() => oilClearance(wrong)).parameter).toBe(field);
      expect(refusal(() => oilClearanceSpan(wrong)).parameter).toContain(field);
    }
  });

  it.each([undefined, null, 5, []])('refuses %j', (value) => {
    expect(refusal(() => oilClearance(value as unknown as BearingSizes)).parameter).toBe('sizes');
    const spans = value as unknown as BearingSpans;
    expect(refusal(() => oilClearanceSpan(spans)).parameter).toBe('sizes');
  });

  it('refuses a wall that is a bare number', () => {
    const error = refusal(() => oilClearance({ ...sizes, shellWall: 0.062 as Length }));
    expect(error.message).toMatch(/62 mm is outside 0\.2 mm … \d+ mm\. .* 0\.062 was given/);
  });
});

describe('oilClearanceSpan', () => {
  it('is tightest with the smallest bore, thickest shell and largest journal', () => {
    const span = oilClearanceSpan({
      housingBore: { min: inch(2.2507), max: inch(2.2512) },
      shellWall: { min: inch(0.0619), max: inch(0.062) },
      journal: { min: inch(2.1245), max: inch(2.125) },
    });
    expect([span.min, span.max].map((c) => format(c, thou))).toEqual(['1.7 thou', '2.9 thou']);
  });

  it('has no width for three sizes', () => {
    const clearance = oilClearance(sizes);
    expect(oilClearanceSpan(sizes)).toEqual({ min: clearance, max: clearance });
  });

  it('holds the clearance of every size in its spans, and its ends are reached', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anySizes, tolerances, share, share, share, (sizes, by, s1, s2, s3) => {
        const housingBore = spanFrom(sizes.housingBore, by.housingBore);
        const shellWall = spanFrom(sizes.shellWall, by.shellWall);
        const journal = spanFrom(sizes.journal, by.journal);
        const span = oilClearanceSpan({ housingBore, shellWall, journal });
        const at = ({ min, max }: Span<Length>, s: number) =>
          Math.min(max, min + s * (max - min)) as Length;
        const member = oilClearance({
          housingBore: at(housingBore, s1),
          shellWall: at(shellWall, s2),
          journal: at(journal, s3),
        });
        expect(member).toBeGreaterThanOrEqual(span.min - 1e-15);
        expect(member).toBeLessThanOrEqual(span.max + 1e-15);
        const tight = { housingBore: housingBore.min, shellWall: shellWall.max };
        expect(oilClearance({ ...tight, journal: journal.max })).toBe(span.min);
        const loose = { housingBore: housingBore.max, shellWall: shellWall.min };
        expect(oilClearance({ ...loose, journal: journal.min })).toBe(span.max);
      }),
    );
  });

  it('refuses a span the wrong way round', () => {
    const journal = { min: inch(2.125), max: inch(2.124) };
    expect(refusal(() => oilClearanceSpan({ ...sizes, journal })).parameter).toBe('journal');
  });
});

describe('shellWallFor', () => {
  it('adds half the undersize, so that the clearance stays', () => {
    expect(format(shellWallFor({ standardWall: inch(0.062), undersize: thou(20) }), inch)).toBe(
      '0.0720 in',
    );
    fc.assert(
      fc.property(anySizes, micrometres(0, 1000), (sizes, undersize) => {
        const shellWall = shellWallFor({ standardWall: sizes.shellWall, undersize });
        const journal = (sizes.journal - undersize) as Length;
        expect(oilClearance({ ...sizes, shellWall, journal })).toBeCloseTo(oilClearance(sizes), 14);
      }),
    );
  });

  it('refuses an undersize that is negative, and a wall that is none', () => {
    const standardWall = inch(0.062);
    expect(refusal(() => shellWallFor({ standardWall, undersize: thou(-10) })).parameter).toBe(
      'undersize',
    );
    const wall = refusal(() => shellWallFor({ standardWall: mm(0.1), undersize: thou(10) }));
    expect(wall.parameter).toBe('standardWall');
    expect(refusal(() => shellWallFor(null as never)).parameter).toBe('shell');
  });
});

describe('recommendedOilClearance', () => {
  it('is a rule of thumb and says so', () => {
    const { target, limits, basis } = recommendedOilClearance(inch(2));
    expect(target).toBeCloseTo(thou(2), 12);
    expect(limits.min).toBeCloseTo(thou(1.5), 12);
    expect(limits.max).toBeCloseTo(thou(3), 12);
    expect(basis.kind).toBe('common practice');
  });

  it('grows with the journal', () => {
    fc.assert(
      fc.property(micrometres(3000, 400_000), (journal) => {
        const [one, two] = [journal, (2 * journal) as Length].map(recommendedOilClearance);
        expect(two?.target).toBe(2 * (one?.target as number));
        expect(two?.limits.max).toBe(2 * (one?.limits.max as number));
      }),
    );
  });

  it('refuses what is no journal', () => {
    expect(refusal(() => recommendedOilClearance(2.125 as Length)).parameter).toBe('journal');
  });
});
