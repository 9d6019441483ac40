/**
 * The least of a list, Infinity of none. `Math.min(...values)` would hand every value over as an
 * argument of its own, and overflows the stack from a hundred thousand or so.
 */
export function smallestOf<Q extends number>(values: readonly Q[]): Q {
  let smallest = Infinity;
  for (const value of values) smallest = Math.min(smallest, value);
  return smallest as Q;
}

/** The most of a list, -Infinity of none; of lists of any length, as `smallestOf` is. */
export function largestOf<Q extends number>(values: readonly Q[]): Q {
  let largest = -Infinity;
  for (const value of values) largest = Math.max(largest, value);
  return largest as Q;
}
