import { NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { TriagedPart } from '../shed/index.js';
import { dispositionsOf, type TakenApart } from '../shed/internal.js';
import { engineLimit, mostEngines } from './affordable.js';
import { batchesOf } from './batches.js';
import type { Brief } from './brief.js';
import { jobsOf } from './builds.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import { kindsIn, kindsWhere } from './kinds-in.js';
import { toBuyWith } from './lacking.js';
import { clearanceMargins } from './margins.js';
import type { MayBe, MayBring, MeasureFirst } from './measure-types.js';
import { exactly, type Row, sumOfTerms, upTo } from './model.js';
import { costOf } from './money.js';
import { type Ended, oneByOneIfNeeded } from './one-by-one.js';
import { fewestUnknown, type OpenPart, type OpenPlan, signOfMark } from './open-search.js';
import { partToMeasure } from './part-to-measure.js';
import type { PlanRequest } from './plan-request.js';
import type { Solver } from './solver.js';
import type { Stock } from './stock.js';
import type { Instead } from './waiting.js';

/** What a proven plan has reached, and what it was made with. */
export interface Reached {
  readonly request: PlanRequest;
  /** The parts that are known to be good, and those that may turn out so. */
  readonly stock: Stock;
  /** The shed with its cores taken apart. */
  readonly apart: TakenApart;
  /** The triage of every part of the shed. */
  readonly parts: readonly TriagedPart[];
  readonly brief: Pick<Brief, 'engine' | 'needed'>;
  readonly bandOf?: FitTable['bandOf'];
  readonly solver: Solver;
  readonly engines: number;
  /** [thousandths] */
  readonly cost: number;
  /** The smallest margin; absent if no clearance is judged [nm]. */
  readonly margin?: number;
  /** How many of the blocks that must be built are. */
  readonly musts: number;
  readonly currency: string | undefined;
}

/** What there may be, and what to measure first. */
export interface Open {
  readonly mayBe?: MayBe;
  readonly measureFirst: readonly MeasureFirst[];
  /** The better plans that readings taken again may bring. */
  readonly instead?: readonly Instead[];
  /** Why the search ended before it was done, if it did. */
  readonly ended?: Ended;
}

/**
 * Finds what there may be if parts that are not known turned out good, and the fewest parts whose measuring could give
 * one more engine, or the same engines for less money, or with a wider tightest margin.
 */
export function measuringFirst(reached: Reached): Open {
  const { request, bandOf, solver, stock } = reached;
  if (!kindsIn(stock).some(({ unknown }) => unknown !== undefined)) return { measureFirst: [] };
  const atMost = mostEngines(stock, request);
  const { engine, needed } = reached.brief;
  const limit = engineLimit(stock, request, engine, needed);
  const brief: Brief = {
    ...reached.brief,
    ...limit,
    stock,
    fits: new FitTable(engine, stock.shells, bandOf),
    batches: batchesOf(stock, limit.mostPerEngine === undefined ? undefined : atMost),
    least: -Infinity,
    clock: solver.clock,
  };
  try {
    return searchOpen(reached, brief, atMost);
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return { measureFirst: [], ended: 'time limit' };
  }
}

function searchOpen(reached: Reached, brief: Brief, atMost: number): Open {
  const { request, engines, cost, margin, musts, solver, currency, parts, apart } = reached;
  const { shed, inCore } = apart;
  // Without cores the parts are those that were sorted already.
  const sorted = inCore.size === 0 ? parts : dispositionsOf(shed);
  const told = (open: readonly OpenPart[]) =>
    open.map((part) => partToMeasure(part, sorted, apart));
  const kept = (draft: Draft): Row => ({ terms: draft.mustBuild, min: musts, max: Infinity });
  const most = oneByOneIfNeeded(brief, (each, [best = atMost] = []) => {
    const draft = formulate(each);
    const where = [kept(draft), upTo(draft.engines, best)];
    const question = { goal: 'most', of: draft.engines, where } as const;
    const { status, values } = solver.solve('measure first', draft.model, question);
    if (status === 'infeasible') return undefined;
    const found = [sumOfTerms(draft.engines, values)];
    return status === 'optimal' ? { brief: each, draft, values, found } : status;
  });
  if (typeof most !== 'object') return { measureFirst: [], ...(most && { ended: most }) };
  const at = sumOfTerms(most.draft.engines, most.values);
  const measureFirst: MeasureFirst[] = [];
  const shelf = onShelf(brief);
  let mayBe: MayBe | undefined;
  /** The plan of so many engines with the fewest unknown parts, and perhaps a cost, or a margin, to better. */
  const fewest = (count: number, mostCost = Infinity, least = -Infinity) =>
    fewestUnknown(
      // Nobody takes an engine apart for a wider margin, or measures what has no shells.
      least > -Infinity ? { ...shelf, least } : brief,
      (of) => [kept(of), exactly(of.engines, count), upTo(of.cost, mostCost)],
      solver,
    );
  const instead: Instead[] = [];
  const add = (mayBring: MayBring, { parts: open }: { readonly parts: readonly OpenPart[] }) => {
    const parts = told(open);
    measureFirst.push({ mayBring, parts });
    return parts;
  };
  const better = (mayBring: MayBring, plan: OpenPlan) => {
    instead.push({ parts: add(mayBring, plan), jobs: plan.assemblies.flatMap(jobsOf) });
  };
  const found = (plan: ReturnType<typeof fewest>): plan is OpenPlan => typeof plan === 'object';
  const ended = (plan: ReturnType<typeof fewest>) =>
    typeof plan === 'string' ? { ended: plan } : {};
  const so = (last: ReturnType<typeof fewest>): Open => ({
    ...(mayBe && { mayBe }),
    measureFirst,
    instead,
    ...ended(last),
  });

  if (at > engines) {
    const best = fewest(at);
    if (!found(best)) return so(best);
    mayBe = { engines: at, cost: costOf(best.cost, currency), parts: told(best.parts) };
    const next = at === engines + 1 ? best : fewest(engines + 1);
    if (!found(next)) return so(next);
    better({ kind: 'one more engine', engines: engines + 1 }, next);
  } else if (engines < (request.atMost ?? Infinity)) {
    const bought = toBuyWith({ ...reached, ...limitOf(brief), shed, engines: engines + 1 });
    if (typeof bought === 'string') return { measureFirst, ended: bought };
    if (bought && bought.open.length > 0) {
      const { lacks, open } = bought;
      add({ kind: 'what to buy', engines: engines + 1, lacks }, { parts: open });
    }
  }
  if (engines === 0) return so(undefined);
  const cheaper = cost > 0 ? fewest(engines, cost - 1) : undefined;
  if (found(cheaper)) {
    const [now, less] = [costOf(cheaper.cost, currency), costOf(cost - cheaper.cost, currency)];
    better({ kind: 'lower cost', cost: now, less }, cheaper);
  } else if (cheaper !== undefined) return so(cheaper);
  if (margin === undefined) return so(undefined);
  const wider = fewest(engines, cost, margin + 1);
  if (found(wider)) {
    const to = widestWith(brief, margin, wider, (least) => fewest(engines, cost, least));
    add({ kind: 'wider margin', ...(to !== undefined && { margin: to }) }, wider);
  }
  return so(wider);
}

/** The widest margin that can be had with as few parts that are not known; absent if nothing that is known limits it. */
function widestWith(
  brief: Brief,
  above: number,
  { parts }: OpenPlan,
  at: (least: number) => ReturnType<typeof fewestUnknown>,
): Length | undefined {
  const margins = clearanceMargins(brief).filter((each) => each > above && each < Infinity);
  let [low, high] = [-1, margins.length];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const tried = at(margins[middle] ?? 0);
    if (typeof tried === 'string') return undefined;
    if (tried && tried.parts.length <= parts.length) low = middle;
    else high = middle;
  }
  const widest = margins[low];
  return widest === undefined ? undefined : ((widest * NANOMETRE) as Length);
}

/** The cost limit of one engine, if there is one. */
const limitOf = ({ mostPerEngine }: Brief) =>
  mostPerEngine === undefined ? {} : { mostPerEngine };

/** The input of a search without the parts that are still in an engine, or marked as a step of which there are no shells. */
function onShelf(brief: Brief): Brief {
  const loose = kindsWhere(brief.stock, ({ apart }) => apart === undefined);
  const kinds = kindsIn(loose);
  const stock = kindsWhere(loose, (kind) => signOfMark(kind, kinds) >= 0);
  return { ...brief, stock, fits: new FitTable(brief.engine, stock.shells, brief.fits.bandOf) };
}
