/**
 * Where a function that falls from above zero to below it is zero, between two places (Chandrupatla's method,
 * Advances in Engineering Software 28, 1997, pages 145 to 149). Each step goes to where the parabola through the last
 * three places is zero, taken as a function of the value, or halves the bracket where that is not to be trusted. Where
 * the function jumps past zero, the last place that is still above.
 */
export function rootOfFalling(f: (x: number) => number, from: number, to: number): number {
  // The root lies between the newest place and the other end; the old place was an end before.
  let [newest, other] = [placeAt(f, from), placeAt(f, to)];
  if (newest.value <= 0) return from;
  if (other.value >= 0) return to;
  const close = 1e-14 * (to - from);
  for (let share = 0.5; ; ) {
    const next = placeAt(f, newest.x + share * (other.x - newest.x));
    if (next.value === 0) return next.x;
    const sameSide = next.value > 0 === newest.value > 0;
    const old = sameSide ? newest : other;
    if (!sameSide) other = newest;
    newest = next;
    const width = Math.abs(other.x - newest.x);
    const middle = (newest.x + other.x) / 2;
    if (width <= close || middle === newest.x || middle === other.x) {
      return newest.value > 0 ? newest.x : other.x;
    }
    // Never closer to an end than half of what is close enough, so that both ends come in.
    const least = close / 2 / width;
    share = Math.min(1 - least, Math.max(least, shareTo(newest, other, old) ?? 0.5));
  }
}

interface Place {
  readonly x: number;
  readonly value: number;
}

const placeAt = (f: (x: number) => number, x: number): Place => ({ x, value: f(x) });

/** How far on the way from the newest place to the other a parabola is zero, where it can be trusted. */
function shareTo(newest: Place, other: Place, old: Place): number | undefined {
  const xi = (newest.x - other.x) / (old.x - other.x);
  const phi = (newest.value - other.value) / (old.value - other.value);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return undefined;
  const byOld =
    (newest.value / (other.value - newest.value)) * (old.value / (other.value - old.value));
  const byOther =
    (newest.value / (old.value - newest.value)) * (other.value / (old.value - other.value));
  return byOld + ((old.x - newest.x) / (other.x - newest.x)) * byOther;
}

/**
 * Newton's method for a function that rises, from a place beyond its root where its steps come down to
 * the root and never pass it.
 *
 * @param step - the function over its slope, which is how far a step leads down
 * @param from - a place beyond the root
 * @param close - a step shorter than this is the last
 */
export function newtonFromBeyond(step: (x: number) => number, from: number, close: number): number {
  let x = from;
  let next = x - step(x);
  while (x - next > close) {
    x = next;
    next = x - step(x);
  }
  return next;
}
