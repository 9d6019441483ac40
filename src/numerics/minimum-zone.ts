import { AS_GOOD_AS_STRAIGHT } from './circle.js';

/** Two circles about one centre that all points lie between, as close to each other as they come. */
export interface Zone {
  readonly x: number;
  readonly y: number;
  readonly inner: number;
  readonly outer: number;
  /** Points that hold it, round the circle: outer, inner, outer, inner. */
  readonly contacts: readonly number[];
}

const MOST_STEPS = 100;

/**
 * The narrowest zone between two circles about one centre, near a centre that is nearly right. About a centre, the
 * distances of the points are straight-line functions of a small shift, so the best shift is Chebyshev's problem of
 * one wave round the circle. It is solved exactly, by exchange of four points with residuals of alternate sign
 * (Remez, Stiefel), and again about the new centre, until four contacts alternate: no shift of such a centre makes
 * the zone narrower. Undefined where the zone gets ever narrower as the centre goes away: two straight lines.
 *
 * @param xs - abscissas, with their mean near 0 and their spread near 1
 * @param ys - ordinates likewise
 * @param start - a centre nearly right
 */
export function minimumZone(
  xs: Float64Array,
  ys: Float64Array,
  start: { readonly x: number; readonly y: number },
): Zone | undefined {
  let { x, y } = start;
  let { inner, outer } = zoneAbout(xs, ys, x, y);
  let contacts: readonly number[] = [];
  for (let step = 0; step < MOST_STEPS; step++) {
    if (!(Math.hypot(x, y) < AS_GOOD_AS_STRAIGHT)) return undefined;
    const seen = seenFrom(xs, ys, x, y, (inner + outer) / 2);
    const best = bestShift(seen, contacts.length === 4 ? contacts : quarters(seen.angles));
    contacts = best.contacts;
    let share = 1;
    let next = zoneAbout(xs, ys, x + best.dx, y + best.dy);
    // The distances are curved, so that a large shift may overshoot.
    while (share > 1e-9 && !(next.outer - next.inner < outer - inner)) {
      share /= 2;
      next = zoneAbout(xs, ys, x + share * best.dx, y + share * best.dy);
    }
    if (!(next.outer - next.inner < outer - inner)) break;
    x += share * best.dx;
    y += share * best.dy;
    ({ inner, outer } = next);
  }
  return { x, y, inner, outer, contacts };
}

function zoneAbout(xs: Float64Array, ys: Float64Array, x: number, y: number) {
  let [least, most] = [Infinity, 0];
  for (let i = 0; i < xs.length; i++) {
    const dx = (xs[i] as number) - x;
    const dy = (ys[i] as number) - y;
    const square = dx * dx + dy * dy;
    if (square < least) least = square;
    if (square > most) most = square;
  }
  return { inner: Math.sqrt(least), outer: Math.sqrt(most) };
}

/** The points as they are seen from a centre. */
interface Seen {
  readonly angles: Float64Array;
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  /** Distances less a radius. */
  readonly excess: Float64Array;
}

