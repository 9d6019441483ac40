import type { EngineKind } from '../engine-kind.js';
import type { Clock } from './clock.js';
import { type Batch, Draft } from './draft.js';
import type { FitTable } from './fit-table.js';
import { bottomEnds } from './formulate-bottom.js';
import { rodsOnJournals } from './formulate-rods.js';
import { topEnds } from './formulate-top.js';
import type { Kind } from './kinds.js';
import type { Row, Term } from './model.js';
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

/**
 * Puts all builds into one model of whole numbers. It does not tell one engine
 * from the next: it counts how many parts of a kind go each way, so that it
 * grows with the kinds of parts and not with how many there are. Parts that an
 * engine needs meet in places where as many must come in as go out.
 */
export function formulate(brief: Brief): Draft {
  const draft = new Draft();
  for (const batch of brief.batches) {
    brief.clock?.check();
    bottomEnds(draft, brief, batch);
    rodsOnJournals(draft, brief, batch);
    topEnds(draft, brief, batch);
  }
  draft.close(brief.batches.flatMap((batch) => limits(draft, brief, batch)));
  return draft;
}

/**
 * Holds the cost of a batch: its engines together cost no more than so many may. Where a batch is one
 * engine that is exact; of such batches that are alike the first is built first.
 */
function limits(draft: Draft, { batches, mostPerEngine }: Brief, batch: Batch): readonly Row[] {
  const engines = draft.termsOf(draft.engines, batch);
  const atMost = (terms: readonly Term[], max: number): Row => ({ terms, min: -Infinity, max });
  const cost = draft.termsOf(draft.cost, batch);
  const before = batches.find(
    ({ index, interchange }) => index === batch.index - 1 && interchange === batch.interchange,
  );
  return [
    ...(mostPerEngine === undefined
      ? []
      : [atMost([...cost, ...times(engines, -mostPerEngine)], 0)]),
    ...(batch.single ? [atMost(engines, 1)] : []),
    ...(batch.single && before
      ? [atMost([...engines, ...times(draft.termsOf(draft.engines, before), -1)], 0)]
      : []),
  ];
}

const times = (terms: readonly Term[], factor: number): readonly Term[] =>
  terms.map(([variable, coefficient]) => [variable, coefficient * factor]);

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
