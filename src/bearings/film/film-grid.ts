import { newtonFromBeyond } from '../../numerics/index.js';

/**
 * Half a bearing laid out in places. Around it they crowd where the gap is narrow; along it they run from
 * midway to one end, and crowd towards the end of a long bearing. Pressure is zero at the widest
 * gap, where the turn begins and ends, and at the end.
 */
export interface FilmGrid {
  /** Eccentricity. */
  readonly eccentricity: number;
  /** Places around. The first is the widest gap, where there is no pressure. */
  readonly around: number;
  /** Places along, from midway to just before the end. */
  readonly along: number;
  /** Angle of each place around from the widest gap on. */
  readonly angle: Float64Array;
  /** Angle halfway between each place around and the one before. */
  readonly angleBefore: Float64Array;
  /** Angle that each place around stands for. */
  readonly arc: Float64Array;
  /** Gap over radial clearance halfway between each place around and the one before. */
  readonly gapBefore: Float64Array;
  /** How easily oil flows to each place around from the one before, per length along. */
  readonly easeAround: Float64Array;
  /** How easily oil flows along at each place around, per length along. */
  readonly easeAlong: Float64Array;
  /** Share of the half length that each place along stands for. */
  readonly width: Float64Array;
  /** One over the distance of each place along to the next, the last one's to the end. */
  readonly nearness: Float64Array;
  /** Share of the half length that the end itself stands for. */
  readonly rim: number;
}

/** Lays out a bearing. */
export function layGrid(
  eccentricity: number,
  diameterToLength: number,
  around: number,
  along: number,
): FilmGrid {
  const step = (2 * Math.PI) / around;
  const halves = crowdedAngles(eccentricity, 2 * around);
  const gapAt = (half: number) => 1 + eccentricity * Math.cos(halves[half] as number);
  const arcAt = (half: number) => step / crowdingAt(eccentricity, gapAt(half));
  const around1 = { length: around + 1 };
  const before = (i: number) => Math.abs(2 * i - 1);
  const place = placeAlong(Math.sqrt(2 * (1 - eccentricity)) * diameterToLength);
  const edge = (j: number) => (j < 0 ? 0 : place((j + 0.5) / along));
  const each = { length: along };
  return {
    eccentricity,
    around,
    along,
    angle: Float64Array.from(around1, (_, i) => halves[2 * i] as number),
    angleBefore: Float64Array.from(
      around1,
      (_, i) => (halves[before(i)] as number) * (i === 0 ? -1 : 1),
    ),
    arc: Float64Array.from(around1, (_, i) => arcAt(2 * i)),
    gapBefore: Float64Array.from(around1, (_, i) => gapAt(before(i))),
    easeAround: Float64Array.from(around1, (_, i) => gapAt(before(i)) ** 3 / arcAt(before(i))),
    easeAlong: Float64Array.from(
      around1,
      (_, i) => diameterToLength ** 2 * gapAt(2 * i) ** 3 * arcAt(2 * i),
    ),
    width: Float64Array.from(each, (_, j) => edge(j) - edge(j - 1)),
    nearness: Float64Array.from(each, (_, j) => 1 / (place((j + 1) / along) - place(j / along))),
    rim: 1 - edge(along - 1),
  };
}

/**
 * How many of the places are laid out evenly in Sommerfeld's angle, which crowds them where the
 * gap is narrow and pressure is high; the others lie evenly around, for the oil that flows in and out where it
 * is wide.
 */
const CROWDED = 0.65;

/** How far short of half a turn the tangent of its half is still looked at [rad]. */
const SHORT_OF_HALF = 1e-9;

/** How many times closer than on average the places lie at some gap. */
function crowdingAt(eccentricity: number, gap: number): number {
  return (CROWDED * Math.sqrt(1 - eccentricity ** 2)) / gap + 1 - CROWDED;
}

/** Angles from the widest gap on around the turn, the last a full turn. */
function crowdedAngles(eccentricity: number, count: number): Float64Array {
  const narrowing = Math.sqrt((1 - eccentricity) / (1 + eccentricity));
  const sommerfeld = (angle: number) => 2 * Math.atan(narrowing * Math.tan(angle / 2));
  const crowding = (angle: number) => crowdingAt(eccentricity, 1 + eccentricity * Math.cos(angle));
  const angles = new Float64Array(count + 1);
  const step = (2 * Math.PI) / count;
  let angle = 0;
  for (let i = 1; 2 * i < count; i++) {
    const excess = (at: number) => CROWDED * sommerfeld(at) + (1 - CROWDED) * at - i * step;
    angle = newtonFromBeyond(
      (at) => excess(at) / crowding(at),
      Math.min(angle + step / crowding(angle), Math.PI - SHORT_OF_HALF),
      1e-13,
    );
    angles[i] = angle;
    angles[count - i] = 2 * Math.PI - angle;
  }
  angles[count / 2] = Math.PI;
  angles[count] = 2 * Math.PI;
  return angles;
}

/**
 * Where a place along lies, from 0 midway to 1 at the end, if pressure falls off within a layer at
 * the end.
 */
function placeAlong(layer: number): (share: number) => number {
  const crowding = Math.asinh(1 / layer) - 0.9;
  if (crowding < 0.01) return (share) => share;
  const whole = Math.sinh(crowding);
  return (share) => 1 - Math.sinh(crowding * (1 - share)) / whole;
}
