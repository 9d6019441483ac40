import {
  borePlan,
  boreShape,
  grindPlan,
  journalShape,
  type Length,
  type OwnLimits,
  oversizeSteps,
  type Span,
  undersizeSteps,
} from 'crankwright';
import type { JournalKind } from '../../src/reading/engine-kind.js';
import type { StatedLimits } from '../../src/reading/stated-limits.js';
import type { Work } from '../../src/shed/works.js';
import { repairsOf, surfaceFaults, testsOf } from './brute-faults.js';
import { resizing } from './brute-rods.js';
import {
  type Bin,
  mendCost,
  sleevesCost,
  taking,
  testsCost,
  workCost,
  worksCost,
} from './brute-stock.js';
import type { Way } from './brute-ways.js';
import type { BlockPart, CrankshaftPart, JournalPlace, Shed } from './full.js';

/** A block at one bore step. */
export interface BlockWay extends Way {
  readonly part: BlockPart;
  readonly step: Length;
  readonly bores: readonly Span<Length>[];
  readonly housings: readonly Span<Length>[];
}

/** A crankshaft at one step of its rod journals and one of its mains. */
export interface CrankWay extends Way {
  readonly part: CrankshaftPart;
  readonly rods: Journals;
  readonly mains: Journals;
}

/** Journals of one kind, finished at one step. */
export interface Journals {
  readonly step: Length;
  readonly sizes: readonly Span<Length>[];
}

const limitsOf = (stated: StatedLimits<'length'>): OwnLimits<'length'> => {
  const { source: _, ...limits } = stated;
  return { limits };
};

/** The limits of a shape: how well it is known does not count, as work goes by the best estimate. */
const judgedBy = (stated: StatedLimits<'length'> | undefined) =>
  stated ? { shape: limitsOf(stated) } : {};

const withStandard = (steps: readonly Length[]): readonly Length[] => [
  0 as Length,
  ...steps.filter((step) => step > 1e-9),
];

/** A block at every step that it can be bored to. */
export function blockWays(shed: Shed, bin: Bin<BlockPart>, history: Shed): readonly BlockWay[] {
  const { part } = bin;
  const { bores: kind, mainHousing, mains } = shed.engine;
  const {
    standard,
    steps = oversizeSteps(shed.units),
    shape,
    pistonClearance,
    ringGap,
    ...rest
  } = kind;
  const repairs = repairsOf('blocks', part);
  const spun = repairs.has('resize housings');
  const mend = mendCost(shed, repairs.has('mend') ? 1 : 0);
  if (mend === undefined) return [];
  if (part.bores === undefined) {
    // Not measured: it may turn out good as it is, at any step and of any size.
    const tests = testsCost(shed, testsOf('blocks', part, repairs.size > 0, history));
    const way = taking(bin);
    const open = (count: number) => Array<never>(count).fill(undefined as never);
    return withStandard(steps).map((step) => ({
      ...way,
      cost: way.cost + mend + tests,
      ...{ part, step, bores: open(shed.engine.cylinders), housings: open(mains) },
    }));
  }
  const housings = mains === 0 ? [] : (part.mainHousings ?? []);
  const resized = resizing(housings, mainHousing, spun);
  if (resized === undefined) return [];
  const shapes = part.bores.map(({ readings, ringTravel }) =>
    boreShape(readings, ringTravel ? { ringTravel } : {}),
  );
  const cylinders = part.bores.map(({ name, wall, faults = [] }, i) => ({
    ...sizeOf(name, shapes[i] as never),
    ...(wall !== undefined && { wall }),
    faults: [...surfaceFaults('blocks', part), ...faults],
  }));
  return withStandard(steps).flatMap((step) => {
    const plan = borePlan({
      ...rest,
      standard,
      steps: withStandard(steps),
      cylinders,
      pistonsAtHand: [step],
      ...judgedBy(shape),
    });
    if (plan.outcome === 'none') return [];
    const count = (work: string) => plan.cylinders.filter((each) => each.work === work).length;
    const cost = worksCost(shed, [
      ['resize housings', resized.count],
      ['bore', count('bore')],
      ['sleeve', count('sleeve')],
    ]);
    if (cost === undefined) return [];
    const machined = plan.cylinders.some(({ work }) => work !== 'use as it is');
    const worked = machined || repairs.size > 0 || resized.count > 0;
    const tests = testsCost(shed, testsOf('blocks', part, worked, history));
    const bores = plan.cylinders.map(({ work }, i) =>
      work === 'use as it is' ? measured(shapes[i] as never) : plan.target,
    );
    const way = taking(bin);
    const sleeves = sleevesCost(shed, count('sleeve'));
    const all = way.cost + cost + sleeves + mend + tests;
    const work = resized.count + count('bore') + count('sleeve') + (repairs.has('mend') ? 1 : 0);
    return [{ ...way, cost: all, work, part, step, bores, housings: resized.housings }];
  });
}

