/** Kinematic viscosities at 40 °C, in mm²/s, of the two reference oils that are as thick at 100 °C. */
export interface ReferenceOils {
  /** L of ASTM D2270: the oil of index 0 [-]. */
  readonly low: number;
  /** H of ASTM D2270: the oil of index 100 [-]. */
  readonly high: number;
}

/**
 * A fit of our own to the table of ASTM D2270 between 2 and 70 mm²/s: for each
 * of L and H one curve of parabolas that join without a kink at the knots,
 *
 *     start[0] + start[1] Y + start[2] Y² + Σ bend[i] max(0, Y - knot[i])²
 *
 * with the least greatest error in the index that these knots allow, and the
 * value of the standard's own parabola at 70. Found by linear programming over
 * all 311 rows of the table. Greatest error: 0.19 of an index from 0 to 100,
 * 0.21 from there to 200. About 30 mm²/s the rounding of the table alone is worth 0.08.
 */
const fit = {
  knot: [3.8, 4, 4.4, 4.9, 6.3, 6.8, 6.9, 7.3, 7.9, 9, 14.5, 20, 57],
  low: {
    start: [-0.09329, 1.7458, 1.14886],
    bend: [
      1.04548, 1.77916, -1.00687, -2.7837, 4.35457, -2.78648, -3.90273, 3.44357, -0.9017, 0.49605,
      0.10518, -0.10757, -0.06429,
    ],
  },
  high: {
    start: [-0.12382, 1.58857, 0.83477],
    bend: [
      -0.56448, 0.67566, -0.1421, -0.71026, 1.2662, -6.25137, 5.78117, -0.54681, -0.25341, 0.16744,
      0.01058, -0.07942, -0.05043,
    ],
  },
} as const;

/** The standard's own parabolas above 70 mm²/s. source: ASTM D2270-10(2016), equations 1 and 2. */
const above70 = {
  low: [-216, 14.67, 0.8353],
  high: [-97, 11.85, 0.1684],
} as const;

/** The reference oils that have so many mm²/s at 100 °C, 2 or more. */
export function referenceOils(y: number): ReferenceOils {
  if (y > 70) return { low: parabola(above70.low, y), high: parabola(above70.high, y) };
  return { low: curve(fit.low, y), high: curve(fit.high, y) };
}

type Parabola = readonly [number, number, number];

const parabola = ([a, b, c]: Parabola, y: number) => a + b * y + c * y * y;

function curve(
  { start, bend }: { readonly start: Parabola; readonly bend: readonly number[] },
  y: number,
): number {
  return fit.knot.reduce(
    (sum, knot, i) => {
      const past = Math.max(0, y - knot);
      return sum + (bend[i] ?? 0) * past * past;
    },
    parabola(start, y),
  );
}
