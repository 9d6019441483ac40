import { describe, expect, it } from 'vitest';
import { generatedShed } from '../../bench/shed.js';
import { bestBuilds } from '../../src/planning/best-builds.js';
import { Clock, TimeUp } from '../../src/planning/clock.js';
import { FitTable } from '../../src/planning/fit-table.js';
import { lackingFor } from '../../src/planning/lacking.js';
import type { NextEngine } from '../../src/planning/left-over-types.js';
import { loadSolver } from '../../src/planning/load-solver.js';
import { sumOfTerms } from '../../src/planning/model.js';
import type { PlanStage, Unproven } from '../../src/planning/proof-types.js';
import { search } from '../../src/planning/search.js';
import type { Solver } from '../../src/planning/solver.js';
import { stockOf } from '../../src/planning/stock.js';
import { needsOf } from '../../src/shed/needs.js';

const shed = generatedShed(5, 1);
const stock = stockOf(shed, { buying: true, reserved: [], mustBuild: [] });
const brief = {
  engine: shed.engine,
  needed: needsOf(shed),
  stock,
  fits: new FitTable(shed.engine, stock.shells),
  batches: [{ index: 0 }],
};
const solver = await loadSolver({});

/** The solver, which is stopped at some question of a stage, by now with a solution or without. */
function stoppedAt(
  stage: PlanStage,
  from: number,
  bound: number,
  {
    kind = 'time limit',
    values = [],
  }: { kind?: Unproven['outcome']; values?: readonly number[] } = {},
): Solver {
  let asked = 0;
  return {
    ...solver,
    solve: (at, model, question) =>
      at === stage && asked++ >= from
        ? { status: kind, values, bound }
        : solver.solve(at, model, question),
  };
}

const best = search({ brief, solver, atMost: 5 });
const engines = sumOfTerms(best.draft.engines, best.values);
const cost = sumOfTerms(best.draft.cost, best.values);

describe('search', () => {
  it('builds nothing where the time is up before anything is found, and promises no more than there could be', () => {
    const found = search({ brief, solver: stoppedAt('most engines', 0, Infinity), atMost: 5 });
    expect(sumOfTerms(found.draft.engines, found.values)).toBe(0);
    expect(found.proof).toEqual({
      outcome: 'time limit',
      stage: 'most engines',
      found: 0,
      bound: 5,
    });
  });

  it('keeps the engines that were found, and says how many more there could be', () => {
    const { values } = best;
    for (const [bound, said] of [
      [engines + 0.9, engines],
      [engines + 1.3, engines + 1],
      [40, 5],
      [Infinity, 5],
    ] as const) {
      for (const kind of ['time limit', 'solver failure'] as const) {
        const stopped = stoppedAt('most engines', 0, bound, { kind, values });
        const found = search({ brief, solver: stopped, atMost: 5 });
        expect(sumOfTerms(found.draft.engines, found.values)).toBe(engines);
        const proof = { outcome: kind, stage: 'most engines', found: engines, bound: said };
        expect(found.proof).toEqual(proof);
      }
    }
  });

  it('does not begin where no time is left', () => {
    const clock = new Clock(0);
    const late = { ...brief, clock };
    expect(() => search({ brief: late, solver: { ...solver, clock }, atMost: 5 })).toThrow(TimeUp);
    const found = bestBuilds({ brief, solver: { ...solver, clock }, atMost: 5 });
    expect(found.assemblies).toEqual([]);
    expect(found.proof).toEqual({
      outcome: 'time limit',
      stage: 'most engines',
      found: 0,
      bound: 5,
    });
  });

  it('keeps what it has where the time is up for the cost: as many engines, at some cost', () => {
    const found = search({ brief, solver: stoppedAt('least cost', 0, 7000), atMost: 5 });
    expect(sumOfTerms(found.draft.engines, found.values)).toBe(engines);
    const spent = sumOfTerms(found.draft.cost, found.values);
    expect(spent).toBeGreaterThanOrEqual(cost);
    expect(found.proof).toEqual({
      outcome: 'time limit',
      stage: 'least cost',
      found: spent / 1000,
      bound: 7,
    });
    const unknown = search({ brief, solver: stoppedAt('least cost', 0, -Infinity), atMost: 5 });
    // Nothing is known but that nothing costs less than nothing.
    expect(unknown.proof).toMatchObject({ found: spent / 1000, bound: 0 });
  });

  it('keeps the margin it has where the time is up for a wider one', () => {
    for (const from of [0, 2]) {
      const found = search({ brief, solver: stoppedAt('widest margin', from, 0), atMost: 5 });
      expect(sumOfTerms(found.draft.engines, found.values)).toBe(engines);
      expect(sumOfTerms(found.draft.cost, found.values)).toBe(cost);
      if (found.proof.outcome !== 'time limit') throw new Error('it was proven');
      expect(found.proof.found).toBeLessThanOrEqual(found.proof.bound);
      // Never less than the best there is: nothing was promised away.
      expect(found.proof.bound).toBeGreaterThanOrEqual(best.least * 1e-9);
    }
  });

  it('keeps the plan where the time is up while a wider margin is put together', () => {
    let isUp = false;
    const check = () => {
      if (isUp) throw new TimeUp();
    };
    const clock = Object.assign(new Clock(), { check });
    const asking: Solver = {
      ...solver,
      solve(stage, model, question) {
        if (stage === 'least cost') isUp = true;
        return solver.solve(stage, model, question);
      },
    };
    const found = search({ brief: { ...brief, clock }, solver: asking, atMost: 5 });
    expect(sumOfTerms(found.draft.engines, found.values)).toBe(engines);
    expect(sumOfTerms(found.draft.cost, found.values)).toBe(cost);
    expect(found.proof).toMatchObject({ outcome: 'time limit', stage: 'widest margin' });
  });
});

describe('lackingFor', () => {
  it('says that the time was up, or that the solver failed', () => {
    const wanted = { shed, stock, engines: engines + 1 };
    expect(lackingFor({ ...wanted, solver: { ...solver, clock: new Clock(0) } })).toBe(
      'time limit',
    );
    for (const kind of ['time limit', 'solver failure'] as const) {
      const stopped = stoppedAt('next engine', 0, -Infinity, { kind });
      expect(lackingFor({ ...wanted, solver: stopped })).toBe(kind);
    }
  });

  it('says what is lacking though the time is up for which parts would be the best', () => {
    const whole = lackingFor({ shed, stock, engines: engines + 1, solver });
    const some = lackingFor({
      ...{ shed, stock, engines: engines + 1 },
      solver: stoppedAt('next engine', 1, -Infinity),
    });
    if (typeof whole === 'string' || typeof some === 'string') throw new Error('it was not told');
    const count = ({ lacks }: NextEngine) => lacks.reduce((sum, part) => sum + part.count, 0);
    expect(count(some)).toBe(count(whole));
  });
});
