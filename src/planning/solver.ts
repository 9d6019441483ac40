import type { Highs } from 'highs';
import type { Clock } from './clock.js';
import type { Model, Row, Term } from './model.js';
import type { PlanProgress, PlanStage } from './plan-types.js';

/** What a solve came to. */
export interface Solution {
  /**
   * `optimal`: none is better. `infeasible`: there is none at all. Otherwise the time was up, or the
   * solver failed, before either was proven.
   */
  readonly status: 'optimal' | 'infeasible' | 'time limit' | 'solver failure';
  /** Every variable; empty where nothing was found. */
  readonly values: readonly number[];
  /** What none can better, as far as was proven; infinite where nothing was. */
  readonly bound: number;
}

/** What is asked of a model. */
export interface Question {
  readonly goal: 'most' | 'least';
  readonly of: readonly Term[];
  /** Rows that hold besides those of the model. */
  readonly where?: readonly Row[];
  /** A solution to start from. */
  readonly from?: readonly number[];
}

/** How a solver is run. */
export interface SolverOptions {
  /** Time for all that is asked together, and for putting it together [s]. */
  readonly timeLimit?: number;
  readonly onProgress?: (progress: PlanProgress) => void;
  /** The solver; without it one is loaded. */
  readonly solver?: Highs;
}

/** Answers questions about models, one after the other, while there is time. */
export interface Solver {
  readonly clock: Clock;
  solve(stage: PlanStage, model: Model, question: Question): Solution;
}
