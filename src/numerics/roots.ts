/**
 * Where a function that falls from above zero to below it is zero, between two places (regula falsi with
 * bisection). Each step goes to where the straight line between the ends of the bracket is zero, or
 * halves it. Where the function jumps past zero, the last place that is still above.
 */
export function rootOfFalling(f: (x: number) => number, from: number, to: number): number {
  let [left, right] = [from, to];
  let [above, below] = [f(left), f(right)];
  if (above <= 0) return left;
  if (below >= 0) return right;
  for (let step = 0; right - left > 1e-14 * (to - from); step++) {
    const chord = left + ((right - left) * above) / (above - below);
    const middle = (left + right) / 2;
    // Every third step halves, so that no bend of the curve can slow the search down.
    const x = step % 3 < 2 && chord > left && chord < right ? chord : middle;
    if (x <= left || x >= right) break;
    const value = f(x);
    if (value === 0) return x;
    if (value > 0) [left, above] = [x, value];
    else [right, below] = [x, value];
  }
  return left;
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
