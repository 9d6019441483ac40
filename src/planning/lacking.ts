import { undersizeSteps } from '../crankshaft/index.js';
import { oversizeSteps } from '../cylinders/index.js';
import type { Length } from '../quantities/index.js';
import type { Shed } from '../shed/index.js';
import { needsOf, SECTIONS } from '../shed/internal.js';
import { forbid, missingIn } from './alternatives.js';
import { assemble } from './assemble.js';
import { type Assembly, assemblyCost } from './assembly.js';
import { batchesOf } from './batches.js';
import { TimeUp } from './clock.js';
import { isInCompany } from './company.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import type { BandOf } from './guard-bands.js';
import { hardToGet } from './hard-to-get.js';
import type { Kind } from './kinds.js';
import { withLacking } from './lacking-stock.js';
import type { LackingPart, NextEngine } from './left-over-types.js';
import { type Row, sumOfTerms, type Term } from './model.js';
import type { Unproven } from './proof-types.js';
import type { Solution, Solver } from './solver.js';
import type { Stock } from './stock.js';

/** The most sets of parts that are told. */
const MOST_ALTERNATIVES = 8;

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
 * Finds the parts, of whatever size fits, that complete the number of engines wanted and are the easiest to get, and
 * every other set of parts that is as easy. Otherwise returns why the search ended, or that no parts complete blocks of
 * the stock.
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
    return { brief, draft, ...easiest(wanted, draft) };
  };
  try {
    // As with the builds: together first, and separately only if an engine is too dear.
    let sought = seek();
    const isWrong = (each: Assembly) => assemblyCost(each) > mostPerEngine || !isInCompany(each);
    if (
      sought.status === 'optimal' &&
      assemble(sought.brief, sought.draft, sought.values).some(isWrong)
    ) {
      sought = seek(engines);
    }
    if (sought.status === 'infeasible') {
      if (wanted.ownBlocks) return 'none';
      // Only a clearance that no part can make hold stands in the way of an engine of parts of any size.
      return { lacks: [], alternatives: [] };
    }
    return sought.status === 'optimal' ? nextEngine(wanted, sought) : sought.status;
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return 'time limit';
  }
}

/** Parts that are the easiest to get, as a solution, and what every other set that is as easy must keep to. */
interface Easiest extends Pick<Solution, 'status' | 'values'> {
  readonly asEasy: readonly Row[];
}

/** Asks for the parts that are the easiest to get, then the least work with those, then the smallest steps. */
function easiest({ shed, engines, solver }: Wanted, draft: Draft): Easiest {
  const where = [{ terms: draft.engines, min: engines, max: engines }];
  const weights = draft.lacking.map(([[variable, count], { section, ready }]): Term => {
    const { of: kind } = ready as { readonly of?: string };
    return [variable, count * hardToGet(shed, section, kind)];
  });
  const first = solver.solve('next engine', draft.model, { goal: 'least', of: weights, where });
  if (first.status !== 'optimal') return { ...first, asEasy: [] };
  let values = first.values;
  const asGood = (terms: readonly Term[]) => {
    const sum = sumOfTerms(terms, values);
    return { terms, min: sum, max: sum };
  };
  // Otherwise a journal could be ground just because shells are missing.
  const alike = [...where, asGood(weights)];
  const cheaper = solver.solve('next engine', draft.model, {
    goal: 'least',
    of: draft.cost,
    where: alike,
    from: values,
  });
  if (cheaper.status !== 'optimal') return { status: 'optimal', values, asEasy: [] };
  values = cheaper.values;
  const asEasy = [...alike, asGood(draft.cost)];
  const of = stepsOf(draft, shed);
  const smaller = solver.solve('next engine', draft.model, {
    goal: 'least',
    of,
    where: asEasy,
    from: values,
  });
  if (smaller.status === 'optimal') values = smaller.values;
  return { status: 'optimal', values, asEasy };
}

/** What the next engine lacks by a solution, and every other set of parts that would do as well. */
function nextEngine(
  { shed, solver, ownBlocks }: Wanted,
  { draft, values, asEasy }: Easiest & { readonly draft: Draft },
): NextEngine {
  const lacks = lackingIn(draft, values);
  const alternatives: (readonly LackingPart[])[] = [];
  const where = [...asEasy];
  const of = stepsOf(draft, shed);
  let last = values;
  // Of certain blocks it is enough to know what they lack; and without these rows it is not known what is as easy.
  let mayBeMore = ownBlocks === true || asEasy.length === 0;
  while (!mayBeMore) {
    where.push(forbid(draft, missingIn(draft, last), last));
    const other = solver.solve('next engine', draft.model, { goal: 'least', of, where });
    if (other.status === 'infeasible') break;
    mayBeMore = other.status !== 'optimal' || alternatives.length === MOST_ALTERNATIVES;
    if (mayBeMore) break;
    alternatives.push(lackingIn(draft, other.values));
    last = other.values;
  }
  return { lacks, alternatives, ...(mayBeMore && { mayBeMore: true as const }) };
}

/** The missing parts that the solution uses. */
function lackingIn({ lacking }: Draft, values: readonly number[]): readonly LackingPart[] {
  const parts = new Map<Kind<unknown>, number>();
  for (const [term, kind] of lacking) {
    parts.set(kind, (parts.get(kind) ?? 0) + sumOfTerms([term], values));
  }
  return [...parts]
    .filter(([, count]) => count > 0)
    .map(([kind, count]) => lackingPart(kind, count))
    .sort(
      (a, b) =>
        SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section) ||
        Number(a.fits === 'rods') - Number(b.fits === 'rods'),
    );
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

function lackingPart({ section, ready }: Kind<unknown>, count: number): LackingPart {
  const { fits, step, of } = ready as {
    readonly fits?: 'rods' | 'mains';
    readonly step?: Length;
    readonly of?: string;
  };
  return {
    section,
    ...(of !== undefined && { kind: of }),
    ...(fits !== undefined && { fits }),
    ...(step !== undefined && { step }),
    count,
  };
}
