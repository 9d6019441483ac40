import type { LoadDiagram, PinLoad } from '../../motion/index.js';
import { CYCLE } from '../../motion/internal.js';

/** A load diagram as the inner loop reads it: values and slopes at knots that reach a little past the cycle at both ends. */
export interface LoadTable {
  /** Crank angle of each knot, rising from at most 0 to at least 720 degrees. */
  readonly angle: Float64Array;
  readonly along: Curve;
  readonly across: Curve;
  /** Lean of the rod. */
  readonly rodAngle: Curve;
  /** Mean turning of pin and shell seen from the rod, for a turn of the crank. */
  readonly turning: Curve;
}

/** Values at the knots, and how fast they grow with the crank's angle. */
export interface Curve {
  readonly value: Float64Array;
  readonly slope: Float64Array;
}

/** Lays a load diagram out, two knots past either end of it. */
export function tableOf({ loads }: LoadDiagram): LoadTable {
  const count = loads.length;
  const fresh = () => new Float64Array(count + 4);
  const [angle, along, across, lean] = [fresh(), fresh(), fresh(), fresh()];
  for (let i = 0; i < count + 4; i++) {
    const load = loads[(i + count - 2) % count] as PinLoad;
    angle[i] = load.crankAngle + CYCLE * Math.floor((i - 2) / count);
    along[i] = load.along;
    across[i] = load.across;
    lean[i] = load.rodAngle;
  }
  const curve = (value: Float64Array): Curve => ({ value, slope: slopesOf(angle, value) });
  const rodAngle = curve(lean);
  // The rod swings against the crank, and the shell stands still in it.
  const turning = rodAngle.slope.map((slope) => (1 + slope) / 2);
  return {
    angle,
    along: curve(along),
    across: curve(across),
    rodAngle,
    turning: curve(turning),
  };
}

/** Where an angle lies between two knots, and what their values and slopes count for there. */
export interface Between {
  knot: number;
  begin: number;
  end: number;
  leave: number;
  arrive: number;
}

/** Nowhere yet. */
export const nowhere = (): Between => ({ knot: 0, begin: 1, end: 0, leave: 0, arrive: 0 });

/** Finds an angle among the knots, from where the last one was. */
export function seek(knots: Float64Array, angle: number, place: Between): void {
  let { knot } = place;
  while (angle < (knots[knot] as number)) knot--;
  while (angle > (knots[knot + 1] as number)) knot++;
  const start = knots[knot] as number;
  const width = (knots[knot + 1] as number) - start;
  const t = (angle - start) / width;
  const rest = 1 - t;
  place.knot = knot;
  place.end = t * t * (3 - 2 * t);
  place.begin = 1 - place.end;
  place.leave = width * t * rest * rest;
  place.arrive = -width * t * t * rest;
}

/** A curve at the place that was found: the cubic through two knots with the slopes there. */
export function at({ value, slope }: Curve, place: Between): number {
  const { knot } = place;
  return (
    place.begin * (value[knot] as number) +
    place.end * (value[knot + 1] as number) +
    place.leave * (slope[knot] as number) +
    place.arrive * (slope[knot + 1] as number)
  );
}

/** Slopes of the parabolas through each knot and its two neighbours; at either end of the chord. */
function slopesOf(angle: Float64Array, value: Float64Array): Float64Array {
  const slope = new Float64Array(value.length);
  let before = 1;
  let chordBefore = 0;
  for (let i = 0; i < value.length - 1; i++) {
    const after = (angle[i + 1] as number) - (angle[i] as number);
    const chord = ((value[i + 1] as number) - (value[i] as number)) / after;
    slope[i] = i === 0 ? chord : (chordBefore * after + chord * before) / (before + after);
    before = after;
    chordBefore = chord;
  }
  slope[value.length - 1] = chordBefore;
  return slope;
}
