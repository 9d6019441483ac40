import { amongEquals } from './among-equals.js';
import { assemble } from './assemble.js';
import { type Assembly, assemblyCost } from './assembly.js';
import { batchesOf } from './batches.js';
import type { Brief } from './brief.js';
import { TimeUp } from './clock.js';
import { isInCompany } from './company.js';
import type { Preference } from './preferences.js';
import type { Proof, Unproven } from './proof-types.js';
import { search } from './search.js';
import type { Solver } from './solver.js';

/** The input of the search. */
export interface Sought {
  readonly brief: Omit<Brief, 'least' | 'batches'>;
  readonly solver: Solver;
  /** The most engines to build. */
  readonly atMost: number;
}

/** The best engines found, and what is proven about them. */
export interface Found {
  readonly assemblies: readonly Assembly[];
  /** The least margin they had to keep [nm]. */
  readonly least: number;
  readonly proof: Proof;
  /** What it was compared by beyond engines, cost and tightest margin. */
  readonly compared: readonly Preference[];
}

/**
 * Finds the best builds. If the cost of each engine is limited, the search first treats the engines
 * together: n engines may cost n times the limit, and no single item may cost more than it. No plan
 * that keeps every engine within the limit can be better, and often this one does keep within it.
 * If not, the search treats every engine separately, which is slow. It does the same where parts that fit only with
 * others ended up in different engines.
 */
export function bestBuilds(sought: Sought): Found {
  const { brief, atMost } = sought;
  const together = found(sought);
  const { mostPerEngine = Infinity, stock } = brief;
  const within = together.assemblies.filter(
    (each) => assemblyCost(each) <= mostPerEngine && isInCompany(each),
  );
  if (within.length === together.assemblies.length) return together;

  // One more of the blocks that must be built may mean fewer engines, so a bound for one number of
  // such blocks does not hold for another.
  const mustBuild = stock.blocks.some((kind) => kind.mustBuild);
  const most = mustBuild ? atMost : mostOf(together);
  const some = (outcome: Unproven['outcome'], bound: number): Found => {
    const cost = within.reduce((sum, each) => sum + assemblyCost(each), 0);
    const proof: Proof =
      within.length < bound
        ? { outcome, stage: 'most engines', found: within.length, bound }
        : { outcome, stage: 'least cost', found: cost / 1000, bound: 0 };
    return { ...together, assemblies: within, proof };
  };
  const { proof: before } = together;
  // Equal plans may be lacking just because engines together can have parts apart that fit only together.
  if (before.outcome !== 'optimal' && before.stage !== 'equal plans')
    return some(before.outcome, most);
  const apart = found({ ...sought, atMost: most }, most);
  const { proof } = apart;
  if (proof.outcome === 'optimal' || proof.stage !== 'most engines') return apart;
  return isBetter(apart.assemblies, within) ? apart : some(proof.outcome, proof.bound);
}

/** Searches the engines together or, given a number, as that many separate engines. */
function found({ brief, solver, atMost }: Sought, single?: number): Found {
  try {
    const batches = batchesOf(brief.stock, single);
    const batched = { ...brief, batches, clock: solver.clock };
    const { draft, values, least, proof } = search({ brief: batched, solver, atMost });
    const won = { brief: { ...batched, least }, draft, values };
    const isEach = brief.mostPerEngine !== undefined;
    if (proof.outcome !== 'optimal' || isEach) {
      return { assemblies: assemble(won.brief, draft, values), least, proof, compared: [] };
    }
    return { ...amongEquals(won, solver), least };
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    const proof = {
      outcome: 'time limit',
      stage: 'most engines',
      found: 0,
      bound: atMost,
    } as const;
    return { assemblies: [], least: -Infinity, proof, compared: [] };
  }
}

/** The most engines possible. */
const mostOf = ({ assemblies, proof }: Found): number =>
  proof.outcome !== 'optimal' && proof.stage === 'most engines' ? proof.bound : assemblies.length;

/** Whether one plan has more of the blocks that must be built, or as many and more engines. */
function isBetter(some: readonly Assembly[], others: readonly Assembly[]): boolean {
  const musts = (all: readonly Assembly[]) =>
    all.filter(({ block }) => block.kind.mustBuild).length;
  const more = musts(some) - musts(others);
  return more > 0 || (more === 0 && some.length > others.length);
}
