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
      `The solver for plans could not be loaded: ${why}. In Node, install the package again. In a browser, give planBuilds a solver. Then try again.`,
      { cause },
    );
    this.name = 'SolverNotLoaded';
  }
}

let loading: Promise<Highs> | undefined;

/** Its name, for the next line to read: no bundler follows it, and none meets what HiGHS wants of Node. */
const HIGHS = 'highs';
const importHighs = (): Promise<typeof import('highs')> =>
  import(/* webpackIgnore: true */ /* @vite-ignore */ HIGHS);

/** Loads HiGHS, which is large, only now that it is needed, and only once; a load that failed is forgotten. */
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
        // What crashed is of no more use to anybody.
        if (failure === 'crashed') loading = undefined;
        return nothingOf(question, 'solver failure');
      }
    },
  };
}
