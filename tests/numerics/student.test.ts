import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halfLine, integralBetween } from '../../src/numerics/double-exponential.js';
import {
  normalDistribution,
  normalQuantileOfTail,
  normalTail,
  studentDistribution,
  studentQuantileOfTail,
  studentTail,
} from '../../src/numerics/student.js';

const close = (got: number, expected: number, relative = 1e-12) =>
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));

describe('the double exponential rule', () => {
  it('integrates what falls off as an exponential or a bell', () => {
    close(
      halfLine((x) => Math.exp(-x), 1),
      1,
    );
    close(
      halfLine((x) => Math.exp(-x * x), 0.5),
      Math.sqrt(Math.PI) / 2,
    );
  });

  it('integrates between two places, and up to a steep end', () => {
    close(integralBetween(Math.sin, 0, Math.PI), 2);
    close(
      integralBetween((x) => Math.exp(-50 * x), 0, 1),
      (1 - Math.exp(-50)) / 50,
    );
    close(
      integralBetween((x) => 1 / Math.sqrt(x), 0, 4),
      4,
      1e-8,
    );
  });

  it('gives nothing of a span without a width, or the wrong way round', () => {
    expect(integralBetween(Math.exp, 2, 2)).toBe(0);
    expect(integralBetween(Math.exp, 2, 1)).toBe(0);
  });
});

/** By mpmath 1.3.0 with 40 digits, cut to those of a double: half the complementary error function, and half the regularised incomplete beta function. */
const ORACLE = [
  [1e-8, Infinity, 0.4999999960105772],
  [0.1, Infinity, 0.460172162722971],
  [0.5, Infinity, 0.3085375387259869],
  [1, Infinity, 0.15865525393145705],
  [2, Infinity, 0.02275013194817921],
  [3, Infinity, 0.0013498980316300946],
  [5, Infinity, 2.866515718791939e-7],
  [10, Infinity, 7.619853024160525e-24],
  [37, Infinity, 5.725571222524577e-300],
  [0.3, 1.5, 0.4002360984017924],
  [4.3, 1.5, 0.04055230851279223],
  [1e4, 1.5, 3.770852401714754e-7],
  [2, 2.75, 0.07379931206496686],
  [2, 5, 0.05096973941492918],
  [60, 5, 1.21681887949919e-8],
  [2, 16, 0.03138598175730167],
  [12.7, 16, 4.505343588946612e-10],
  [1e4, 16, 4.217236501826975e-56],
  [60, 50, 1.475915491596461e-48],
  [2, 300, 0.023200760491574546],
  [12.7, 1e4, 5.671363248366347e-37],
  [2, 1e6, 0.022750266925659603],
] as const;

describe("Student's distribution", () => {
  it.each(ORACLE)('lies above %d with %d degrees of freedom by %d', (t, degrees, tail) => {
    close(studentTail(t, degrees), tail);
    close(studentDistribution(-t, degrees), tail);
    close(studentDistribution(t, degrees), 1 - tail);
    // Near the middle the tail says too little of t.
    if (t > 0.01) close(studentQuantileOfTail(tail, degrees), t);
  });

  it('is that of the angle for one degree of freedom, and algebraic for two', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (t) => {
        close(studentTail(t, 1), Math.atan(1 / t) / Math.PI);
        // 1/2 - t / (2 √(2 + t²)), without loss of digits.
        const root = Math.sqrt(2 + t * t);
        close(studentTail(t, 2), 1 / (root * (root + t)));
      }),
      { numRuns: 30 },
    );
  });

  it('has a quantile that leads back to the tail', () => {
    const tails = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true });
    const degrees = fc.oneof(fc.double({ min: 1, max: 1e5, noNaN: true }), fc.constant(Infinity));
    fc.assert(
      fc.property(tails, degrees, (tail, nu) => {
        close(studentTail(studentQuantileOfTail(tail, nu), nu), tail, 1e-11);
      }),
      { numRuns: 30 },
    );
  });

  it('has its middle at zero, no more beyond the farthest, and no tail lost too early', () => {
    close(studentTail(0, 3), 0.5);
    expect(studentQuantileOfTail(0.5, 3)).toBeCloseTo(0, 12);
    expect([studentTail(Infinity, 4), studentTail(-Infinity, 4)]).toEqual([0, 1]);
    expect(normalTail(1e200)).toBe(0);
    expect(normalTail(38)).toBeGreaterThan(0);
    close(normalDistribution(-10), 7.619853024160525e-24);
  });

  it('has the quantiles of the normal distribution where the degrees of freedom are without number', () => {
    // Abramowitz and Stegun, table 26.5 and its text: 1.64485 36270, 1.95996 39845.
    expect(normalQuantileOfTail(0.05)).toBeCloseTo(1.644853627, 9);
    expect(normalQuantileOfTail(0.025)).toBeCloseTo(1.9599639845, 9);
    expect(normalQuantileOfTail(0.975)).toBeCloseTo(-1.9599639845, 9);
  });
});
