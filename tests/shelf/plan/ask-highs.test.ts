import { describe, expect, it } from 'vitest';
import { askHighs } from '../../../src/shelf/plan/ask-highs.js';
import { Clock } from '../../../src/shelf/plan/clock.js';
import { Model } from '../../../src/shelf/plan/model.js';
import type { Question } from '../../../src/shelf/plan/solver.js';
import { highs, highsWith } from './fake-highs.js';

/** At most three of one thing: the most is 3. */
const model = new Model();
model.rows.push({ terms: [[model.variable(9), 1]], min: 0, max: 3 });
const most: Question = { goal: 'most', of: [[0, 1]] };

/** What is made of a run that ends in a state, with what it found and what it says none can better. */
function ended(state: number, { found = 3, bound = 3, question = most } = {}) {
  const changed = highsWith((native) => ({
    getModelStatus: () => state as never,
    getSolution: () => ({ ...native.getSolution(), colValue: Float64Array.of(found) }),
    info: { ...native.info, get: () => bound } as never,
  }));
  return askHighs(changed, model, question, new Clock(), undefined);
}

const { optimal, infeasible, unboundedOrInfeasible, timeLimit, ...others } =
  highs.constants.modelStatus;
const failed = { status: 'solver failure', bound: Infinity };

describe('what HiGHS says', () => {
  it('is an answer where it is proven', () => {
    expect(askHighs(highs, model, most, new Clock(), undefined)).toEqual({
      status: 'optimal',
      values: [3],
      bound: 3,
    });
    expect(ended(optimal)).toEqual({ status: 'optimal', values: [3], bound: 3 });
    expect(ended(infeasible)).toMatchObject({ status: 'infeasible', values: [] });
    expect(ended(unboundedOrInfeasible)).toMatchObject({ status: 'infeasible', values: [] });
  });

  it('is what it found by then where the time was up', () => {
    expect(ended(timeLimit, { found: 2, bound: 3.4 })).toEqual({
      status: 'time limit',
      values: [2],
      bound: 3.4,
    });
    // Nothing lies between 3 and 3.4: that is proven, whatever it ran out of.
    expect(ended(timeLimit, { bound: 3.4 })).toMatchObject({ status: 'optimal', bound: 3 });
    expect(ended(timeLimit, { found: 7, bound: 9 })).toMatchObject({ values: [], bound: 9 });
  });

  it('is not asked for without time', () => {
    const over = new Clock(0);
    const least = { ...most, goal: 'least' } as const;
    const nothing = { status: 'time limit', values: [] };
    expect(askHighs(highs, model, most, over, undefined)).toEqual({ ...nothing, bound: Infinity });
    expect(askHighs(highs, model, least, over, undefined)).toEqual({
      ...nothing,
      bound: -Infinity,
    });
  });

  it('is not believed where it does not hold', () => {
    // Called the best though better is thought possible; breaking a row; breaking a bound.
    expect(ended(optimal, { found: 2 })).toEqual({ ...failed, values: [2] });
    expect(ended(optimal, { found: 4, bound: 4 })).toEqual({ ...failed, values: [] });
    expect(ended(optimal, { found: -1, bound: -1 })).toEqual({ ...failed, values: [] });
    expect(ended(optimal, { bound: NaN })).toEqual({ ...failed, values: [3] });
    // No solution, though it was given one.
    const question = { ...most, from: [1] };
    expect(ended(infeasible, { question })).toEqual({ ...failed, values: [] });
  });

  // The memory limit of HiGHS is 18, which its own list in JavaScript does not have.
  const states = [...Object.entries(others), ['a memory limit', 18], ['a state to come', 99]];
  it.each(states as [string, number][])('is no answer where it ends in %s', (_, state) => {
    expect(ended(state, { found: 2 })).toEqual({ ...failed, values: [2] });
  });

  it('is what it says of a model where nothing is left to ask', () => {
    const where = [{ terms: [], min: 1, max: 1 }];
    const asked = askHighs(highs, model, { ...most, where }, new Clock(), undefined);
    expect(asked.status).toBe('infeasible');
    const empty = askHighs(highs, new Model(), { goal: 'most', of: [] }, new Clock(), undefined);
    expect(empty).toEqual({ status: 'optimal', values: [], bound: 0 });
  });
});
