import { undersizeSteps } from '../crankshaft/index.js';
import { oversizeSteps } from '../cylinders/index.js';
import type { Length } from '../quantities/index.js';
import type { EngineKind } from '../reading/index.js';
import type { Section, Shed } from '../shed/index.js';
import { SECTIONS } from '../shed/internal.js';
import { assemble } from './assemble.js';
import { type Assembly, assemblyCost } from './assembly.js';
import { batchesOf } from './batches.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import type { Kind } from './kinds.js';
import { withLacking } from './lacking-stock.js';
import { sumOf, type Term } from './model.js';
import type { LackingPart, NextEngine, Unproven } from './plan-types.js';
import type { Solution, Solver } from './solver.js';
import type { Stock } from './stock.js';
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

/** What is sought, and with what. */
export interface Wanted {
  readonly shed: Shed;
  readonly stock: Stock;
  /** How many engines there are to be. */
  readonly engines: number;
  readonly mostPerEngine?: number;
  readonly solver: Solver;
}

/**
 * The fewest parts, of whatever size would fit, that bring a shed to so many engines; of equally few
 * the easiest to find. Or why that could not be told.
 */
export function lackingFor(wanted: Wanted): NextEngine | Unproven['kind'] {
  const { shed, stock, engines, solver, mostPerEngine = Infinity } = wanted;
  const { engine } = shed;
  const more = withLacking(stock, shed, engines);
  const seek = (single?: number) => {
    const brief = {
      engine,
      stock: more,
      fits: new FitTable(engine, more.shells),
      least: -Infinity,
      batches: batchesOf(stock, single),
      clock: solver.clock,
      ...(mostPerEngine < Infinity && { mostPerEngine }),
    };
    const draft = formulate(brief);
    return { brief, draft, ...fewest(wanted, draft) };
  };
  try {
    // As with the builds: together first, and one by one only where an engine is too dear.
    let sought = seek();
    const isTooDear = (each: Assembly) => assemblyCost(each) > mostPerEngine;
    if (
      sought.status === 'optimal' &&
      assemble(sought.brief, sought.draft, sought.values).some(isTooDear)
    ) {
      sought = seek(engines);
    }
    if (sought.status === 'infeasible') return 'solver failure';
    return sought.status === 'optimal' ? nextEngine(sought.draft, sought.values) : sought.status;
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return 'time limit';
  }
}

/** Asks for the fewest parts; then for the least work with so few, and for the smallest steps with that. */
function fewest(
  { shed, engines, solver }: Wanted,
  draft: Draft,
): Pick<Solution, 'status' | 'values'> {
  const where = [{ terms: draft.engines, min: engines, max: engines }];
  // One more engine lacks no more parts than it has, each no harder to find than a block: a part
  // more always weighs more than all of them can differ by.
  const onePart = 1 + HARD_TO_FIND.blocks * partsOf(shed.engine);
  const weights = draft.lacking.map(
    ([[variable, count], { section }]): Term => [
      variable,
      count * (onePart + HARD_TO_FIND[section]),
    ],
  );
  const first = solver.solve('next engine', draft.model, { goal: 'least', of: weights, where });
  if (first.status !== 'optimal') return first;
  let values = first.values;
  const asGood = (terms: readonly Term[]) => {
    const sum = sumOf(terms, values);
    return { terms, min: sum, max: sum };
  };
  // No journal is ground for want of shells.
  const alike = [asGood(weights)];
  for (const of of [draft.cost, stepsOf(draft, shed)]) {
    const question = {
      goal: 'least',
      of,
      where: [...where, ...alike],
      from: values,
    } as const;
    const better = solver.solve('next engine', draft.model, question);
    if (better.status !== 'optimal') break;
    values = better.values;
    alike.push(asGood(of));
  }
  return { status: 'optimal', values };
}

/** The parts that are counted though they are not there. */
function nextEngine({ lacking }: Draft, values: readonly number[]): NextEngine {
  const parts = new Map<Kind<unknown>, number>();
  for (const [term, kind] of lacking) {
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
function stepsOf({ lacking }: Draft, { engine, units }: Shed): readonly Term[] {
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
