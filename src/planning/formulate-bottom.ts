import { type Alike, alike, firsts } from './alike.js';
import { type Brief, boresKey, kindsFor, rodJournalsKey } from './brief.js';
import type { Batch, Draft, Housings, Shaft } from './draft.js';
import type { Choice } from './fit-table.js';
import { type Pack, Pairs } from './pairs.js';
import type { PricedWay, Stock } from './stock.js';

/**
 * Crankshafts in blocks. Each crankshaft takes one way for its mains and one for its rod journals,
 * goes into the housings of one block, and takes shells for every main and washers for its end play.
 */
export function bottomEnds(draft: Draft, brief: Brief, batch: Batch): void {
  const { stock } = brief;
  const shafts = new Map(
    kindsFor(stock.crankshafts, batch).flatMap((kind) =>
      kind.ready.mains.map((way) => [shaftKey(kind, way), shaftOf(kind, way)] as const),
    ),
  );
  const housings = new Map(
    kindsFor(stock.blocks, batch).map((kind) => [housingsKey(kind), kind.ready] as const),
  );
  const pairs = new Pairs(brief, batch);
  const same = alike(shafts, housings, (shaft, block) => pairs.of(shaft, block)?.key ?? '');
  takeCrankshafts(draft, brief, batch, same.rows);
  takeBlocks(draft, brief, batch, same.columns);
  for (const shaft of firsts(same.rows)) {
    for (const block of firsts(same.columns)) {
      const pair = pairs.of(shafts.get(shaft) as Shaft, housings.get(block) as Housings);
      if (pair === undefined) continue;
      const use = { use: 'shaft in housings', shaft, housings: block, gap: pair.gap } as const;
      const variable = draft.count(batch, use);
      draft.flow(batch, `shaft ${shaft}`, variable, -1);
      draft.flow(batch, `housings ${block}`, variable, -1);
      for (const choice of pair.bearings) draft.flow(batch, `shells ${choice.key}`, variable, 1);
      if (pair.gap !== undefined) draft.flow(batch, `gap ${pair.gap}`, variable, 1);
    }
  }
  shellsFor(draft, brief, batch, pairs.choices());
  for (const [gap, packs] of pairs.gaps()) takeWashers(draft, batch, gap, packs);
}

type CrankshaftKind = Stock['crankshafts'][number];
type BlockKind = Stock['blocks'][number];

function shaftOf({ ready }: CrankshaftKind, { step, sizes }: PricedWay): Shaft {
  const { thrustWidth } = ready;
  return { step, journals: sizes, ...(thrustWidth !== undefined && { thrustWidth }) };
}

const shaftKey = (kind: CrankshaftKind, way: PricedWay) => JSON.stringify(shaftOf(kind, way));

const housingsKey = ({ ready, lacking }: BlockKind) =>
  JSON.stringify([ready.housings, ready.thrustWidth, lacking]);

function takeCrankshafts(draft: Draft, brief: Brief, batch: Batch, same: Alike): void {
  for (const [i, kind] of kindsFor(brief.stock.crankshafts, batch).entries()) {
    for (const way of kind.ready.mains) {
      const shaft = same.get(shaftKey(kind, way)) as string;
      const variable = draft.take(batch, kind, { use: 'mains', kind, way, shaft }, way.cost);
      draft.engines.push([variable, 1]);
      draft.flow(batch, `crankshaft ${i}`, variable, 1);
      draft.flow(batch, `shaft ${shaft}`, variable, 1);
    }
    for (const way of kind.ready.rods) {
      const shaft = rodJournalsKey(way);
      const variable = draft.count(batch, { use: 'rod journals', kind, way, shaft });
      if (way.cost > 0) draft.cost.push([variable, way.cost]);
      draft.flow(batch, `crankshaft ${i}`, variable, -1);
      draft.flow(batch, `rod journals ${shaft}`, variable, 1);
    }
  }
}

function takeBlocks(draft: Draft, brief: Brief, batch: Batch, same: Alike): void {
  for (const kind of kindsFor(brief.stock.blocks, batch)) {
    const housings = same.get(housingsKey(kind)) as string;
    for (const way of kind.ready.bores) {
      const bores = boresKey(way);
      const use = { use: 'block', kind, way, housings, bores } as const;
      const variable = draft.take(batch, kind, use, way.cost);
      if (kind.mustBuild) draft.mustBuild.push([variable, 1]);
      draft.flow(batch, `housings ${housings}`, variable, 1);
      draft.flow(batch, `pistons ${bores}`, variable, 1);
      draft.flow(batch, `rings ${bores}`, variable, 1);
    }
  }
}

function takeWashers(draft: Draft, batch: Batch, gap: string, packs: readonly Pack[]): void {
  for (const pack of packs) {
    const variable = draft.count(batch, { use: 'washers', gap, pack });
    for (const kind of pack) draft.alsoTake(variable, kind);
    draft.flow(batch, `gap ${gap}`, variable, -1);
  }
}

/** Takes one pair of fitting shells for every bearing. */
export function shellsFor(
  draft: Draft,
  { stock }: Brief,
  batch: Batch,
  choices: Iterable<Choice>,
): void {
  for (const choice of choices) {
    const right = new Set(kindsFor(stock.shells, batch));
    for (const [n, i] of choice.shells.entries()) {
      const kind = stock.shells[i];
      if (kind === undefined || !right.has(kind)) continue;
      const variable = draft.take(batch, kind, { use: 'shells', kind, choice: choice.key });
      draft.tight(variable, choice.levels[n]);
      draft.flow(batch, `shells ${choice.key}`, variable, -1);
    }
  }
}