function seenFrom(xs: Float64Array, ys: Float64Array, x: number, y: number, radius: number): Seen {
  const [angles, cos, sin, excess] = [0, 1, 2, 3].map(() => new Float64Array(xs.length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let i = 0; i < xs.length; i++) {
    const dx = (xs[i] as number) - x;
    const dy = (ys[i] as number) - y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    angles[i] = Math.atan2(dy, dx);
    cos[i] = distance === 0 ? 1 : dx / distance;
    sin[i] = distance === 0 ? 0 : dy / distance;
    excess[i] = distance - radius;
  }
  return { angles, cos, sin, excess };
}

/** Four points to start from, in the order of their angles, as far apart as the count lets them be. */
function quarters(angles: Float64Array): readonly number[] {
  const order = Array.from(angles, (_, i) => i).sort(
    (i, j) => (angles[i] as number) - (angles[j] as number),
  );
  return [0, 1, 2, 3].map((k) => order[Math.floor((k * order.length) / 4)] as number);
}

/** The shift of the centre that makes the zone narrowest if distances were straight-line functions of it. */
function bestShift(seen: Seen, from: readonly number[]) {
  let contacts = byAngle(from, seen);
  let held = leveled(seen, contacts);
  for (let step = 0; step < 20 * seen.angles.length; step++) {
    const { worst, residual } = worstOf(seen, held);
    if (!(Math.abs(residual) > Math.abs(held.level) * (1 + 1e-12) + 1e-16)) break;
    const exchanged = exchange(seen, contacts, worst, residual * held.level > 0);
    const next = leveled(seen, exchanged);
    // Every exchange raises the level, but for rounding.
    if (!(Math.abs(next.level) > Math.abs(held.level))) break;
    [contacts, held] = [exchanged, next];
  }
  const [first, second, third, fourth] = contacts as [number, number, number, number];
  const ordered = held.level >= 0 ? contacts : [second, third, fourth, first];
  return { dx: held.dx, dy: held.dy, contacts: ordered };
}

const byAngle = (points: readonly number[], { angles }: Seen): readonly number[] =>
  [...points].sort((i, j) => (angles[i] as number) - (angles[j] as number));

/** One wave whose residuals at four points are one level, above and below by turns. */
interface Leveled {
  readonly mean: number;
  readonly dx: number;
  readonly dy: number;
  readonly level: number;
}

function leveled({ cos, sin, excess }: Seen, contacts: readonly number[]): Leveled {
  const rows = contacts.map((i, k) => [
    1,
    cos[i] as number,
    sin[i] as number,
    k % 2 === 0 ? 1 : -1,
    excess[i] as number,
  ]);
  for (let k = 0; k < 4; k++) {
    const rest = rows.slice(k).sort((a, b) => Math.abs(b[k] as number) - Math.abs(a[k] as number));
    rest.forEach((row, i) => {
      rows[k + i] = row;
    });
    const pivot = rows[k] as number[];
    for (const row of rows.slice(k + 1)) {
      const share = (row[k] as number) / (pivot[k] as number);
      for (let c = k; c < 5; c++) row[c] = (row[c] as number) - share * (pivot[c] as number);
    }
  }
  const found = [0, 0, 0, 0];
  for (let k = 3; k >= 0; k--) {
    const row = rows[k] as number[];
    let rest = row[4] as number;
    for (let c = k + 1; c < 4; c++) rest -= (row[c] as number) * (found[c] as number);
    found[k] = rest / (row[k] as number);
  }
  const [mean = 0, dx = 0, dy = 0, level = 0] = found;
  return { mean, dx, dy, level };
}

function worstOf({ cos, sin, excess }: Seen, { mean, dx, dy }: Leveled) {
  let [worst, residual] = [0, 0];
  for (let i = 0; i < cos.length; i++) {
    const left = (excess[i] as number) - mean - dx * (cos[i] as number) - dy * (sin[i] as number);
    if (Math.abs(left) > Math.abs(residual)) [worst, residual] = [i, left];
  }
  return { worst, residual };
}

/** Takes a point in for the neighbour on its own side of the wave, so that the sides go on alternating. */
function exchange(
  { angles }: Seen,
  contacts: readonly number[],
  point: number,
  likeEven: boolean,
): readonly number[] {
  const after = contacts.filter((i) => (angles[i] as number) <= (angles[point] as number)).length;
  const before = (after + 3) % 4;
  const replaced = (before % 2 === 0) === likeEven ? before : after % 4;
  const next = contacts.map((i, k) => (k === replaced ? point : i));
  // A point before the first that replaces the last one, or the other way round, turns the list.
  if (after === 0 && replaced === 3) return [point, ...next.slice(0, 3)];
  if (after === 4 && replaced === 0) return [...next.slice(1), point];
  return next;
}
