import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { assemblyCost } from '../../src/planning/assembly.js';
import { bestBuilds } from '../../src/planning/best-builds.js';
import { FitTable } from '../../src/planning/fit-table.js';
import { loadSolver } from '../../src/planning/load-solver.js';
import type { Unproven } from '../../src/planning/proof-types.js';
import type { Solution, Solver } from '../../src/planning/solver.js';
import { stockOf } from '../../src/planning/stock.js';
import { needsOf } from '../../src/shed/needs.js';
import { needing } from '../support/needing.js';
import {
  block,
  crankshaft,
  eur,
  oversize,
  pistons,
  rings,
  rod,
  shells,
  single,
  withEngine,
} from './single-shed.js';

const solver = await loadSolver({});

/** The best builds of the shed with changes, and how often it was asked how many there can be. */
function built(changes: Partial<Shed>, mostPerEngine: number, second?: Solution) {
  const shed = { ...single, ...changes };
  const stock = stockOf(shed, { buying: true, reserved: [], mustBuild: [] });
  let asked = 0;
  const asking: Solver = {
    ...solver,
    solve(stage, model, question) {
      if (stage === 'most engines' && ++asked > 1 && second) return second;
      return solver.solve(stage, model, question);
    },
  };
  const brief = {
    engine: shed.engine,
    needed: needsOf(shed),
    stock,
    fits: new FitTable(shed.engine, stock.shells),
    mostPerEngine,
  };
  const found = bestBuilds({ brief, solver: asking, atMost: 3 });
  return { ...found, costs: found.assemblies.map(assemblyCost), asked };
}

describe('bestBuilds, with a limit for each engine', () => {
  const three = ['1', '2', '3'];
  const toBuy = [30, 10, 20].map((amount) => ({ name: `N${amount}`, price: eur(amount) }));
  const dear: Partial<Shed> = {
    ...withEngine({ alsoNeeds: needing('head') }),
    blocks: three.map((name) => block(`block ${name}`, 30003)),
    crankshafts: three.map((name) => crankshaft(`crankshaft ${name}`, 16248)),
    rods: [],
    pistonSets: three.map((name) => pistons(`piston ${name}`, 29970)),
    ringSets: [rings(3)],
    shells: [shells('shells', 0, 618.5, 3)],
    toBuy: {
      rods: toBuy.map(({ name, price }) => ({ ...rod(`rod ${name}`, 17505), price })),
      heads: toBuy.map(({ name, price }) => ({ name: `head ${name}`, price })),
    },
  };

  it('shares out what is dear evenly, and asks no more where that will do', () => {
    const { costs, asked, proof } = built(dear, 40_000);
    // The dearest rod with the cheapest head, and the other way round.
    expect(costs).toEqual([40_000, 40_000, 40_000]);
    expect([asked, proof]).toEqual([1, { outcome: 'optimal' }]);
  });

  it('seeks engines one by one where it will not do', () => {
    // Three cost 120 together: they cannot all cost less than 40.
    const { costs, asked } = built(dear, 39_999);
    expect([costs.length, asked]).toEqual([2, 1]);
    const apart = built(oversize, 34_999);
    expect([apart.costs, apart.asked]).toEqual([[0], 2]);
  });

  it('keeps what is within the limit where the search one by one finds less', () => {
    for (const outcome of ['time limit', 'solver failure'] as const) {
      const stopped = (bound: number): Solution => ({ status: outcome, values: [], bound });
      const proof = (rest: Omit<Unproven, 'outcome'>): Unproven => ({ outcome, ...rest });
      const some = built(oversize, 34_999, stopped(Infinity));
      expect(some.costs).toEqual([0]);
      expect(some.proof).toEqual(proof({ stage: 'most engines', found: 1, bound: 2 }));
      // Where it proved that there can be no more, it is their cost that is not proven.
      const all = built(oversize, 34_999, stopped(1.5));
      expect(all.costs).toEqual([0]);
      expect(all.proof).toEqual(proof({ stage: 'least cost', found: 0, bound: 0 }));
    }
  });
});
