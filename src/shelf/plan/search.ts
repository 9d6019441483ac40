import type { Draft } from './draft.js';
import { type Brief, formulate } from './formulate.js';
import { clearanceMargins } from './margins.js';
import { type Row, sumOf, type Term } from './model.js';
import type { PlanStage, Proof } from './plan-types.js';
import type { Question, Solver } from './solver.js';

/** What is sought, and with what. */
export interface Search {
  readonly brief: Omit<Brief, 'least'>;
  readonly solver: Solver;
  /** Build at most so many. */
  readonly atMost: number;
}

/** The best builds that were found, and what is proven of them. */
export interface Outcome {
  readonly draft: Draft;
  readonly values: readonly number[];
  /** The least margin that its draft allowed [nm]. */
  readonly least: number;
  readonly proof: Proof;
}

/** The most engines, at the least cost, with the widest smallest margin: each stage proven before the next. */
export function search({ brief, solver, atMost }: Search): Outcome {
  const draft = formulate({ ...brief, least: -Infinity });
  const ask = (stage: PlanStage, question: Question) => solver.solve(stage, draft.model, question);
  const none = draft.uses.map(() => 0);

  const must =
    draft.mustBuild.length > 0
      ? ask('most engines', { goal: 'most', of: draft.mustBuild, from: none })
      : { status: 'optimal' as const, values: none };
  if (must.status === 'time limit') return unproven(draft, none, 'most engines', 0, atMost);
  const kept = [exactly(draft.mustBuild, sumOf(draft.mustBuild, must.values))];

  const most = ask('most engines', {
    goal: 'most',
    of: draft.engines,
    where: [...kept, upTo(draft.engines, atMost)],
    from: must.values,
  });
  const built = most.values.length > 0 ? most.values : must.values;
  const engines = sumOf(draft.engines, built);
  if (most.status === 'time limit') {
    return unproven(draft, built, 'most engines', engines, finiteOr(most.bound, atMost));
  }
  if (engines === 0) return { draft, values: built, least: -Infinity, proof: { kind: 'optimal' } };

  const least = ask('least cost', {
    goal: 'least',
    of: draft.cost,
    where: [...kept, exactly(draft.engines, engines)],
    from: built,
  });
  const values = least.values.length > 0 ? least.values : built;
  const cost = sumOf(draft.cost, values);
  if (least.status === 'time limit') {
    const bound = Math.max(0, finiteOr(least.bound, 0));
    return unproven(draft, values, 'least cost', cost / 1000, bound / 1000);
  }
  return widest({ brief, solver }, { draft, values, engines, cost });
}

/**
 * Raises the least margin as far as the same engines at the same cost allow,
 * by halving the list of all margins there are.
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
    const draft = formulate({ ...brief, least });
    const { status, values } = solver.solve('widest margin', draft.model, {
      goal: 'least',
      of: draft.cost,
      where: [
        exactly(draft.mustBuild, sumOf(start.draft.mustBuild, start.values)),
        exactly(draft.engines, start.engines),
        upTo(draft.cost, start.cost),
      ],
      enough: start.cost,
    });
    if (status === 'time limit') {
      const [found, bound] = [margins[low] ?? 0, margins[high - 1] ?? 0];
      return {
        ...unproven(best.draft, best.values, 'widest margin', found * 1e-9, bound * 1e-9),
        least: best.least,
      };
    }
    if (status === 'optimal') {
      best = { draft, values, least };
      low = middle;
    } else high = middle;
  }
  return { ...best, proof: { kind: 'optimal' } };
}

function unproven(
  draft: Draft,
  values: readonly number[],
  stage: PlanStage,
  found: number,
  bound: number,
): Outcome {
  return { draft, values, least: -Infinity, proof: { kind: 'time limit', stage, found, bound } };
}

/** What was proven, where the solver got so far; else what is known beforehand. */
const finiteOr = (bound: number, known: number) => (Number.isFinite(bound) ? bound : known);

const exactly = (terms: readonly Term[], sum: number): Row => ({ terms, min: sum, max: sum });

const upTo = (terms: readonly Term[], most: number): Row => ({ terms, min: -Infinity, max: most });
