/** One way to choose some of the parts of an engine. */
export interface Way {
  /** Ids of the bins that it takes from, in order, each as often as it takes one. */
  readonly takes: readonly number[];
  /** Work and buying, in thousandths. */
  readonly cost: number;
  /** Smallest margin of its clearances, in nanometres; Infinity if none is judged. */
  readonly margin: number;
}

/** The way that takes nothing. */
export const NOTHING: Way = { takes: [], cost: 0, margin: Infinity };

/** Several ways as one. */
export const together = (...ways: readonly Way[]): Way => ({
  takes: ways.flatMap(({ takes }) => takes).sort((a, b) => a - b),
  cost: ways.reduce((sum, { cost }) => sum + cost, 0),
  margin: Math.min(...ways.map(({ margin }) => margin)),
});

/** Every way that takes one from each of several choices. */
export function everyWay(choices: readonly (readonly Way[])[]): readonly Way[] {
  return choices.reduce<readonly Way[]>(
    (ways, choice) => ways.flatMap((way) => choice.map((next) => together(way, next))),
    [NOTHING],
  );
}

/** Of the ways that take the same: the cheapest, and of these the one with the widest margin. */
export function bestWays(ways: readonly Way[]): readonly Way[] {
  const best = new Map<string, Way>();
  for (const way of ways) {
    const key = way.takes.join();
    const other = best.get(key) ?? { cost: Infinity, margin: 0 };
    if (way.cost < other.cost || (way.cost === other.cost && way.margin > other.margin)) {
      best.set(key, way);
    }
  }
  return [...best.values()];
}
