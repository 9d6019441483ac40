import { undersizeSteps } from '../crankshaft/index.js';
import { oversizeSteps } from '../cylinders/index.js';
import type { Length } from '../quantities/index.js';
import type { EngineKind } from '../reading/index.js';
import type { Section, Shed } from '../shed/index.js';
import { needsOf, SECTIONS } from '../shed/internal.js';
import { assemble } from './assemble.js';
import { type Assembly, assemblyCost } from './assembly.js';
import { batchesOf } from './batches.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import type { BandOf } from './guard-bands.js';
import type { Kind } from './kinds.js';
import { withLacking } from './lacking-stock.js';
import type { LackingPart, NextEngine } from './left-over-types.js';
import { sumOfTerms, type Term } from './model.js';
import type { Unproven } from './plan-types.js';
import type { Solution, Solver } from './solver.js';
import type { Stock } from './stock.js';
import { MOST_WASHERS } from './thrust.js';

/** How hard a part is to find: between equally few parts, the easier ones are chosen. */
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
  otherParts: 3,
};

/** The input of the search for missing parts. */
export interface Wanted {
  readonly shed: Shed;
  readonly stock: Stock;
  /** The number of engines wanted. */
  readonly engines: number;
  readonly mostPerEngine?: number;
  readonly solver: Solver;
  /** What every clearance must keep from its limits, if it must hold with a chance. */
  readonly bandOf?: BandOf;
  /** Whether the engines must have the blocks of the stock: no block may be missing. */
  readonly ownBlocks?: true;
}

/**
 * Finds the fewest parts, of whatever size fits, that complete the number of engines wanted; between
 * equally few, the easiest to find. Otherwise returns why the search ended, or that no parts complete blocks of the stock.
 */
export function lackingFor(wanted: Omit<Wanted, 'ownBlocks'>): NextEngine | Unproven['kind'];
export function lackingFor(wanted: Wanted): NextEngine | Unproven['kind'] | 'none';
export function lackingFor(wanted: Wanted): NextEngine | Unproven['kind'] | 'none' {
  const { shed, stock, engines, solver, bandOf, mostPerEngine = Infinity } = wanted;
  const { engine } = shed;
  const all = withLacking(stock, shed, engines);
  const more = wanted.ownBlocks ? { ...all, blocks: stock.blocks } : all;
  const seek = (single?: number) => {
    const brief = {
      engine,
      needed: needsOf(shed),
      stock: more,
      fits: new FitTable(engine, more.shells, bandOf),
      least: -Infinity,
      batches: batchesOf(stock, single),
      clock: solver.clock,
      ...(mostPerEngine < Infinity && { mostPerEngine }),
    };
    const draft = formulate(brief);
    return { brief, draft, ...fewest(wanted, draft) };
  };
  try {
    // As with the builds: together first, and separately only if an engine is too dear.
    let sought = seek();
    const isTooDear = (each: Assembly) => assemblyCost(each) > mostPerEngine;
    if (
      sought.status === 'optimal' &&
      assemble(sought.brief, sought.draft, sought.values).some(isTooDear)
    ) {
      sought = seek(engines);
    }
    if (sought.status === 'infeasible') {
      if (wanted.ownBlocks) return 'none';
      // Only a clearance that no part can make hold stands in the way of an engine of parts of any size.
      return bandOf === undefined ? 'solver failure' : { lacks: [] };
    }
    return sought.status === 'optimal' ? nextEngine(sought.draft, sought.values) : sought.status;
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return 'time limit';
  }
}

/** Asks for the fewest parts, then the least work with those, then the smallest steps. */
function fewest(
  { shed, engines, solver }: Wanted,
  draft: Draft,
): Pick<Solution, 'status' | 'values'> {
  const where = [{ terms: draft.engines, min: engines, max: engines }];
  // An engine cannot lack more parts than it has, and no part is harder to find than a block. So one
  // more part always weighs more than the difficulty of all parts.
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
    const sum = sumOfTerms(terms, values);
    return { terms, min: sum, max: sum };
  };
  // Otherwise a journal could be ground just because shells are missing.
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

/** The missing parts that the solution uses. */
function nextEngine({ lacking }: Draft, values: readonly number[]): NextEngine {
  const parts = new Map<Kind<unknown>, number>();
  for (const [term, kind] of lacking) {
    parts.set(kind, (parts.get(kind) ?? 0) + sumOfTerms([term], values));
  }
  return {
    lacks: [...parts]
      .filter(([, count]) => count > 0)
      .map(([kind, count]) => lackingPart(kind, count))
      .sort(
        (a, b) =>
          SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section) ||
          Number(a.fits === 'rods') - Number(b.fits === 'rods'),
      ),
  };
}

/** Terms that count how many steps up the missing parts are. */
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

/** The number of parts in one engine, counted as the search counts them. */
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
