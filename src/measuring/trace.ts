import { angleAround, guardFields, guardList, showIn } from '../judging/internal.js';
import { type Angle, degree, type Length, RebuildInputError } from '../quantities/index.js';
import { coordinate, dialReading, partRadius } from './domains.js';
import { SAME_PLACE } from './readings.js';

/** What a dial showed at one place around a part, as the part was turned under it. */
export interface DialReading {
  /** Where around the part, from a mark on it, always counted the same way [rad]. */
  readonly angle: Angle;
  /** What the dial showed; more where the part stands out farther [m]. */
  readonly reading: Length;
}

/** A point of a part, seen along its axis. */
export interface PlanePoint {
  /** Across, from a datum of your own, which may lie far from the part [m]. */
  readonly x: Length;
  /** Up, from the same datum [m]. */
  readonly y: Length;
}

const READING = ['angle', 'reading'] as const;
const DIAL = ['radius', 'readings'] as const;
const POINT = ['x', 'y'] as const;

/**
 * Points of a part from a dial that rests on it as it turns between centres or on its bearings, for
 * {@link roundness}. The dial tells differences only: the radius comes from a micrometer.
 *
 *     x = (radius + reading) * cos(angle)
 *     y = (radius + reading) * sin(angle)
 *
 * A part in a V-block is lifted by its own lobes, so that such a dial does not show its radius: see {@link
 * vBlockFactor}.
 *
 * @param dial - the radius where the dial shows nothing, and what it showed around the part
 * @returns a point for each reading, about the axis that the part was turned on
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no reading,
 * or an angle was read twice
 * @see Source: geometry; worked check in tests/published/roundness.test.ts
 * @example
 * ```ts
 * const points = pointsFromDial({
 *   radius: inch(1),
 *   readings: [{ angle: degree(0), reading: thou(2) }, { angle: degree(90), reading: thou(0) }],
 * });
 * points.map(({ x }) => format(x, inch)); // ["1.0020 in", "0.0000 in"]
 * ```
 */
export function pointsFromDial(dial: {
  /** Radius of the part where the dial shows nothing [m]. */
  readonly radius: Length;
  /** What the dial showed, in any order; no angle twice. */
  readonly readings: readonly DialReading[];
}): readonly PlanePoint[] {
  guardFields('dial', dial, DIAL);
  const radius = partRadius('radius', dial.radius);
  return guardDial('readings', dial.readings, 1, 'reading').map(({ angle, reading }) => ({
    x: ((radius + reading) * Math.cos(angle)) as Length,
    y: ((radius + reading) * Math.sin(angle)) as Length,
  }));
}

/** Checks dial readings. `least` is how many there must be, `of` what they are, and what for. */
export function guardDial(
  parameter: string,
  readings: readonly DialReading[],
  least: number,
  of: string,
): readonly DialReading[] {
  guardList(parameter, readings, least, of);
  readings.forEach((one, i) => {
    guardFields(`${parameter}[${i}]`, one, READING);
    angleAround(`${parameter}[${i}].angle`, one.angle);
    dialReading(`${parameter}[${i}].reading`, one.reading);
  });
  guardEachOnce(parameter, readings);
  return readings;
}

/** Refuses an angle that was read twice: the fit would trust it twice. */
function guardEachOnce(parameter: string, readings: readonly DialReading[]): void {
  const placed = readings
    .map(({ angle }, i) => ({ at: onceRound(angle), i }))
    .sort((a, b) => a.at - b.at || a.i - b.i);
  placed.forEach(({ at, i }, k) => {
    const next = placed[(k + 1) % placed.length] as { readonly at: number; readonly i: number };
    const apart = k + 1 < placed.length ? next.at - at : next.at + 2 * Math.PI - at;
    if (placed.length === 1 || apart > SAME_PLACE.angle) return;
    const later = Math.max(i, next.i);
    const angle = (readings[later] as DialReading).angle;
    throw new RebuildInputError({
      parameter: `${parameter}[${later}].angle`,
      value: angle,
      shown: showIn(angle, degree),
      expected: 'one reading for each place',
      problem: `was read twice: ${parameter}[${Math.min(i, next.i)}] is the same place`,
      hint: 'Average repeats first. A full turn ends where it began: leave its last reading out.',
    });
  });
}

/** Checks points of a part. */
export function guardPoints(points: readonly PlanePoint[], least: number): void {
  guardList('points', points, least, 'points: any three lie on a circle');
  points.forEach((point, i) => {
    guardFields(`points[${i}]`, point, POINT);
    coordinate(`points[${i}].x`, point.x);
    coordinate(`points[${i}].y`, point.y);
  });
  const order = points.map((_, i) => i);
  const at = (i: number) => points[i] as PlanePoint;
  order.sort((i, j) => at(i).x - at(j).x || at(i).y - at(j).y || i - j);
  for (let k = 1; k < order.length; k++) {
    const [first, second] = [order[k - 1] as number, order[k] as number];
    if (at(first).x !== at(second).x || at(first).y !== at(second).y) continue;
    throw new RebuildInputError({
      parameter: `points[${second}]`,
      value: at(second),
      shown: 'this point',
      expected: 'each point once',
      problem: `is the same as points[${first}]`,
      hint: 'A trace that closes ends where it began: leave its last point out.',
    });
  }
}

/** An angle brought to less than a turn, from nothing up. */
export function onceRound(angle: number): Angle {
  const turn = angle % (2 * Math.PI);
  return (turn < 0 ? turn + 2 * Math.PI : turn) as Angle;
}

/** The widest gap between neighbouring angles, all round; a whole turn if there is one angle. */
export function widestGap(angles: ArrayLike<number>): number {
  const sorted = Float64Array.from(angles, onceRound).sort();
  let widest = 2 * Math.PI - ((sorted.at(-1) ?? 0) - (sorted[0] ?? 0));
  for (let k = 1; k < sorted.length; k++) {
    widest = Math.max(widest, (sorted[k] as number) - (sorted[k - 1] as number));
  }
  return widest;
}

/** Up to how many lobes readings at some angles show: half a wave must be wider than their widest gap. */
export function lobesShown(angles: ArrayLike<number> & Iterable<number>): number {
  // Readings at equal angles of a circle may miss them by rounding.
  const byGap = Math.ceil(Math.PI / widestGap(angles) - 1e-6) - 1;
  return Math.min(byGap, Math.floor((angles.length - 1) / 2));
}
