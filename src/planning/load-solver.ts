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
      `The solver for plans could not be loaded: ${why}. In Node, reinstall the package. In a browser, give planBuilds a solver. Then try again.`,
      { cause },
    );
    this.name = 'SolverNotLoaded';
  }
}

let loading: Promise<Highs> | undefined;

/** The solver's package. Bundlers do not follow a name in a variable, and HiGHS imports modules of Node. */
const HIGHS = 'highs';
const importHighs = (): Promise<typeof import('highs')> =>
  import(/* webpackIgnore: true */ /* @vite-ignore */ HIGHS);

/** Loads HiGHS, which is large, once, when it is first needed. After a failure the next call tries again. */
async function loadHighs(): Promise<Highs> {
  const load = loading ?? importHighs().then(({ default: start }) => start());
  loading = load;
  try {
    return await load;
  } catch (cause) {
    if (loading === load) loading = undefined;
    throw new SolverNotLoaded(cause);
  }
}

/** Loads the solver and starts its clock. */
export async function loadSolver(options: SolverOptions): Promise<Solver> {
  const { timeLimit, onProgress, solver: highs = await loadHighs() } = options;
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
