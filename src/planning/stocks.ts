import type { Shed } from '../shed/index.js';
import { type TakenApart, withCoreParts } from '../shed/internal.js';
import { affordable } from './affordable.js';
import { kindsWhere } from './kinds-in.js';
import type { PlanRequest } from './plan-request.js';
import { type Stock, stockOf } from './stock.js';

/** What a shed has for engines. */
export interface Stocks {
  /** The parts that are known to be good. */
  readonly known: Stock;
  /** Those, and the parts that may turn out good. */
  readonly open: Stock;
  /** The shed with its cores taken apart. */
  readonly apart: TakenApart;
}

/** Sorts what a shed has once, for what is proven and for what may be. */
export function stocksOf(shed: Shed, request: PlanRequest): Stocks {
  const apart = withCoreParts(shed);
  const { inCore } = apart;
  const all = stockOf(apart.shed, { ...request, unknown: true, inCore });
  const open = affordable(all, request.mostPerEngine ?? Infinity);
  return { known: kindsWhere(open, ({ unknown }) => unknown === undefined), open, apart };
}
