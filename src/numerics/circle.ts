/** A circle in the plane. */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** A circle farther from the points than this many times their spread is a straight line to them. */
export const AS_GOOD_AS_STRAIGHT = 1e6;

const MOST_STEPS = 200;

/**
 * The circle with the least sum of squared distances to the points, measured square to the circle (Gauss and
 * Newton, damped by Levenberg and Marquardt, from Taubin's algebraic fit, which is also good on short arcs).
 * Undefined where a straight line serves as well. The radius is the mean distance from the centre, so two unknowns
 * are left.
 *
 * @param xs - abscissas, with their mean near 0 and their spread near 1
 * @param ys - ordinates likewise
 */
export function leastSquaresCircle(xs: Float64Array, ys: Float64Array): Circle | undefined {
  let [x, y] = taubin(xs, ys);
  let here = normalAt(xs, ys, x, y);
  let damping = 1e-6;
  let last = Infinity;
  for (let step = 0; step < MOST_STEPS; step++) {
    if (!(Math.hypot(x, y) < AS_GOOD_AS_STRAIGHT)) return undefined;
    const uu = here.uu + damping;
    const vv = here.vv + damping;
    const determinant = uu * vv - here.uv * here.uv;
    const dx = (here.ug * vv - here.vg * here.uv) / determinant;
    const dy = (here.vg * uu - here.ug * here.uv) / determinant;
    const next = normalAt(xs, ys, x + dx, y + dy);
    // Close to the end the sum of squares is flat and tells nothing through its rounding; the steps still do.
    if (next.square <= here.square * (1 + 1e-9) + 1e-30) {
      [x, y, here] = [x + dx, y + dy, next];
      damping /= 10;
      const moved = Math.hypot(dx, dy) / (1 + here.radius);
      if (moved <= 1e-16 || (moved <= 1e-12 && moved >= last / 2)) break;
      last = moved;
    } else {
      damping *= 10;
      if (damping > 1e6) break;
    }
  }
  return { x, y, radius: here.radius };
}

/** Radius, mean squared residual and normal equations of the centre (x, y), all as means over the points. */
function normalAt(xs: Float64Array, ys: Float64Array, x: number, y: number) {
  const n = xs.length;
  let [radius, u, v] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const dx = (xs[i] as number) - x;
    const dy = (ys[i] as number) - y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    radius += distance;
    // A point on the centre itself has no direction.
    if (distance === 0) continue;
    u += dx / distance;
    v += dy / distance;
  }
  [radius, u, v] = [radius / n, u / n, v / n];
  let [uu, uv, vv, ug, vg, square] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const dx = (xs[i] as number) - x;
    const dy = (ys[i] as number) - y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    const gap = distance - radius;
    square += gap * gap;
    const cos = (distance === 0 ? 0 : dx / distance) - u;
    const sin = (distance === 0 ? 0 : dy / distance) - v;
    uu += cos * cos;
    uv += cos * sin;
    vv += sin * sin;
    ug += cos * gap;
    vg += sin * gap;
  }
  return {
    radius,
    uu: uu / n,
    uv: uv / n,
    vv: vv / n,
    ug: ug / n,
    vg: vg / n,
    square: square / n,
  };
}

/** Centre of Taubin's algebraic fit, by Newton's method on its characteristic polynomial. */
function taubin(xs: Float64Array, ys: Float64Array): readonly [x: number, y: number] {
  const n = xs.length;
  let [meanX, meanY] = [0, 0];
  for (let i = 0; i < n; i++) {
    meanX += (xs[i] as number) / n;
    meanY += (ys[i] as number) / n;
  }
  let [xx, xy, yy, xz, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const x = (xs[i] as number) - meanX;
    const y = (ys[i] as number) - meanY;
    const z = x * x + y * y;
    xx += (x * x) / n;
    xy += (x * y) / n;
    yy += (y * y) / n;
    xz += (x * z) / n;
    yz += (y * z) / n;
    zz += (z * z) / n;
  }
  const z = xx + yy;
  const spread = xx * yy - xy * xy;
  const variance = zz - z * z;
  const third = 4 * z;
  const second = -3 * z * z - zz;
  const first = variance * z + 4 * spread * z - xz * xz - yz * yz;
  const zeroth = xz * (xz * yy - yz * xy) + yz * (yz * xx - xz * xy) - variance * spread;
  let [root, value] = [0, zeroth];
  for (let step = 0; step < 50; step++) {
    const slope = first + root * (2 * second + root * 3 * third);
    const next = root - value / slope;
    const reached = zeroth + next * (first + next * (second + next * third));
    if (!(Math.abs(reached) < Math.abs(value))) break;
    [root, value] = [next, reached];
  }
  const determinant = 2 * (root * root - root * z + spread);
  return [
    meanX + (xz * (yy - root) - yz * xy) / determinant,
    meanY + (yz * (xx - root) - xz * xy) / determinant,
  ];
}
