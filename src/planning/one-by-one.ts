import { assemble } from './assemble.js';
import { type Assembly, assemblyCost } from './assembly.js';
import { batchesOf } from './batches.js';
import type { Brief } from './brief.js';
import { isInCompany } from './company.js';
import type { Draft } from './draft.js';
import { sumOfTerms } from './model.js';
import type { Unproven } from './proof-types.js';

/** Why a search ended without an answer. */
export type Ended = Unproven['outcome'];

/** An answer to a search, with what was searched. */
export interface Solved {
  readonly brief: Brief;
  readonly draft: Draft;
  readonly values: readonly number[];
  /** What the sums come to that it was sought by, one after the other. */
  readonly found: readonly number[];
}

/**
 * Searches the engines together. If parts that fit only with others then stand in different engines, or one engine costs
 * more than the limit, it searches each engine on its own: that is exact, but slow. Together there is always as good an
 * answer as one by one, so an answer that stands, or none at all, is exact too; and one by one none can be better.
 */
export function oneByOneIfNeeded<A extends Solved>(
  brief: Brief,
  seek: (brief: Brief, atBest?: readonly number[]) => A | undefined | Ended,
): A | undefined | Ended {
  const together = seek(brief);
  if (typeof together !== 'object' || stands(together)) return together;
  const engines = sumOfTerms(together.draft.engines, together.values);
  return seek(oneByOne(brief, engines), together.found);
}

/** The same search of each of so many engines on its own. */
export const oneByOne = (brief: Brief, engines: number): Brief => ({
  ...brief,
  batches: batchesOf(brief.stock, engines),
});

/** Whether every engine of an answer has the parts together that fit only together, and keeps to its cost limit. */
export function stands({ brief, draft, values }: Omit<Solved, 'found'>): boolean {
  if (brief.batches.some(({ single }) => single)) return true;
  const { mostPerEngine = Infinity } = brief;
  const isRight = (each: Assembly) => assemblyCost(each) <= mostPerEngine && isInCompany(each);
  return assemble(brief, draft, values).every(isRight);
}
