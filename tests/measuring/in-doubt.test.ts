import {
  type Basis,
  borePlan,
  grindPlan,
  inch,
  type Length,
  type NamedRule,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { doubtAbout, isReadTooCoarsely, usableAsItIs } from '../../src/measuring/internal.js';

// All in tenths of a thousandth of an inch. The step is 2.0000 to 2.0010 in, a rule of thumb allows 3 tenths outside it,
// and sizes are known to 2 tenths.
const target = { min: inch(2), max: inch(2.001) };
const tenths = (count: number) => thou(count / 10);
const part = (smallest: number, largest: number) => ({
  name: 'rod 1',
  smallest: (target.min + tenths(smallest)) as Length,
  largest: (target.min + tenths(largest)) as Length,
  outOfRound: inch(0),
  taper: inch(0),
});
const rule: Basis = { kind: 'common practice', rule: 'three tenths' };
const specified: Basis = { kind: 'specified' };
const allowance = (basis: Basis, band = 2) => ({ most: tenths(3), basis, band: tenths(band) });
const wear = { wearsTo: 'smaller', upTo: tenths(10) } as const;
const doubt = (smallest: number, basis: Basis, band = 2) =>
  doubtAbout(part(smallest, 5), undefined, target, allowance(basis, band), wear);

describe('a size that is known to two tenths', () => {
  it.each([
    [-1, true],
    [-2, false],
    [12, false],
    [11, true],
  ])('%i tenths from the lower end may be used: %s, as three are allowed', (end, usable) => {
    const sized = end < 0 ? part(end, 5) : part(5, end);
    expect(usableAsItIs(sized, target, allowance(specified)) !== undefined).toBe(usable);
  });

  it('leaves no doubt where it is used surely, and none where it is surely too small', () => {
    expect(doubt(-1, specified)).toEqual({ name: 'rod 1' });
    expect(doubt(-6, specified)).toBeUndefined();
  });

  it.each([-2, -3, -4, -5])('leaves it in doubt %i tenths away, and tells the band', (end) => {
    const found = doubt(end, specified);
    expect(found).toMatchObject({
      outside: expect.closeTo(tenths(end), 12),
      basis: specified,
      band: tenths(2),
    });
    expect(found && isReadTooCoarsely(found)).toBe(true);
  });

  it('by a rule of thumb leaves it in doubt further down too, where no better reading helps', () => {
    for (const end of [-6, -10]) {
      const found = doubt(end, rule);
      expect(found).not.toHaveProperty('band');
      expect(found && isReadTooCoarsely(found)).toBe(false);
    }
    expect(doubt(-11, rule)).toBeUndefined();
  });

  it('has no band where nobody says how well it is known', () => {
    expect(doubt(-3, specified, 0)).toEqual({ name: 'rod 1' });
    expect(doubt(-4, specified, 0)).toBeUndefined();
    expect(doubt(-4, rule, 0)).not.toHaveProperty('band');
  });
});

describe('a journal that hardly cleans up', () => {
  // 10 under is 1.9900 to 1.9910 in; the wheel takes a thousandth: 1.9920 in just cleans up.
  const plan = (smallest: number, uncertainty?: number, named?: NamedRule, minimum?: number) =>
    grindPlan({
      journals: [{ ...part(0, 0), smallest: inch(smallest), largest: inch(smallest) }],
      standard: target,
      steps: [thou(10)],
      ...(uncertainty !== undefined && { sizeUncertainty: tenths(uncertainty) }),
      ...(named && { shape: { rule: named } }),
      ...(minimum !== undefined && { minimum: inch(minimum) }),
    });
  const nearly = { undersize: thou(10), journals: ['rod 1'] };

  it.each([
    [1.992, undefined, 'grind', undefined],
    [1.9919, undefined, 'none', undefined],
    [1.9919, 2, 'none', nearly],
    [1.9918, 2, 'none', nearly],
    // 5 tenths above 1.9910 in it may be left as it is.
    [1.9917, 2, 'none', nearly],
    [1.9917, 1, 'none', undefined],
    // Just clean, it is ground: that is what the thousandth for the wheel is for.
    [1.992, 2, 'grind', undefined],
  ] as const)('of %d in, known to %s tenths: %s', (smallest, uncertainty, outcome, near) => {
    const found = plan(smallest, uncertainty);
    expect(found.outcome).toBe(outcome);
    expect(found.nearly).toEqual(near);
  });

  it('is near by the band of the rule that its owner names', () => {
    // 0.8225 of 2 tenths is 1.645 tenths; of simple acceptance nothing.
    const near = (smallest: number, named: NamedRule) =>
      plan(smallest, 2, named).nearly !== undefined;
    expect(near(1.9919, 'simple acceptance')).toBe(false);
    expect(near(1.99184, 'ISO 14253-1:2017')).toBe(true);
    expect(near(1.99183, 'ISO 14253-1:2017')).toBe(false);
    expect(near(1.9918, 'full expanded uncertainty')).toBe(true);
  });

  it('is near no step that the minimum rules out', () => {
    expect(plan(1.9919, 2, undefined, 1.99)).toHaveProperty('nearly');
    expect(plan(1.9919, 2, undefined, 1.9901)).not.toHaveProperty('nearly');
  });

  it('is refused an uncertainty that nobody has', () => {
    for (const uncertainty of [0, -1]) {
      expect(() => plan(1.9919, uncertainty)).toThrow(
        expect.objectContaining({ parameter: 'sizeUncertainty' }),
      );
    }
  });
});

describe('a cylinder that hardly cleans up', () => {
  // 20 over is 3.0200 to 3.0205 in; the hone takes three thousandths: 3.0170 in just cleans up.
  const plan = (size: number, uncertainty?: number) =>
    borePlan({
      cylinders: [
        {
          name: 'cylinder 1',
          smallest: inch(size),
          largest: inch(size),
          outOfRound: inch(0),
          taper: inch(0),
        },
      ],
      standard: { min: inch(3), max: inch(3.0005) },
      steps: [thou(20)],
      ...(uncertainty !== undefined && { sizeUncertainty: tenths(uncertainty) }),
    });

  it.each([
    [3.017, undefined, 'bore', false],
    [3.0171, undefined, 'sleeve', false],
    [3.0171, 2, 'sleeve', true],
    [3.0172, 2, 'sleeve', true],
    [3.0173, 2, 'sleeve', false],
  ] as const)('of %d in, known to %s tenths: %s', (size, uncertainty, outcome, isNear) => {
    const found = plan(size, uncertainty);
    expect(found.outcome).toBe(outcome);
    const near = { oversize: thou(20), cylinders: ['cylinder 1'] };
    expect('nearly' in found && found.nearly).toEqual(isNear && near);
  });

  it('or is a little larger than its last oversize by a rule of thumb, is not sleeved without a doubt', () => {
    // 3.0218 in is 1.3 thousandths above 3.0205 in, and a rule of thumb allows one.
    expect(plan(3.0218)).toMatchObject({ outcome: 'sleeve', inDoubt: { oversize: thou(20) } });
  });
});
