/**
 * Quantiles of numbers, by linear interpolation between the two that lie about the place (definition 7 of Hyndman and
 * Fan, 1996). Only the places that are asked for are put in order (Hoare's find), which takes a few passes
 * where sorting takes twenty.
 *
 * @param numbers - at least one; they are reordered
 * @param shares - shares below the quantiles, from 0 to 1, in ascending order
 */
export function quantilesOf(numbers: Float64Array, shares: readonly number[]): readonly number[] {
  const last = numbers.length - 1;
  let from = 0;
  return shares.map((share) => {
    const place = share * last;
    const below = Math.floor(place);
    putInPlace(numbers, below, from);
    const above = Math.min(below + 1, last);
    putInPlace(numbers, above, below);
    from = below;
    const [a, b] = [numbers[below] as number, numbers[above] as number];
    return a + (place - below) * (b - a);
  });
}

/** Reorders from a place on so that one number stands where it would if all were sorted, with none greater before it. */
function putInPlace(numbers: Float64Array, place: number, from: number): void {
  let [left, right] = [from, numbers.length - 1];
  while (left < right) {
    const pivot = middleOf(
      numbers[left] as number,
      numbers[(left + right) >> 1] as number,
      numbers[right] as number,
    );
    let [i, j] = [left, right];
    while (i <= j) {
      while ((numbers[i] as number) < pivot) i++;
      while ((numbers[j] as number) > pivot) j--;
      if (i > j) break;
      const kept = numbers[i] as number;
      numbers[i++] = numbers[j] as number;
      numbers[j--] = kept;
    }
    if (place <= j) right = j;
    else if (place >= i) left = i;
    else return;
  }
}

/** The middle one of three numbers. */
const middleOf = (a: number, b: number, c: number) =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
