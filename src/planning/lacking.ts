import type { Length } from '../quantities/index.js';
import type { Shed } from '../shed/index.js';
import { needsOf } from '../shed/internal.js';
import { forbid, missingIn } from './alternatives.js';
import { assemble } from './assemble.js';
import { batchesOf } from './batches.js';
import type { Brief } from './brief.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import type { BandOf } from './guard-bands.js';
import { hardToGet } from './hard-to-get.js';
import { lackingIn } from './lacking-parts.js';
import { withLacking } from './lacking-stock.js';
import { leastInTurn } from './least-in-turn.js';
import type { LackingPart, NextEngine } from './left-over-types.js';
import { exactly, type Row, sumOfTerms, type Term, upTo } from './model.js';
import { type Ended, oneByOne, oneByOneIfNeeded, type Solved, stands } from './one-by-one.js';
import { fewestFirst, markedLast, type OpenPart, openParts } from './open-search.js';
import type { Solver } from './solver.js';
import { stepsFor } from './steps-for.js';
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
export function lackingFor(wanted: Omit<Wanted, 'ownBlocks'>): NextEngine | Ended;
export function lackingFor(wanted: Wanted): NextEngine | Ended | 'none';
export function lackingFor(wanted: Wanted): NextEngine | Ended | 'none' {
  return unlessTimeIsUp(() => {
    const sought = easiest(wanted, briefFor(wanted));
    // Only a clearance that no part can make hold stands in the way of an engine of parts of any size.
    if (sought === undefined) return wanted.ownBlocks ? 'none' : { lacks: [], alternatives: [] };
    if (typeof sought === 'string') return sought;
    const exact = stands(sought) ? sought : standingAs(wanted, sought, sought.values);
    if (typeof exact === 'object') return nextEngine(wanted, sought, exact);
    // The parts that would do for engines together do not for these one by one.
    const other = easiest(wanted, oneByOne(sought.brief, wanted.engines), sought.found);
    if (other === undefined) return wanted.ownBlocks ? 'none' : 'solver failure';
    return typeof other === 'object' ? nextEngine(wanted, other, other) : other;
  });
}

/** What completes the engines wanted with the parts of a stock that are not known: what is to be bought, and those parts. */
export interface ToBuy {
  readonly lacks: readonly LackingPart[];
  /** The fewest parts that are not known and that it takes. */
  readonly open: readonly OpenPart[];
}

/** Finds the parts that complete the engines wanted and are the easiest to get, if the parts that are not known are good. */
export function toBuyWith(wanted: Omit<Wanted, 'ownBlocks'>): ToBuy | undefined | Ended {
  return unlessTimeIsUp(() => {
    const brief = briefFor(wanted);
    const sought = oneByOneIfNeeded(brief, (each, atBest) => easiest(wanted, each, atBest));
    if (typeof sought !== 'object') return sought;
    const assemblies = assemble(sought.brief, sought.draft, sought.values);
    return { lacks: lackingIn(sought), open: openParts(assemblies) };
  });
}

function unlessTimeIsUp<T>(run: () => T): T | 'time limit' {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return 'time limit';
  }
}

/** Parts that are the easiest to get, as an answer, and what every other set that is as easy must keep to. */
interface Easiest extends Solved {
  readonly asEasy: readonly Row[];
}

/** The stock with what may be missing, and all that is asked of the engines. */
function briefFor({ shed, stock, engines, ownBlocks, solver, bandOf, ...rest }: Wanted): Brief {
  const { engine } = shed;
  const { mostPerEngine = Infinity } = rest;
  const all = withLacking(stock, shed, engines);
  const more = ownBlocks ? { ...all, blocks: stock.blocks } : all;
  return {
    engine,
    needed: needsOf(shed),
    stock: more,
    fits: new FitTable(engine, more.shells, bandOf),
    least: -Infinity,
    batches: batchesOf(stock),
    clock: solver.clock,
    ...(mostPerEngine < Infinity && { mostPerEngine }),
  };
}

