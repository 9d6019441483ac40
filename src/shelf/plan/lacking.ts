import { undersizeSteps } from '../../crankshaft/undersize.js';
import { oversizeSteps } from '../../cylinders/oversize.js';
import type { Span } from '../../judging/limits.js';
import { namedFrom } from '../../judging/named-from.js';
import { withStandard } from '../../measuring/size-steps.js';
import type { Length } from '../../quantities/dimensions.js';
import type { EngineKind } from '../engine-kind.js';
import { SECTIONS, type Section, type Shelf } from '../shelf.js';
import type { Batch, Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import type { Kind } from './kinds.js';
import { sumOf, type Term } from './model.js';
import type { LackingPart, NextEngine } from './plan-types.js';
import type { Solver } from './solver.js';
import type { PricedWay, Stock } from './stock.js';
import { MOST_WASHERS } from './thrust.js';

/** Where as many parts would do, the one that is the easier to find. */
const HARD_TO_FIND: Readonly<Record<Section, number>> = {
  shells: 1,
  thrustWashers: 1,
  ringSets: 2,
  valveSets: 3,
  pistonSets: 4,
  rods: 5,
  heads: 6,
  crankshafts: 7,
  blocks: 8,
};

/**
 * The fewest parts, of whatever size would fit, that bring a shelf to so many
 * engines; of equally few the easiest to find. Nothing where time ran out.
 */
export function lackingFor(
  shelf: Shelf,
  stock: Stock,
  batches: readonly Batch[],
  engines: number,
  mostPerEngine: number | undefined,
  solver: Solver,
): NextEngine | undefined {
  const { engine } = shelf;
  const more = withLacking(stock, shelf, engines);
  const draft = formulate({
    engine,
    stock: more,
    fits: new FitTable(engine, more.shells),
    least: -Infinity,
    batches,
    ...(mostPerEngine !== undefined && { mostPerEngine }),
  });
  const where = [{ terms: draft.engines, min: engines, max: engines }];
  // One more engine lacks no more parts than it has, each no harder to find than a block: a part
  // more always weighs more than all of them can differ by.
  const onePart = 1 + HARD_TO_FIND.blocks * partsOf(engine);
  const weights = draft.lacking.map(
    ([[variable, count], { section }]): Term => [
      variable,
      count * (onePart + HARD_TO_FIND[section]),
    ],
  );
  const fewest = solver.solve('next engine', draft.model, { goal: 'least', of: weights, where });
  if (fewest.status !== 'optimal') return undefined;
  const least = sumOf(weights, fewest.values);
  // Of all that are alike in this, the one that takes the least work, and then the smallest steps:
  // no journal is ground for want of shells.
  const alike = [{ terms: weights, min: least, max: least }];
  let values = fewest.values;
  for (const of of [draft.cost, stepsOf(draft, shelf)]) {
    const question = { goal: 'least', of, where: [...where, ...alike], from: values } as const;
    const better = solver.solve('next engine', draft.model, question);
    if (better.status !== 'optimal') break;
    values = better.values;
    const sum = sumOf(of, values);
    alike.push({ terms: [...of], min: sum, max: sum });
  }
  const parts = new Map<Kind<unknown>, number>();
  for (const [term, kind] of draft.lacking) {
    parts.set(kind, (parts.get(kind) ?? 0) + sumOf([term], values));
  }
  return {
    lacks: [...parts]
      .filter(([, count]) => count > 0)
      .map(([kind, count]) => lackingPart(kind, count))
      .sort((a, b) => SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section)),
  };
}

/** How far up the steps what is lacking stands. */
function stepsOf({ lacking }: Draft, { engine, units }: Shelf): readonly Term[] {
  const steps = [
    ...(engine.rodJournals.steps ?? undersizeSteps(units)),
    ...(engine.mainJournals?.steps ?? undersizeSteps(units)),
    ...(engine.bores.steps ?? oversizeSteps(units)),
  ];
  return lacking.flatMap(([[variable, count], { ready }]): readonly Term[] => {
    const { step } = ready as { readonly step?: Length };
    if (step === undefined) return [];
    const below = new Set(steps.filter((each) => each < step)).size;
    return below > 0 ? [[variable, count * below]] : [];
  });
}

