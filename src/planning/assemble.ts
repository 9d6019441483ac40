import type { Known } from '../reading/index.js';
import { type Assembly, assemblyCost, type Of, type RodBearing } from './assembly.js';
import { type Brief, needs, otherKinds } from './brief.js';
import type { Batch, Draft } from './draft.js';
import { journalKey } from './formulate-rods.js';
import { Matchmaker, matesOf } from './matchmaker.js';
import { Picker, Pile, type UseOf } from './pile.js';

/**
 * Makes single engines from the counts of a model. Parts that meet in one place of the model are
 * interchangeable there, so they are taken in order. If the cost of each engine is limited, all
 * engines are assembled together, step by step, and the dearest engine so far picks first, the
 * cheapest part left.
 */
export function assemble(
  brief: Brief,
  draft: Draft,
  values: readonly number[],
): readonly Assembly[] {
  const shed = new Picker();
  const mates = matesOf(brief.stock);
  const isLimited = brief.mostPerEngine !== undefined;
  const order = isLimited ? cheapestFirst(draft) : [...draft.uses.keys()];
  return brief.batches.flatMap((batch) => {
    const pile = new Pile(
      order.flatMap((i) => {
        const use = draft.uses[i];
        return use?.batch === batch ? Array.from({ length: values[i] ?? 0 }, () => use) : [];
      }),
    );
    const begun = pile.all('shaft in housings').map((pair) => {
      const its = mates.size === 0 ? pile : pile.by(new Matchmaker(mates));
      return engineOf(brief, batch, its, shed, pair);
    });
    return isLimited ? evenly(begun) : begun.map(toItsEnd);
  });
}

/** The variables of a model, in order of unit cost. */
function cheapestFirst({ uses, cost }: Draft): readonly number[] {
  const costs = uses.map(() => 0);
  for (const [i, by] of cost) costs[i] = (costs[i] ?? 0) + by;
  return [...uses.keys()].sort((a, b) => (costs[a] ?? 0) - (costs[b] ?? 0));
}

/** An engine in assembly: it yields its parts so far after each step. */
type Begun = Generator<Partial<Assembly>, Assembly, void>;

function toItsEnd(begun: Begun): Assembly {
  let step = begun.next();
  while (!step.done) step = begun.next();
  return step.value;
}

/** Assembles engines one step at a time, the dearest so far first. */
function evenly(begun: readonly Begun[]): readonly Assembly[] {
  const costs = new Map(begun.map((each) => [each, 0]));
  const costOf = (each: Begun) => costs.get(each) ?? 0;
  const ended = new Map<Begun, Assembly>();
  while (ended.size < begun.length) {
    for (const each of [...begun].sort((a, b) => costOf(b) - costOf(a))) {
      const step = each.next();
      if (step.done) ended.set(each, step.value);
      else costs.set(each, assemblyCost(step.value));
    }
  }
  return begun.flatMap((each) => ended.get(each) ?? []);
}

function* engineOf(
  brief: Brief,
  batch: Batch,
  pile: Pile,
  shed: Picker,
  pair: UseOf<'shaft in housings'>,
): Begun {
  const { kind, way: mainWay } = pile.take('mains', ({ shaft }) => shaft === pair.shaft);
  const { way: rodWay, shaft } = pile.take('rod journals', (use) => use.kind === kind);
  const crankshaft = { batch, crankshaft: shed.pick(kind), mainWay, rodWay };
  yield crankshaft;

  const use = pile.take('block', ({ housings }) => housings === pair.housings);
  const block = { ...crankshaft, block: shed.pick(use.kind), boreWay: use.way };
  yield block;

  const at = ({ bores }: { readonly bores: string }) => bores === use.bores;
  const pistons = { ...block, pistons: shed.pick(pile.take('pistons', at).kind) };
  yield pistons;
  const rings = { ...pistons, rings: shed.pick(pile.take('rings', at).kind) };
  yield rings;

  const shells = (choice: string) =>
    shed.pick(pile.take('shells', (each) => each.choice === choice).kind);
  const rods = { ...rings, rods: rodsOf(brief, pile, shed, rodWay, shaft, shells) };
  yield rods;

  const { housings } = use.kind.ready;
  const mains = mainWay.sizes.map((journal, i) =>
    shells(brief.fits.choice('mains', mainWay.step, journal, housings[i], brief).key),
  );
  const bottom = {
    ...rods,
    mains,
    ...(pair.gap !== undefined && {
      washers: pile
        .take('washers', ({ gap }) => gap === pair.gap)
        .pack.map((each) => shed.pick(each)),
    }),
  };
  yield bottom;
  const top = { ...bottom, ...headOf(brief, pile, shed) };
  yield top;
  const others = othersOf(brief, pile, shed);
  return others.length === 0 ? top : { ...top, others };
}

function othersOf({ needed }: Brief, pile: Pile, shed: Picker): readonly Of<'otherParts'>[] {
  return otherKinds(needed).flatMap(({ part, count }) =>
    Array.from({ length: count }, () =>
      shed.pick(pile.take('other part', ({ kind }) => kind.ready.of === part).kind),
    ),
  );
}

function headOf(brief: Brief, pile: Pile, shed: Picker): Pick<Assembly, 'head' | 'valves'> {
  const [head, valves] = [needs(brief, 'head'), needs(brief, 'valve set')];
  const both = head && valves;
  const pair = both ? pile.take('stems in guides', () => true) : undefined;
  return {
    ...(head && {
      head: shed.pick(pile.take('head', ({ guide }) => !pair || guide === pair.guide).kind),
    }),
    ...(valves && {
      valves: shed.pick(pile.take('valves', ({ stem }) => !pair || stem === pair.stem).kind),
    }),
  };
}

function rodsOf(
  brief: Brief,
  pile: Pile,
  shed: Picker,
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
      return { rods: shed.pick(use.kind), rod: 0, journal, shells: shells(use.choice) };
    });
  }
  const rods = shed.pick(set.kind);
  const choiceOf = (size: Known, housing: Known) =>
    brief.fits.choice('rods', way.step, size, housing, brief).key;
  const order = orderOf(spots.length, set.choices, (rod, spot) =>
    choiceOf(spots[spot]?.size, set.kind.ready.housings[rod]),
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

/** Assigns rods to journals so that the bearings use exactly these choices of shells. */
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
