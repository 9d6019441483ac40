import type { Highs } from 'highs';
import { askHighs, failureOf, noSolution } from './ask-highs.js';
import { Clock } from './clock.js';
import type { Solver, SolverOptions } from './solver.js';

/** Thrown when the solver cannot be loaded. The next plan tries again. */
export class SolverNotLoaded extends Error {
  /**
   * Makes a message with the remedies.
   *
   * @param cause - why it could not be loaded
   */
  constructor(cause: unknown) {
    const why = cause instanceof Error ? cause.message : String(cause);
    super(
      `The solver for plans could not be loaded: ${why}. In Node, reinstall the package. In a browser, make sure that highs.wasm is served beside the bundle. Then try again.`,
      { cause },
    );
    this.name = 'SolverNotLoaded';
  }
}

let loading: Promise<Highs> | undefined;

/** Loads HiGHS, which is large, once, when it is first needed. After a failure the next call tries again. */
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
        // A crashed solver cannot be used again.
        if (failure === 'crashed') loading = undefined;
        return noSolution(question, 'solver failure');
      }
    },
  };
}
