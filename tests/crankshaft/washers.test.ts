import { type Length, type Shim, thou, type WashersToFit, washersForEndPlay } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const shims = (...sizes: readonly number[]): readonly Shim[] =>
  sizes.map((size, i) => ({ name: `washer ${i}`, thickness: thou(size) }));
const bearing: WashersToFit = {
  measured: { min: thou(13), max: thou(14) },
  fitted: shims(91, 92),
  shelf: shims(93, 95, 98),
  limits: { min: thou(4), max: thou(10) },
};
const names = (found: { readonly washers: readonly Shim[] }) =>
  found.washers.map(({ name }) => name);

describe('washersForEndPlay', () => {
  it('gains in thickness what the play is to lose', () => {
    // Hand-worked: 183 thou were in. 183 + 14 - 10 = 187 to 183 + 13 - 4 = 192 are wanted: 93 + 95 = 188, 93 + 98 = 191
    // and 95 + 98 = 193. The middle is 189.5: 188 and 191 are equally near, and the thinner is taken.
    const found = washersForEndPlay(bearing);
    expect(names(found)).toEqual(['washer 0', 'washer 1']);
    expect(found.wanted.least).toBeCloseTo(thou(187), 12);
    expect(found.wanted.most).toBeCloseTo(thou(192), 12);
    expect(found.endPlay.min).toBeCloseTo(thou(8), 12);
    expect(found.endPlay.max).toBeCloseTo(thou(9), 12);
    expect(found).toMatchObject({ outcome: 'within', finding: { basis: { kind: 'specified' } } });
  });

  it('never leaves a face without its washer', () => {
    // One washer of 188 thou would do for the sum; two are fitted all the same.
    const found = washersForEndPlay({ ...bearing, shelf: shims(188, 90, 91) });
    expect(names(found)).toEqual(['washer 1', 'washer 2']);
    expect(found.outcome).toBe('outside');
  });

  it('says so where the play varies by more than its limits', () => {
    const found = washersForEndPlay({ ...bearing, measured: { min: thou(8), max: thou(16) } });
    expect(found.wanted.least).toBeGreaterThan(found.wanted.most);
    expect(found.outcome).toBe('outside');
  });

  it('works by the rule of thumb where no limits are known, and says it is one', () => {
    const { limits: _, ...without } = bearing;
    expect(washersForEndPlay(without).finding.basis.kind).toBe('common practice');
  });

  it('is what trying every choice gives', () => {
    const size = fc.integer({ min: 88, max: 99 });
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 2, maxLength: 7 }),
        fc.integer({ min: 0, max: 20 }),
        (shelf, play) => {
          const measured = thou(play) as Length;
          const { total } = washersForEndPlay({ ...bearing, measured, shelf: shims(...shelf) });
          const middle = 183 + play - 7;
          const sums = shelf.flatMap((a, i) => shelf.slice(i + 1).map((b) => a + b));
          const nearest = Math.min(...sums.map((sum) => Math.abs(sum - middle)));
          expect(Math.abs(total / thou(1) - middle)).toBeCloseTo(nearest, 6);
        },
      ),
    );
  });

  it.each<[string, string, Partial<WashersToFit>]>([
    ['no washer', 'fitted', { fitted: [] }],
    ['too few on the shelf', 'shelf', { shelf: shims(93) }],
    ['a limit alone', 'bearing.limits.min', { limits: { max: thou(10) } }],
    ['a play below none', 'measured', { measured: thou(-1) }],
  ])('refuses %s', (_, parameter, wrong) => {
    expect(refusal(() => washersForEndPlay({ ...bearing, ...wrong })).parameter).toBe(parameter);
  });
});
