import type { Highs } from 'highs';
import type { Time } from '../quantities/index.js';
import type { Price } from '../reading/index.js';
import type { PlanStage } from './proof-types.js';

/** Options of `planBuilds`. */
export interface PlanOptions {
  /** The most engines to build; by default as many as possible. */
  readonly atMost?: number;
  /** Whether parts may be bought; by default yes. */
  readonly buying?: boolean;
  /** Limit on the cost of machining and purchases for each engine; by default none. */
  readonly mostPerEngine?: Price;
  /** Names of parts to keep back. */
  readonly reserved?: readonly string[];
  /** Names of blocks that must be built. An engine is named after its block. */
  readonly mustBuild?: readonly string[];
  /**
   * The chance that every clearance must hold with, such as 0.95: above 0.5 and below 1. Each margin is then taken
   * after a guard band, and the shed must describe its instruments. By default sizes count as read.
   */
  readonly holdsWith?: number;
  /**
   * Time after which the search stops with the best plan so far; by default it runs until the plan is
   * proven. It is clock time, counted from when the solver is loaded. The search checks the clock between
   * its steps, so a large shed can take some seconds more [s].
   */
  readonly timeLimit?: Time;
  /** Called with the progress, repeatedly during the search. */
  readonly onProgress?: (progress: PlanProgress) => void;
  /**
   * The HiGHS solver, started. Without it the package `highs` is loaded for the first plan, by its
   * name: a page in a browser starts one of its own.
   */
  readonly solver?: Highs;
}

/** Progress of a search. */
export interface PlanProgress {
  /** The current stage. */
  readonly stage: PlanStage;
  /** Time so far [s]. */
  readonly elapsed: Time;
}
