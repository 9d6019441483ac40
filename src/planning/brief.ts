import type { EngineKind } from '../reading/index.js';
import type { Clock } from './clock.js';
import type { Batch } from './draft.js';
import type { FitTable } from './fit-table.js';
import type { Kind } from './kinds.js';
import type { PricedWay, Stock } from './stock.js';

/** What a model is made of. */
export interface Brief {
  readonly engine: EngineKind;
  readonly stock: Stock;
  readonly fits: FitTable;
  /** The least margin of any clearance [nm]. */
  readonly least: number;
  readonly batches: readonly Batch[];
  /** The most that one engine may cost [thousandths]. */
  readonly mostPerEngine?: number;
  /** Stops it when the time is up. */
  readonly clock?: Clock;
}

/** The kinds that go into the engines of a batch. */
export function kindsFor<K extends Kind<unknown>>(
  kinds: readonly K[],
  { interchange }: Batch,
): readonly K[] {
  return kinds.filter(
    (kind) => kind.interchange === undefined || kind.interchange.includes(interchange ?? ''),
  );
}

/** Rod journals by what they measure when they are done. */
export const rodJournalsKey = ({ step, sizes }: PricedWay): string => JSON.stringify([step, sizes]);

/** Bores by what they measure when they are done. */
export const boresKey = ({ step, sizes }: PricedWay): string => JSON.stringify([step, sizes]);

/** What an engine needs besides what every engine has. */
export const needsOf = ({ alsoNeeds = ['head', 'valve set'] }: EngineKind) => alsoNeeds;
