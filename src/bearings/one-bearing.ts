import { outsideLength, showLength } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';

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
  if (isOneBearing(housingBore, shellWall, journal)) return (left - journal) as Length;
  const slipped = likelySlip(housingBore, shellWall, journal);
  if (slipped !== undefined) {
    throw new RebuildInputError({
      parameter: 'journal',
      value: journal,
      shown: showLength(journal),
      expected: 'one that goes with the housing bore and the shell wall',
      hint: `${slipped}. Check digits, units and bearings.`,
    });
  }
  throw outsideLength(
    'journal',
    journal,
    { least: left - most, most: Math.min(left + most, housingBore) },
    'Check digits, units and bearings.',
  );
}

function isOneBearing(housingBore: number, shellWall: number, journal: number): boolean {
  const clearance = housingBore - 2 * shellWall - journal;
  // In thin shells, what is apart by less may still not enter its housing.
  return Math.abs(clearance) <= mostApart(journal as Length) && journal < housingBore;
}

/** The slip that alone explains the three: a decimal point that moved by a place, or both halves given as one wall. */
function likelySlip(housingBore: number, shellWall: number, journal: number): string | undefined {
  const found = [0.1, 10]
    .flatMap((by) => [
      isOneBearing(housingBore, by * shellWall, journal) && sayMoved('shell wall', shellWall, by),
      isOneBearing(by * housingBore, shellWall, journal) &&
        sayMoved('housing bore', housingBore, by),
      isOneBearing(housingBore, shellWall, by * journal) && sayMoved('journal', journal, by),
    ])
    .concat(
      // Whoever adds up both halves has measured shells that the journal enters.
      housingBore - shellWall >= journal &&
        isOneBearing(housingBore, shellWall / 2, journal) &&
        sayMeant('first whether the shell wall is that of both halves', shellWall / 2, shellWall),
    )
    .filter((said) => said !== false);
  return found.length === 1 ? found[0] : undefined;
}

const sayMoved = (name: string, read: number, by: number): string =>
  sayMeant(`at the decimal point of the ${name} first`, by * read, read);

const sayMeant = (where: string, meant: number, read: number): string =>
  `Look ${where}: ${showLength(meant)}, not ${showLength(read)}, would go with the other two`;
