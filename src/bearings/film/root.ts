/**
 * Where a function that falls from above zero to below it is zero, between two places. Each step halves
 * the bracket, or goes to where the straight line between its ends is zero if that lies well within.
 */
export function rootOfFalling(f: (x: number) => number, from: number, to: number): number {
  let [left, right] = [from, to];
  let [above, below] = [f(left), f(right)];
  if (above <= 0) return left;
  if (below >= 0) return right;
  for (let step = 0; step < 200; step++) {
    const width = right - left;
    const chord = left + (width * above) / (above - below);
    // Every third step halves, so that no bend of the curve can slow the search down.
    const x = step % 3 === 2 ? (left + right) / 2 : chord;
    if (x <= left || x >= right) break;
    const value = f(x);
    if (value === 0) return x;
    if (value > 0) [left, above] = [x, value];
    else [right, below] = [x, value];
    if (Math.abs(right - left) <= 1e-14 * Math.abs(to - from)) break;
  }
  return above < -below ? left : right;
}
