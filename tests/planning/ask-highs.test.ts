import type { Highs, ModelData } from 'highs';
import { describe, expect, it } from 'vitest';
import { askHighs } from '../../src/planning/ask-highs.js';
import { Clock } from '../../src/planning/clock.js';
import { Model, type Term } from '../../src/planning/model.js';
import type { Question } from '../../src/planning/solver.js';
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

  it('is the very least, though others are nearly as little', () => {
    // Three of ten things that weigh 60 at least, for a million and a little each: by trying all.
    const weights = [11, 13, 17, 19, 23, 29, 7, 5, 3, 2];
    const costs = [41, 53, 67, 71, 89, 97, 31, 23, 13, 7].map((little) => 1_000_000 + little);
    const some = new Model();
    const things = weights.map(() => some.variable(1));
    const sumFor = (values: readonly number[]): readonly Term[] =>
      things.map((thing, i) => [thing, values[i] ?? 0]);
    some.rows.push(
      { terms: sumFor(things.map(() => 1)), min: 3, max: 3 },
      { terms: sumFor(weights), min: 60, max: Infinity },
    );
    const threes = things.flatMap((a) =>
      things.slice(a + 1).flatMap((b) => things.slice(b + 1).map((c) => [a, b, c])),
    );
    const total = (of: readonly number[], three: readonly number[]) =>
      three.reduce((sum, i) => sum + (of[i] ?? 0), 0);
    const enough = threes.filter((three) => total(weights, three) >= 60);
    const least = Math.min(...enough.map((three) => total(costs, three)));
    // It starts from the dearest three that weigh enough.
    const dear = [3, 4, 5];
    const from = things.map((thing) => (dear.includes(thing) ? 1 : 0));
    const question = { goal: 'least', of: sumFor(costs), from } as const;
    const said = askHighs(highs, some, question, new Clock(), undefined);
    expect(said).toMatchObject({ status: 'optimal', bound: least });
    expect(total(costs, dear)).toBeGreaterThan(least);
  });

  it('is not asked of what is dearer than what is known', () => {
    // One of three things, for 999 999 999.999, 30 or 20, in thousandths; the second is at hand.
    const some = new Model();
    const costs = [999_999_999_999, 30_000, 20_000];
    const of = costs.map((cost): Term => [some.variable(1), cost]);
    some.rows.push({ terms: of.map(([thing]): Term => [thing, 1]), min: 1, max: 1 });
    const seen: unknown[] = [];
    const spying: Highs = {
      ...highs,
      createModel: (data: ModelData) => {
        seen.push([...data.colCost], [...data.colUpper], [...data.matrix.indices]);
        return highs.createModel(data);
      },
    } as Highs;
    const question = { goal: 'least', of, from: [0, 1, 0] } as const;
    const said = askHighs(spying, some, question, new Clock(), undefined);
    expect(said).toEqual({ status: 'optimal', values: [0, 0, 1], bound: 20_000 });
    // In lowest terms, the first thing out of the question.
    expect(seen).toEqual([
      [0, 3, 2],
      [0, 1, 1],
      [1, 2],
    ]);
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