/** Asks for the parts that are the easiest to get, then the least work with those, then the smallest steps. */
function easiest(
  { shed, engines, solver }: Wanted,
  brief: Brief,
  atBest: readonly number[] = [],
): Easiest | undefined | Ended {
  const draft = formulate(brief);
  const weights = draft.lacking.map(([[variable, count], { section, ready }]): Term => {
    const { of: kind } = ready as { readonly of?: string };
    return [variable, count * hardToGet(shed, section, kind)];
  });
  // Otherwise a journal could be ground just because shells are missing.
  const sums = [weights, ...fewestFirst(draft), draft.cost, ...markedLast(draft)];
  const where = [exactly(draft.engines, engines)];
  const ask = { solver, stage: 'next engine', draft } as const;
  const { status, values, found, rows } = leastInTurn({ ...ask, sums, where, atBest });
  if (found.length === 0 && status !== 'optimal') {
    return status === 'infeasible' ? undefined : status;
  }
  if (status !== 'optimal') return { brief, draft, values, found, asEasy: [] };
  const of = stepsUp(draft, shed);
  const question = { goal: 'least', of, where: rows, from: values } as const;
  const smaller = solver.solve('next engine', draft.model, question);
  const last = smaller.status === 'optimal' ? smaller.values : values;
  return { brief, draft, values: last, found, asEasy: rows };
}

/** What the next engine lacks by an answer, and every other set of parts that would do as well. */
function nextEngine(wanted: Wanted, sought: Easiest, exact: Standing): NextEngine {
  const lacks = lackingIn(exact);
  // Of certain blocks it is enough to know what they lack; and without these rows it is not known what is as easy.
  if (wanted.ownBlocks || sought.asEasy.length === 0) {
    return { lacks, alternatives: [], mayBeMore: true };
  }
  const { found: alternatives, mayBeMore } = othersThan(wanted, sought);
  return { lacks, alternatives, ...(mayBeMore && { mayBeMore: true as const }) };
}

interface Others {
  readonly found: readonly (readonly LackingPart[])[];
  /** Whether there may be more. */
  readonly mayBeMore: boolean;
}

/** Every other set of parts that would do as well. */
function othersThan(wanted: Wanted, sought: Easiest): Others {
  const { shed, solver } = wanted;
  const { brief, draft, asEasy } = sought;
  const found: (readonly LackingPart[])[] = [];
  const where = [...asEasy];
  const of = stepsUp(draft, shed);
  let last = sought.values;
  for (;;) {
    where.push(forbid(draft, missingIn(draft, last), last));
    const other = solver.solve('next engine', draft.model, { goal: 'least', of, where });
    if (other.status === 'infeasible') return { found, mayBeMore: false };
    if (other.status !== 'optimal' || found.length === MOST_ALTERNATIVES) {
      return { found, mayBeMore: true };
    }
    last = other.values;
    const answer = { brief, draft, values: last };
    const exact = stands(answer) ? answer : standingAs(wanted, sought, last);
    if (typeof exact === 'string') return { found, mayBeMore: true };
    if (exact) found.push(lackingIn(exact));
  }
}

/** An answer of which every engine stands. */
type Standing = Omit<Solved, 'found'>;

/** An answer that lacks the same and in which every engine stands on its own; undefined if there is none. */
function standingAs(
  { engines, solver }: Wanted,
  { brief, draft, values: asSought }: Easiest,
  values: readonly number[],
): Standing | undefined | Ended {
  const apart = oneByOne(brief, engines);
  const single = formulate(apart);
  const missing = missingIn(draft, values);
  const termsOf = (kinds: readonly unknown[]) =>
    single.lacking.flatMap(([term, kind]) => (kinds.includes(kind) ? [term] : []));
  const none = draft.lacking
    .map(([, kind]) => kind)
    .filter((kind) => missing.every(({ kinds }) => !kinds.includes(kind)));
  const where = [
    exactly(single.engines, engines),
    upTo(single.cost, sumOfTerms(draft.cost, asSought)),
    upTo(termsOf(none), 0),
    ...missing.map(({ kinds, terms }) => exactly(termsOf(kinds), sumOfTerms(terms, values))),
  ];
  const question = { goal: 'least', of: single.cost, where } as const;
  const solved = solver.solve('next engine', single.model, question);
  if (solved.status === 'infeasible') return undefined;
  if (solved.status !== 'optimal') return solved.status;
  return { brief: apart, draft: single, values: solved.values };
}

/** Terms that count how many steps up the missing parts are. */
function stepsUp({ lacking }: Draft, shed: Shed): readonly Term[] {
  const all = (['rodJournals', 'mainJournals', 'bores'] as const).flatMap((field) =>
    stepsFor(shed, field),
  );
  return lacking.flatMap(([[variable, count], { ready }]): readonly Term[] => {
    const { step } = ready as { readonly step?: Length };
    if (step === undefined) return [];
    const below = new Set(all.filter((each) => each < step)).size;
    return below > 0 ? [[variable, count * below]] : [];
  });
}
