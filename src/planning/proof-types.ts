/** The stages of a search: each is proven before the next one begins. */
export type PlanStage =
  | 'most engines'
  | 'least cost'
  | 'widest margin'
  | 'equal plans'
  | 'next engine'
  | 'measure first';

/** What is proven about a plan. */
export type Proof =
  | {
      /** No plan is better in what plans are compared by. */
      readonly outcome: 'optimal';
    }
  | Unproven;

/** How far an unfinished proof came. */
export interface Unproven {
  /** Why it ended: the time was up, or the solver failed. */
  readonly outcome: 'time limit' | 'solver failure';
  /** The stage that is not proven. The stages before it are. */
  readonly stage: PlanStage;
  /** The plan's value at that stage: engines, money, or a margin in metres; for equal plans and the next engine, the engines of the plan. */
  readonly found: number;
  /** The bound that is proven so far for that value, in the same terms. */
  readonly bound: number;
}
