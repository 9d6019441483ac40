import type { Engine } from './brute-engines.js';
import { compared, FREE, type Outlay, plus, type Way } from './brute-ways.js';

/** What is searched. */
export interface Search {
  /** The engines that each block can be built up to. */
  readonly byBlock: readonly (readonly Engine[])[];
  /** Whether each block must be built. */
  readonly musts: readonly boolean[];
  /** How many there are in each bin. */
  readonly counts: readonly number[];
  /** The most engines to build. */
  readonly atMost: number;
  /** The most that one may cost. */
  readonly mostPerEngine: number;
}

/** A set of engines that are built together. */
interface Builds extends Outlay {
  /** How many of the blocks that must be built are. */
  readonly musts: number;
  readonly engines: number;
}

/** What a choice of ways comes to, and the cost of each engine. */
interface Outcome extends Outlay {
  readonly costs: readonly number[];
}

/** An engine with what it comes to if it is the only one. */
interface Candidate {
  readonly alone: Outlay;
  readonly engine: Engine;
}

/**
 * The best set of engines, at most one on each block and none taking what is
 * not there: most of those that must be built, most, then cheapest, then with the widest margins and so on. Every set is tried but
 * those that cannot be better than the best found: engines together cost no
 * less than one by one, and where they cost the same are no better.
 */
export function search(request: Search): Builds {
  const { byBlock, musts, atMost } = request;
  const candidates = byBlock.map((engines) =>
    engines.flatMap((engine): readonly Candidate[] => {
      const alone = bestOutcome([engine], request);
      return alone ? [{ engine, alone }] : [];
    }),
  );
  // The best first: what follows is the sooner seen to be hopeless.
  for (const each of candidates) each.sort((a, b) => compared(a.alone, b.alone));
  let best: Builds = { musts: 0, engines: 0, ...FREE };
  const go = (block: number, chosen: readonly Engine[], so: Builds) => {
    if (isBetter(so, best)) best = so;
    const most = Math.min(atMost, so.engines + byBlock.length - block);
    const mostMusts = so.musts + musts.slice(block).filter(Boolean).length;
    const isHopeless = (outlay: Outlay) =>
      !isBetter({ ...outlay, musts: mostMusts, engines: most }, best);
    if (most === so.engines || isHopeless(so)) return;
    for (const { engine, alone } of candidates[block] ?? []) {
      if (isHopeless(plus(so, alone))) continue;
      const outcome = bestOutcome([...chosen, engine], request);
      if (outcome === undefined) continue;
      const next = {
        ...outcome,
        musts: so.musts + (musts[block] ? 1 : 0),
        engines: so.engines + 1,
      };
      go(block + 1, [...chosen, engine], next);
    }
    go(block + 1, chosen, so);
  };
  go(0, [], best);
  return best;
}

function isBetter(a: Builds, b: Builds): boolean {
  if (a.musts !== b.musts) return a.musts > b.musts;
  if (a.engines !== b.engines) return a.engines > b.engines;
  return compared(a, b) < 0;
}

/** The best that some engines come to together; undefined if they cannot be built together. */
function bestOutcome(engines: readonly Engine[], request: Search): Outcome | undefined {
  const { counts, mostPerEngine } = request;
  let outcomes: readonly Outcome[] = [{ ...FREE, costs: engines.map(() => 0) }];
  const layers = engines[0]?.length ?? 0;
  for (let layer = 0; layer < layers && outcomes.length > 0; layer++) {
    const shared = worthKeeping(mostPerEngine);
    shareOut(
      engines.map((engine) => engine[layer] ?? []),
      [...counts],
      shared,
    );
    const kept = worthKeeping(mostPerEngine);
    for (const one of outcomes) for (const other of shared.all()) kept.add(added(one, other));
    outcomes = kept.all();
  }
  const best = worthKeeping(Infinity);
  outcomes.forEach(best.add);
  return best.all()[0];
}

/** Adds every choice of one way for each engine that takes no more than is left. */
function shareOut(
  choices: readonly (readonly Way[])[],
  left: number[],
  kept: Kept,
  so: Outcome = { ...FREE, costs: [] },
): void {
  const ways = choices[so.costs.length];
  if (ways === undefined) {
    kept.add(so);
    return;
  }
  for (const way of ways) {
    const { takes, cost } = way;
    const next = { ...plus(so, way), costs: [...so.costs, cost] };
    if (kept.isHopeless(next)) continue;
    for (const id of takes) left[id] = (left[id] ?? 0) - 1;
    if (takes.every((id) => (left[id] ?? 0) >= 0)) shareOut(choices, left, kept, next);
    for (const id of takes) left[id] = (left[id] ?? 0) + 1;
  }
}

/** The outcomes that can be part of the best. */
interface Kept {
  readonly add: (outcome: Outcome) => void;
  readonly isHopeless: (outcome: Outcome) => boolean;
  readonly all: () => readonly Outcome[];
}

/**
 * Where nothing limits the cost of one engine, only the best can be part of the
 * best; otherwise the widest for every spread of the cost that is within the limit.
 */
function worthKeeping(mostPerEngine: number): Kept {
  const best = new Map<string, Outcome>();
  const keyOf = ({ costs }: Outcome) => (mostPerEngine === Infinity ? '' : costs.join());
  const isHopeless = (outcome: Outcome) => {
    const other = best.get(keyOf(outcome));
    return (
      outcome.costs.some((cost) => cost > mostPerEngine) ||
      (other !== undefined && compared(outcome, other) >= 0)
    );
  };
  return {
    isHopeless,
    add: (outcome) => {
      if (!isHopeless(outcome)) best.set(keyOf(outcome), outcome);
    },
    all: () => [...best.values()],
  };
}

const added = (a: Outcome, b: Outcome): Outcome => ({
  ...plus(a, b),
  costs: a.costs.map((cost, i) => cost + (b.costs[i] ?? 0)),
});
