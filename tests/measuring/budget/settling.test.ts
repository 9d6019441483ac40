import {
  type Contributor,
  describeSettling,
  expandedUncertainty,
  inch,
  type Judgement,
  judge,
  type Length,
  mm,
  whatSettles,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../../quantities/refusal.js';

const judged = (value: Length, more: Partial<Judgement<'length'>> = {}) =>
  judge({
    feature: 'bore',
    dimension: 'length',
    value,
    limits: { max: inch(3.002) },
    basis: { kind: 'specified' },
    ...more,
  });
/** A spread of 0.0001 in, well known, and the mean of two readings: 2 · 0.0001 / √2 = 0.00014 in and a little. */
const spread: Contributor = {
  name: 'repeatability',
  kind: 'readings',
  standardDeviation: inch(0.0001),
  readings: 2,
  degreesOfFreedom: 1e9,
};
const zero = (name: string, halfWidth: number): Contributor => ({
  name,
  kind: 'rectangular',
  halfWidth: inch(halfWidth),
});
const withBudget = (value: number, budget: readonly Contributor[]) =>
  [judged(inch(value), { uncertainty: expandedUncertainty(budget).expanded }), budget] as const;
const said = (value: number, budget: readonly Contributor[]) => {
  const [finding, all] = withBudget(value, budget);
  return describeSettling(finding, { units: 'inch' }, all)[0];
};

describe('what settles an undecided finding', () => {
  it('is an uncertainty as small as the distance to the limit', () => {
    const settling = whatSettles(judged(inch(3.0019), { uncertainty: inch(0.0002) }));
    expect(settling.outcome).toBe('smaller uncertainty');
    if (settling.outcome !== 'smaller uncertainty') return;
    expect(settling.limit).toBe(inch(3.002));
    expect(Math.abs(settling.uncertainty - inch(0.0001))).toBeLessThan(2.1e-9);
    expect(settling).not.toHaveProperty('better');
  });

  it('decides, and one that is a little larger does not, by either rule', () => {
    const tenths = fc.integer({ min: -4, max: 4 }).filter((n) => n !== 0);
    const rules = fc.constantFrom('ISO 14253-1:2017', 'full expanded uncertainty');
    fc.assert(
      fc.property(tenths, rules, (off, rule) => {
        const value = inch(3.002 + off / 10_000);
        const settling = whatSettles(judged(value, { rule, uncertainty: inch(0.0009) }));
        if (settling.outcome !== 'smaller uncertainty') throw new Error(settling.outcome);
        const { uncertainty } = settling;
        expect(judged(value, { rule, uncertainty }).verdict).toBe(off < 0 ? 'within' : 'above');
        const larger = (uncertainty + 8e-9) as Length;
        expect(judged(value, { rule, uncertainty: larger }).verdict).toBe('undecided');
      }),
    );
  });

  it('is the mean of so many readings, where it is their spread that leaves it open', () => {
    // 2 · 0.0001 / √n is at most 0.0001 for 4 readings.
    const [finding, budget] = withBudget(3.0019, [spread]);
    expect(whatSettles(finding, budget)).toMatchObject({ moreReadings: 2 });
    expect(said(3.00188, [spread])).toBe(
      'settled by an uncertainty of 0.00012 in or less, if it reads the same again: the mean of 1 more reading of each size in it',
    );
    expect(said(3.0019, [spread])).toBe(
      'settled by an uncertainty of 0.0001 in or less, if it reads the same again: the mean of 2 more readings of each size in it',
    );
  });

  it('is a better instrument, where no number of readings does', () => {
    // 2 · 0.0002 / √3 = 0.00023 in of the gauge alone.
    const budget = [spread, zero('bore gauge', 0.0002)];
    const [finding] = withBudget(3.0018, budget);
    const settling = whatSettles(finding, budget);
    expect(settling).not.toHaveProperty('moreReadings');
    if (settling.outcome !== 'smaller uncertainty' || !settling.better) throw new Error();
    expect(settling.better.name).toBe('bore gauge');
    expect(settling.better).toMatchObject({ stated: 'half width', from: inch(0.0002) });
    // √(0.0002² - 0.000141²) = 0.000141 in, which is 2 / √3 of the half width: 0.000122 in.
    expect(settling.better.to).toBeCloseTo(inch(0.0001225), 8);
    expect(said(3.0018, budget)).toBe(
      'settled by an uncertainty of 0.0002 in or less, if it reads the same again; reading again will not settle it: the bore gauge (± 0.0002 in) must come down to ± 0.00012 in',
    );
  });

  it('is more than one better instrument, where two are too coarse', () => {
    const budget = [zero('bore gauge', 0.0002), zero('micrometer', 0.0001)];
    expect(said(3.0019, budget)).toBe(
      'settled by an uncertainty of 0.0001 in or less, if it reads the same again; reading again will not settle it: the bore gauge (± 0.0002 in) alone, however good, is not enough',
    );
  });

  it('does not take again what is common to all readings', () => {
    const budget = [{ ...spread, common: true }];
    const [finding] = withBudget(3.0019, budget);
    expect(whatSettles(finding, budget)).not.toHaveProperty('moreReadings');
  });

  it('gives ways that lead there', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 60, max: 200 }),
        (off, blade, s) => {
          const readings = { ...spread, standardDeviation: inch(s / 1e6) };
          const budget = [readings, zero('gauge', blade / 1e5)];
          const [finding] = withBudget(3.002 - off / 1e5, budget);
          const settling = whatSettles(finding, budget);
          if (settling.outcome !== 'smaller uncertainty') return;
          const { moreReadings, uncertainty } = settling;
          if (moreReadings === undefined) return;
          const expandedAfter = (more: number) =>
            expandedUncertainty([
              { ...readings, readings: 2 + more } as Contributor,
              budget[1] as Contributor,
            ]).expanded;
          expect(expandedAfter(moreReadings)).toBeLessThanOrEqual(uncertainty + 1e-9);
          expect(expandedAfter(moreReadings - 1)).toBeGreaterThan(uncertainty);
        },
      ),
      { numRuns: 20 },
    );
  });

  it('is nothing for a value exactly at its limit', () => {
    const finding = judged(inch(3.002), { uncertainty: inch(0.0001) });
    expect(whatSettles(finding)).toEqual({
      outcome: 'no reading',
      why: 'at the limit',
      limit: inch(3.002),
    });
    expect(describeSettling(finding, { units: 'inch' })[0]).toBe(
      'it reads at the limit of 3.0020 in: read it finer, as the next reading may fall on either side',
    );
  });

  it('is no finer uncertainty for a value that is nearer to its limit than a tenth of it', () => {
    const near = (off: number) => judged(inch(3.002 + off), { uncertainty: inch(0.0002) });
    expect(whatSettles(near(0.000019))).toMatchObject({ why: 'at the limit' });
    expect(whatSettles(near(-0.000019))).toMatchObject({ why: 'at the limit' });
    expect(whatSettles(near(0.000022)).outcome).toBe('smaller uncertainty');
    expect(describeSettling(near(0.000001), { units: 'inch' })[0]).toBe(
      'it reads at the limit of 3.0020 in: read it finer, as the next reading may fall on either side',
    );
  });

  it('is no number of readings that nobody takes', () => {
    // 2 · 0.0001 / √n is at most 0.00005 for 16 readings, 14 more; 0.0001 · 0.00005 / 0.000141 = 0.000035.
    expect(said(3.00195, [spread])).toBe(
      'settled by an uncertainty of 0.00005 in or less, if it reads the same again; it takes 14 more readings, or the repeatability (standard deviation 0.0001 in) must come down to 0.000035 in',
    );
  });

  it('is a better measurement where the limits are closer together than it can tell apart', () => {
    const finding = judged(inch(3.0021), {
      limits: { min: inch(3.002), max: inch(3.0022) },
      uncertainty: inch(0.0003),
    });
    expect(describeSettling(finding, { units: 'inch' })[0]).toBe(
      'limits 0.0002 in apart cannot be judged by readings to ± 0.0003 in: measure it better',
    );
  });

  it('is what to better in the terms that it was stated in: entered in its place, it decides', () => {
    const sensitivities = fc.constantFrom(undefined, 1, -1, 2, Math.SQRT2, 1e-6);
    fc.assert(
      fc.property(
        fc.constantFrom(
          'rectangular',
          'triangular',
          'arcsine',
          'normal',
          'standard error',
          'readings',
        ),
        sensitivities,
        fc.integer({ min: 15, max: 60 }),
        fc.boolean(),
        (kind, sensitivity, off, isAbove) => {
          const own = (amount: number): Contributor => {
            const common = { name: 'gauge', ...(sensitivity !== undefined && { sensitivity }) };
            const made = {
              rectangular: { halfWidth: amount },
              triangular: { halfWidth: amount },
              arcsine: { halfWidth: amount },
              normal: { expanded: amount, coverageFactor: 3 },
              'standard error': { standardError: amount },
              readings: {
                standardDeviation: amount,
                readings: 2,
                degreesOfFreedom: 1e9,
                common: true,
              },
            }[kind];
            return { ...common, kind, ...made } as unknown as Contributor;
          };
          const budgetWith = (amount: number) => [own(amount), zero('small', 0.00001)];
          const verdict = (amount: number) =>
            withBudget(3.002 + (isAbove ? off : -off) / 1e6, budgetWith(amount))[0].verdict;
          const stated = inch(0.0003) / Math.abs(sensitivity ?? 1);
          const [finding, budget] = withBudget(
            3.002 + (isAbove ? off : -off) / 1e6,
            budgetWith(stated),
          );
          const settling = whatSettles(finding, budget);
          if (settling.outcome !== 'smaller uncertainty') return;
          const { from, to = 0, ofAnotherDimension } = settling.better ?? {};
          expect(from).toBe(stated);
          expect(ofAnotherDimension).toBe(sensitivity === 1e-6 ? true : undefined);
          expect(to).toBeGreaterThan(0);
          expect(verdict(to)).toBe(isAbove ? 'above' : 'within');
          expect(verdict(1.05 * to)).toBe('undecided');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is nothing within a guard band that its owner set', () => {
    const finding = judged(inch(3.0019), { rule: { guardBand: inch(0.0002) } });
    expect(describeSettling(finding, { units: 'inch' })[0]).toBe(
      'no better reading settles it: the value lies within the guard band of 0.0002 in at the limit of 3.0020 in',
    );
  });

  it('is a service limit of this engine, where only a rule of thumb stands against the part', () => {
    const finding = judged(inch(3.003), {
      limitsOf: 'new parts',
      basis: { kind: 'common practice', rule: 'a rule' },
    });
    expect([finding.verdict, finding.grade]).toEqual(['above', 'undecided']);
    expect(describeSettling(finding, { units: 'inch' })[0]).toBe(
      'no better reading settles it: only a service limit of this engine does',
    );
  });

  it('is an uncertainty against the service limit, where the value is near to that', () => {
    const finding = judged(inch(3.0049), {
      service: { limits: { max: inch(3.005) }, basis: { kind: 'specified' } },
      uncertainty: inch(0.0002),
    });
    expect([finding.verdict, finding.grade]).toEqual(['above', 'undecided']);
    expect(whatSettles(finding)).toMatchObject({
      outcome: 'smaller uncertainty',
      limit: inch(3.005),
    });
  });

  it('is not asked for where all is decided', () => {
    for (const rule of ['simple acceptance', 'full expanded uncertainty'] as const) {
      const finding = judged(inch(3.001), { rule, uncertainty: inch(0.0001) });
      expect(whatSettles(finding)).toEqual({ outcome: 'decided' });
      expect(describeSettling(finding, { units: 'metric' })[0]).toBe('nothing is left to settle');
    }
  });

  it('refuses the budget of another uncertainty, and what is no budget', () => {
    const finding = judged(inch(3.0019), { uncertainty: inch(0.0002) });
    const named = (budget: unknown) =>
      refusal(() => whatSettles(finding, budget as never)).parameter;
    expect(named([spread])).toBe('budget');
    expect(named([])).toBe('budget');
    expect(named([{ ...spread, kind: 'guess' }])).toBe('budget[0].kind');
    expect(refusal(() => whatSettles(judged(inch(3)), [spread])).parameter).toBe('budget');
    expect(refusal(() => describeSettling(finding, {} as never)).parameter).toBe('wording.units');
    expect(refusal(() => whatSettles({} as never)).parameter).toBe('finding.feature');
  });

  it('never prints a larger uncertainty than settles it', () => {
    const said = (value: number, uncertainty: number) =>
      describeSettling(
        judged(mm(value), { limits: { max: mm(50) }, uncertainty: mm(uncertainty) }),
        {
          units: 'metric',
        },
      )[0];
    expect(said(49.9971, 0.02)).toBe(
      'settled by an uncertainty of 0.0029 mm or less, if it reads the same again',
    );
    expect(said(49.99638, 0.02)).toBe(
      'settled by an uncertainty of 0.0036 mm or less, if it reads the same again',
    );
    expect(said(49.9, 0.5)).toBe(
      'settled by an uncertainty of 0.100 mm or less, if it reads the same again',
    );
  });
});
