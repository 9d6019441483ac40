import { outsideLength } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';

/**
 * The most that clearance, or interference, can be in what was ever one bearing. Common practice:
 *
 * A journal ground 0.060 in under in standard shells, or shells for one on a journal that is
 * standard, is a mistake that engines come in with, and `explainClearance` names it. With what a
 * knocking bearing wears besides, that is up to 2 mm. A digit that slipped by a tenth of an inch is
 * past it. Journals of more than 100 mm are ground by more, so they may be apart by a fiftieth; those of
 * less than 20 mm by less, so they may by a tenth.
 */
export const mostApart = (journal: Length): Length =>
  Math.min(journal / 10, Math.max(0.002, journal / 50)) as Length;

/** The diametral clearance that a journal has; refuses three sizes that were never one bearing. */
export function guardOneBearing(housingBore: Length, shellWall: Length, journal: Length): Length {
  const left = housingBore - 2 * shellWall;
  const most = mostApart(journal);
  // In thin shells, what is apart by less may still not enter its housing.
  if (Math.abs(left - journal) <= most && journal < housingBore) return (left - journal) as Length;
  throw outsideLength(
    'journal',
    journal,
    { least: left - most, most: Math.min(left + most, housingBore) },
    'Check digits, units and bearings.',
  );
}
