/** What is compared between choices that take other parts, in this order, whatever they are for. */
export interface Outlay {
  /** Work and buying, in thousandths. */
  readonly cost: number;
  /** Margins of its clearances that are judged, in nanometres, tightest first. */
  readonly margins: readonly number[];
  /** How many journals, bores, housings and parts are machined. */
  readonly work: number;
  /** How many parts are not from where the block is from. */
  readonly strangers: number;
}

/** One way to choose some of the parts of an engine. */
export interface Way extends Outlay {
  /** Ids of the bins that it takes from, in order, each as often as it takes one. */
  readonly takes: readonly number[];
}

/** What nothing comes to. */
export const FREE: Outlay = { cost: 0, margins: [], work: 0, strangers: 0 };

/** The way that takes nothing. */
export const NOTHING: Way = { ...FREE, takes: [] };

/** What two come to together. */
export const plus = (a: Outlay, b: Outlay): Outlay => ({
  cost: a.cost + b.cost,
  margins: merged(a.margins, b.margins),
  work: a.work + b.work,
  strangers: a.strangers + b.strangers,
});

function merged(a: readonly number[], b: readonly number[]): readonly number[] {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both: number[] = [];
  for (let i = 0, j = 0; i < a.length || j < b.length; ) {
    const [one, other] = [a[i] ?? Infinity, b[j] ?? Infinity];
    both.push(Math.min(one, other));
    if (one <= other) i++;
    else j++;
  }
  return both;
}

/**
 * Below zero where the first is better: cheaper, then wider at its tightest clearance, then at the next tightest and so
 * on, then with less work, then with fewer strangers. A clearance that is not judged is wide.
 */
export function compared(a: Outlay, b: Outlay): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  for (let i = 0; i < Math.max(a.margins.length, b.margins.length); i++) {
    const [one, other] = [a.margins[i] ?? Infinity, b.margins[i] ?? Infinity];
    if (one !== other) return other - one;
  }
  return a.work - b.work || a.strangers - b.strangers;
}

/** Several ways as one. */
export const together = (...ways: readonly Way[]): Way => ({
  ...ways.reduce<Outlay>(plus, FREE),
  takes: ways.flatMap(({ takes }) => takes).sort((a, b) => a - b),
});

/** Every way that takes one from each of several choices. */
export function everyWay(choices: readonly (readonly Way[])[]): readonly Way[] {
  return choices.reduce<readonly Way[]>(
    (ways, choice) => ways.flatMap((way) => choice.map((next) => together(way, next))),
    [NOTHING],
  );
}

/** Of the ways that take the same, the best. */
export function bestWays(ways: readonly Way[]): readonly Way[] {
  const best = new Map<string, Way>();
  for (const way of ways) {
    const key = way.takes.join();
    const other = best.get(key);
    if (other === undefined || compared(way, other) < 0) best.set(key, way);
  }
  return [...best.values()];
}