/** A crankshaft at every pair of steps that it can be ground to. */
export function crankWays(
  shed: Shed,
  bin: Bin<CrankshaftPart>,
  history: Shed,
): readonly CrankWay[] {
  const { part } = bin;
  const { rodJournals, mainJournals, mains } = shed.engine;
  const straightened = repairsOf('crankshafts', part).has('straighten');
  const repair = worksCost(shed, [['straighten', straightened ? 1 : 0]]);
  // Nobody knows how true a bent crankshaft will run once it is straight, unless the shop says.
  if (repair === undefined || (straightened && part.runoutOnceStraight === undefined)) return [];
  const read = [...(part.rodJournals ?? []), ...(part.mainJournals ?? [])].map(
    ({ runout = 0 }) => runout,
  );
  // More than 2 thou by the dial reads as bent, though nobody said so.
  if (!straightened && read.some((runout) => runout > 0.0000508 + 1e-9)) return [];
  const kinds = [
    [rodJournals, part.rodJournals ?? []],
    ...(mains > 0 && mainJournals ? [[mainJournals, part.mainJournals ?? []] as const] : []),
  ] as const;
  if (kinds.some(([kind, places]) => places.some((place) => isMisread(shed, kind, place)))) {
    return [];
  }
  const tests = testsCost(shed, testsOf('crankshafts', part, true, history));
  const none = [{ step: 0 as Length, sizes: [], cost: 0, ground: 0 }];
  const rodWays = journalWays(shed, part, rodJournals, part.rodJournals, 'grind rod journals');
  const mainWays =
    mains === 0 || mainJournals === undefined
      ? none
      : journalWays(shed, part, mainJournals, part.mainJournals ?? [], 'grind main journals');
  const way = taking(bin);
  return rodWays.flatMap((rods) =>
    mainWays.map((mainsAt) => ({
      ...way,
      cost: way.cost + repair + tests + rods.cost + mainsAt.cost,
      work: (straightened ? 1 : 0) + rods.ground + mainsAt.ground,
      part,
      rods,
      mains: mainsAt,
    })),
  );
}

/** Round and straight to its limit, or half a thou, and more than 2.5 thou from standard and every step: misread. */
function isMisread(
  { units }: Shed,
  { standard, steps = undersizeSteps(units), shape }: JournalKind,
  { readings }: JournalPlace,
): boolean {
  const { smallest, largest, outOfRound, taper } = journalShape(readings);
  const most = (shape?.max ?? 0.0000127) + 1e-9;
  if (outOfRound > most || taper > most) return false;
  return withStandard(steps).every(
    (step) =>
      smallest < standard.min - step - 0.0000635 - 1e-9 ||
      largest > standard.max - step + 0.0000635 + 1e-9,
  );
}

/** The journals of one kind of a crankshaft at every step that serves. */
function journalWays(
  shed: Shed,
  part: CrankshaftPart,
  sheet: JournalKind,
  places: readonly JournalPlace[],
  work: Work,
): readonly (Journals & { readonly cost: number; readonly ground: number })[] {
  const { oilClearance, shape, steps = undersizeSteps(shed.units), ...rest } = sheet;
  if (part.rodJournals === undefined) {
    const { cylinders, rodsPerJournal = 1, mains } = shed.engine;
    const count = work === 'grind rod journals' ? cylinders / rodsPerJournal : mains;
    const sizes = Array<never>(count).fill(undefined as never);
    return withStandard(steps).map((step) => ({ step, sizes, cost: 0, ground: 0 }));
  }
  const straightened = repairsOf('crankshafts', part).has('straighten');
  const shapes = places.map(({ readings }) => journalShape(readings));
  const journals = places.map(({ name, runout, faults = [] }, i) => ({
    ...sizeOf(name, shapes[i] as never),
    ...(straightened
      ? { runout: part.runoutOnceStraight as Length }
      : runout !== undefined && { runout }),
    faults: [...surfaceFaults('crankshafts', part), ...faults],
  }));
  return withStandard(steps).flatMap((step) => {
    const plan = grindPlan({
      ...rest,
      steps: withStandard(steps),
      journals,
      shellsAtHand: [step],
      ...judgedBy(shape),
    });
    if (plan.outcome === 'none') return [];
    const ground = plan.journals.filter((each) => each.work === 'grind').length;
    const cost = workCost(shed, work, ground);
    if (cost === undefined) return [];
    const sizes = plan.journals.map((each, i) =>
      each.work === 'grind' ? plan.target : measured(shapes[i] as never),
    );
    return [{ step, sizes, cost, ground }];
  });
}

interface Measured {
  readonly smallest: Length;
  readonly largest: Length;
  readonly outOfRound: Length;
  readonly taper: Length;
}

const measured = ({ smallest, largest }: Measured): Span<Length> => ({
  min: smallest,
  max: largest,
});

const sizeOf = (name: string, { smallest, largest, outOfRound, taper }: Measured) => ({
  name,
  smallest,
  largest,
  outOfRound,
  taper,
});
