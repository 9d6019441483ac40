import {
  describeGrindPlan,
  type EndPlayReading,
  endPlay,
  type GrindRequest,
  grindPlan,
  inch,
  type Length,
  micrometre,
  mm,
  pickShims,
  type Shim,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { asNew, journal, rods, tenths, worn } from './journals.js';

describe('grindPlan at the door', () => {
  const good = rods(asNew);
  const refused = (more: object) => {
    const error = refusal(() => grindPlan({ ...good, ...more } as GrindRequest));
    return [error.parameter, error.value];
  };
  const second = (more: object) => ({
    journals: [journal(asNew), { ...journal(asNew), ...more }],
  });

  it('names what it does not know', () => {
    expect(refused({ shells: [thou(10)] })).toEqual(['request.shells', [thou(10)]]);
    expect(refused({ shape: { limit: 1 } })).toEqual(['shape.limit', 1]);
  });

  it('names the one of several journals, steps or shells that is wrong', () => {
    expect(refused(second({ name: '' }))).toEqual(['journals[1].name', '']);
    expect(refused(second({ runout: mm(11) }))).toEqual(['journals[1].runout', mm(11)]);
    expect(refused({ steps: [thou(10), 20] })).toEqual(['steps[1]', 20]);
    expect(refused({ shellsAtHand: [thou(10), 20] })).toEqual(['shellsAtHand[1]', 20]);
    expect(refused({ standard: { min: inch(2), max: 2 } })).toEqual(['standard.max', 2]);
  });

  it('takes a minimum up to the largest that is standard', () => {
    expect(grindPlan({ ...good, minimum: tenths(21_250) }).outcome).toBe('none');
    const more = (tenths(21_250) + 1e-6) as Length;
    expect(refused({ minimum: more })).toEqual(['minimum', more]);
  });

  it('takes a journal for one of its kind down to 3 mm below standard and up to 0.1 mm above', () => {
    const standard = { min: mm(50), max: mm(50.01) };
    const of = (size: number) => ({
      standard,
      journals: [{ ...journal(asNew), smallest: mm(size), largest: mm(size) }],
    });
    for (const size of [47.001, 50.109]) {
      expect(() => grindPlan({ ...good, ...of(size) })).not.toThrow();
    }
    expect(refused(of(46.999))).toEqual(['journals[0].smallest', mm(46.999)]);
    expect(refused(of(50.111))).toEqual(['journals[0].largest', mm(50.111)]);
  });

  it('takes a shape of nothing for none', () => {
    expect(grindPlan({ ...good, shape: {} })).toEqual(grindPlan(good));
  });
});

describe('grindPlan to the nanometre', () => {
  const off = (size: Length, nanometres: number) => (size + nanometres * 1e-9) as Length;

  it('cleans up a journal in which just enough is left', () => {
    // All round, with nothing for the wheel: what is left is the smallest diameter.
    const at = (nanometres: number) =>
      grindPlan({
        ...rods(),
        journals: [
          {
            ...journal({ name: 'rod 1', smallest: 21_150, largest: 21_170 }),
            smallest: off(tenths(21_150), nanometres),
          },
        ],
        wear: 'all round',
        cleanUpAllowance: thou(0),
      });
    for (const just of [at(0), at(-0.9)]) expect(just).toMatchObject({ undersize: thou(10) });
    expect(at(-1.1)).toMatchObject({ undersize: thou(20) });
  });

  it('grinds to a minimum that is the step itself', () => {
    const at = (nanometres: number) =>
      grindPlan({ ...rods(worn), minimum: off(tenths(21_145), nanometres) }).outcome;
    expect([at(0), at(0.9), at(1.1)]).toEqual(['grind', 'grind', 'none']);
  });

  it('knows shells of its undersize and no others', () => {
    const at = (nanometres: number) =>
      grindPlan({ ...rods(worn), shellsAtHand: [off(thou(10), nanometres)] }).outcome;
    expect([at(0.9), at(-0.9), at(1.1), at(-1.1)]).toEqual(['grind', 'grind', 'none', 'none']);
  });
});

describe('endPlay at the door', () => {
  const readings = [
    { pushed: thou(0), pulled: thou(7) },
    { pushed: thou(0), pulled: thou(8) },
  ];

  it('names the reading that is wrong, and what it does not know', () => {
    const wrong = [...readings, null] as unknown as EndPlayReading[];
    expect(refusal(() => endPlay(wrong)).parameter).toBe('readings[2]');
    expect(refusal(() => endPlay([])).parameter).toBe('readings');
    const misspelt = { limit: { max: thou(9) } } as object;
    expect(refusal(() => endPlay(readings, misspelt)).parameter).toBe('options.limit');
  });

  it('takes limits from nothing to 3 mm', () => {
    const limited = (max: Length) => () => endPlay(readings, { limits: { min: thou(0), max } });
    expect(limited(mm(3))).not.toThrow();
    expect(refusal(limited(mm(3.001))).parameter).toBe('options.limits.max');
    const below = () => endPlay(readings, { limits: { min: thou(-1) } });
    expect(refusal(below).parameter).toBe('options.limits.min');
  });

  it('says which rule of thumb it took, and what was judged', () => {
    const { finding } = endPlay(readings);
    expect(finding.feature).toBe('end play');
    expect(finding.basis).toMatchObject({ rule: expect.stringContaining('0.004 to 0.010 in') });
  });
});

describe('pickShims at the door', () => {
  const shelf = [50, 70, 100].map((size, i) => ({
    name: `shim ${i}`,
    thickness: micrometre(size),
  }));
  const wanted = { min: micrometre(110), max: micrometre(130) };
  const withSecond = (more: unknown) => () =>
    pickShims(
      shelf.map((shim, i) => (i === 1 ? (more as Shim) : shim)),
      wanted,
    );

  it('names the shim that is wrong', () => {
    expect(refusal(withSecond(5)).parameter).toBe('shelf[1]');
    expect(refusal(withSecond({ thickness: micrometre(70) })).parameter).toBe('shelf[1].name');
    for (const thickness of [micrometre(9.9), mm(20.1), Number.NaN as Length]) {
      const error = refusal(withSecond({ name: 'b', thickness }));
      expect([error.parameter, error.value]).toEqual(['shelf[1].thickness', thickness]);
    }
    for (const thickness of [micrometre(10), mm(20)]) {
      expect(withSecond({ name: 'b', thickness })).not.toThrow();
    }
  });

  it('names the shelf where it is none or too long', () => {
    expect(refusal(() => pickShims(null as never, wanted)).parameter).toBe('shelf');
    const long = Array.from({ length: 41 }, () => shelf[0] as Shim);
    expect(refusal(() => pickShims(long, wanted)).parameter).toBe('shelf');
  });

  it('wants a pack of nothing to 100 mm', () => {
    const want = (min: Length, max: Length) => () => pickShims(shelf, { min, max });
    expect(want(mm(0), mm(100))).not.toThrow();
    expect(refusal(want(mm(-0.001), mm(1))).parameter).toBe('wanted.min');
    expect(refusal(want(mm(0), mm(100.1))).parameter).toBe('wanted.max');
    expect(refusal(want(mm(2), mm(1))).parameter).toBe('wanted');
  });

  it('judges what is taken against what was wanted', () => {
    const { shims, total, finding } = pickShims(shelf, wanted);
    expect(shims.map(({ name }) => name)).toEqual(['shim 0', 'shim 1']);
    expect(total).toBeCloseTo(micrometre(120), 15);
    expect(finding).toMatchObject({
      feature: 'shims together',
      value: total,
      limits: wanted,
      basis: { kind: 'specified' },
      verdict: 'within',
    });
  });

  it('takes one shim that is as thick as the span allows, to either end', () => {
    const at = (min: number, max: number) =>
      pickShims(shelf, { min: micrometre(min), max: micrometre(max) }).shims.map(
        ({ name }) => name,
      );
    expect(at(70, 80)).toEqual(['shim 1']);
    expect(at(60, 70)).toEqual(['shim 1']);
    // 71 to 74: none lies within, and 70 is nearest the middle.
    expect(at(71, 74)).toEqual(['shim 1']);
  });
});

describe('describeGrindPlan, where a journal of good size does not clean up', () => {
  it('says that it is not shown to be good', () => {
    const plan = grindPlan({
      ...rods(),
      journals: [{ ...journal(asNew), faults: ['pitted'] }],
      steps: [thou(0)],
    });
    // 2.1246 less the wheel's thousandth is 2.1236 in; the target ends at 2.1250 in.
    expect(describeGrindPlan(plan, { units: 'inch' })).toEqual([
      'no step serves: rod 1 cannot clean up',
      'not standard: rod 1 is not shown to be good as it is and does not clean up (clean at 2.1236 in, 0.0014 in short)',
    ]);
  });
});
