import { guardLayout, NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import { guardKind } from '../reading/index.js';
import type { Shed } from '../shed/index.js';
import { accuracyOfShed, dispositionsOf, howShedWasRead, needsOf } from '../shed/internal.js';
import { shedLayout } from '../shed/layouts.js';
import { engineLimit, mostEngines } from './affordable.js';
import { againIn, readAgainIn } from './again-in.js';
import { bestBuilds } from './best-builds.js';
import { buildOf } from './builds.js';
import { judgedOf } from './clearances.js';
import { completeOf } from './complete.js';
import { FitTable } from './fit-table.js';
import { bandFactor, bandsFor, standardOf } from './guard-bands.js';
import { guardCounts } from './guard-counts.js';
import { howItHolds } from './how-it-holds.js';
import { lackingFor } from './lacking.js';
import { loadSolver } from './load-solver.js';
import { measuringFirst, type Open } from './measure-first.js';
import { costOf, currencyOf } from './money.js';
import { leftOverOf, ordersOf, shoppingOf, sumOfCosts } from './orders.js';
import type { PlanOptions } from './plan-options.js';
import { guardPlanOptions, type PlanRequest } from './plan-request.js';
import type { Build, Plan } from './plan-types.js';
import type { Preference } from './preferences.js';
import type { Proof, Unproven } from './proof-types.js';
import type { Solver } from './solver.js';
import { stocksOf } from './stocks.js';
import { toMakeFor } from './to-make.js';
import { waiting } from './waiting.js';
import { whyNotBuilt } from './why-not-built.js';

/**
 * Finds the best builds from a shed: the most complete engines; among those plans, the least cost of
 * machining and purchases; among those, the plan whose tightest clearance stays furthest inside its
 * limits; and among those, the one that an owner wants, as `compared` tells. The plan is proven to be the best, or says
 * how far the proof came before the time was up or the solver failed.
 *
 * The first call loads the solver. If that fails, it throws `SolverNotLoaded`, and the next call
 * tries again.
 *
 * Oil, piston and valve-guide clearances count for the margin. End play does not: washers set it, at
 * most three in a stack (common practice). What was not measured is not judged.
 *
 * Where the shed describes its instruments, the plan tells which clearances to measure once more, and with `holdsWith`
 * every clearance holds with that chance or more, as far as the readings tell.
 *
 * @param shed - the parts, as `readShed` gives them
 * @param options - the most engines, whether to buy, which parts to keep back or to build, how sure every clearance must be, and the time limit
 * @returns engines with their parts and clearances, orders, purchases, parts left over, and what one more engine needs
 * @throws {RebuildInputError} when the shed is not what `readShed` gives, an option is unknown or impossible, a
 * name is not in the shed, or a chance is asked for and the shed does not describe its instruments
 * @see Source: exact search by the HiGHS solver; checked against trying everything on small sheds
 * @example
 * ```ts
 * const plan = await planBuilds(readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
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
export async function planBuilds(shed: Shed, options: PlanOptions = {}): Promise<Plan> {
  guardKind('shed', shed);
  guardLayout('shed', shed, shedLayout, 'readShed');
  guardCounts(shed);
  const request = guardPlanOptions(shed, options);
  return planWith(shed, request, await loadSolver(request));
}

function planWith(shed: Shed, request: PlanRequest, solver: Solver): Plan {
  const { engine } = shed;
  const { known: stock, open: openStock, apart } = stocksOf(shed, request);
  const needed = needsOf(shed);
  const limit = engineLimit(stock, request, engine, needed);
  const { holdsWith } = request;
  const accuracy = accuracyOfShed(shed);
  const bandOf = holdsWith === undefined ? undefined : bandsFor(accuracy, holdsWith);
  const brief = {
    engine,
    needed,
    stock,
    fits: new FitTable(engine, stock.shells, bandOf),
    ...limit,
  };
  const { assemblies, proof, compared } = bestBuilds({
    ...{ brief, solver },
    atMost: mostEngines(stock, request),
  });
  const currency = currencyOf(shed);
  const judged = { accuracy, fits: brief.fits };
  const parts = dispositionsOf(shed);
  const found = assemblies.map((each) => buildOf(each, shed, judged, currency, parts));
  const margin = smallestMargin(found, holdsWith);
  const taken = new Set(found.flatMap((build) => build.parts.map(({ name }) => name)));
  const leftOver = leftOverOf(shed, parts, request.reserved, found);
  const engines = found.length + 1;
  const next =
    proof.outcome === 'optimal' && engines <= (request.atMost ?? Infinity)
      ? lackingFor({ shed, stock, engines, solver, ...limit, ...(bandOf && { bandOf }) })
      : undefined;
  const open: Open =
    proof.outcome === 'optimal'
      ? measuringFirst({
          ...{ request, solver, currency, apart, parts },
          stock: openStock,
          brief: { engine, needed },
          ...(bandOf && { bandOf }),
          engines: found.length,
          cost: sumOfCosts(found),
          ...(margin !== undefined && { margin: Math.round(margin / NANOMETRE) }),
          musts: found.filter(({ name }) => request.mustBuild.includes(name)).length,
        })
      : { measureFirst: [] };
  const builds = waiting(found, open.instead);
  return {
    shed: shed.shed,
    engine,
    units: shed.units,
    builds,
    cost: costOf(sumOfCosts(builds), currency),
    ...(margin !== undefined && { smallestMargin: margin }),
    ...(holdsWith !== undefined && { holdsWith }),
    ...howItHolds(shed, builds, leftOver, accuracy),
    measureAgain: againIn(builds, parts),
    readAgain: readAgainIn(parts),
    ...(open.mayBe && { mayBe: open.mayBe }),
    measureFirst: open.measureFirst,
    howRead: howShedWasRead(shed, taken),
    compared: [...provenBefore(proof, builds.length), ...compared],
    proof: proven(proof, builds.length, margin, {
      ...(typeof next === 'string' && { 'next engine': next }),
      ...(open.ended && { 'measure first': open.ended }),
    }),
    orders: ordersOf(builds, currency),
    shopping: shoppingOf(shed, builds, currency),
    toMake: assemblies.flatMap((each, i) => toMakeFor(each, builds[i] as Build, currency)),
    complete: completeOf(shed),
    leftOver,
    ...(typeof next === 'object' && { nextEngine: next }),
    cannotBuild: whyNotBuilt({
      ...{ shed, request, builds, parts, proof, stock, solver },
      ...limit,
      ...(bandOf && { bandOf }),
    }),
  };
}

/** What a plan is compared by before equal plans, as far as it is proven. */
function provenBefore(proof: Proof, engines: number): readonly Preference[] {
  const all = ['engines', 'cost', 'tightest margin'] as const;
  if (proof.outcome === 'optimal') return engines === 0 ? all.slice(0, 1) : all;
  const stages = ['most engines', 'least cost', 'widest margin', 'equal plans'] as const;
  return all.slice(0, stages.indexOf(proof.stage as (typeof stages)[number]));
}

/** The proof of the final plan. */
function proven(
  proof: Proof,
  engines: number,
  margin: Length | undefined,
  ended: { readonly [S in 'next engine' | 'measure first']?: Unproven['outcome'] },
): Proof {
  if (proof.outcome === 'optimal') {
    for (const stage of ['next engine', 'measure first'] as const) {
      const outcome = ended[stage];
      if (outcome) return { outcome, stage, found: engines, bound: engines };
    }
    return proof;
  }
  if (proof.stage !== 'widest margin' || margin === undefined) return proof;
  // The plan may keep a wider margin than the last one it was asked for.
  return { ...proof, found: margin, bound: Math.max(margin, proof.bound) };
}

/** The smallest margin of any clearance but the end plays, after the guard band. */
function smallestMargin(
  builds: readonly Build[],
  holdsWith: number | undefined,
): Length | undefined {
  const factor = holdsWith === undefined ? 0 : bandFactor(holdsWith);
  const margins = builds
    .flatMap(judgedOf)
    .filter(({ of }) => of !== 'end play')
    .map(({ finding }) => (finding.margin - factor * standardOf(finding)) as Length);
  return margins.length === 0 ? undefined : smallestOf(margins);
}
