import { guardLength } from '../judging/internal.js';
import type { Circle } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { chordOfArc } from './sagitta.js';
import type { PlanePoint } from './trace.js';

/** Points moved to the middle of their own, and measured by their own spread. */
export interface Local {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Their spread [m]. */
  readonly scale: number;
  /** Whether they lie on one line, as far as numbers can tell. */
  readonly isStraight: boolean;
  /** A place in the coordinates that the points came in. */
  readonly back: (place: { readonly x: number; readonly y: number }) => PlanePoint;
  /** A size in metres. */
  readonly size: (size: number) => Length;
}

/**
 * Moves points to their own middle. Two numbers that differ by less than the smaller are subtracted without an
 * error, so points far from the datum lose nothing; only then is anything squared.
 */
export function toLocal(points: readonly PlanePoint[]): Local {
  const [boxX, boxY] = [boxOf(points.map(({ x }) => x)), boxOf(points.map(({ y }) => y))];
  const widest = Math.max(boxX.width, boxY.width) as Length;
  guardLength('points', widest, [chordOfArc.least, chordOfArc.most], 'mm(25)');
  const xs = Float64Array.from(points, ({ x }) => x - boxX.middle);
  const ys = Float64Array.from(points, ({ y }) => y - boxY.middle);
  const [meanX, meanY] = [meanOfAll(xs), meanOfAll(ys)];
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < xs.length; i++) {
    const x = (xs[i] as number) - meanX;
    const y = (ys[i] as number) - meanY;
    [xs[i], ys[i]] = [x, y];
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const scale = Math.sqrt((xx + yy) / xs.length);
  const along = Math.atan2(2 * xy, xx - yy) / 2;
  let farthest = 0;
  for (let i = 0; i < xs.length; i++) {
    const off = (ys[i] as number) * Math.cos(along) - (xs[i] as number) * Math.sin(along);
    farthest = Math.max(farthest, Math.abs(off));
    xs[i] = (xs[i] as number) / scale;
    ys[i] = (ys[i] as number) / scale;
  }
  const far = Math.max(Math.abs(boxX.middle), Math.abs(boxY.middle));
  return {
    xs,
    ys,
    scale,
    isStraight: farthest <= 4 * Number.EPSILON * (far + 100 * scale),
    back: ({ x, y }) => ({
      x: (boxX.middle + (meanX + x * scale)) as Length,
      y: (boxY.middle + (meanY + y * scale)) as Length,
    }),
    size: (size) => (size * scale) as Length,
  };
}

function boxOf(values: readonly number[]) {
  const [least, most] = [smallestOf(values), largestOf(values)];
  return { middle: least + (most - least) / 2, width: most - least };
}

function meanOfAll(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

/** What the points look like from the centre of their circle, and how well they determine it. */
export function qualityOf({ xs, ys }: Local, circle: Circle, uncertainty: number) {
  const n = xs.length;
  const [distances, angles, cosines, sines] = [0, 1, 2, 3].map(() => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let square = 0;
  for (let i = 0; i < n; i++) {
    const [dx, dy] = [(xs[i] as number) - circle.x, (ys[i] as number) - circle.y];
    const distance = Math.hypot(dx, dy);
    distances[i] = distance;
    angles[i] = Math.atan2(dy, dx);
    square += (distance - circle.radius) ** 2;
    cosines[i] = distance === 0 ? 0 : dx / distance;
    sines[i] = distance === 0 ? 0 : dy / distance;
  }
  const [u, v] = [meanOfAll(cosines), meanOfAll(sines)];
  // The normal matrix of the centre, with the radius eliminated.
  let [a, b, c] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const [cos, sin] = [(cosines[i] as number) - u, (sines[i] as number) - v];
    a += (cos * cos) / n;
    b += (cos * sin) / n;
    c += (sin * sin) / n;
  }
  const determinant = a * c - b * b;
  const largest = (a + c) / 2 + Math.hypot((a - c) / 2, b);
  const own = Math.sqrt(square / (n - 3));
  const sigma = Math.max(own, uncertainty) / Math.sqrt(n);
  const within = Math.max(studentFactor(n - 3) * own, 2 * uncertainty) / Math.sqrt(n);
  const radiusFactor = Math.sqrt(1 + (u * u * c - 2 * u * v * b + v * v * a) / determinant);
  return {
    distances,
    angles,
    scatter: Math.sqrt(square / n),
    centreUncertainty: sigma * Math.sqrt(largest / determinant),
    radiusUncertainty: sigma * radiusFactor,
    /** Within how much the radius is known, at 95 %. */
    radiusWithin: within * radiusFactor,
  };
}

/** Student's factors at 95 % for one degree of freedom and more (JCGM 100:2008, table G.2, from memory). */
const STUDENT = [12.71, 4.3, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31];

/**
 * How many standard deviations reach 95 %: a few points may lie on a circle by luck, and then scatter less than
 * they are out.
 */
const studentFactor = (freedom: number): number => STUDENT[freedom - 1] ?? 2.26;
