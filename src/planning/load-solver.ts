import type { Highs } from 'highs';
import { askHighs, failureOf, nothingOf } from './ask-highs.js';
import { Clock } from './clock.js';
import type { Solver, SolverOptions } from './solver.js';

/** The solver that proves plans could not be loaded. The next plan tries again. */
export class SolverNotLoaded extends Error {
  /**
   * Says what to do about it.
   *
   * @param cause - why it could not be loaded
   */
  constructor(cause: unknown) {
    const why = cause instanceof Error ? cause.message : String(cause);
    super(
      `The solver for plans could not be loaded: ${why}. In Node, install the package again. In a browser, see that highs.wasm is served beside the bundle. Then try again.`,
      { cause },
    );
    this.name = 'SolverNotLoaded';
  }
}

let loading: Promise<Highs> | undefined;

/** Loads HiGHS, which is large, only now that it is needed, and only once; a load that failed is forgotten. */
async function loadHighs(): Promise<Highs> {
  const load = loading ?? import('highs').then(({ default: start }) => start());
  loading = load;
  try {
    return await load;
  } catch (cause) {
    if (loading === load) loading = undefined;
    throw new SolverNotLoaded(cause);
  }
}

/** Loads the solver and starts its clock. */
export async function loadSolver({ timeLimit, onProgress }: SolverOptions): Promise<Solver> {
  const highs = await loadHighs();
  const clock = new Clock(timeLimit);
  return {
    clock,
    solve(stage, model, question) {
      const tell = onProgress && (() => onProgress({ stage, elapsed: clock.elapsed() }));
      try {
        return askHighs(highs, model, question, clock, tell);
      } catch (error) {
        const failure = failureOf(highs, error);
        if (failure === undefined) throw error;
        // What crashed is of no more use to anybody.
        if (failure === 'crashed') loading = undefined;
        return nothingOf(question, 'solver failure');
      }
    },
  };
}
