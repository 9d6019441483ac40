import type { EngineKind, NeededPart } from '../reading/index.js';
import type { Clock } from './clock.js';
import type { Batch } from './draft.js';
import type { FitTable } from './fit-table.js';
import type { Kind } from './kinds.js';
import type { Levels } from './levels.js';
import type { PricedWay, Stock } from './stock.js';

/** The input of a model. */
export interface Brief extends Levels {
  readonly engine: EngineKind;
  /** What an engine needs beyond the parts of every engine. */
  readonly needed: readonly NeededPart[];
  readonly stock: Stock;
  readonly fits: FitTable;
  readonly batches: readonly Batch[];
  /** The cost limit of one engine [thousandths]. */
  readonly mostPerEngine?: number;
  /** Stops the work when the time is up. */
  readonly clock?: Clock;
}

/** The kinds that fit the engines of a batch. */
export function kindsFor<K extends Kind<unknown>>(
  kinds: readonly K[],
  { interchange, block }: Batch,
): readonly K[] {
  return kinds.filter(
    (kind) =>
      (kind.interchange === undefined || kind.interchange.includes(interchange ?? '')) &&
      (block === undefined || kind.section !== 'blocks' || kind.members[0]?.name === block),
  );
}

/** A key for rod journals by their finished sizes. */
export const rodJournalsKey = ({ step, sizes }: PricedWay): string => JSON.stringify([step, sizes]);

/** A key for bores by their finished sizes. */
export const boresKey = ({ step, sizes }: PricedWay): string => JSON.stringify([step, sizes]);

/** The kinds of other parts that an engine needs, with how many of each. */
export const otherKinds = (needed: readonly NeededPart[]): readonly NeededPart[] =>
  needed.filter(({ part }) => part !== 'head' && part !== 'valve set');

/** Whether an engine needs a head, or a valve set. */
export const needs = ({ needed }: Pick<Brief, 'needed'>, part: string): boolean =>
  needed.some((each) => each.part === part);
