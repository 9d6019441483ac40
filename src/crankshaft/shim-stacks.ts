/** Some of the shims: which, and their sum. */
export interface Stack {
  /** Sum of their sizes. */
  readonly total: number;
  /** Whether a shim, by its place on the shelf, is among them. */
  readonly has: (place: number) => boolean;
}

/** Every stack that a shelf can make. */
interface Stacks {
  /** The stack of so many shims whose total is nearest; of equals the thinner, then the first by the order of the shelf. */
  readonly nearest: (count: number, total: number) => Stack;
}

/**
 * Some shims of half the shelf as one whole number: their sum times `UNIT`, plus what puts those of
 * equal sum into the order of the shelf. Two packs of the two halves, added up, still have room
 * below `UNIT`; 40 shims of 20 mm in nanometres, times `UNIT`, are below 2⁵¹ and so exact.
 */
type Pack = number;

const UNIT = 0x200000;
/** No shim: the last of its sum. Each shim takes from it a power of two, the earlier the more. */
const NOTHING: Pack = 0xfffff;
const bitAt = (place: number) => 2 ** (19 - place);

const sumOf = (pack: Pack) => Math.floor(pack / UNIT);
const holds = (pack: Pack, place: number) => ((NOTHING - (pack % UNIT)) & bitAt(place)) !== 0;

/**
 * Makes all stacks of a shelf of at most 40 whole-number sizes without listing them: the packs of
 * either half are kept in order, and for a wanted total the two lists are walked towards each other
 * (meet in the middle).
 */
export function stacksOf(sizes: readonly number[]): Stacks {
  const middle = sizes.length >> 1;
  const [front, back] = [packsOf(sizes.slice(0, middle)), packsOf(sizes.slice(middle))];
  return {
    nearest: (count, total) => {
      let best = NONE_YET;
      for (let inFront = 0; inFront <= count; inFront++) {
        const [a, b] = [front[inFront], back[count - inFront]];
        if (a && b) best = nearestPair(a, b, total, best);
      }
      const { front: f, back: k } = best;
      const has = (place: number) => (place < middle ? holds(f, place) : holds(k, place - middle));
      return { total: sumOf(f + k), has };
    },
  };
}

interface Pair {
  readonly front: Pack;
  readonly back: Pack;
  /** How far their sum is from the total that is wanted. */
  readonly away: number;
}

const NONE_YET: Pair = { front: NOTHING, back: NOTHING, away: Infinity };

/** Walks up one list and down the other, past every pair that could be nearest. */
function nearestPair(a: Float64Array, b: Float64Array, total: number, so: Pair): Pair {
  let best = so;
  const [lastA, lastB] = [a.length - 1, b.length - 1];
  // Where even the thickest two are too thin, or the thinnest too thick, there is nothing to walk.
  const isThin = sumOf((a[lastA] as number) + (b[lastB] as number)) <= total;
  const isThick = sumOf((a[0] as number) + (b[0] as number)) >= total;
  let [i, j] = [isThin ? lastA : 0, isThick ? 0 : lastB];
  while (i <= lastA && j >= 0) {
    const [front, back] = [a[i] as number, b[j] as number];
    const over = sumOf(front + back) - total;
    const away = Math.abs(over);
    if (away <= best.away) best = first(best, { front, back, away });
    if (over > 0) j--;
    else i++;
  }
  return best;
}

/** The nearer; of equals the thinner, then the one with the earlier shims. */
function first(a: Pair, b: Pair): Pair {
  const order =
    a.away - b.away ||
    sumOf(a.front + a.back) - sumOf(b.front + b.back) ||
    (a.front % UNIT) - (b.front % UNIT) ||
    (a.back % UNIT) - (b.back % UNIT);
  return order <= 0 ? a : b;
}

/** The packs of at most 20 sizes by their number of shims, each list in order and with every sum once. */
function packsOf(sizes: readonly number[]): readonly Float64Array[] {
  return sizes.reduce<readonly Float64Array[]>(
    (so, size, place) => {
      const shim = size * UNIT - bitAt(place);
      return Array.from({ length: so.length + 1 }, (_, count) =>
        merged(shim, so[count], so[count - 1]),
      );
    },
    [Float64Array.of(NOTHING)],
  );
}

const NONE: Float64Array = /* @__PURE__ */ new Float64Array(0);

/** The packs without a shim and those that it joins in one list. Both are in order, so nothing is sorted. */
function merged(shim: number, without = NONE, joined = NONE): Float64Array {
  const list = new Float64Array(without.length + joined.length);
  let [i, j, length, last] = [0, 0, 0, -1];
  while (i < without.length || j < joined.length) {
    const a = i < without.length ? (without[i] as number) : Infinity;
    const b = j < joined.length ? (joined[j] as number) + shim : Infinity;
    const next = Math.min(a, b);
    if (a < b) i++;
    else j++;
    // Of equal sums one is enough: the first.
    if (sumOf(next) === last) continue;
    last = sumOf(next);
    list[length++] = next;
  }
  return list.subarray(0, length);
}
