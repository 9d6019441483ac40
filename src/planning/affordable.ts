import { largestOf } from '../quantities/internal.js';
import type { EngineKind, NeededPart } from '../reading/index.js';
import { otherKinds } from './brief.js';
import type { Kind } from './kinds.js';
import { partsCount } from './kinds-in.js';
import type { PlanRequest } from './plan-request.js';
import type { PricedWay, Stock } from './stock.js';
import { MOST_WASHERS } from './thrust.js';

/** Drops the parts and work that alone cost more than the limit for one engine [thousandths]. */
export function affordable(stock: Stock, most: number): Stock {
  const kinds = <K extends Kind<unknown>>(all: readonly K[]) =>
    all.filter(({ cost }) => cost <= most);
  const ways = ({ cost }: Kind<unknown>, all: readonly PricedWay[]) =>
    all.filter((way) => cost + way.cost <= most);
  return {
    blocks: kinds(stock.blocks).map((kind) => ({
      ...kind,
      ready: { ...kind.ready, bores: ways(kind, kind.ready.bores) },
    })),
    crankshafts: kinds(stock.crankshafts).map((kind) => ({
      ...kind,
      ready: {
        ...kind.ready,
        mains: ways(kind, kind.ready.mains),
        rods: ways(kind, kind.ready.rods),
      },
    })),
    rods: kinds(stock.rods),
    pistonSets: kinds(stock.pistonSets),
    ringSets: kinds(stock.ringSets),
    shells: kinds(stock.shells),
    thrustWashers: kinds(stock.thrustWashers),
    heads: kinds(stock.heads),
    valveSets: kinds(stock.valveSets),
    otherParts: kinds(stock.otherParts),
  };
}

/** An upper bound on the cost of any engine of a stock [thousandths]. */
function dearestEngine(
  stock: Stock,
  { cylinders, mains }: EngineKind,
  needed: readonly NeededPart[],
): number {
  const most = (amounts: readonly number[]) => Math.max(0, largestOf(amounts));
  const work = (ways: readonly PricedWay[]) => most(ways.map(({ cost }) => cost));
  const part = (kinds: readonly Kind<unknown>[]) => most(kinds.map(({ cost }) => cost));
  return (
    most(stock.blocks.map(({ cost, ready }) => cost + work(ready.bores))) +
    most(stock.crankshafts.map(({ cost, ready }) => cost + work(ready.mains) + work(ready.rods))) +
    cylinders * part(stock.rods) +
    (cylinders + mains) * part(stock.shells) +
    MOST_WASHERS * part(stock.thrustWashers) +
    part(stock.pistonSets) +
    part(stock.ringSets) +
    part(stock.heads) +
    part(stock.valveSets) +
    otherKinds(needed).reduce(
      (sum, { part: of, count }) =>
        sum + count * part(stock.otherParts.filter(({ ready }) => ready.of === of)),
      0,
    )
  );
}

/** The cost limit of an engine, if it limits anything: not where it is above the dearest possible engine. */
export function engineLimit(
  stock: Stock,
  { mostPerEngine = Infinity }: Pick<PlanRequest, 'mostPerEngine'>,
  engine: EngineKind,
  needed: readonly NeededPart[],
): { readonly mostPerEngine?: number } {
  return mostPerEngine < dearestEngine(stock, engine, needed) ? { mostPerEngine } : {};
}

/** The most engines that there are blocks and crankshafts for, and that are wanted. */
export const mostEngines = (
  { blocks, crankshafts }: Stock,
  { atMost = Infinity }: Pick<PlanRequest, 'atMost'>,
): number => Math.min(atMost, partsCount(blocks), partsCount(crankshafts));
