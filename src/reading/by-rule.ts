import type { GrindPlan, GrindReason } from '../crankshaft/index.js';
import type { BorePlan, BoreReason } from '../cylinders/index.js';
import type { Limits } from '../judging/index.js';
import type { Shape } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { canHold } from './fits.js';

/**
 * Whether rules of thumb alone ask for the machining of a plan, past every limit of another engine that would leave it
 * in doubt at which step: no fault was seen, no own limit is passed, and the clearance that the engine states, if it
 * states one, could be held over all that the worn places measure.
 */
export function isByRule(
  plan: BorePlan | GrindPlan,
  worn: readonly Pick<Shape, 'smallest' | 'largest'>[],
  clearance: Limits<Length> | undefined,
): boolean {
  if (plan.outcome === 'none' || plan.outcome === 'use as it is' || plan.inDoubt) return false;
  const because: readonly (BoreReason | GrindReason)[] = plan.because;
  const shapes = because.flatMap((reason) => (reason.kind === 'shape' ? [reason.finding] : []));
  return (
    shapes.length > 0 &&
    shapes.every(({ verdict, grade }) => verdict !== 'undecided' && grade === 'undecided') &&
    because.every(({ kind }) => kind !== 'faults') &&
    worn.every(({ smallest, largest }) => canHold(largest - smallest, clearance, undefined))
  );
}

/** That only a rule of thumb asks for work, and what to find before it is done: a sentence without a full stop. */
export const sayByRule = (work: 'bore' | 'grind'): string =>
  `in doubt: only rules of thumb ask for it; find the maker's service limit before you ${work}`;
