import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveBanded } from '../../src/numerics/banded-cholesky.js';
import { chebyshevSum, polynomials } from '../../src/numerics/chebyshev.js';
import { dormandPrince, type VectorField } from '../../src/numerics/dormand-prince.js';
import { richardson } from '../../src/numerics/richardson.js';
import { newtonFromBeyond, rootOfFalling } from '../../src/numerics/roots.js';

describe('rootOfFalling', () => {
  it('finds where a cosine is zero', () => {
    expect(rootOfFalling(Math.cos, 0, 3)).toBeCloseTo(Math.PI / 2, 13);
  });

  it.each<[string, (x: number) => number, number, number, number]>([
    ['the natural base', (x) => 1 - Math.log(x), 0.1, 10, Math.E],
    ['the cube root of two', (x) => 2 - x ** 3, 0, 5, Math.cbrt(2)],
    ['where 1 / x is 50', (x) => 1 / x - 50, 0.001, 0.998, 0.02],
  ])('finds %s in a third of the steps that halving takes', (_, f, from, to, root) => {
    let asked = 0;
    const found = rootOfFalling(
      (x) => {
        asked += 1;
        return f(x);
      },
      from,
      to,
    );
    expect(found).toBeCloseTo(root, 12);
    // To halve a bracket to 1e-14 of itself takes 47 steps: 2 to the 47th is 1.4e14.
    expect(asked).toBeLessThanOrEqual(47 / 3);
  });

  it('gives the last place above a jump', () => {
    const root = rootOfFalling((x) => (x < 0.3 ? 1 : -5), 0, 1);
    expect(root).toBeLessThan(0.3);
    expect(root).toBeCloseTo(0.3, 13);
  });

  it('gives an end where there is no root between', () => {
    expect(rootOfFalling((x) => -1 - x, 0, 1)).toBe(0);
    expect(rootOfFalling((x) => 2 - x, 0, 1)).toBe(1);
  });
});

describe('newtonFromBeyond', () => {
  it('comes down to the root of two', () => {
    const root = newtonFromBeyond((x) => (x * x - 2) / (2 * x), 5, 1e-12);
    expect(root).toBeCloseTo(Math.SQRT2, 14);
  });
});

describe('richardson', () => {
  it('takes trapezia under a parabola to the integral', () => {
    // One trapezium under x² from 0 to 1, and two; the integral is a third.
    expect(richardson(1 / 2, (0 + 1 / 4) / 4 + (1 / 4 + 1) / 4)).toBeCloseTo(1 / 3, 15);
  });
});

describe('chebyshev', () => {
  it('has cosines of multiples of an angle for polynomials of its cosine', () => {
    polynomials(Math.cos(0.7), 9).forEach((value, n) => {
      expect(value).toBeCloseTo(Math.cos(0.7 * n), 13);
    });
  });

  it('sums products of them', () => {
    const [along, across] = [polynomials(0.3, 2), polynomials(-0.4, 3)];
    // 1 + 2 · 0.3 · T2(-0.4), where T2(x) = 2 x² - 1.
    expect(
      chebyshevSum(
        [
          [1, 0, 0],
          [0, 0, 2],
        ],
        along,
        across,
      ),
    ).toBeCloseTo(1 + 2 * 0.3 * (2 * 0.16 - 1), 14);
  });
});

describe('solveBanded', () => {
  const size = 7;
  const reach = 2;
  // Hundredths: doubles drawn at random are mostly too small to matter.
  const numbers = fc.integer({ min: -100, max: 100 }).map((n) => n / 100);
  const list = (length: number) => fc.array(numbers, { minLength: length, maxLength: length });

  it('satisfies every active equation, and leaves the other unknowns at zero', () => {
    const flags = fc.array(fc.boolean(), { minLength: size, maxLength: size });
    fc.assert(
      fc.property(list(size * reach), list(size), flags, (off, right, on) => {
        // A diagonal that outweighs its row makes the matrix positive definite.
        const entry = (r: number, c: number): number => {
          if (r === c) return 5;
          const [late, early] = r > c ? [r, c] : [c, r];
          return late - early > reach ? 0 : (off[late * reach + (late - early - 1)] ?? 0);
        };
        const band = new Float64Array(size * (reach + 1));
        for (let r = 0; r < size; r++) {
          for (let c = Math.max(0, r - reach); c <= r; c++) {
            band[r * (reach + 1) + reach - (r - c)] = entry(r, c);
          }
        }
        const active = Uint8Array.from(on, Number);
        const solution = new Float64Array(size).fill(9);
        solveBanded(band, reach, active, Float64Array.from(right), solution);
        on.forEach((isOn, r) => {
          const left = solution.reduce((sum, value, c) => sum + entry(r, c) * value, 0);
          if (isOn) expect(left).toBeCloseTo(right[r] ?? 0, 12);
          else expect(solution[r]).toBe(0);
        });
      }),
    );
  });
});

describe('dormandPrince', () => {
  /** A circle: x = cos t, y = sin t. */
  const circle: VectorField = {
    dx: 0,
    dy: 0,
    set(_, x, y) {
      [circle.dx, circle.dy] = [-y, x];
    },
  };
  const start = { t: 0, x: 1, y: 0, dx: 0, dy: 1 };
  const missedBy = (h: number) => {
    const step = dormandPrince(circle);
    step.take(start, h);
    return Math.hypot(step.x - Math.cos(h), step.y - Math.sin(h));
  };

  it('is of order 5: half the step misses by a 64th', () => {
    expect(missedBy(0.4) / missedBy(0.2)).toBeGreaterThan(50);
    expect(missedBy(0.4) / missedBy(0.2)).toBeLessThan(80);
  });

  it('knows how far off it may be, and any place on the way', () => {
    const step = dormandPrince(circle);
    step.take(start, 0.3);
    expect(step.error).toBeGreaterThan(missedBy(0.3));
    expect(step.error).toBeLessThan(1e-5);
    const half = { ...start };
    step.at(0.5, half);
    expect(half.x).toBeCloseTo(Math.cos(0.15), 6);
    expect(half.y).toBeCloseTo(Math.sin(0.15), 5);
    expect(half.dx).toBeCloseTo(-Math.sin(0.15), 5);
    expect(half.dy).toBeCloseTo(Math.cos(0.15), 5);
  });
});
