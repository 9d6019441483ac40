import { readFileSync } from 'node:fs';
import { readShed, type Shed } from 'crankwright/shed';
import { loadSolver } from '../../src/planning/load-solver.js';
import { measuringFirst } from '../../src/planning/measure-first.js';
import { guardPlanOptions } from '../../src/planning/plan-request.js';
import type { Solver } from '../../src/planning/solver.js';
import { stocksOf } from '../../src/planning/stocks.js';
import { needsOf } from '../../src/shed/needs.js';
import { dispositionsOf } from '../../src/shed/triage/triage.js';

export const untidy = readShed(readFileSync('examples/untidy-shed.json', 'utf8'));
export const solver = await loadSolver({});

/** What the search gives with another solver, after what the plan of the shed has reached. */
export function searched(shed: Shed, other: Partial<Solver>, margin = 15_240) {
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
