import type { Highs, Model as NativeModel } from 'highs';
import type { Clock } from './clock.js';
import { type Allowed, type Model, type Row, sumOfTerms, type Term, upTo } from './model.js';
import type { Question, Solution } from './solver.js';
import { lowestTerms, tightened } from './tighten.js';

type ModelStatus = keyof Highs['constants']['modelStatus'];

/** The meaning of every final state of HiGHS. Any other state is a failure. */
const ENDS: Readonly<Record<ModelStatus, Solution['status']>> = {
  optimal: 'optimal',
  infeasible: 'infeasible',
  // Every variable has two bounds, so nothing is unbounded.
  unboundedOrInfeasible: 'infeasible',
  unbounded: 'solver failure',
  timeLimit: 'time limit',
  // We set no limit or target of these kinds, and nobody interrupts it.
  iterationLimit: 'solver failure',
  solutionLimit: 'solver failure',
  objectiveBound: 'solver failure',
  objectiveTarget: 'solver failure',
  interrupted: 'solver failure',
  // It did not get that far, or reports a failure itself.
  notSet: 'solver failure',
  loadError: 'solver failure',
  modelError: 'solver failure',
  presolveError: 'solver failure',
  solveError: 'solver failure',
  postsolveError: 'solver failure',
  unknown: 'solver failure',
  // A model without variables is never passed to it.
  empty: 'solver failure',
};

/** An answer without a solution. */
export function noSolution({ goal }: Question, status: 'time limit' | 'solver failure'): Solution {
  return { status, values: [], bound: goal === 'most' ? Infinity : -Infinity };
}

/**
 * Asks HiGHS one question, within the time left. The answer is checked: a solution must satisfy
 * every row, in whole numbers.
 *
 * Presolve is off. In version 1.15.1 it reported that a shed makes no engine when it makes three
 * (tests/planning/cases/shed-must-build.json), and these models solve as fast without it.
 */
export function askHighs(
  highs: Highs,
  model: Model,
  question: Question,
  clock: Clock,
  tell: (() => void) | undefined,
): Solution {
  const rows = [...model.rows, ...(question.where ?? [])];
  const known = noWorse(question);
  const tight = tightened({ bounds: model.bounds, rows: [...known, ...rows] });
  // The cost of the start tightens the model, but as a row it would slow the solver down.
  const asked = { ...tight, rows: tight.rows.slice(known.length) };
  if (asked.rows.some(isImpossible)) return { status: 'infeasible', values: [], bound: 0 };
  if (asked.bounds.length === 0) return { status: 'optimal', values: [], bound: 0 };
  if (clock.left() === 0) return noSolution(question, 'time limit');
  const [goal, factor] = lowestTerms(question.of, asked.bounds);
  const native = highs.createModel(dataOf(highs, asked, goal, question));
  try {
    const left = clock.left();
    native.options.set({
      output_flag: false,
      presolve: 'off',
      // The default gap of 1 in 10⁴ would accept a plan that is not the best.
      mip_rel_gap: 0,
      // On these models it takes longer than the rest of the solve.
      mip_heuristic_run_feasibility_jump: false,
      ...(left < Infinity && { time_limit: left }),
    });
    if (question.from) native.setSolution({ colValue: question.from });
    native.run(
      tell && {
        [highs.constants.callbackType.mipInterrupt]() {
          tell();
        },
      },
    );
    return solutionOf(highs, native, { ...model, rows }, question, factor);
  } finally {
    native.dispose();
  }
}

/** Whether HiGHS failed with this error, or crashed for good; undefined if the error is not a failure of HiGHS. */
export function failureOf(highs: Highs, error: unknown): 'failed' | 'crashed' | undefined {
  if (!(error instanceof Error)) return undefined;
  // Subclasses mean that we used it wrongly.
  if (error.constructor === highs.errors.HighsError) return 'failed';
  return error.name === 'RuntimeError' ? 'crashed' : undefined;
}

/** A row: the least is no more than the known solution gives. */
function noWorse({ goal, of, from }: Question): readonly Row[] {
  return goal === 'least' && from ? [upTo(of, sumOfTerms(of, from))] : [];
}

const isImpossible = ({ terms, min, max }: Row): boolean =>
  min > max || (terms.length === 0 && (min > 0 || max < 0));

function dataOf(
  highs: Highs,
  asked: Allowed,
  goal: readonly Term[],
  { goal: direction }: Question,
) {
  const rows = asked.rows.filter(({ terms }) => terms.length > 0);
  const numCols = asked.bounds.length;
  const cost = new Float64Array(numCols);
  for (const [variable, by] of goal) cost[variable] = by;
  const starts = [0];
  for (const { terms } of rows) starts.push((starts.at(-1) ?? 0) + terms.length);
  const terms = rows.flatMap((row) => row.terms);
  const { minimize, maximize } = highs.constants.objectiveSense;
  return {
    numCols,
    numRows: rows.length,
    sense: direction === 'most' ? maximize : minimize,
    colCost: cost,
    colLower: new Float64Array(numCols),
    colUpper: Float64Array.from(asked.bounds),
    rowLower: Float64Array.from(rows, ({ min }) => min),
    rowUpper: Float64Array.from(rows, ({ max }) => max),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols,
      starts,
      indices: terms.map(([variable]) => variable),
      values: terms.map(([, by]) => by),
    },
    integrality: new Int32Array(numCols).fill(highs.constants.variableType.integer),
  };
}

function solutionOf(
  highs: Highs,
  native: NativeModel,
  model: Allowed,
  question: Question,
  factor: number,
): Solution {
  const states = highs.constants.modelStatus;
  const names = Object.keys(states) as readonly ModelStatus[];
  const state = names.find((name) => states[name] === native.getModelStatus());
  const status = state ? ENDS[state] : 'solver failure';
  // There is a solution: the search was started from it.
  if (status === 'infeasible' && question.from) return noSolution(question, 'solver failure');
  if (status === 'infeasible') return { status, values: [], bound: 0 };
  const values = valuesOf(native, model);
  if (status === 'solver failure') return { ...noSolution(question, status), values };
  const bound = factor * Number(native.info.get('mip_dual_bound'));
  const best = sumOfTerms(question.of, values);
  // The sum is a whole multiple of the factor, so nothing lies between it and a closer bound.
  const isProven = values.length > 0 && Math.abs(best - bound) < factor * (1 - 1e-6);
  if (isProven) return { status: 'optimal', values, bound: best };
  return status === 'time limit'
    ? { status, values, bound }
    : { ...noSolution(question, 'solver failure'), values };
}

/** The solution of HiGHS in whole numbers; empty if it breaks a row. */
function valuesOf(native: NativeModel, { bounds, rows }: Allowed): readonly number[] {
  const values = Array.from(native.getSolution().colValue, (value) => Math.round(value) + 0);
  const holds =
    values.length === bounds.length &&
    values.every((value, i) => value >= 0 && value <= (bounds[i] ?? 0)) &&
    rows.every(({ terms, min, max }) => {
      const sum = sumOfTerms(terms, values);
      return sum >= min && sum <= max;
    });
  return holds ? values : [];
}
