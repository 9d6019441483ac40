/** Some of the shims: which, and their sum. */
export interface Stack {
  /** Sum of their sizes. */
  readonly total: number;
  /** Whether a shim, by its place on the shelf, is among them. */
  readonly has: (place: number) => boolean;
}

/** Every stack that a shelf can make. */
interface Stacks {
  /** The stack of so many shims whose total is nearest; of equals the first by the order of the shelf. */
  readonly nearest: (count: number, total: number) => Stack;
}

/** Subsets of half the shelf with one number of shims, by rising sum; of equals the first on the shelf. */
interface Half {
  readonly sums: Float64Array;
  readonly masks: Uint32Array;
}

/**
 * Makes all stacks of a shelf of whole-number sizes without listing them: the
 * subsets of either half are sorted by sum, and for a wanted total the two
 * lists are walked towards each other (meet in the middle).
 */
export function stacksOf(sizes: readonly number[]): Stacks {
  const middle = sizes.length >> 1;
  const [front, back] = [halvesOf(sizes.slice(0, middle)), halvesOf(sizes.slice(middle))];
  return {
    nearest: (count, total) => {
      let best: Candidate | undefined;
      for (let inFront = 0; inFront <= Math.min(count, middle); inFront++) {
        const [a, b] = [front[inFront], back[count - inFront]];
        if (a && b) best = nearestPair(a, b, total, best);
      }
      const { front: f, back: k, sum } = best as Candidate;
      const has = (place: number) =>
        ((place < middle ? f >> place : k >> (place - middle)) & 1) === 1;
      return { total: sum, has };
    },
  };
}

interface Candidate {
  readonly sum: number;
  readonly away: number;
  readonly front: number;
  readonly back: number;
}

/** Walks up one list and down the other, past every pair that could be nearest. */
function nearestPair(a: Half, b: Half, total: number, so: Candidate | undefined): Candidate {
  let best = so;
  let j = b.sums.length - 1;
  for (let i = 0; i < a.sums.length; i++) {
    // The last of b that does not overshoot, and the one after it that does.
    while (j >= 0 && (a.sums[i] as number) + (b.sums[j] as number) > total) j--;
    for (const k of [j, j + 1]) {
      if (k < 0 || k >= b.sums.length) continue;
      const sum = (a.sums[i] as number) + (b.sums[k] as number);
      const next = {
        sum,
        away: Math.abs(sum - total),
        front: a.masks[i] as number,
        back: b.masks[k] as number,
      };
      if (best === undefined || comesBefore(next, best)) best = next;
    }
  }
  return best as Candidate;
}

/** Nearer; of equals the thinner, then the one with the earlier shims. */
function comesBefore(a: Candidate, b: Candidate): boolean {
  if (a.away !== b.away) return a.away < b.away;
  if (a.sum !== b.sum) return a.sum < b.sum;
  return a.front === b.front ? earlier(a.back, b.back) : earlier(a.front, b.front);
}

/** Whether the first shim that only one of two sets holds is held by `a`. */
function earlier(a: number, b: number): boolean {
  const differ = a ^ b;
  return (a & (differ & -differ)) !== 0;
}

/** The subsets of at most 20 sizes, by their number of shims. */
function halvesOf(sizes: readonly number[]): readonly Half[] {
  const sums = new Float64Array(2 ** sizes.length);
  const byCount: number[][] = Array.from({ length: sizes.length + 1 }, () => []);
  byCount[0]?.push(0);
  const counts = new Uint8Array(sums.length);
  for (let mask = 1; mask < sums.length; mask++) {
    const place = 31 - Math.clz32(mask);
    const rest = mask ^ (1 << place);
    sums[mask] = (sums[rest] as number) + (sizes[place] as number);
    counts[mask] = (counts[rest] as number) + 1;
    byCount[counts[mask] as number]?.push(mask);
  }
  return byCount.map((masks) => {
    masks.sort((a, b) => (sums[a] as number) - (sums[b] as number) || (earlier(a, b) ? -1 : 1));
    // Of equal sums one is enough: the first.
    const kept = masks.filter((mask, i) => i === 0 || sums[mask] !== sums[masks[i - 1] as number]);
    return {
      sums: Float64Array.from(kept, (mask) => sums[mask] as number),
      masks: Uint32Array.from(kept),
    };
  });
}
