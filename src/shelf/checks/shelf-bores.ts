import { borePlan } from '../../cylinders/bore-plan.js';
import { pistonClearanceSpan } from '../../cylinders/piston-clearance.js';
import { ringFilingNeeded } from '../../cylinders/ring-filing.js';
import type { Span } from '../../judging/limits.js';
import { boreShape } from '../../measuring/bore.js';
import type { Length } from '../../quantities/dimensions.js';
import type { SheetProblem } from '../sheet-error.js';
import type { BorePlace } from '../shelf.js';
import { type Check, where } from './check.js';
import { guardRingGapLimits } from './sizes.js';
import { type Placed, partsIn, placed, type SoundShelf } from './sound-shelf.js';

/** Bores, pistons and rings must be sizes that could ever go together. */
export function boreChecks(shelf: SoundShelf): readonly Check[] {
  const { standard, ringGap } = shelf.engine?.bores ?? {};
  if (standard === undefined) return [];
  return [
    ...where('engine.bores.ringGap', ringGap, (limits) => guardRingGapLimits(standard.min, limits)),
    ...boresIn(shelf).flatMap(({ path, part }) =>
      where(path, part, (bore) => guardBore(bore, standard)),
    ),
    ...partsIn(shelf, 'pistonSets').flatMap(({ path, part: { pistons = [], oversize } }) =>
      placed(pistons, `${path}.pistons`).flatMap(({ path: at, part: { diameter: piston } }) =>
        where(`${at}.diameter`, oversize, (step) =>
          pistonClearanceSpan({ bore: boredTo(standard, step), piston }),
        ),
      ),
    ),
    ...partsIn(shelf, 'ringSets').flatMap(({ path, part: { rings = [], oversize } }) =>
      placed(rings, `${path}.rings`).flatMap(({ path: at, part: { gap, measuredIn } }) =>
        where(at, oversize, (step) =>
          ringFilingNeeded({ gap, measuredIn, smallestBore: boredTo(standard, step).min }),
        ),
      ),
    ),
  ];
}

/** A wall that was measured is to be judged by something. */
export function leastWallMissing(shelf: SoundShelf): readonly SheetProblem[] {
  const bores = shelf.engine?.bores;
  if (!bores || Object.hasOwn(bores, 'leastWall')) return [];
  const measured = boresIn(shelf).find(({ part }) => part.wall !== undefined);
  if (!measured) return [];
  const message = `is missing, and the wall of ${measured.path}, "${measured.part.name}", was measured`;
  return [{ path: 'engine.bores.leastWall', message }];
}

function boresIn(shelf: SoundShelf): readonly Placed<BorePlace>[] {
  return partsIn(shelf, 'blocks').flatMap(({ path, part }) =>
    placed(part.bores ?? [], `${path}.bores`),
  );
}

function guardBore({ name, readings, ringTravel }: BorePlace, standard: Span<Length>): void {
  const { smallest, largest, outOfRound, taper } = boreShape(
    readings,
    ringTravel === undefined ? {} : { ringTravel },
  );
  const cylinders = [{ name, smallest, largest, outOfRound, taper }];
  borePlan({ cylinders, standard, steps: [0 as Length] });
}

function boredTo({ min, max }: Span<Length>, oversize: Length): Span<Length> {
  return { min: (min + oversize) as Length, max: (max + oversize) as Length };
}
