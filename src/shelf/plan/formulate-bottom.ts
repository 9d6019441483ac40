import type { Length } from '../../quantities/dimensions.js';
import type { Batch, Draft, Housings, Shaft } from './draft.js';
import type { Choice } from './fit-table.js';
import { type Brief, kindsFor } from './formulate.js';
import { packsFor } from './thrust.js';

/**
 * Crankshafts in blocks: each crankshaft of an engine takes one way for its
 * mains and one for its rod journals, lies in the housings of one block, and
 * gets shells for every main and washers for its end play.
 */
export function bottomEnds(draft: Draft, brief: Brief, batch: Batch): void {
  const shafts = crankshafts(draft, brief, batch);
  const housings = blocks(draft, brief, batch);
  const choices = new Map<string, Choice>();
  const gaps = new Map<string, Length>();
  for (const [shaftKey, shaft] of shafts) {
    for (const [housingKey, block] of housings) {
      const bearings = mainBearings(brief, shaft, block);
      const without = gapOf(brief, shaft, block);
      if (bearings.some(({ shells }) => shells.length === 0)) continue;
      const gap = without === undefined ? undefined : String(without);
      const use = { use: 'shaft in housings', shaft: shaftKey, housings: housingKey, gap } as const;
      const variable = draft.count(batch, use);
      draft.flow(batch, `shaft ${shaftKey}`, variable, -1);
      draft.flow(batch, `housings ${housingKey}`, variable, -1);
      for (const choice of bearings) {
        choices.set(choice.key, choice);
        draft.flow(batch, `shells ${choice.key}`, variable, 1);
      }
      if (without !== undefined && gap !== undefined) {
        gaps.set(gap, without);
        draft.flow(batch, `gap ${gap}`, variable, 1);
      }
    }
  }
  shellsFor(draft, brief, batch, choices.values());
  for (const [gap, without] of gaps) washersFor(draft, brief, batch, gap, without);
}

function crankshafts(draft: Draft, brief: Brief, batch: Batch): ReadonlyMap<string, Shaft> {
  const shafts = new Map<string, Shaft>();
  for (const [i, kind] of kindsFor(brief.stock.crankshafts, batch).entries()) {
    const { mains, rods, thrustWidth } = kind.ready;
    for (const way of mains) {
      const shaft = {
        step: way.step,
        journals: way.sizes,
        ...(thrustWidth !== undefined && { thrustWidth }),
      };
      const key = JSON.stringify(shaft);
      shafts.set(key, shaft);
      const variable = draft.take(batch, kind, { use: 'mains', kind, way, shaft: key }, way.cost);
      draft.engines.push([variable, 1]);
      draft.flow(batch, `crankshaft ${i}`, variable, 1);
      draft.flow(batch, `shaft ${key}`, variable, 1);
    }
    for (const way of rods) {
      const key = JSON.stringify({ step: way.step, journals: way.sizes });
      const variable = draft.count(batch, { use: 'rod journals', kind, way, shaft: key });
      if (way.cost > 0) draft.cost.push([variable, way.cost]);
      draft.flow(batch, `crankshaft ${i}`, variable, -1);
      draft.flow(batch, `rod journals ${key}`, variable, 1);
    }
  }
  return shafts;
}

function blocks(draft: Draft, brief: Brief, batch: Batch): ReadonlyMap<string, Housings> {
  const all = new Map<string, Housings>();
  for (const kind of kindsFor(brief.stock.blocks, batch)) {
    const { bores, housings, thrustWidth } = kind.ready;
    const block = { housings, ...(thrustWidth !== undefined && { thrustWidth }) };
    const key = JSON.stringify([block, kind.lacking]);
    all.set(key, block);
    for (const way of bores) {
      const boresKey = JSON.stringify({ step: way.step, sizes: way.sizes });
      const use = { use: 'block', kind, way, housings: key, bores: boresKey } as const;
      const variable = draft.take(batch, kind, use, way.cost);
      if (kind.mustBuild) draft.mustBuild.push([variable, 1]);
      draft.flow(batch, `housings ${key}`, variable, 1);
      draft.flow(batch, `pistons ${boresKey}`, variable, 1);
      draft.flow(batch, `rings ${boresKey}`, variable, 1);
    }
  }
  return all;
}

function mainBearings({ fits, least }: Brief, shaft: Shaft, block: Housings): readonly Choice[] {
  return shaft.journals.map((journal, i) =>
    fits.choice('mains', shaft.step, journal, block.housings[i], least),
  );
}

/** The end play without washers, where it is to be set and both widths are known. */
function gapOf({ engine }: Brief, shaft: Shaft, block: Housings): Length | undefined {
  if (engine.endPlay === undefined) return undefined;
  if (shaft.thrustWidth === undefined || block.thrustWidth === undefined) return undefined;
  // To the nanometre, so that gaps which are alike are one.
  return (Math.round((shaft.thrustWidth - block.thrustWidth) * 1e9) / 1e9) as Length;
}

/** One pair for every bearing, of the shells that fit it. */
export function shellsFor(
  draft: Draft,
  { stock }: Brief,
  batch: Batch,
  choices: Iterable<Choice>,
): void {
  for (const choice of choices) {
    for (const kind of kindsFor(
      choice.shells.flatMap((i) => stock.shells[i] ?? []),
      batch,
    )) {
      const variable = draft.take(batch, kind, { use: 'shells', kind, choice: choice.key });
      draft.flow(batch, `shells ${choice.key}`, variable, -1);
    }
  }
}

function washersFor(
  draft: Draft,
  { engine, stock }: Brief,
  batch: Batch,
  gap: string,
  without: Length,
): void {
  const kinds = kindsFor(stock.thrustWashers, batch);
  const there = kinds.filter(({ lacking }) => !lacking);
  const packs = packsFor(
    without,
    there.map(({ ready }) => ready.thickness),
    there.map(({ count }) => count),
    engine.endPlay ?? {},
  ).map((pack) => pack.flatMap((i) => there[i] ?? []));
  const any = kinds.filter(({ lacking }) => lacking && without > (engine.endPlay?.min ?? 0));
  for (const pack of [...packs, ...any.map((kind) => [kind])]) {
    const variable = draft.count(batch, { use: 'washers', gap, pack });
    for (const kind of pack) draft.alsoTake(variable, kind);
    draft.flow(batch, `gap ${gap}`, variable, -1);
  }
}
