import highsLoader from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { leastSquares, leastSquaresCircle, minimumZone } from '../../src/numerics/index.js';

type Point = readonly [x: number, y: number];

/** Points near the unit circle, out of it by up to `form`, over an arc: the same ones in every run. */
function nearCircle(seed: number, count: number, form: number, arc = 2 * Math.PI): Point[] {
  let state = seed;
  const next = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return Array.from({ length: count }, () => {
    const [angle, radius] = [arc * next(), 1 + form * (next() - 0.5)];
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

const columns = (points: readonly Point[]) =>
  [0, 1].map((k) => Float64Array.from(points, (point) => point[k] as number)) as [
    Float64Array,
    Float64Array,
  ];
const widthAt = (points: readonly Point[], x: number, y: number) => {
  const distances = points.map(([px, py]) => Math.hypot(px - x, py - y));
  return Math.max(...distances) - Math.min(...distances);
};
const fitted = (points: readonly Point[]) => {
  const circle = leastSquaresCircle(...columns(points)) ?? expect.fail('no circle');
  return minimumZone(...columns(points), circle) ?? expect.fail('no zone');
};

/** The narrowest zone by trying every centre that is as far from two points as from one another, for every two pairs. */
function byTryingAll(points: readonly Point[]): number {
  const pairs = points.flatMap((a, i) => points.slice(i + 1).map((b) => [a, b] as const));
  // As far from a as from b: 2 (b - a) · c = |b|² - |a|².
  const lines = pairs.map(([[ax, ay], [bx, by]]) => [
    2 * (bx - ax),
    2 * (by - ay),
    bx * bx + by * by - ax * ax - ay * ay,
  ]);
  let least = Infinity;
  lines.forEach(([a = 0, b = 0, c = 0], i) => {
    for (const [d = 0, e = 0, f = 0] of lines.slice(i + 1)) {
      const determinant = a * e - b * d;
      if (Math.abs(determinant) < 1e-12) continue;
      const [x, y] = [(c * e - b * f) / determinant, (a * f - c * d) / determinant];
      least = Math.min(least, widthAt(points, x, y));
    }
  });
  return least;
}

describe('the minimum zone', () => {
  it.each([
    ['round to a thousandth', 0.001, 2 * Math.PI],
    ['round to a tenth', 0.1, 2 * Math.PI],
    ['an arc of a third, round to a hundredth', 0.01, 2],
  ])('is the narrowest of all for small sets: %s', (_, form, arc) => {
    for (let seed = 1; seed <= 40; seed++) {
      const points = nearCircle(7919 * seed, 4 + (seed % 6), form, arc);
      const { inner, outer } = fitted(points);
      expect((outer - inner) / byTryingAll(points)).toBeCloseTo(1, 9);
    }
  });

  it('is held by four points, far and near by turns round the circle, and all others lie between', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const points = nearCircle(104729 * seed, 200, 0.01);
      const { x, y, inner, outer, contacts } = fitted(points);
      const held = contacts.map((i) => points[i] as Point);
      expect(new Set(contacts).size).toBe(4);
      held.forEach(([px, py], k) => {
        expect(Math.hypot(px - x, py - y)).toBeCloseTo(k % 2 === 0 ? outer : inner, 13);
      });
      const turns = held.map(([px, py], k) => {
        const [nx, ny] = held[(k + 1) % 4] as Point;
        const turn = Math.atan2(ny - y, nx - x) - Math.atan2(py - y, px - x);
        return turn < 0 ? turn + 2 * Math.PI : turn;
      });
      expect(turns.reduce((sum, turn) => sum + turn, 0)).toBeCloseTo(2 * Math.PI, 9);
      expect(widthAt(points, x, y)).toBeCloseTo(outer - inner, 13);
    }
  });

  it('gives none where the centre runs away: the points lie between two straight lines', () => {
    const points = [-2, -1, 0, 1, 2].flatMap((x): Point[] => [
      [x, 1e-3],
      [x, -1e-3],
    ]);
    expect(minimumZone(...columns(points), { x: 0, y: 1e5 })).toBeUndefined();
  });
});

describe('the minimum zone by a linear program', () => {
  let highs: Awaited<ReturnType<typeof highsLoader>>;
  beforeAll(async () => {
    highs = await highsLoader();
  });

  it('cannot be made narrower by any small shift, as HiGHS proves', () => {
    for (const seed of [11, 12, 13]) {
      const points = nearCircle(seed, 60, 0.01);
      const { x, y, inner, outer } = fitted(points);
      // Thousandths, so that the solver's tolerance is far below the zone; shifts and zone may be of either sign.
      const rows = points.flatMap(([px, py], i) => {
        const distance = Math.hypot(px - x, py - y);
        const [u, v] = [(px - x) / distance, (py - y) / distance].map((part) => part.toFixed(15));
        const excess = (1e3 * (distance - (inner + outer) / 2)).toFixed(12);
        return [
          ` a${i}: h + r + ${u} a + ${v} b >= ${excess}`,
          ` b${i}: h - r - ${u} a - ${v} b >= ${-Number(excess)}`,
        ];
      });
      const program = `Minimize\n obj: h\nSubject To\n${rows.join('\n').replaceAll('+ -', '- ').replaceAll('- -', '+ ')}\nBounds\n r free\n a free\n b free\nEnd\n`;
      const solved = highs.solve(program);
      expect(solved.Status).toBe('Optimal');
      expect(solved.ObjectiveValue / 1e3).toBeCloseTo((outer - inner) / 2, 9);
    }
  });
});

describe('least squares', () => {
  it('finds the circle at which the normal equations hold', () => {
    // A part is round to some millionths of its radius: there the sum of squares is too flat to steer by.
    const sets = [0.02, 1e-3, 1e-4, 1e-5].flatMap((form) =>
      Array.from({ length: 25 }, (_, k) => nearCircle(99 + 7919 * k, 14, form)),
    );
    for (const points of [...sets, nearCircle(99, 50, 0.02, 1)]) {
      const { x, y, radius } = leastSquaresCircle(...columns(points)) ?? expect.fail('no circle');
      const left = points.map(([px, py]) => {
        const distance = Math.hypot(px - x, py - y);
        return [distance - radius, (px - x) / distance, (py - y) / distance] as const;
      });
      const sum = (of: (each: (typeof left)[number]) => number) =>
        left.reduce((total, each) => total + of(each), 0);
      expect(sum(([gap]) => gap)).toBeCloseTo(0, 12);
      expect(sum(([gap, cos]) => gap * cos)).toBeCloseTo(0, 12);
      expect(sum(([gap, , sin]) => gap * sin)).toBeCloseTo(0, 12);
    }
  });

  it('gives no circle for points on a line', () => {
    const xs = Float64Array.from([-1.5, -0.5, 0.5, 1.5]);
    expect(leastSquaresCircle(xs, xs.slice())).toBeUndefined();
  });

  it('finds the line through values by hand: 1, 3, 2, 5 at 0 to 3 are 1.1 + 1.1 x', () => {
    // Means 1.5 and 2.75; products of deviations 5.5 over squares 5.
    const columns = [Float64Array.from([1, 1, 1, 1]), Float64Array.from([0, 1, 2, 3])];
    const [at0 = 0, slope = 0] = leastSquares(columns, Float64Array.from([1, 3, 2, 5]));
    expect(at0).toBeCloseTo(1.1, 12);
    expect(slope).toBeCloseTo(1.1, 12);
  });
});
