import { assemble } from './assemble.js';
import type { Brief } from './brief.js';
import type { Draft } from './draft.js';
import { formulate } from './formulate.js';
import { marginsOf } from './margins-of.js';
import { type Row, sumOfTerms } from './model.js';
import type { Solution, Solver } from './solver.js';

/** A plan as the counts of a model. */
export interface SolvedPlan {
  readonly brief: Brief;
  readonly draft: Draft;
  readonly values: readonly number[];
}

/** So many clearances have a margin of this or less, none of them one between this and the settled one before it. */
export interface Settled {
  /** The margin [nm]. */
  readonly margin: number;
  readonly count: number;
}

/** A plan with the widest next tightest margins, and what is settled of them. */
export interface Widened extends SolvedPlan {
  readonly settled: readonly Settled[];
  /** Why the search stopped before they were proven. */
  readonly stopped?: Solution['status'];
}

/**
 * Widens the margins of a plan in turn: as few clearances as possible at the tightest margin, then at the next
 * tightest, and so on, until so many clearances are settled. What `won` says of a model stays as it is.
 */
export function leximin(
  start: SolvedPlan,
  depth: number,
  won: (draft: Draft) => readonly Row[],
  solver: Solver,
): Widened {
  let best = start;
  let margins = marginsOf(best.brief, assemble(best.brief, best.draft, best.values));
  const settled: Settled[] = [];
  for (let done = 0; done < Math.min(depth, margins.length); ) {
    const next = margins[done] as number;
    const levels = settled.map(({ margin }) => margin);
    // This plan has no clearance between what is settled and the next [nm].
    const brief: Brief = { ...start.brief, levels, above: next - 1, upTo: next };
    const draft = formulate(brief);
    const tightest = draft.within(settled.length);
    const { status, values } = solver.solve('equal plans', draft.model, {
      goal: 'least',
      of: tightest,
      where: [...won(draft), ...settledIn(draft, settled)],
    });
    if (status !== 'optimal') return { ...best, settled, stopped: status };
    best = { brief, draft, values };
    margins = marginsOf(brief, assemble(brief, draft, values));
    const count = sumOfTerms(tightest, values);
    // The last one may have none: there is nothing left to be wider.
    if (count > done || margins.length <= count) settled.push({ margin: next, count });
    done = count;
  }
  return { ...best, settled };
}

/** Rows: what is settled stays so. */
export function settledIn(draft: Draft, settled: readonly Settled[]): readonly Row[] {
  return settled.map(({ count }, level) => ({
    terms: draft.within(level),
    min: -Infinity,
    max: count,
  }));
}
