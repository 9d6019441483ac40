import type { Span } from '../judging/index.js';
import type { Angle, Length } from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { onceRound } from './trace.js';

/** How far and which way a shaft stands off the line through its supports at one station. */
export interface OffAxis {
  readonly station: number;
  readonly x: number;
  readonly y: number;
  /** What of that may be the instrument's. */
  readonly tolerance: number;
}

/** A shape of a bent shaft that comes nearest to what was read. */
export interface FittedShape {
  /** How far the shaft stands off where it does so most [m]. */
  readonly amount: Length;
  readonly direction: Angle;
  /** How far the worst station lies off the shape, in its tolerances. */
  readonly misfit: number;
}

/** A shape fitted to the offsets by least squares: along one direction, so much at its highest. */
function fitted(shape: (station: number) => number, offsets: readonly OffAxis[]): FittedShape {
  let [along, x, y] = [0, 0, 0];
  for (const offset of offsets) {
    const height = shape(offset.station);
    const weight = 1 / offset.tolerance ** 2;
    along += weight * height * height;
    x += weight * height * offset.x;
    y += weight * height * offset.y;
  }
  [x, y] = [x / along, y / along];
  const misfits = offsets.map((offset) => {
    const height = shape(offset.station);
    return Math.hypot(offset.x - x * height, offset.y - y * height) / offset.tolerance;
  });
  return {
    amount: Math.hypot(x, y) as Length,
    direction: onceRound(Math.atan2(y, x)),
    misfit: largestOf(misfits),
  };
}

/** A shaft bowed evenly: a parabola through both supports, highest halfway. */
export function fitBow({ min, max }: Span<Length>, offsets: readonly OffAxis[]): FittedShape {
  const height = (station: number) => (4 * (station - min) * (max - station)) / (max - min) ** 2;
  return fitted(height, offsets);
}

/** A kinked shaft, and where its kink may be. */
export interface FittedKink extends FittedShape {
  readonly at: Length;
  /** All places from which the shape comes as near as the readings can tell. */
  readonly between: Span<Length>;
}

/** How finely the place of a kink is looked for. */
const PLACES = 400;
/** A kink nearer to a support than this share of the span is not told from a bent end. */
const END = 0.02;

/** A shaft with one kink between its supports, straight on either side of it. */
export function fitKink(supports: Span<Length>, offsets: readonly OffAxis[]): FittedKink {
  const { min, max } = supports;
  const length = max - min;
  const place = (share: number) => min + (END + share * (1 - 2 * END)) * length;
  const from = (at: number) =>
    fitted(
      (station) => (station <= at ? (station - min) / (at - min) : (max - station) / (max - at)),
      offsets,
    );
  const tried = Array.from({ length: PLACES + 1 }, (_, i) => {
    const at = place(i / PLACES);
    return { at, ...from(at) };
  });
  const near = tried.reduce((best, each) => (each.misfit < best.misfit ? each : best));
  const step = ((1 - 2 * END) * length) / PLACES;
  const at = leastNear((place) => from(place).misfit, near.at - step, near.at + step);
  const best = from(at).misfit <= near.misfit ? { at, ...from(at) } : near;
  const reached = tried.filter(({ misfit }) => misfit <= Math.max(1, best.misfit));
  const places = [best.at, ...reached.map((each) => each.at)];
  return {
    ...best,
    at: best.at as Length,
    between: {
      min: Math.min(best.at, places[1] ?? best.at),
      max: largestOf(places),
    } as Span<Length>,
  };
}

/** Where a function with one valley is least (golden section). */
function leastNear(f: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [left, right] = [from, to];
  while (right - left > 1e-9) {
    const [low, high] = [right - golden * (right - left), left + golden * (right - left)];
    if (f(low) <= f(high)) right = high;
    else left = low;
  }
  return (left + right) / 2;
}
