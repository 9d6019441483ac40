import type { Dimension, Quantity } from '../quantities/index.js';
import type { Basis } from './basis.js';
import type { Limits } from './limits.js';
import type { BasedLimits } from './own-limits.js';

/** How a value stands to its limits. */
export type Verdict = 'within' | 'below' | 'above' | 'undecided';

/**
 * How a used part stands. `as new`: within the limits of new parts. `serviceable`: within the service
 * limit. `worn out`: past the service limit of this engine. `out of limits`: outside limits that its
 * owner set, where no service limit is known. `undecided`: the readings or the limits do not tell. A
 * rule of thumb or the limit of another engine never condemns a part.
 */
export type Grade = 'as new' | 'serviceable' | 'worn out' | 'out of limits' | 'undecided';

/** Every grade, best first. */
export const GRADES = ['as new', 'serviceable', 'undecided', 'out of limits', 'worn out'] as const;

/** A verdict, and the end of the limits that the value is nearer to. */
interface Standing {
  readonly verdict: Verdict;
  readonly end: 'min' | 'max';
}

/** Grades a used part by how it stands to its limits, and to the service limit if there is one. */
export function gradeOf<D extends Dimension>(
  { verdict, end }: Standing,
  { limitsOf, basis, service }: BasedLimits<D>,
  againstService: (limits: Limits<Quantity<D>>) => Verdict,
): Grade {
  if (verdict === 'within') return limitsOf === 'service' ? 'serviceable' : 'as new';
  // Wear takes a part one way: the other end of the limits has no service limit.
  if (service?.limits[end] !== undefined) {
    const worn = againstService(service.limits);
    if (worn === 'within') return 'serviceable';
    return worn === 'undecided' || !isOfThisEngine(service.basis) ? 'undecided' : 'worn out';
  }
  if (verdict === 'undecided' || !isOfThisEngine(basis)) return 'undecided';
  return limitsOf === 'service' ? 'worn out' : 'out of limits';
}

/** Whether a limit is that of the engine on the bench, and so may condemn a part. */
function isOfThisEngine(basis: Basis): boolean {
  return basis.kind === 'specified' || (basis.kind === 'published' && !basis.forAnotherEngine);
}

/** Whether a part may stay as it is by this finding. Unknown is not good. */
export function holds({
  verdict,
  grade,
}: {
  readonly verdict: Verdict;
  readonly grade?: Grade;
}): boolean {
  return verdict === 'within' || grade === 'serviceable';
}
