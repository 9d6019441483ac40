import { assemble } from './assemble.js';
import { partsOf } from './assembly.js';
import type { Brief } from './brief.js';
import type { Draft } from './draft.js';
import { formulate } from './formulate.js';
import type { Kind, Member } from './kinds.js';
import { type Row, sumOfTerms, type Term } from './model.js';
import type { Unproven } from './proof-types.js';
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
  readonly draft: Draft;
  readonly values: readonly number[];
}

/** Why a search ended without an answer. */
export type Ended = Unproven['kind'];

/**
 * The parts that are not known that a plan takes, each with how many things of it are to be measured. A lot of parts that
 * are all alike is measured once, however many of them are taken: it gets a variable that is 1 if any is.
 */
function unknownIn({ model, taken }: Draft): readonly (readonly [term: Term, things: number])[] {
  return [...taken].flatMap(([kind, terms]) => {
    const { unknown: things, count, members } = kind;
    if (things === undefined) return [];
    if (count === members.length) return terms.map((term) => [term, things] as const);
    const any: Term = [model.variable(1), 1];
    model.rows.push({ terms: [...terms, [any[0], -count]], min: -Infinity, max: 0 });
    return [[any, things] as const];
  });
}

/**
 * Among the plans that keep some rows, finds the one that takes the fewest parts that are not known, then has the
 * fewest things to measure, then costs least. Undefined if there is no such plan.
 */
export function fewestUnknown(
  brief: Brief,
  rowsOf: (draft: Draft) => readonly Row[],
  solver: Solver,
): OpenPlan | undefined | Ended {
  const draft = formulate(brief);
  const unknown = unknownIn(draft);
  const parts = unknown.map(([term]) => term);
  const things = unknown.map(([[variable], by]): Term => [variable, by]);
  const rows = [...rowsOf(draft)];
  let values: readonly number[] = [];
  for (const of of [parts, things, draft.cost]) {
    const from = values.length > 0 ? { from: values } : {};
    const question = { goal: 'least', of, where: rows, ...from } as const;
    const found = solver.solve('measure first', draft.model, question);
    if (found.status === 'infeasible') return undefined;
    if (found.status !== 'optimal') return found.status;
    values = found.values;
    rows.push({ terms: of, min: -Infinity, max: sumOfTerms(of, values) });
  }
  return openPlan(brief, draft, values);
}

/** A plan of parts that may be good. */
function openPlan(brief: Brief, draft: Draft, values: readonly number[]): OpenPlan {
  const taken = assemble(brief, draft, values).flatMap(partsOf);
  const open = taken.filter(({ kind }) => kind.unknown !== undefined);
  return {
    engines: sumOfTerms(draft.engines, values),
    cost: sumOfTerms(draft.cost, values),
    parts: [...new Map(open.map((each) => [each.member.name, each])).values()],
    draft,
    values,
  };
}
