import type { Highs } from 'highs';
import type { Clock } from './clock.js';
import type { Model, Row, Term } from './model.js';
import type { PlanProgress } from './plan-options.js';
import type { PlanStage } from './proof-types.js';

/** The result of a solve. */
export interface Solution {
  /**
   * `optimal`: no solution is better. `infeasible`: there is no solution. Otherwise the time was up, or
   * the solver failed, before either was proven.
   */
  readonly status: 'optimal' | 'infeasible' | 'time limit' | 'solver failure';
  /** The value of every variable; empty if nothing was found. */
  readonly values: readonly number[];
  /** The proven bound on any solution; infinite if nothing was proven. */
  readonly bound: number;
}

/** A question about a model. */
export interface Question {
  readonly goal: 'most' | 'least';
  readonly of: readonly Term[];
  /** Rows in addition to those of the model. */
  readonly where?: readonly Row[];
  /** A solution to start from. */
  readonly from?: readonly number[];
}

/** Options of a solver. */
export interface SolverOptions {
  /** Time for all questions and for building their models [s]. */
  readonly timeLimit?: number;
  readonly onProgress?: (progress: PlanProgress) => void;
  /** The solver; without it one is loaded. */
  readonly solver?: Highs;
}

/** Answers questions about models, one at a time, while there is time. */
export interface Solver {
  readonly clock: Clock;
  solve(stage: PlanStage, model: Model, question: Question): Solution;
}
