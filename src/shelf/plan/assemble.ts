import type { Span } from '../../judging/limits.js';
import type { Length } from '../../quantities/dimensions.js';
import type { Batch, Draft } from './draft.js';
import { type Brief, needsOf } from './formulate.js';
import { journalKey } from './formulate-rods.js';
import { Picker, Pile, type Taken, type UseOf } from './pile.js';
import type { Stock } from './stock.js';

type Of<S extends keyof Stock> = Taken<Stock[S][number]>;

/** A rod on its journal, with its shells. */
export interface RodBearing {
  readonly rods: Of<'rods'>;
  /** Which rod of the set. */
  readonly rod: number;
  /** Which journal of the crankshaft. */
  readonly journal: number;
  readonly shells: Of<'shells'>;
}

/** One engine: which part goes where. */
export interface Assembly {
  readonly batch: Batch;
  readonly crankshaft: Of<'crankshafts'>;
  readonly mainWay: UseOf<'mains'>['way'];
  readonly rodWay: UseOf<'rod journals'>['way'];
  readonly block: Of<'blocks'>;
  readonly boreWay: UseOf<'block'>['way'];
  /** Shells of each main. */
  readonly mains: readonly Of<'shells'>[];
  readonly rods: readonly RodBearing[];
  readonly pistons: Of<'pistonSets'>;
  readonly rings: Of<'ringSets'>;
  readonly washers?: readonly Of<'thrustWashers'>[];
  readonly head?: Of<'heads'>;
  readonly valves?: Of<'valveSets'>;
}

/**
 * Makes single engines of what a model counts. What meets in one place of it is alike
 * in all that counts there, so that any may go with any: first come, first served.
 */
export function assemble(
  brief: Brief,
  draft: Draft,
  values: readonly number[],
): readonly Assembly[] {
  const shelf = new Picker();
  return brief.batches.flatMap((batch) => {
    const pile = new Pile(
      draft.uses.flatMap((use, i) =>
        use.batch === batch ? Array.from({ length: values[i] ?? 0 }, () => use) : [],
      ),
    );
    return pile.all('shaft in housings').map((pair) => engineOf(brief, batch, pile, shelf, pair));
  });
}

function engineOf(
  brief: Brief,
  batch: Batch,
  pile: Pile,
  shelf: Picker,
  pair: UseOf<'shaft in housings'>,
): Assembly {
  const { kind, way: mainWay } = pile.take('mains', ({ shaft }) => shaft === pair.shaft);
  const { way: rodWay, shaft } = pile.take('rod journals', (use) => use.kind === kind);
  const block = pile.take('block', ({ housings }) => housings === pair.housings);
  const shells = (choice: string) =>
    shelf.pick(pile.take('shells', (use) => use.choice === choice).kind);
  const at = (bores: string) => (use: { readonly bores: string }) => use.bores === bores;
  return {
    batch,
    crankshaft: shelf.pick(kind),
    mainWay,
    rodWay,
    block: shelf.pick(block.kind),
    boreWay: block.way,
    mains: mainWay.sizes.map((journal, i) =>
      shells(
        brief.fits.choice('mains', mainWay.step, journal, block.kind.ready.housings[i], brief.least)
          .key,
      ),
    ),
    rods: rodsOf(brief, pile, shelf, rodWay, shaft, shells),
    pistons: shelf.pick(pile.take('pistons', at(block.bores)).kind),
    rings: shelf.pick(pile.take('rings', at(block.bores)).kind),
    ...(pair.gap !== undefined && {
      washers: pile
        .take('washers', ({ gap }) => gap === pair.gap)
        .pack.map((each) => shelf.pick(each)),
    }),
    ...headOf(brief, pile, shelf),
  };
}

function headOf({ engine }: Brief, pile: Pile, shelf: Picker): Pick<Assembly, 'head' | 'valves'> {
  const needs = needsOf(engine);
  const both = needs.includes('head') && needs.includes('valve set');
  const pair = both ? pile.take('stems in guides', () => true) : undefined;
  return {
    ...(needs.includes('head') && {
      head: shelf.pick(pile.take('head', ({ guide }) => !pair || guide === pair.guide).kind),
    }),
    ...(needs.includes('valve set') && {
      valves: shelf.pick(pile.take('valves', ({ stem }) => !pair || stem === pair.stem).kind),
    }),
  };
}

function rodsOf(
  brief: Brief,
  pile: Pile,
  shelf: Picker,
  way: UseOf<'rod journals'>['way'],
  shaft: string,
  shells: (choice: string) => Of<'shells'>,
): readonly RodBearing[] {
  const each = brief.engine.rodsPerJournal ?? 1;
  const spots = way.sizes.flatMap((size, journal) =>
    Array.from({ length: each }, () => ({ size, journal })),
  );
  const set = pile.find('rod set', (use) => use.shaft === shaft);
  if (set === undefined) {
    pile.take('single rods', (use) => use.shaft === shaft);
    return spots.map(({ size, journal }) => {
      const key = journalKey(way.step, size);
      const use = pile.take('rod on journal', (on) => on.journal === key);
      return { rods: shelf.pick(use.kind), rod: 0, journal, shells: shells(use.choice) };
    });
  }
  const rods = shelf.pick(set.kind);
  const choiceOf = (size: Span<Length>, housing: Span<Length>) =>
    brief.fits.choice('rods', way.step, size, housing, brief.least).key;
  const order = orderOf(spots.length, set.choices, (rod, spot) =>
    choiceOf(
      (spots[spot] as (typeof spots)[number]).size,
      set.kind.ready.housings[rod] as Span<Length>,
    ),
  );
  return order.map(({ rod, spot, choice }) => ({
    rods,
    rod,
    journal: (spots[spot] as (typeof spots)[number]).journal,
    shells: shells(choice),
  }));
}

interface Placed {
  readonly rod: number;
  readonly spot: number;
  readonly choice: string;
}

/** Puts rods on journals so that the bearings take just these choices of shells. */
function orderOf(
  rods: number,
  choices: readonly string[],
  choiceOf: (rod: number, spot: number) => string,
): readonly Placed[] {
  const place = (
    placed: readonly Placed[],
    left: readonly string[],
  ): readonly Placed[] | undefined => {
    const rod = placed.length;
    if (rod === rods) return placed;
    for (let spot = 0; spot < rods; spot++) {
      if (placed.some((each) => each.spot === spot)) continue;
      const choice = choiceOf(rod, spot);
      const at = left.indexOf(choice);
      if (at < 0) continue;
      const found = place(
        [...placed, { rod, spot, choice }],
        left.filter((_, i) => i !== at),
      );
      if (found) return found;
    }
    return undefined;
  };
  return place([], choices) ?? [];
}
