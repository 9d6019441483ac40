import { NANOMETRE } from '../judging/internal.js';
import type { Brief } from './brief.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { formulate } from './formulate.js';
import { clearanceMargins } from './margins.js';
import { exactly, sumOfTerms, type Term, upTo } from './model.js';
import type { PlanStage, Proof, Unproven } from './proof-types.js';
import type { Question, Solution, Solver } from './solver.js';

/** The input of a search. */
export interface Search {
  readonly brief: Omit<Brief, 'least'>;
  readonly solver: Solver;
  /** The most engines to build. */
  readonly atMost: number;
}

/** The best builds found, and what is proven about them. */
export interface Outcome {
  readonly draft: Draft;
  readonly values: readonly number[];
  /** The least margin that the draft allows [nm]. */
  readonly least: number;
  readonly proof: Proof;
}

/**
 * Finds the most engines, at the least cost, with the widest smallest margin. Each stage is proven
 * before the next. Throws `TimeUp` if the time is up before the model is ready.
 */
export function search({ brief, solver, atMost }: Search): Outcome {
  const draft = formulate({ ...brief, least: -Infinity });
  const ask = (stage: PlanStage, question: Question) => solver.solve(stage, draft.model, question);
  const none = draft.uses.map(() => 0);

  const withinLimit = upTo(draft.engines, atMost);
  const forced: Solution =
    draft.mustBuild.length > 0
      ? ask('most engines', { goal: 'most', of: draft.mustBuild, where: [withinLimit], from: none })
      : { status: 'optimal', values: none, bound: 0 };
  const start = forced.values.length > 0 ? forced.values : none;
  if (isStopped(forced)) {
    const found = sumOfTerms(draft.engines, start);
    return unproven(draft, start, {
      outcome: forced.status,
      stage: 'most engines',
      found,
      bound: atMost,
    });
  }
  const kept = [exactly(draft.mustBuild, sumOfTerms(draft.mustBuild, start))];

  const most = ask('most engines', {
    goal: 'most',
    of: draft.engines,
    where: [...kept, withinLimit],
    from: start,
  });
  const built = most.values.length > 0 ? most.values : start;
  const engines = sumOfTerms(draft.engines, built);
  if (isStopped(most)) {
    const bound = Math.max(engines, Math.min(atMost, Math.floor(most.bound + 1e-6)));
    return unproven(draft, built, {
      outcome: most.status,
      stage: 'most engines',
      found: engines,
      bound,
    });
  }
  if (engines === 0)
    return { draft, values: built, least: -Infinity, proof: { outcome: 'optimal' } };

  const least = ask('least cost', {
    goal: 'least',
    of: draft.cost,
    where: [...kept, exactly(draft.engines, engines)],
    from: built,
  });
  const values = least.values.length > 0 ? least.values : built;
  const cost = sumOfTerms(draft.cost, values);
  if (isStopped(least)) {
    const bound = Math.max(0, Math.min(cost, least.bound));
    return unproven(draft, values, {
      outcome: least.status,
      stage: 'least cost',
      found: cost / 1000,
      bound: bound / 1000,
    });
  }
  return widest({ brief, solver }, { draft, values, engines, cost });
}

/**
 * Raises the least margin as far as the same number of engines at the same cost allows, by halving
 * the list of all possible margins.
 */
function widest(
  { brief, solver }: Omit<Search, 'atMost'>,
  start: {
    readonly draft: Draft;
    readonly values: readonly number[];
    readonly engines: number;
    readonly cost: number;
  },
): Outcome {
  const margins = clearanceMargins(brief);
  let best = { draft: start.draft, values: start.values, least: -Infinity };
  let [low, high] = [0, margins.length];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const least = margins[middle] ?? 0;
    const tried = withMargin(brief, solver, start, least);
    if (isStopped(tried)) {
      const [found, bound] = [margins[low] ?? 0, margins[high - 1] ?? 0];
      const proof = {
        outcome: tried.status,
        stage: 'widest margin',
        found: found * NANOMETRE,
        bound: bound * NANOMETRE,
      } as const;
      return { ...best, proof };
    }
    if (tried.status === 'optimal') {
      best = { draft: tried.draft, values: tried.values, least };
      low = middle;
    } else high = middle;
  }
  return { ...best, proof: { outcome: 'optimal' } };
}

/** As many engines at the same cost with at least this margin, if possible. */
function withMargin(
  brief: Search['brief'],
  solver: Solver,
  start: { readonly draft: Draft; readonly values: readonly number[]; readonly cost: number },
  least: number,
): Pick<Solution, 'status' | 'values'> & { readonly draft: Draft } {
  try {
    const draft = formulate({ ...brief, least });
    const asBefore = (terms: readonly Term[], before: readonly Term[]) =>
      exactly(terms, sumOfTerms(before, start.values));
    const { status, values } = solver.solve('widest margin', draft.model, {
      goal: 'least',
      of: draft.cost,
      where: [
        asBefore(draft.mustBuild, start.draft.mustBuild),
        asBefore(draft.engines, start.draft.engines),
        upTo(draft.cost, start.cost),
      ],
    });
    return { status, values, draft };
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return { status: 'time limit', values: [], draft: start.draft };
  }
}

/** Why a search stopped without an answer. */
type Stopped = Unproven['outcome'];

function isStopped<S extends Pick<Solution, 'status'>>(
  solution: S,
): solution is S & { readonly status: Stopped } {
  return solution.status === 'time limit' || solution.status === 'solver failure';
}

const unproven = (draft: Draft, values: readonly number[], proof: Unproven): Outcome => ({
  draft,
  values,
  least: -Infinity,
  proof,
});