/** How many parts there are in one engine, counted as they are looked for. */
function partsOf({ cylinders, mains }: EngineKind): number {
  const [castings, sets, headAndValves] = [2, 2, 2];
  return castings + sets + headAndValves + MOST_WASHERS + 2 * cylinders + mains;
}

function lackingPart({ section, ready }: Kind<unknown>, count: number): LackingPart {
  const { fits, step } = ready as { readonly fits?: 'rods' | 'mains'; readonly step?: Length };
  return {
    section,
    ...(fits !== undefined && { fits }),
    ...(step !== undefined && { step }),
    count,
  };
}

/** A stock with as many of everything as could be wanted, marked as lacking. */
function withLacking(stock: Stock, { engine, units }: Shelf, engines: number): Stock {
  const { rodJournals, mainJournals, bores, cylinders, mains } = engine;
  const stepsOf = (field: 'rodJournals' | 'mainJournals' | 'bores', usual = undersizeSteps) =>
    namedFrom(
      () => ({ '': `shelf.engine.${field}` }),
      () => withStandard(engine[field]?.steps ?? usual(units)),
    );
  const rodSteps = stepsOf('rodJournals');
  const mainSteps = mainJournals ? stepsOf('mainJournals') : [];
  const boreSteps = stepsOf('bores', oversizeSteps);
  const lacking = <R>(section: Section, ready: R): Kind<R> => ({
    section,
    members: [],
    count: engines * Math.max(1, cylinders, mains),
    cost: 0,
    repairs: [],
    mustBuild: false,
    ready,
    lacking: true,
  });
  const finished = (
    steps: readonly Length[],
    standard: Span<Length>,
    sign: 1 | -1,
    places: number,
  ) =>
    steps.map((step): PricedWay => {
      const size = {
        min: (standard.min + sign * step) as Length,
        max: (standard.max + sign * step) as Length,
      };
      return { step, sizes: Array.from({ length: places }, () => size), jobs: [], cost: 0 };
    });
  const journals = cylinders / (engine.rodsPerJournal ?? 1);
  const shells = (fits: 'rods' | 'mains') => (step: Length) =>
    lacking('shells', { fits, step, wall: { min: 0 as Length, max: 0 as Length } });
  return {
    blocks: [
      ...stock.blocks,
      lacking('blocks', {
        bores: finished(boreSteps, bores.standard, 1, cylinders),
        housings: [],
        places: [],
        housingPlaces: [],
      }),
    ],
    crankshafts: [
      ...stock.crankshafts,
      lacking('crankshafts', {
        rods: finished(rodSteps, rodJournals.standard, -1, journals),
        mains:
          mains > 0 && mainJournals
            ? finished(mainSteps, mainJournals.standard, -1, mains)
            : [{ step: 0 as Length, sizes: [], jobs: [], cost: 0 }],
        rodPlaces: [],
        mainPlaces: [],
      }),
    ],
    rods: [...stock.rods, lacking('rods', { housings: [] })],
    pistonSets: [
      ...stock.pistonSets,
      ...boreSteps.map((step) => lacking('pistonSets', { step, sizes: [] })),
    ],
    ringSets: [
      ...stock.ringSets,
      ...boreSteps.map((step) => lacking('ringSets', { step, rings: [] })),
    ],
    shells: [
      ...stock.shells,
      ...rodSteps.map(shells('rods')),
      ...(mains > 0 ? mainSteps.map(shells('mains')) : []),
    ],
    thrustWashers: [...stock.thrustWashers, lacking('thrustWashers', { thickness: 0 as Length })],
    heads: [...stock.heads, lacking('heads', {})],
    valveSets: [...stock.valveSets, lacking('valveSets', {})],
  };
}
