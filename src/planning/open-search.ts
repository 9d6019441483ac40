import type { Length } from '../quantities/index.js';
import { sameStep } from '../reading/index.js';
import { assemble } from './assemble.js';
import type { Assembly } from './assembly.js';
import type { Brief } from './brief.js';
import type { Draft } from './draft.js';
import { formulate } from './formulate.js';
import type { Kind, Member } from './kinds.js';
import { leastInTurn } from './least-in-turn.js';
import { type Row, sumOfTerms, type Term, upTo } from './model.js';
import { ofOneEngine } from './of-one-engine.js';
import { type Ended, oneByOneIfNeeded } from './one-by-one.js';
import type { Solver } from './solver.js';

/** A part that is not known, as a plan takes it. */
export interface OpenPart {
  readonly kind: Kind<unknown>;
  readonly member: Member;
}

/** The engines that there may be, with the fewest parts that are not known. */
export interface OpenPlan {
  readonly engines: number;
  /** Their cost at best [thousandths]. */
  readonly cost: number;
  /** The parts of it that are not known, each once. */
  readonly parts: readonly OpenPart[];
  /** Its engines, part by part. */
  readonly assemblies: readonly Assembly[];
}

/** A variable that counts parts that are not known. */
interface Unknown {
  readonly at: number;
  /** How many things of one are to be measured. */
  readonly things: number;
  /** What it takes to measure one: 1 for a loose part. */
  readonly effort: number;
  /** How unlikely one turns out good. */
  readonly unlikely: number;
}

/**
 * The parts that are not known that a plan takes, each with how many things of it are to be measured. A lot of parts that
 * are all alike is measured once, however many of them are taken: it gets a variable that is 1 if any is.
 */
function unknownIn({ model, taken }: Draft): readonly Unknown[] {
  return [...taken].flatMap(([kind, terms]) => {
    const { unknown: things, unlikely = 0, apart = 0, count, members } = kind;
    if (things === undefined) return [];
    const one = { things, unlikely, effort: 1 + apart };
    if (count === members.length) return terms.map(([at]) => ({ at, ...one }));
    const at = model.variable(1);
    model.rows.push(upTo([...terms, [at, -count]], 0));
    return [{ at, ...one }];
  });
}

/**
 * What is to be least, one after the other, for the parts that are not known: the effort to measure them, which is 1 for a
 * loose part and more for one that is still in an engine; then how unlikely it is that all of them turn out good; then
 * the things to measure. Empty if all is known.
 */
export function fewestFirst(draft: Draft): readonly (readonly Term[])[] {
  const unknown = unknownIn(draft);
  if (unknown.length === 0) return [];
  const sums = ['effort', 'unlikely', 'things'] as const;
  return sums.map((sum) => unknown.map((each): Term => [each.at, each[sum]]));
}

/** Whether the mark on a crankshaft that is not known tells for it or against it: whether there are shells of its step. */
export function signOfMark({ marked }: Kind<unknown>, kinds: readonly Kind<unknown>[]): number {
  if (marked === undefined) return 0;
  const shells = kinds.filter(({ section, lacking }) => section === 'shells' && !lacking);
  const steps = shells.map(({ ready }) => (ready as { readonly step?: Length }).step);
  const isThere = (step: Length) => steps.some((its) => its !== undefined && sameStep(its, step));
  if (marked.some(isThere)) return 1;
  // Shells of a step that is not known, or made to suit, may be of this one.
  return steps.includes(undefined) ? 0 : -1;
}

/**
 * What is to be least among plans that are equal otherwise, so that crankshafts come first that take shells of the step
 * they are marked as, and those last that take others. Empty if none is marked. A mark is no measurement: nothing is
 * counted on it.
 */
export function markedLast({ taken, uses }: Draft): readonly (readonly Term[])[] {
  const kinds = [...taken.keys()];
  const terms = uses.flatMap((each, at): readonly Term[] => {
    if (each.use !== 'mains' && each.use !== 'rod journals') return [];
    const { kind, way } = each;
    // An engine whose mains have no shells has nothing to agree with the mark.
    if (kind.marked === undefined || way.sizes.length === 0) return [];
    if (!kind.marked.some((step) => sameStep(step, way.step))) return [[at, 1]];
    return signOfMark(kind, kinds) > 0 ? [[at, -1]] : [];
  });
  return terms.length === 0 ? [] : [terms];
}

/**
 * Among the plans that keep some rows, finds the one whose parts that are not known take the least effort, then are the
 * likeliest good, then have the fewest things to measure; then the one that costs least; among equals it takes crankshafts with shells of the step they are marked as.
 * Undefined if there is no such plan.
 */
export function fewestUnknown(
  brief: Brief,
  rowsOf: (draft: Draft) => readonly Row[],
  solver: Solver,
): OpenPlan | undefined | Ended {
  const found = oneByOneIfNeeded(brief, (each, atBest) => {
    const draft = formulate(each);
    const sums = [...fewestFirst(draft), draft.cost, ...markedLast(draft)];
    const ask = { solver, stage: 'measure first', draft, sums, where: rowsOf(draft) } as const;
    const least = leastInTurn({ ...ask, ...(atBest && { atBest }) });
    if (least.status === 'infeasible') return undefined;
    return least.status === 'optimal' ? { brief: each, draft, ...least } : least.status;
  });
  if (typeof found !== 'object') return found;
  const { draft, values } = found;
  const assemblies = assemble(found.brief, draft, values);
  return {
    engines: sumOfTerms(draft.engines, values),
    cost: sumOfTerms(draft.cost, values),
    parts: openParts(assemblies),
    assemblies,
  };
}

/** The parts of engines that are not known, each once. */
export function openParts(assemblies: readonly Assembly[]): readonly OpenPart[] {
  const open = ofOneEngine(assemblies).filter(({ kind }) => kind.unknown !== undefined);
  return [...new Map(open.map((each) => [each.member.name, each])).values()];
}
