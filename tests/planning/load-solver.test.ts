import type { Highs } from 'highs';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Model } from '../../src/planning/model.js';
import { highs, highsFailing, highsWith } from './fake-highs.js';

/** The module that loads the solver, afresh, with what each load of HiGHS comes to; the last one stays. */
async function loadingOf(...loads: readonly (() => Highs)[]) {
  let count = 0;
  vi.resetModules();
  vi.doMock('highs', () => ({
    default: async () => (loads[Math.min(count++, loads.length - 1)] as () => Highs)(),
  }));
  const module = await import('../../src/planning/load-solver.js');
  return { ...module, loaded: () => count };
}

afterEach(() => {
  vi.doUnmock('highs');
  vi.resetModules();
});

const refuse = () => {
  throw new Error('the request was refused');
};
const model = new Model();
model.variable(3);
const question = { goal: 'most', of: [[0, 1]] } as const;

describe('loading the solver', () => {
  it('happens once', async () => {
    const { loadSolver, loaded } = await loadingOf(() => highs);
    await Promise.all([loadSolver({}), loadSolver({})]);
    await loadSolver({});
    expect(loaded()).toBe(1);
  });

  it('is tried again at the next call where it failed', async () => {
    const { loadSolver, loaded, SolverNotLoaded } = await loadingOf(refuse, () => highs);
    const both = await Promise.allSettled([loadSolver({}), loadSolver({})]);
    for (const tried of both) {
      if (tried.status === 'fulfilled') throw new Error('it was loaded');
      expect(tried.reason).toBeInstanceOf(SolverNotLoaded);
      expect(tried.reason.message).toContain('could not be loaded: the request was refused.');
      expect(tried.reason.cause).toEqual(new Error('the request was refused'));
    }
    const solver = await loadSolver({});
    expect(solver.solve('most engines', model, question).values).toEqual([3]);
    expect(loaded()).toBe(2);
  });
});

describe('a solver that is given', () => {
  it('is used, and none is loaded', async () => {
    const { loadSolver, loaded } = await loadingOf(refuse);
    const solver = await loadSolver({ solver: highs });
    expect(solver.solve('most engines', model, question).values).toEqual([3]);
    expect(loaded()).toBe(0);
  });
});

describe('the solver', () => {
  it('says that it failed where HiGHS does, and lives on', async () => {
    const { loadSolver, loaded } = await loadingOf(() => highsFailing(() => true));
    const failed = { status: 'solver failure', values: [], bound: Infinity };
    expect((await loadSolver({})).solve('most engines', model, question)).toEqual(failed);
    await loadSolver({});
    expect(loaded()).toBe(1);
  });

  it('is loaded anew after a crash', async () => {
    const crash = () => {
      throw Object.assign(new Error('memory access out of bounds'), { name: 'RuntimeError' });
    };
    const { loadSolver, loaded } = await loadingOf(() => highsWith(() => ({ run: crash })));
    const { solve } = await loadSolver({});
    expect(solve('least cost', model, { ...question, goal: 'least' })).toEqual({
      status: 'solver failure',
      values: [],
      bound: -Infinity,
    });
    await loadSolver({});
    expect(loaded()).toBe(2);
  });

  it('lets out what is no failure of HiGHS', async () => {
    const { loadSolver } = await loadingOf(() => highs);
    // A variable that there is not.
    const { solve } = await loadSolver({});
    const wrong = { ...question, from: [1, 2] };
    expect(() => solve('most engines', model, wrong)).toThrow(highs.errors.HighsValidationError);
  });
});
