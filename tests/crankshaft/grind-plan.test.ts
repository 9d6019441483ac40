import {
  describeGrindPlan,
  type GrindPlan,
  type GrindReason,
  type GrindRequest,
  grindPlan,
  inch,
  minus,
  plus,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { asNew, rods, ruined, tenths, worn } from './journals.js';

type Served = Exclude<GrindPlan, { readonly outcome: 'none' }>;

function served(request: GrindRequest): Served {
  const plan = grindPlan(request);
  if (plan.outcome === 'none') throw new Error('no step serves');
  return plan;
}

function reason<K extends GrindReason['kind']>(plan: GrindPlan, kind: K) {
  return plan.because.filter(
    (because): because is Extract<GrindReason, { readonly kind: K }> => because.kind === kind,
  );
}

describe('grindPlan', () => {
  it('uses what is good as it is', () => {
    const plan = served(rods(asNew));
    expect([plan.outcome, plan.undersize]).toEqual(['use as it is', 0]);
    expect(plan.target).toEqual({ min: tenths(21_245), max: tenths(21_250) });
    expect(plan.journals).toEqual([{ name: 'rod 1', work: 'use as it is' }]);
    expect(plan.because).toEqual([{ kind: 'good as it is', journal: 'rod 1', undersize: 0 }]);
  });

  it('grinds a journal of good size that has faults to be seen', () => {
    const withFaults = (faults: readonly string[]) => ({
      ...rods(asNew),
      journals: rods(asNew).journals.map((journal) => ({ ...journal, faults })),
    });
    const plan = served(withFaults(['scored', 'pitted']));
    expect([plan.outcome, plan.undersize]).toEqual(['grind', thou(10)]);
    expect(reason(plan, 'faults')).toEqual([
      { kind: 'faults', journal: 'rod 1', faults: ['scored', 'pitted'] },
    ]);
    expect(describeGrindPlan(plan, { units: 'inch' })).toContain(
      'rod 1 must be ground: scored, pitted',
    );
    expect(served(withFaults([])).outcome).toBe('use as it is');
  });

  it('grinds to the first step at which the journal cleans up', () => {
    const plan = served(rods(worn));
    expect([plan.outcome, plan.undersize]).toEqual(['grind', thou(10)]);
    expect(plan.target.min).toBeCloseTo(tenths(21_145), 12);
    expect(plan.target.max).toBeCloseTo(tenths(21_150), 12);
    const [work] = plan.journals;
    expect(work?.stockRemoved?.min).toBeCloseTo(tenths(21_202 - 21_150), 12);
    expect(work?.stockRemoved?.max).toBeCloseTo(tenths(21_202 - 21_145), 12);
    const [cleansUp] = reason(plan, 'cleans up');
    expect(cleansUp?.available).toBeCloseTo(tenths(21_166), 12);
  });

  it('takes all journals of one kind to one step', () => {
    const plan = served(rods(asNew, worn));
    expect(plan.undersize).toBe(thou(10));
    expect(plan.journals.map(({ work }) => work)).toEqual(['grind', 'grind']);
    expect(reason(plan, 'does not clean up').map(({ journal }) => journal)).toEqual(['rod 2']);
  });

  it('keeps a journal that is at the step already while the others are ground to it', () => {
    const ground = { name: 'rod 4', smallest: 21_146, largest: 21_149 };
    const plan = served(rods(ground, worn));
    expect(plan.journals.map(({ work }) => work)).toEqual(['use as it is', 'grind']);
    expect(plan.outcome).toBe('grind');
  });

  it('uses a journal outside its target by no more than the size allowance', () => {
    const low = { ...asNew, smallest: 21_240 };
    const [kept] = reason(grindPlan(rods(low)), 'good as it is');
    expect(kept?.outside).toBeCloseTo(tenths(-5), 12);
    expect(kept?.basis?.kind).toBe('common practice');
    expect(served(rods({ ...low, smallest: 21_239 })).outcome).toBe('grind');
    const high = { ...asNew, largest: 21_255 };
    expect(reason(grindPlan(rods(high)), 'good as it is')[0]?.outside).toBeCloseTo(tenths(5), 12);
    expect(served(rods({ ...high, largest: 21_256 })).outcome).toBe('grind');
    const own = grindPlan({ ...rods(low), sizeAllowance: tenths(7) });
    expect(reason(own, 'good as it is')[0]?.basis).toEqual({ kind: 'specified' });
    expect(served({ ...rods(low), sizeAllowance: tenths(0) }).outcome).toBe('grind');
  });

  it('grinds what is out of round or tapered beyond its limit though its size would do', () => {
    for (const flaw of [{ outOfRound: 6 }, { taper: 6 }]) {
      const plan = served(rods({ ...asNew, smallest: 21_244, largest: 21_250, ...flaw }));
      expect(plan.outcome).toBe('grind');
      const [shape] = reason(plan, 'shape');
      expect(shape?.finding.verdict).toBe('above');
      expect(shape?.finding.feature).toBe('taper' in flaw ? 'taper' : 'out-of-round');
    }
    const both = served(rods({ ...asNew, smallest: 21_240, outOfRound: 6, taper: 8 }));
    expect(reason(both, 'shape')[0]?.finding.feature).toBe('taper');
  });

  it('takes the caller’s limits of shape', () => {
    const oval = rods({ ...asNew, smallest: 21_245, largest: 21_250, outOfRound: 5 });
    expect(served(oval).outcome).toBe('use as it is');
    const strict = { ...oval, shape: { limits: { max: tenths(4) } } };
    expect(reason(grindPlan(strict), 'shape')[0]?.finding.basis).toEqual({ kind: 'specified' });
  });

  it('leaves less in a journal worn on one side, eccentric, or with more left for the wheel', () => {
    const left = (change: Partial<GrindRequest>, runout = 0) =>
      reason(grindPlan({ ...rods({ ...worn, runout }), ...change }), 'cleans up')[0]?.available;
    expect(left({})).toBeCloseTo(tenths(21_166), 12);
    expect(left({ wear: 'one side' })).toBe(left({}));
    expect(left({ wear: 'all round' })).toBeCloseTo(tenths(21_179), 12);
    expect(left({}, 10)).toBeCloseTo(tenths(21_156), 12);
    expect(left({ cleanUpAllowance: tenths(0) })).toBeCloseTo(tenths(21_176), 12);
  });

  it('says whose clean-up allowance it took', () => {
    const [rule] = reason(grindPlan(rods(worn)), 'allowance');
    expect(rule?.cleanUpAllowance).toBe(thou(1));
    expect(rule?.basis.kind).toBe('common practice');
    const own = grindPlan({ ...rods(worn), cleanUpAllowance: thou(2) });
    expect(reason(own, 'allowance')[0]).toEqual({
      kind: 'allowance',
      cleanUpAllowance: thou(2),
      basis: { kind: 'specified' },
    });
  });

  it('passes over a step without shells', () => {
    const plan = served({ ...rods(worn), shellsAtHand: [thou(20)] });
    expect(plan.undersize).toBe(thou(20));
    expect(reason(plan, 'no shells at hand').map(({ undersize }) => undersize)).toEqual([
      0,
      thou(10),
    ]);
  });

  it('knows shells by their undersize however it was worked out', () => {
    const shellsAtHand = [plus(thou(3), thou(7)), minus(inch(0.31), inch(0.3))];
    expect(new Set(shellsAtHand).size).toBe(2);
    expect(served({ ...rods(worn), shellsAtHand }).undersize).toBe(thou(10));
  });

  it('grinds nothing below the minimum', () => {
    const request = { ...rods(worn), minimum: tenths(21_146) };
    const plan = grindPlan(request);
    expect(plan).toMatchObject({ outcome: 'none', defeatedBy: [] });
    const reasons = reason(plan, 'below the minimum');
    expect(reasons.map(({ undersize }) => undersize)).toEqual([thou(10), thou(20), thou(30)]);
    expect(reasons[0]?.minimum).toBe(tenths(21_146));
    expect(served({ ...request, minimum: tenths(21_145) }).undersize).toBe(thou(10));
  });

  it('does not use a journal below the minimum as it is either', () => {
    const thin = { name: 'rod 5', smallest: 20_946, largest: 20_949 };
    expect(served(rods(thin)).undersize).toBe(thou(30));
    const plan = grindPlan({ ...rods(thin), minimum: tenths(21_000) });
    expect(plan.outcome).toBe('none');
  });

  it('names the journal that defeats every step', () => {
    const plan = grindPlan(rods(asNew, ruined, worn));
    expect(plan).toMatchObject({ outcome: 'none', defeatedBy: ['rod 3'] });
    expect(reason(plan, 'does not clean up').filter((r) => r.journal === 'rod 3')).toHaveLength(4);
    const kinds = new Set(plan.because.map(({ kind }) => kind));
    expect([...kinds]).toEqual(['does not clean up']);
  });

  it('defeats by want of shells without blaming a journal', () => {
    const plan = grindPlan({ ...rods(asNew), shellsAtHand: [] });
    expect(plan).toMatchObject({ outcome: 'none', defeatedBy: [] });
    expect(reason(plan, 'no shells at hand')).toHaveLength(4);
  });

  it('takes the steps in any order', () => {
    const steps = [thou(30), thou(0), thou(20), thou(10)];
    expect(grindPlan({ ...rods(worn), steps })).toEqual(grindPlan(rods(worn)));
    expect(steps).toEqual([thou(30), thou(0), thou(20), thou(10)]);
  });
});
