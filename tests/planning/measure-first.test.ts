import { readFileSync } from 'node:fs';
import { planBuilds } from 'crankwright/planning';
import { readShed, type Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { Clock } from '../../src/planning/clock.js';
import { loadSolver } from '../../src/planning/load-solver.js';
import { measuringFirst } from '../../src/planning/measure-first.js';
import { guardPlanOptions } from '../../src/planning/plan-request.js';
import type { Solver } from '../../src/planning/solver.js';
import { stocksOf } from '../../src/planning/stocks.js';
import { needsOf } from '../../src/shed/needs.js';
import { dispositionsOf } from '../../src/shed/triage/triage.js';

const untidy = readShed(readFileSync('examples/untidy-shed.json', 'utf8'));
const solver = await loadSolver({});
const whole = await planBuilds(untidy);

/** What the search gives with another solver, after what the plan of the shed has reached. */
function searched(shed: Shed, other: Partial<Solver>, margin = 15_240) {
  const request = guardPlanOptions(shed, {});
  const { open: stock, apart } = stocksOf(shed, request);
  return measuringFirst({
    ...{ request, stock, apart, margin },
    parts: dispositionsOf(shed),
    brief: { engine: shed.engine, needed: needsOf(shed) },
    solver: { ...solver, ...other },
    engines: 1,
    cost: 0,
    musts: 0,
    currency: undefined,
  });
}

describe('the search for what to measure first', () => {
  it('keeps what it found, wherever the solver fails', () => {
    const found: number[] = [];
    for (let failing = 0; failing < 40; failing++) {
      let asked = 0;
      const { measureFirst, mayBe, ended } = searched(untidy, {
        solve: (stage, model, question) =>
          asked++ === failing
            ? { status: 'solver failure', values: [], bound: 0 }
            : solver.solve(stage, model, question),
      });
      found.push(measureFirst.length);
      expect(whole.measureFirst.slice(0, measureFirst.length)).toMatchObject(
        measureFirst.map(({ mayBring: { kind }, parts }) => ({ mayBring: { kind }, parts })),
      );
      if (mayBe) expect(mayBe).toEqual(whole.mayBe);
      if (asked <= failing) break;
      // A margin that could not be widened further is no failure of what was found before.
      if (measureFirst.length < whole.measureFirst.length) expect(ended).toBe('solver failure');
    }
    // It never finds less for failing later, and in the end it finds all.
    expect(found).toEqual(found.toSorted((a, b) => a - b));
    expect(found[0]).toBe(0);
    expect(found.at(-1)).toBe(whole.measureFirst.length);
  });

  it('ends where the time is up, before it began or on the way', () => {
    expect(searched(untidy, { clock: new Clock(1e-9) })).toEqual({
      measureFirst: [],
      ended: 'time limit',
    });
    const noTime = { status: 'time limit', values: [], bound: 0 } as const;
    expect(searched(untidy, { solve: () => noTime })).toEqual({
      measureFirst: [],
      ended: 'time limit',
    });
  });

  it('has nothing to say of a shed in which every part is known, or no plan is possible', async () => {
    const { cores: _, ...shed } = untidy;
    const isKnown = ({ name }: { readonly name: string }) =>
      !['block G', 'crankshaft 2', 'crankshaft 3', 'rod shells 20'].includes(name);
    const known: Shed = {
      ...shed,
      blocks: shed.blocks?.filter(isKnown) ?? [],
      crankshafts: shed.crankshafts?.filter(isKnown) ?? [],
      shells: shed.shells?.filter(isKnown) ?? [],
    };
    expect(searched(known, {})).toEqual({ measureFirst: [] });
    const impossible = { status: 'infeasible', values: [], bound: 0 } as const;
    expect(searched(untidy, { solve: () => impossible })).toEqual({ measureFirst: [] });
  });

  it('keeps to a cost limit for each engine, and to a block that must be built', async () => {
    const price = { amount: 90, currency: 'EUR' };
    const shed: Shed = {
      ...untidy,
      machining: [{ work: 'crack test', shop: 'the grinder', price }],
    };
    const named = async (amount: number) => {
      const plan = await planBuilds(shed, { mostPerEngine: { ...price, amount }, atMost: 2 });
      return [plan.builds.length, plan.mayBe?.engines];
    };
    // A crankshaft is tested for 90: with 100 for each engine a second one may be built, with 80 there is not even one.
    expect(await named(100)).toEqual([1, 2]);
    expect(await named(80)).toEqual([0, undefined]);
    const must = await planBuilds(untidy, { mustBuild: ['block G'], atMost: 1 });
    expect(must.cannotBuild.map(({ name }) => name)).toEqual(['block G']);
  });
});
