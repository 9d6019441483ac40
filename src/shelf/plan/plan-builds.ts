import { guardLayout } from '../../judging/layout.js';
import type { Length } from '../../quantities/dimensions.js';
import { smallestOf } from '../../quantities/extremes.js';
import { shelfLayout } from '../layouts.js';
import type { Shelf } from '../shelf.js';
import { assemble } from './assemble.js';
import { buildOf } from './builds.js';
import type { Batch } from './draft.js';
import { FitTable } from './fit-table.js';
import { guardCounts } from './guard-counts.js';
import type { Kind } from './kinds.js';
import { lackingFor } from './lacking.js';
import { costOf, currencyOf } from './money.js';
import { leftOverOf, ordersOf, shoppingOf, sumOfCosts } from './orders.js';
import { guardPlanOptions, type PlanRequest } from './plan-request.js';
import type { Build, Plan, PlanOptions, Proof } from './plan-types.js';
import { search } from './search.js';
import { loadSolver } from './solver.js';
import { type Stock, stockOf } from './stock.js';

/**
 * The builds that a shelf makes: the most complete engines; of all ways to make
 * so many, the cheapest in machining and buying; of those, the one whose tightest
 * clearance stays furthest inside its limits. The plan is proven to be the best, or
 * says how far the proof came when the time was up.
 *
 * Oil, piston and valve-guide clearances count for the margin. End play does not: it
 * is set with washers, of which at most three are stacked (common practice).
 *
 * @param shelf - the parts, as `readShelf` gives them
 * @param options - what to heed: how many at most, whether to buy, what is kept back or must be built
 * @returns engines with their parts and clearances, orders, shopping, what is left, and what one more lacks
 * @throws {RebuildInputError} when the shelf is not one, an option is unknown or cannot be, or a name is
 * not on the shelf
 * @see Source: exact search by the HiGHS solver; checked against trying everything on small shelves
 * @example
 * ```ts
 * const plan = await planBuilds(readShelf({
 *   version: 1, shelf: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 * }));
 * plan.builds.length; // 0
 * plan.nextEngine?.lacks.length; // 8
 * ```
 */
export async function planBuilds(shelf: Shelf, options: PlanOptions = {}): Promise<Plan> {
  guardLayout('shelf', shelf, shelfLayout, 'readShelf');
  guardCounts(shelf);
  const request = guardPlanOptions(shelf, options);
  return planWith(shelf, request, await loadSolver(request));
}

function planWith(
  shelf: Shelf,
  request: PlanRequest,
  solver: Awaited<ReturnType<typeof loadSolver>>,
): Plan {
  const { engine } = shelf;
  const stock = stockOf(shelf, request);
  const most = Math.min(
    request.atMost ?? Infinity,
    countOf(stock.blocks),
    countOf(stock.crankshafts),
  );
  const { mostPerEngine } = request;
  const brief = {
    engine,
    stock,
    fits: new FitTable(engine, stock.shells),
    batches: batchesOf(stock, mostPerEngine === undefined ? undefined : most),
    ...(mostPerEngine !== undefined && { mostPerEngine }),
  };
  const { draft, values, least, proof } = search({ brief, solver, atMost: most });
  const currency = currencyOf(shelf);
  const builds = assemble({ ...brief, least }, draft, values).map((assembly) =>
    buildOf(assembly, engine, least, currency),
  );
  const margin = smallestMargin(builds);
  const wanted = builds.length + 1;
  const more = wanted <= (request.atMost ?? Infinity);
  const next =
    more && proof.kind === 'optimal'
      ? lackingFor(
          shelf,
          stock,
          batchesOf(stock, mostPerEngine === undefined ? undefined : wanted),
          wanted,
          mostPerEngine,
          solver,
        )
      : undefined;
  const built = builds.map(({ name }) => name);
  return {
    shelf: shelf.shelf,
    engine: engine.name,
    units: shelf.units,
    builds,
    cost: costOf(sumOfCosts(builds), currency),
    ...(margin !== undefined && { smallestMargin: margin }),
    proof: proven(proof, builds.length, margin, more && !next),
    orders: ordersOf(builds, currency),
    shopping: shoppingOf(shelf, builds, currency),
    leftOver: leftOverOf(shelf, request.reserved, builds),
    ...(next && { nextEngine: next }),
    cannotBuild: request.mustBuild.filter((name) => !built.includes(name)),
  };
}

/** What is proven of the plan as it was put together. */
function proven(
  proof: Proof,
  engines: number,
  margin: Length | undefined,
  nextNotTold: boolean,
): Proof {
  if (proof.kind === 'optimal') {
    return nextNotTold
      ? { kind: 'time limit', stage: 'next engine', found: engines, bound: engines }
      : proof;
  }
  // The margin that the plan came to may be wider than what was asked of it at last.
  return proof.stage === 'widest margin' ? { ...proof, found: margin ?? proof.found } : proof;
}

/** One batch for each interchange group; or, where every engine's cost counts by itself, one for each engine. */
function batchesOf(stock: Stock, engines: number | undefined): readonly Batch[] {
  const groups = new Set(
    Object.values(stock).flatMap((kinds: readonly Kind<unknown>[]) =>
      kinds.flatMap(({ interchange }) => interchange ?? []),
    ),
  );
  const named = groups.size === 0 ? [undefined] : [...groups];
  const each = named.flatMap((group) => Array.from({ length: engines ?? 1 }, () => group));
  return each.map((group, index) => ({
    index,
    ...(group !== undefined && { interchange: group }),
  }));
}

const countOf = (kinds: readonly Kind<unknown>[]): number =>
  kinds.reduce((sum, { count }) => sum + count, 0);

function smallestMargin(builds: readonly Build[]): Length | undefined {
  const findings = builds.flatMap(({ bearings, cylinders, guides }) => [
    ...bearings.map(({ finding }) => finding),
    ...cylinders.flatMap(({ finding }) => finding ?? []),
    ...(guides?.finding ? [guides.finding] : []),
  ]);
  return findings.length === 0 ? undefined : smallestOf(findings.map(({ margin }) => margin));
}
