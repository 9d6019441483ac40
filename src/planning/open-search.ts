import type { Length } from '../quantities/index.js';
import { sameStep } from '../reading/index.js';
import { assemble } from './assemble.js';
import { partsTaken } from './assembly.js';
import type { Brief } from './brief.js';
import type { Draft } from './draft.js';
import { formulate } from './formulate.js';
import type { Kind, Member } from './kinds.js';
import { leastInTurn } from './least-in-turn.js';
import { type Row, sumOfTerms, type Term, upTo } from './model.js';
import { type Ended, oneByOneIfNeeded, type Solved } from './one-by-one.js';
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
}

/** A variable that counts parts that are not known. */
interface Unknown {
  readonly at: number;
  /** How many things of one are to be measured. */
  readonly things: number;
  /** How much more it takes to get at one. */
  readonly apart: number;
}

/**
 * The parts that are not known that a plan takes, each with how many things of it are to be measured. A lot of parts that
 * are all alike is measured once, however many of them are taken: it gets a variable that is 1 if any is.
 */
function unknownIn({ model, taken }: Draft): readonly Unknown[] {
  return [...taken].flatMap(([kind, terms]) => {
    const { unknown: things, apart = 0, count, members } = kind;
    if (things === undefined) return [];
    if (count === members.length) return terms.map(([at]) => ({ at, things, apart }));
    const at = model.variable(1);
    model.rows.push(upTo([...terms, [at, -count]], 0));
    return [{ at, things, apart }];
  });
}

/**
 * What is to be least, one after the other, for the fewest parts that are not known: these parts, then the things to
 * measure. A part that is still in an engine counts twice, and three times if that engine ran. Empty if all is known.
 */
export function fewestFirst(draft: Draft): readonly (readonly Term[])[] {
  const unknown = unknownIn(draft);
  if (unknown.length === 0) return [];
  return [
    unknown.map(({ at, apart }): Term => [at, 1 + apart]),
    unknown.map(({ at, things: by }): Term => [at, by]),
  ];
}

/**
 * What is to be least among plans that are equal otherwise, so that crankshafts come first that are marked as a step of
 * which there are shells. Empty if there are none. A mark is no measurement: nothing is counted on it.
 */
export function markedLast({ taken }: Draft): readonly (readonly Term[])[] {
  const kinds = [...taken.keys()];
  const hasShells = (step: Length) =>
    kinds.some(({ section, unknown, lacking, ready }) => {
      const { step: its } = ready as { readonly step?: Length };
      const isThere = section === 'shells' && unknown === undefined && !lacking;
      return isThere && its !== undefined && sameStep(its, step);
    });
  const marked = kinds.filter((kind) => kind.marked?.some(hasShells));
  if (marked.length === 0) return [];
  return [marked.flatMap((kind) => taken.get(kind) ?? []).map(([at]): Term => [at, -1])];
}

/**
 * Among the plans that keep some rows, finds the one that takes the fewest parts that are not known, then has the
 * fewest things to measure, then costs least; among equals it takes crankshafts that are marked as shells at hand are.
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
  return {
    engines: sumOfTerms(draft.engines, values),
    cost: sumOfTerms(draft.cost, values),
    parts: openParts(found),
  };
}

/** The parts that an answer takes and that are not known, each once. */
export function openParts({ brief, draft, values }: Omit<Solved, 'found'>): readonly OpenPart[] {
  const taken = assemble(brief, draft, values).flatMap(partsTaken);
  const open = taken.filter(({ kind }) => kind.unknown !== undefined);
  return [...new Map(open.map((each) => [each.member.name, each])).values()];
}
