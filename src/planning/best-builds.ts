import { assemble } from './assemble.js';
import { type Assembly, assemblyCost } from './assembly.js';
import { batchesOf } from './batches.js';
import type { Brief } from './brief.js';
import { TimeUp } from './clock.js';
import type { Proof, Unproven } from './plan-types.js';
import { search } from './search.js';
import type { Solver } from './solver.js';

/** What is sought, and with what. */
export interface Sought {
  readonly brief: Omit<Brief, 'least' | 'batches'>;
  readonly solver: Solver;
  /** Build at most so many. */
  readonly atMost: number;
}

/** The best engines that were found, and what is proven of them. */
export interface Found {
  readonly assemblies: readonly Assembly[];
  /** The least margin that was asked of them [nm]. */
  readonly least: number;
  readonly proof: Proof;
}

/**
 * The best builds. Where the cost of each engine is limited, the engines are first sought together:
 * together they may cost so many times the limit, and nothing that is dearer by itself is taken. No
 * plan that keeps every engine within the limit can be better than what that gives, and often its
 * engines do keep within it. Only where they do not is every engine sought by itself, which is slow.
 */
export function bestBuilds(sought: Sought): Found {
  const { brief, atMost } = sought;
  const together = found(sought);
  const { mostPerEngine = Infinity, stock } = brief;
  const within = together.assemblies.filter((each) => assemblyCost(each) <= mostPerEngine);
  if (within.length === together.assemblies.length) return together;

  // To build one block more of those that must be built may cost engines: what is proven of the one
  // number of such blocks is not of the other.
  const mustBuild = stock.blocks.some((kind) => kind.mustBuild);
  const most = mustBuild ? atMost : mostOf(together);
  const some = (kind: Unproven['kind'], bound: number): Found => {
    const cost = within.reduce((sum, each) => sum + assemblyCost(each), 0);
    const proof: Proof =
      within.length < bound
        ? { kind, stage: 'most engines', found: within.length, bound }
        : { kind, stage: 'least cost', found: cost / 1000, bound: 0 };
    return { ...together, assemblies: within, proof };
  };
  if (together.proof.kind !== 'optimal') return some(together.proof.kind, most);
  const apart = found({ ...sought, atMost: most }, most);
  const { proof } = apart;
  if (proof.kind === 'optimal' || proof.stage !== 'most engines') return apart;
  return isBetter(apart.assemblies, within) ? apart : some(proof.kind, proof.bound);
}

/** Seeks engines together; or, where a number is given, so many one by one. */
function found({ brief, solver, atMost }: Sought, single?: number): Found {
  try {
    const batches = batchesOf(brief.stock, single);
    const batched = { ...brief, batches, clock: solver.clock };
    const { draft, values, least, proof } = search({ brief: batched, solver, atMost });
    return { assemblies: assemble({ ...batched, least }, draft, values), least, proof };
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    const proof = { kind: 'time limit', stage: 'most engines', found: 0, bound: atMost } as const;
    return { assemblies: [], least: -Infinity, proof };
  }
}

/** How many engines there can be at most. */
const mostOf = ({ assemblies, proof }: Found): number =>
  proof.kind !== 'optimal' && proof.stage === 'most engines' ? proof.bound : assemblies.length;

/** More of the blocks that must be built, or as many and more engines. */
function isBetter(some: readonly Assembly[], others: readonly Assembly[]): boolean {
  const musts = (all: readonly Assembly[]) =>
    all.filter(({ block }) => block.kind.mustBuild).length;
  const more = musts(some) - musts(others);
  return more > 0 || (more === 0 && some.length > others.length);
}
