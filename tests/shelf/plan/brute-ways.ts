/** One way to make an engine, or a piece of one. */
export interface Way {
  /** Ids of the bins that it takes from, in order, each as often as it takes one. */
  readonly takes: readonly number[];
  /** The interchange groups that its parts can all be of; undefined for any. */
  readonly groups?: readonly string[];
  /** Work and buying, in thousandths. */
  readonly cost: number;
  /** Smallest margin of its clearances, in nanometres; Infinity if none is judged. */
  readonly margin: number;
}

/** The way that takes nothing. */
export const NOTHING: Way = { takes: [], cost: 0, margin: Infinity };

/** Two ways as one; undefined if their parts do not interchange. */
export function together(a: Way, b: Way): Way | undefined {
  const groups =
    a.groups && b.groups ? a.groups.filter((group) => b.groups?.includes(group)) : undefined;
  if (groups?.length === 0) return undefined;
  const common = groups ?? a.groups ?? b.groups;
  return {
    takes: [...a.takes, ...b.takes].sort((x, y) => x - y),
    ...(common && { groups: common }),
    cost: a.cost + b.cost,
    margin: Math.min(a.margin, b.margin),
  };
}

/** Every way that takes one from each of several choices. */
export function everyWay(choices: readonly (readonly Way[])[]): readonly Way[] {
  return choices.reduce<readonly Way[]>(
    (ways, choice) => ways.flatMap((way) => choice.flatMap((next) => together(way, next) ?? [])),
    [NOTHING],
  );
}

/** Of the ways that take the same: the cheapest, and of these the one with the widest margin. */
export function bestWays(ways: readonly Way[]): readonly Way[] {
  const best = new Map<string, Way>();
  for (const way of ways) {
    const key = way.takes.join();
    const other = best.get(key);
    if (other === undefined || inOrder(way, other) < 0) best.set(key, way);
  }
  return [...best.values()].sort(inOrder);
}

const inOrder = (a: Way, b: Way) =>
  a.cost - b.cost || (a.margin === b.margin ? 0 : b.margin - a.margin);
