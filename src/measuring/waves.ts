import { leastSquares } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import type { DialReading } from './trace.js';

/** One wave that goes a whole number of times round a part. */
export interface Wave {
  /** How many times round. */
  readonly times: number;
  /** How far its crest stands above its mean [m]. */
  readonly amplitude: Length;
  /** Where a crest stands, from nothing up to the next crest [rad]. */
  readonly crest: number;
}

/** Waves that come nearest to dial readings by least squares, and what they leave of each reading. */
export function wavesIn(readings: readonly DialReading[], most: number) {
  const n = readings.length;
  const columns = [new Float64Array(n).fill(1)];
  for (let times = 1; times <= most; times++) {
    columns.push(Float64Array.from(readings, ({ angle }) => Math.cos(times * angle)));
    columns.push(Float64Array.from(readings, ({ angle }) => Math.sin(times * angle)));
  }
  const kept = columns.map((column) => column.slice());
  const found = leastSquares(
    columns,
    Float64Array.from(readings, ({ reading }) => reading),
  );
  const waves = Array.from({ length: most }, (_, k): Wave => {
    const [cos, sin] = [found[2 * k + 1] as number, found[2 * k + 2] as number];
    return {
      times: k + 1,
      amplitude: Math.hypot(cos, sin) as Length,
      crest: crestOf(Math.atan2(sin, cos), k + 1),
    };
  });
  const left = readings.map(({ reading }, i) =>
    kept.reduce<number>(
      (rest, column, k) => rest - (found[k] as number) * (column[i] as number),
      reading,
    ),
  );
  return {
    mean: found[0] as Length,
    waves,
    /** Largest less smallest; nothing where as many numbers were fitted as read. */
    left: (n > 2 * most + 1 ? largestOf(left) - smallestOf(left) : 0) as Length,
    /** What the readings scatter by, one standard deviation; undefined where nothing is left to tell. */
    scatter: n > 2 * most + 1 ? rootOfSquares(left) / Math.sqrt(n - 2 * most - 1) : undefined,
  };
}

const rootOfSquares = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0));

function crestOf(phase: number, times: number): number {
  const turn = (2 * Math.PI) / times;
  const crest = phase < 0 ? phase / times + turn : phase / times;
  // Rounding must not turn 0° into 360°.
  return turn - crest < 1e-9 ? 0 : crest;
}
