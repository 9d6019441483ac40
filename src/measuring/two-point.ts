import { angleAround, guardList, showIn } from '../judging/internal.js';
import {
  type Angle,
  degree,
  type Length,
  type Ratio,
  RebuildInputError,
} from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { SAME_PLACE } from './readings.js';
import { type DialReading, guardDial, onceRound } from './trace.js';

/**
 * The out-of-round that a micrometer would read on a part whose radius was traced: the largest less the
 * smallest diameter, each the sum of two radii half a turn apart.
 *
 *     outOfRound = abs((reading_1 + reading_3) - (reading_2 + reading_4))   of readings a quarter turn apart
 *
 * It is blind to odd lobes: where one side of a diameter stands out, the other lies in. A part with three lobes, as
 * a three-jaw chuck leaves it, may be out of round by any amount and read the same all round. Even lobes read twice
 * their height on the radius. It does not matter whether the part ran true as it was traced.
 *
 * @param readings - a trace all round, each reading with another half a turn from it, at least two such pairs
 * @returns largest less smallest diameter [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are fewer than
 * four readings, an angle was read twice, or a reading has none half a turn from it
 * @see Source: geometry; worked checks in tests/published/roundness.test.ts
 * @example
 * ```ts
 * const trace = (lobes: number) => Array.from({ length: 36 }, (_, i) => ({
 *   angle: degree(10 * i), reading: thou(2 * Math.cos((lobes * i * Math.PI) / 18)),
 * }));
 * format(twoPointOutOfRound(trace(3)), inch); // "0.0000 in"
 * format(twoPointOutOfRound(trace(2)), inch); // "0.0080 in"
 * ```
 */
export function twoPointOutOfRound(readings: readonly DialReading[]): Length {
  guardDial('readings', readings, 4, 'readings, in pairs half a turn apart');
  const diameters = pairsIn(readings).map(([one, other]) => one.reading + other.reading);
  return (largestOf(diameters) - smallestOf(diameters)) as Length;
}

type Pair = readonly [DialReading, DialReading];

/** Every diameter once, however the readings are ordered. */
function pairsIn(readings: readonly DialReading[]): readonly Pair[] {
  const sorted = readings
    .map((reading, i) => ({ reading, i, at: onceRound(reading.angle) }))
    .sort((a, b) => a.at - b.at);
  const half = sorted.length / 2;
  return sorted.flatMap((one, k): readonly Pair[] => {
    // Pairs half a turn apart have as many readings on one side as on the other.
    const other = sorted[(k + Math.floor(half)) % sorted.length] as typeof one;
    const apart = Math.abs(Math.abs(other.at - one.at) - Math.PI);
    if (!Number.isInteger(half) || apart > SAME_PLACE.angle) throw lacksOpposite(readings);
    return k < half ? [[one.reading, other.reading]] : [];
  });
}

function lacksOpposite(readings: readonly DialReading[]): RebuildInputError {
  const places = readings.map(({ angle }) => onceRound(angle)).sort((a, b) => a - b);
  const hasNear = (at: number) => {
    let [low, high] = [0, places.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((places[middle] as number) < at - SAME_PLACE.angle) low = middle + 1;
      else high = middle;
    }
    return (places[low] ?? Infinity) <= at + SAME_PLACE.angle;
  };
  const alone = readings.findIndex(({ angle }) => {
    const opposite = onceRound(angle + Math.PI);
    return ![-2 * Math.PI, 0, 2 * Math.PI].some((turn) => hasNear(opposite + turn));
  });
  const { angle } = readings[Math.max(0, alone)] as DialReading;
  return new RebuildInputError({
    parameter: `readings[${Math.max(0, alone)}].angle`,
    value: angle,
    shown: showIn(angle, degree),
    expected: 'an angle with another reading half a turn from it',
    problem: 'has no reading half a turn from it',
    hint: 'A diameter is measured at both of its ends: read at equal steps, an even number of them in the turn.',
  });
}

/**
 * The share of an oval that diameters at some angles are sure to show, whichever way the oval lies. Any two angles
 * may miss all of it: an oval that lies at 45° reads the same at 0° and at 90°. Three angles 60° apart show at
 * least three quarters of it.
 *
 * The diameters of an oval go through one whole wave in half a turn. So double every angle and mark it on a circle of
 * radius 1: the share is half the least width of the polygon of these marks.
 *
 *     share = (1 + cos(π / angles)) / 2   of an odd number of angles, evenly spaced in half a turn
 *     share = cos(π / angles)             of an even number of them
 *
 * No angles show odd lobes: {@link twoPointOutOfRound}.
 *
 * @param angles - where diameters are read; half a turn apart is the same diameter, and counts once [rad]
 * @returns the share that shows at the worst, of the largest less the smallest diameter [-]
 * @throws {RebuildInputError} when there is no angle, or an angle is not finite or out of range
 * @see Source: geometry; worked out by hand in docs/roundness-and-runout.md
 * @example
 * ```ts
 * shareOfOvalSeen([degree(0), degree(90)]).toFixed(3); // "0.000"
 * shareOfOvalSeen([degree(0), degree(60), degree(120)]).toFixed(3); // "0.750"
 * shareOfOvalSeen([degree(0), degree(45), degree(90), degree(135)]).toFixed(3); // "0.707"
 * ```
 */
export function shareOfOvalSeen(angles: readonly Angle[]): Ratio {
  guardList('angles', angles, 1, 'angle');
  const doubled = angles
    .map((angle, i) => onceRound(2 * angleAround(`angles[${i}]`, angle)))
    .sort((a, b) => a - b)
    .filter((at, k, all) => k === 0 || at - (all[k - 1] as number) > 2 * SAME_PLACE.angle);
  if (doubled.length < 3) return 0 as Ratio;
  // The polygon is narrowest from one of its sides to the corner farthest from that side.
  let far = 0;
  const widths = doubled.map((from, k) => {
    const last = k + 1 === doubled.length;
    const to = last ? (doubled[0] as number) + 2 * Math.PI : (doubled[k + 1] as number);
    const middle = (from + to) / 2;
    const depth = (i: number) => -Math.cos((doubled[i % doubled.length] as number) - middle);
    if (far <= k) far = k + 1;
    while (depth(far + 1) > depth(far)) far++;
    return Math.cos((to - from) / 2) + depth(far);
  });
  return (Math.max(0, smallestOf(widths)) / 2) as Ratio;
}
