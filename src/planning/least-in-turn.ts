import type { Draft } from './draft.js';
import { exactly, type Row, sumOfTerms, type Term } from './model.js';
import type { PlanStage } from './proof-types.js';
import type { Solution, Solver } from './solver.js';

/** Sums that are each to be as small as those before it allow. */
export interface InTurn {
  readonly solver: Solver;
  readonly stage: PlanStage;
  readonly draft: Draft;
  readonly sums: readonly (readonly Term[])[];
  readonly where: readonly Row[];
  /** What the sums are at best, as far as it is known: it holds for each as long as all before it are at their best. */
  readonly atBest?: readonly number[];
}

/** How far it came. */
export interface Least {
  /** That of the last sum that was sought. */
  readonly status: Solution['status'];
  /** The last values that were found; empty if none were. */
  readonly values: readonly number[];
  /** What the sums come to, as far as they were found. */
  readonly found: readonly number[];
  /** The rows, with one for each sum that was found. */
  readonly rows: readonly Row[];
}

/** Makes some sums the least, one after the other. */
export function leastInTurn({ solver, stage, draft, sums, where, atBest = [] }: InTurn): Least {
  const rows = [...where];
  const found: number[] = [];
  let values: readonly number[] = [];
  for (const [i, of] of sums.entries()) {
    const isAtBest = found.every((sum, j) => sum === atBest[j]);
    const min = isAtBest ? (atBest[i] ?? -Infinity) : -Infinity;
    const bound = min > -Infinity && of.length > 0 ? [{ terms: of, min, max: Infinity }] : [];
    const from = values.length > 0 ? { from: values } : {};
    const question = { goal: 'least', of, where: [...rows, ...bound], ...from } as const;
    const solved = solver.solve(stage, draft.model, question);
    if (solved.status !== 'optimal') return { status: solved.status, values, found, rows };
    values = solved.values;
    const sum = sumOfTerms(of, values);
    found.push(sum);
    rows.push(exactly(of, sum));
  }
  return { status: 'optimal', values, found, rows };
}
