import { type Basis, grindPlan, inch, type Length, mm, thou, undersizeSteps } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { journalShapeLimits, judgeShape } from '../../src/measuring/shape-rule.js';
import { sizeSteps, withStandard } from '../../src/measuring/size-steps.js';
import {
  guardSizeAndShape,
  outsideOf,
  type SizeAndShape,
  usableAsItIs,
} from '../../src/measuring/standing.js';
import { refusal } from '../quantities/refusal.js';

const target = { min: inch(2), max: inch(2.001) };
/** From tenths over 2 in. */
const part = (smallest: number, largest: number, more: Partial<SizeAndShape> = {}) => ({
  name: 'rod 1',
  smallest: inch(2 + smallest / 10_000),
  largest: inch(2 + largest / 10_000),
  outOfRound: inch(0),
  taper: inch(0),
  ...more,
});

describe('a part against its size', () => {
  it.each([
    ['within it', 1, 9, 0],
    ['at both ends of it', 0, 10, 0],
    ['above it', 5, 14, 4],
    ['below it', -3, 5, -3],
    ['outside at both ends, the worse above', -3, 14, 4],
    ['outside at both ends, the worse below', -5, 14, -5],
    ['wholly above it', 12, 14, 4],
  ])('lies %s', (_, smallest, largest, tenths) => {
    expect(outsideOf(part(smallest, largest), target)).toBeCloseTo(thou(tenths / 10), 15);
  });

  const basis: Basis = { kind: 'specified' };
  const allowance = { most: thou(0.3), basis, band: thou(0) };
  const used = (smallest: number, largest: number, more: Partial<SizeAndShape> = {}) =>
    usableAsItIs(part(smallest, largest, more), target, allowance);

  it('is used as it is within it, and nothing more is said', () => {
    expect(used(0, 10)).toEqual({});
    expect(used(0, 10, { faults: [] })).toEqual({});
    // Half a nanometre is no difference of size.
    expect(used(0, 10, { largest: (inch(2.001) + 0.5e-9) as Length })).toEqual({});
  });

  it('is used outside it by no more than is allowed, and by whom', () => {
    expect(used(0, 13)).toEqual({ outside: expect.closeTo(thou(0.3), 15), basis });
    expect(used(-3, 9)).toEqual({ outside: expect.closeTo(-thou(0.3), 15), basis });
    expect(used(0, 14)).toBeUndefined();
    expect(used(-4, 9)).toBeUndefined();
  });

  it('is not used with a fault to be seen, whatever its size', () => {
    expect(used(1, 9, { faults: ['scored'] })).toBeUndefined();
  });
});

describe('size and shape refuse', () => {
  const guard = (more: object) => () =>
    guardSizeAndShape('journals[2]', { ...part(0, 5), ...more } as SizeAndShape);

  it.each([
    ['name', ' '],
    ['smallest', 2],
    ['largest', 2],
    ['outOfRound', thou(-0.1)],
    ['taper', thou(-0.1)],
    ['outOfRound', thou(0.6)],
    ['taper', thou(0.6)],
    ['faults', 'scored'],
  ])('%s of %j, by its name', (field, wrong) => {
    const error = refusal(guard({ [field]: wrong }));
    expect([error.parameter, error.value]).toEqual([`journals[2].${field}`, wrong]);
  });

  it('a fault without a name, by its place', () => {
    const error = refusal(guard({ faults: ['scored', ''] }));
    expect(error.parameter).toBe('journals[2].faults[1]');
  });

  it('a largest that is smaller than the smallest', () => {
    expect(refusal(guard({ largest: inch(1.9999) })).parameter).toBe('journals[2]');
  });

  it('no shape that the range of the diameters just holds', () => {
    const range = thou(0.5);
    for (const flaw of ['outOfRound', 'taper']) {
      expect(guard({ [flaw]: range })).not.toThrow();
      expect(guard({ [flaw]: range + 0.5e-9 })).not.toThrow();
      expect(refusal(guard({ [flaw]: range + 2e-9 })).parameter).toBe(`journals[2].${flaw}`);
    }
    expect(guard({ faults: [] })).not.toThrow();
    expect(guard({ faults: ['pitted'] })).not.toThrow();
  });
});

describe('the rule of thumb for shape', () => {
  it('allows a journal half a thousandth of an inch, and says that it is a rule of thumb', () => {
    const allowed = journalShapeLimits('shape', {});
    expect(allowed.limits).toEqual({ max: thou(0.5) });
    expect(allowed.basis).toEqual({
      kind: 'common practice',
      rule: expect.stringContaining('0.0005 in'),
    });
    const [outOfRound, taper] = judgeShape({ outOfRound: thou(0.5), taper: thou(0.6) }, allowed);
    expect([outOfRound.feature, outOfRound.verdict]).toEqual(['out-of-round', 'within']);
    expect([taper.feature, taper.verdict]).toEqual(['taper', 'above']);
  });

  it('gives way to the caller’s limits, which are checked by their name', () => {
    const own = { limits: { max: mm(0.02) } };
    expect(journalShapeLimits('shape', own)).toEqual({
      ...own,
      limitsOf: 'service',
      basis: { kind: 'specified' },
    });
    const wrong = () => journalShapeLimits('shape', { limits: { max: mm(0.3) } });
    expect(refusal(wrong).parameter).toBe('shape.limits.max');
  });
});

describe('steps', () => {
  it('begin with standard once, and rise', () => {
    expect(withStandard([thou(20), thou(10)])).toEqual([0, thou(10), thou(20)]);
    expect(withStandard([thou(0), thou(10)])).toEqual([0, thou(10)]);
    // Half a nanometre is standard; two are not.
    expect(withStandard([0.5e-9 as Length])).toEqual([0]);
    expect(withStandard([2e-9 as Length])).toEqual([0, 2e-9]);
  });

  it('are refused by their place', () => {
    const wrong = () => withStandard([thou(10), 10 as Length]);
    expect(refusal(wrong).parameter).toBe('steps[1]');
  });

  it('of a system are refused by the system or the largest, whichever is wrong', () => {
    expect(refusal(() => sizeSteps('si' as 'inch', undefined)).parameter).toBe('system');
    expect(refusal(() => sizeSteps('metric', mm(4))).parameter).toBe('largest');
    expect(sizeSteps('metric', mm(0.5))).toEqual([0, mm(0.25), mm(0.5)]);
  });
});

describe('a plan and the shape of its journals', () => {
  it('leaves a journal alone that is out of round by just the limit', () => {
    const at = (outOfRound: number) =>
      grindPlan({
        journals: [part(0, 8, { outOfRound: thou(outOfRound) })],
        standard: target,
        steps: undersizeSteps('inch'),
      }).outcome;
    expect([at(0.5), at(0.51)]).toEqual(['use as it is', 'grind']);
  });
});
