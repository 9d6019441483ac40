/**
 * Quantiles of numbers, by linear interpolation between the two that lie about the place (definition 7 of Hyndman and
 * Fan, 1996). Only the places that are asked for are put in order (Hoare's find, for several places at once), which
 * takes a few passes where sorting takes twenty.
 *
 * @param numbers - at least one; they are reordered
 * @param shares - shares below the quantiles, from 0 to 1, in ascending order
 */
export function quantilesOf(numbers: Float64Array, shares: readonly number[]): readonly number[] {
  const last = numbers.length - 1;
  const below = (share: number) => Math.floor(share * last);
  const above = (share: number) => Math.min(below(share) + 1, last);
  putInPlace(
    numbers,
    shares.flatMap((share) => [below(share), above(share)]),
  );
  return shares.map((share) => {
    const [a, b] = [numbers[below(share)] as number, numbers[above(share)] as number];
    return a + (share * last - below(share)) * (b - a);
  });
}

/** A stretch of the numbers, both ends in it, and the places in it that are asked for. */
type Stretch = readonly [left: number, right: number, places: readonly number[]];

/** Reorders so that at each of the places stands what would stand there if all were sorted. */
function putInPlace(numbers: Float64Array, all: readonly number[]): void {
  const open: Stretch[] = [[0, numbers.length - 1, all]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [left, right, places] = next;
    if (places.length === 0 || left >= right) continue;
    const [before, after] = split(numbers, left, right);
    open.push([left, before, places.filter((place) => place <= before)]);
    open.push([after, right, places.filter((place) => place >= after)]);
  }
}

/** Puts lesser numbers to the left and greater to the right; what lies between the two ends given is in place. */
function split(
  numbers: Float64Array,
  left: number,
  right: number,
): readonly [before: number, after: number] {
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
  return [j, i];
}

/** The middle one of three numbers. */
const middleOf = (a: number, b: number, c: number) =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
