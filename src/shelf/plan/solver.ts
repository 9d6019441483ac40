import type { Highs, Model as NativeModel } from 'highs';
import { second } from '../../quantities/units.js';
import { type Model, type Row, sumOf, type Term } from './model.js';
import type { PlanProgress, PlanStage } from './plan-types.js';

/** What a solve came to. */
export interface Solution {
  /** Whether none is better, or the time was up first, or there is none at all. */
  readonly status: 'optimal' | 'time limit' | 'infeasible';
  /** Every variable; empty where nothing was found. */
  readonly values: readonly number[];
  /** What none can better, as far as was proven. */
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
  /** As good as is wanted: the search may stop there. */
  readonly enough?: number;
}

/** How a solver is run. */
export interface SolverOptions {
  /** Time for all that is asked together [s]. */
  readonly timeLimit?: number;
  readonly onProgress?: (progress: PlanProgress) => void;
}

/** Answers questions about models, one after the other, within one time. */
export interface Solver {
  solve(stage: PlanStage, model: Model, question: Question): Solution;
}

let loaded: Promise<Highs> | undefined;

/** Loads HiGHS, which is large, only now that it is needed, and only once. */
export async function loadSolver({ timeLimit, onProgress }: SolverOptions): Promise<Solver> {
  loaded ??= import('highs').then(({ default: load }) => load());
  const highs = await loaded;
  let elapsed = 0;
  return {
    solve(stage, model, question) {
      const { where = [] } = question;
      const rows = [...model.rows, ...where].filter(({ terms }) => terms.length > 0);
      const broken = where.some(
        ({ terms, min, max }) => terms.length === 0 && (min > 0 || max < 0),
      );
      if (broken) return { status: 'infeasible', values: [], bound: 0 };
      if (model.bounds.length === 0) return { status: 'optimal', values: [], bound: 0 };
      const native = highs.createModel(dataOf(highs, model, rows, question));
      try {
        native.options.set(optionsFor(question, timeLimit && Math.max(0, timeLimit - elapsed)));
        if (question.from) native.setSolution({ colValue: question.from });
        native.run(
          onProgress && {
            [highs.constants.callbackType.mipInterrupt]({ data: { running_time = 0 } }) {
              onProgress({ stage, elapsed: second(elapsed + running_time) });
            },
          },
        );
        elapsed += native.getRunTime();
        return solutionOf(highs, native, question);
      } finally {
        native.dispose();
      }
    },
  };
}

function dataOf(highs: Highs, { bounds }: Model, rows: readonly Row[], { goal, of }: Question) {
  const cost = new Float64Array(bounds.length);
  for (const [variable, coefficient] of of) cost[variable] = (cost[variable] ?? 0) + coefficient;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    const sums = new Map<number, number>();
    for (const [variable, by] of terms) sums.set(variable, (sums.get(variable) ?? 0) + by);
    for (const [variable, by] of sums) {
      if (by === 0) continue;
      indices.push(variable);
      values.push(by);
    }
    starts.push(indices.length);
  }
  const { minimize, maximize } = highs.constants.objectiveSense;
  return {
    numCols: bounds.length,
    numRows: rows.length,
    sense: goal === 'most' ? maximize : minimize,
    colCost: cost,
    colLower: new Float64Array(bounds.length),
    colUpper: Float64Array.from(bounds),
    rowLower: Float64Array.from(rows, ({ min }) => min),
    rowUpper: Float64Array.from(rows, ({ max }) => max),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols: bounds.length,
      starts,
      indices,
      values,
    },
    integrality: new Int32Array(bounds.length).fill(highs.constants.variableType.integer),
  };
}

function optionsFor({ enough }: Question, remaining: number | undefined) {
  return {
    output_flag: false,
    // The default gap of 1 in 10⁴ would call a plan the best that is not.
    mip_rel_gap: 0,
    // It takes longer on these models than all the rest of a solve.
    mip_heuristic_run_feasibility_jump: false,
    ...(remaining !== undefined && { time_limit: remaining }),
    ...(enough !== undefined && { objective_target: enough }),
  };
}

function solutionOf(highs: Highs, native: NativeModel, { of }: Question): Solution {
  const { optimal, infeasible, unboundedOrInfeasible, timeLimit, objectiveTarget } =
    highs.constants.modelStatus;
  const status = native.getModelStatus();
  // Every variable is bounded, so that nothing can be unbounded.
  if (status === infeasible || status === unboundedOrInfeasible)
    return { status: 'infeasible', values: [], bound: 0 };
  const found = Number(native.info.get('primal_solution_status')) === 2;
  const values = found ? Array.from(native.getSolution().colValue, Math.round) : [];
  if (found && (status === optimal || status === objectiveTarget)) {
    return { status: 'optimal', values, bound: sumOf(of, values) };
  }
  if (status === timeLimit) {
    return { status: 'time limit', values, bound: Number(native.info.get('mip_dual_bound')) };
  }
  throw new Error(
    `The solver ended in a state that is no answer (${status}). Please report the shelf.`,
  );
}
