import type { Engine } from './brute-engines.js';
import type { Way } from './brute-ways.js';

/** What is searched. */
export interface Search {
  /** The engines that each block can be built up to. */
  readonly byBlock: readonly (readonly Engine[])[];
  /** How many there are in each bin. */
  readonly counts: readonly number[];
  /** The most engines to build. */
  readonly atMost: number;
  /** The most that one may cost. */
  readonly mostPerEngine: number;
}

/** A set of engines that are built together. */
interface Builds {
  readonly engines: number;
  readonly cost: number;
  readonly margin: number;
}

/** What a choice of ways comes to: the cost of each engine, and the smallest margin. */
interface Outcome {
  readonly costs: readonly number[];
  readonly margin: number;
}

const costOf = ({ costs }: Outcome) => costs.reduce((sum, cost) => sum + cost, 0);

/**
 * The best set of engines, at most one on each block and none taking what is
 * not there: most, then cheapest, then widest margin. Every set is tried but
 * those that contain one that cannot be built, or that is no better by itself
 * than the best found: more engines cost no less and have no wider a margin.
 */
export function search(request: Search): Builds {
  const { byBlock, atMost } = request;
  let best: Builds = { engines: 0, cost: 0, margin: Infinity };
  const go = (block: number, chosen: readonly Engine[], so: Builds) => {
    if (isBetter(so, best)) best = so;
    const most = Math.min(atMost, so.engines + byBlock.length - block);
    if (most === so.engines || !isBetter({ ...so, engines: most }, best)) return;
    for (const engine of byBlock[block] ?? []) {
      const outcome = bestOutcome([...chosen, engine], request);
      if (outcome === undefined) continue;
      const { margin } = outcome;
      const next = { engines: so.engines + 1, cost: costOf(outcome), margin };
      go(block + 1, [...chosen, engine], next);
    }
    go(block + 1, chosen, so);
  };
  go(0, [], best);
  return best;
}

const isBetter = (a: Builds, b: Builds) =>
  a.engines > b.engines ||
  (a.engines === b.engines && (a.cost < b.cost || (a.cost === b.cost && a.margin > b.margin)));

/** The best that some engines come to together; undefined if they cannot be built together. */
function bestOutcome(
  engines: readonly Engine[],
  { counts, mostPerEngine }: Search,
): Outcome | undefined {
  let outcomes: readonly Outcome[] = [{ costs: engines.map(() => 0), margin: Infinity }];
  const layers = engines[0]?.length ?? 0;
  for (let layer = 0; layer < layers; layer++) {
    const choices = engines.map((engine) => engine[layer] ?? []);
    const shared = worthKeeping(sharedOut(choices, [...counts]), mostPerEngine);
    outcomes = worthKeeping(
      outcomes.flatMap((one) => shared.map((other) => added(one, other))),
      mostPerEngine,
    );
  }
  return outcomes.reduce<Outcome | undefined>(
    (best, each) => (best === undefined || isBetterOutcome(each, best) ? each : best),
    undefined,
  );
}

/** Every choice of one way for each engine that takes no more than is left. */
function sharedOut(choices: readonly (readonly Way[])[], left: number[]): readonly Outcome[] {
  const [first, ...rest] = choices;
  if (first === undefined) return [{ costs: [], margin: Infinity }];
  return first.flatMap((way) => {
    const change = (by: number) => {
      for (const id of way.takes) left[id] = (left[id] ?? 0) + by;
    };
    change(-1);
    const enough = way.takes.every((id) => (left[id] ?? 0) >= 0);
    const outcomes = enough ? sharedOut(rest, left) : [];
    change(1);
    return outcomes.map(({ costs, margin }) => ({
      costs: [way.cost, ...costs],
      margin: Math.min(way.margin, margin),
    }));
  });
}

/**
 * Where nothing limits the cost of one engine, only the best outcome can be part
 * of the best; otherwise the widest for every spread of the cost within the limit.
 */
function worthKeeping(outcomes: readonly Outcome[], mostPerEngine: number): readonly Outcome[] {
  const best = new Map<string, Outcome>();
  for (const outcome of outcomes) {
    if (outcome.costs.some((cost) => cost > mostPerEngine)) continue;
    const key = mostPerEngine === Infinity ? '' : outcome.costs.join();
    const other = best.get(key);
    if (other === undefined || isBetterOutcome(outcome, other)) best.set(key, outcome);
  }
  return [...best.values()];
}

const added = (a: Outcome, b: Outcome): Outcome => ({
  costs: a.costs.map((cost, i) => cost + (b.costs[i] ?? 0)),
  margin: Math.min(a.margin, b.margin),
});

const isBetterOutcome = (a: Outcome, b: Outcome) =>
  costOf(a) < costOf(b) || (costOf(a) === costOf(b) && a.margin > b.margin);
