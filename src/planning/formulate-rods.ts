import type { Length } from '../quantities/index.js';
import type { Known } from '../reading/index.js';
import { type Brief, kindsFor } from './brief.js';
import type { Batch, Draft } from './draft.js';
import type { Choice } from './fit-table.js';
import { shellsFor } from './formulate-bottom.js';

/**
 * Rods on the journals of crankshafts, as sets that stay together or as single rods, with a pair of
 * shells for each rod.
 */
export function rodsOnJournals(draft: Draft, brief: Brief, batch: Batch): void {
  const { cylinders } = brief.engine;
  const kinds = kindsFor(brief.stock.rods, batch);
  const sets = kinds.filter(
    ({ ready, lacking }) => cylinders > 1 && !lacking && ready.housings.length > 1,
  );
  const singles = kinds.filter((kind) => !sets.includes(kind));
  const choices = new Map<string, Choice>();
  const journals = new Map<string, { readonly step: Length; readonly journal: Known }>();
  for (const [key, { step, spots }] of shaftsOf(draft, brief, batch)) {
    for (const kind of sets) {
      brief.clock?.check();
      for (const pairing of pairings(brief, step, spots, kind.ready.housings)) {
        const use = {
          use: 'rod set',
          kind,
          shaft: key,
          choices: pairing.map((choice) => choice.key),
        } as const;
        const variable = draft.take(batch, kind, use);
        draft.flow(batch, `rod journals ${key}`, variable, -1);
        for (const choice of pairing) {
          choices.set(choice.key, choice);
          draft.flow(batch, `shells ${choice.key}`, variable, 1);
        }
      }
    }
    const variable = draft.count(batch, { use: 'single rods', shaft: key });
    draft.flow(batch, `rod journals ${key}`, variable, -1);
    for (const spot of spots) {
      const journal = journalKey(step, spot);
      journals.set(journal, { step, journal: spot });
      draft.flow(batch, `journal ${journal}`, variable, 1);
    }
  }
  for (const [key, { step, journal }] of journals) {
    brief.clock?.check();
    for (const kind of singles) {
      const choice = brief.fits.choice('rods', step, journal, kind.ready.housings[0], brief);
      if (choice.shells.length === 0) continue;
      choices.set(choice.key, choice);
      const use = { use: 'rod on journal', kind, journal: key, choice: choice.key } as const;
      const variable = draft.take(batch, kind, use);
      draft.flow(batch, `journal ${key}`, variable, -1);
      draft.flow(batch, `shells ${choice.key}`, variable, 1);
    }
  }
  shellsFor(draft, brief, batch, choices.values());
}

/** A key for a journal by its step and size. */
export const journalKey = (step: Length, size: Known): string =>
  `${step} ${size?.min} ${size?.max}`;

/** The rod journals of the crankshafts of a batch, each repeated for every rod on it. */
function shaftsOf(draft: Draft, { engine }: Brief, batch: Batch) {
  const shafts = new Map<string, { readonly step: Length; readonly spots: readonly Known[] }>();
  const each = engine.rodsPerJournal ?? 1;
  for (const use of draft.uses) {
    if (use.use !== 'rod journals' || use.batch !== batch) continue;
    const spots = use.way.sizes.flatMap((size) => Array.from({ length: each }, () => size));
    shafts.set(use.shaft, { step: use.way.step, spots });
  }
  return shafts;
}

/**
 * Every way to put the rods of a set on the journals of a crankshaft. Ways that use the same shells
 * count as one. The rods are placed in order, each on one of the journals still free.
 */
function pairings(
  brief: Brief,
  step: Length,
  spots: readonly Known[],
  housings: readonly Known[],
): readonly (readonly Choice[])[] {
  let partial = new Map<
    string,
    { readonly free: readonly number[]; readonly taken: readonly Choice[] }
  >();
  partial.set('', { free: spots.map((_, i) => i), taken: [] });
  for (const housing of housings) {
    const next = new Map<
      string,
      { readonly free: readonly number[]; readonly taken: readonly Choice[] }
    >();
    for (const { free, taken } of partial.values()) {
      for (const spot of free) {
        const choice = brief.fits.choice('rods', step, spots[spot], housing, brief);
        if (choice.shells.length === 0) continue;
        const left = free.filter((each) => each !== spot);
        const all = [...taken, choice].sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
        const sizes = left.map((each) => journalKey(step, spots[each])).sort();
        next.set(JSON.stringify([sizes, all.map(({ key }) => key)]), { free: left, taken: all });
      }
    }
    partial = next;
  }
  return [...partial.values()].map(({ taken }) => taken);
}
