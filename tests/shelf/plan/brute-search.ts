import type { Bin } from './brute-stock.js';
import type { Way } from './brute-ways.js';

/** A set of engines that can be built together. */
interface Builds {
  readonly engines: number;
  readonly cost: number;
  readonly margin: number;
}

/**
 * The best set of engines, at most one on each block and none taking what is
 * not there: most, then cheapest, then widest margin. Every set is tried but
 * those that cannot be better than one already found.
 *
 * @param byBlock - the engines that each block can be built up to, cheapest first
 * @param sections - the bins of each section
 * @param atMost - the most engines to build
 */
export function search(
  byBlock: readonly (readonly Way[])[],
  sections: readonly (readonly Bin[])[],
  atMost: number,
): Builds {
  const left = sections.flat().map(({ count }) => count);
  const needs = sections.map((bins) => leastTaken(byBlock.flat(), bins));
  let best: Builds = { engines: 0, cost: 0, margin: Infinity };
  const cheapest = byBlock.map(([first]) => first?.cost ?? Infinity);

  /** The least that so many engines on the blocks from one on can cost, were nothing shared. */
  const leastCost = (from: number, engines: number) =>
    cheapest
      .slice(from)
      .sort((a, b) => a - b)
      .slice(0, Math.max(0, engines))
      .reduce((sum, cost) => sum + cost, 0);

  /** No more engines than this can be made of what is left in each section. */
  const mostLeft = () =>
    sections.reduce((most, bins, i) => {
      const there = bins.reduce((sum, { id }) => sum + (left[id] ?? 0), 0);
      const need = needs[i] ?? 0;
      return need === 0 ? most : Math.min(most, Math.floor(there / need));
    }, Infinity);

  const hopeless = (block: number, { engines, cost, margin }: Builds) => {
    const more = Math.min(byBlock.length - block, atMost - engines, mostLeft());
    if (engines + more !== best.engines) return engines + more < best.engines;
    const least = cost + leastCost(block, best.engines - engines);
    return least > best.cost || (least === best.cost && margin <= best.margin);
  };

  const go = (block: number, so: Builds) => {
    if (isBetter(so, best)) best = so;
    const ways = byBlock[block];
    if (ways === undefined || so.engines >= atMost || hopeless(block, so)) return;
    for (const way of ways) {
      const next = {
        engines: so.engines + 1,
        cost: so.cost + way.cost,
        margin: Math.min(so.margin, way.margin),
      };
      if (take(left, way)) go(block + 1, next);
      putBack(left, way);
    }
    go(block + 1, so);
  };

  go(0, best);
  return best;
}

/** The fewest that any way takes from a section; it may be none. */
function leastTaken(ways: readonly Way[], bins: readonly Bin[]): number {
  const ids = new Set(bins.map(({ id }) => id));
  return Math.min(...ways.map(({ takes }) => takes.filter((id) => ids.has(id)).length));
}

const isBetter = (a: Builds, b: Builds) =>
  a.engines > b.engines ||
  (a.engines === b.engines && (a.cost < b.cost || (a.cost === b.cost && a.margin > b.margin)));

/** Takes from the bins, and says whether there was enough in each. */
function take(left: number[], { takes }: Way): boolean {
  for (const id of takes) left[id] = (left[id] ?? 0) - 1;
  return takes.every((id) => (left[id] ?? 0) >= 0);
}

function putBack(left: number[], { takes }: Way): void {
  for (const id of takes) left[id] = (left[id] ?? 0) + 1;
}
