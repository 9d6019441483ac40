import {
  conformanceProbability,
  falseAcceptanceRisk,
  falseRejectionRisk,
  type InspectedLot,
  kPa,
  type Length,
  mm,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalTail } from '../../src/numerics/index.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

const limits = { min: mm(1), max: mm(2) };
const chance = (value: number, doubt: number) =>
  conformanceProbability({ value: mm(value), standardUncertainty: mm(doubt), limits });

describe('the conformance probability', () => {
  it('is a half at a limit, and all but nothing or all far from it', () => {
    expect(chance(2, 0.01)).toBeCloseTo(0.5, 14);
    expect(chance(1, 0.01)).toBeCloseTo(0.5, 14);
    expect(chance(1.5, 0.01)).toBe(1);
    // Ten standard uncertainties outside: not nothing.
    expect(chance(2.1, 0.01) / 7.61985302416e-24).toBeCloseTo(1, 9);
  });

  it('is the same on both sides, and falls with the uncertainty of a value inside', () => {
    const values = fc.integer({ min: 0, max: 500 });
    const doubts = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(values, doubts, doubts, (off, a, b) => {
        const [small, large] = [Math.min(a, b) / 1000, Math.max(a, b) / 1000];
        const value = 1.5 + off / 1000;
        expect(chance(value, small)).toBeCloseTo(chance(3 - value, small), 10);
        expect(chance(value, large)).toBeLessThanOrEqual(chance(value, small) + 1e-15);
      }),
      { numRuns: 30 },
    );
  });

  it('takes one limit alone, and another dimension', () => {
    const strength = conformanceProbability({
      dimension: 'pressure',
      value: kPa(510),
      standardUncertainty: kPa(10),
      limits: { min: kPa(490) },
    });
    expect(strength).toBeCloseTo(1 - 0.0227501319481792, 13);
  });

  it.each(notNumbers.map((value) => [value]))('refuses %s for a number', (wrong) => {
    const value = wrong as Length;
    const sound = { value: mm(1), standardUncertainty: mm(1), limits };
    const named = (more: object) =>
      refusal(() => conformanceProbability({ ...sound, ...more })).parameter;
    expect(named({ value })).toBe('value');
    expect(named({ standardUncertainty: value })).toBe('standardUncertainty');
    if (value !== undefined) expect(named({ limits: { min: value } })).toBe('limits.min');
    expect(named({ standardUncertainty: mm(0) })).toBe('standardUncertainty');
    expect(named({ dimension: 'mood' })).toBe('dimension');
  });
});

const pins: InspectedLot<'length'> = {
  lot: { mean: mm(0), standardDeviation: mm(1) },
  standardUncertainty: mm(0.25),
  limits: { min: mm(-2), max: mm(2) },
  rule: 'simple acceptance',
};
const both = (more: Partial<InspectedLot<'length'>> = {}) =>
  [falseAcceptanceRisk, falseRejectionRisk].map((risk) => risk({ ...pins, ...more }));

/** By mpmath 1.3.0 with 30 digits, from the double integral over the true values and the readings. */
const ORACLE = [
  [{}, 0.008006084834450094, 0.0148508842112549],
  [{ rule: { guardBand: mm(0.5) } }, 0.0001946147746987484, 0.1003044462752073],
  [
    { lot: { mean: mm(2.5), standardDeviation: mm(1) }, standardUncertainty: mm(0.3) },
    0.04495460249793306,
    0.03749668781705161,
  ],
  [
    {
      lot: { mean: mm(1), standardDeviation: mm(1) },
      standardUncertainty: mm(0.01),
      rule: { guardBand: mm(0.02) },
    },
    2.084771488755281e-5,
    0.005012791186979095,
  ],
  [
    { standardUncertainty: mm(3), rule: { guardBand: mm(1) } },
    0.008772408260621178,
    0.715101778410112,
  ],
  [
    { lot: { mean: mm(5), standardDeviation: mm(0.1) }, standardUncertainty: mm(1) },
    0.001417374538490712,
    0,
  ],
  [
    { standardUncertainty: mm(0.2), limits: { min: mm(-2) }, rule: { guardBand: mm(0.1) } },
    0.001741912305652074,
    0.01021564852214417,
  ],
] as const;

describe('the risks of a lot', () => {
  it.each(ORACLE)('%j', (more, acceptance, rejection) => {
    const [accepted, rejected] = both(more);
    expect(accepted).toBeCloseTo(acceptance, 13);
    expect(rejected).toBeCloseTo(rejection, 12);
  });

  it('take the default rule of judge, a guard band of two standard uncertainties', () => {
    const { rule, ...unruled } = pins;
    expect(rule).toBe('simple acceptance');
    const guarded = both({ rule: { guardBand: mm(0.5) } });
    expect([falseAcceptanceRisk(unruled), falseRejectionRisk(unruled)]).toEqual(guarded);
  });

  it('trade one for the other', () => {
    const bands = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(bands, bands, (a, b) => {
        const [narrow, wide] = [Math.min(a, b), Math.max(a, b)].map((band) =>
          both({ rule: { guardBand: mm(band / 50) } }),
        );
        expect(wide?.[0]).toBeLessThanOrEqual((narrow?.[0] ?? 0) + 1e-12);
        expect(wide?.[1]).toBeGreaterThanOrEqual((narrow?.[1] ?? 1) - 1e-12);
      }),
      { numRuns: 6 },
    );
  });

  it('accept nothing where the guard bands leave nothing', () => {
    const [accepted, rejected] = both({ rule: { guardBand: mm(3) } });
    expect(accepted).toBe(0);
    expect(rejected).toBeCloseTo(1 - 2 * normalTail(2), 12);
  });

  it('refuse what is no lot, by name', () => {
    for (const risk of [falseAcceptanceRisk, falseRejectionRisk]) {
      const named = (more: object) => refusal(() => risk({ ...pins, ...more })).parameter;
      const lot = (more: object) => named({ lot: { ...pins.lot, ...more } });
      expect(lot({ mean: Number.NaN })).toBe('lot.mean');
      expect(lot({ standardDeviation: 0 })).toBe('lot.standardDeviation');
      expect(lot({ spread: 1 })).toBe('lot.spread');
      expect(named({ standardUncertainty: mm(-1) })).toBe('standardUncertainty');
      expect(named({ rule: 'luck' })).toBe('rule');
      expect(named({ limits: {} })).toBe('limits');
      expect(named({ dimension: 'mood' })).toBe('dimension');
    }
  });
});
