import { borePlan, pistonClearanceSpan, ringFilingNeeded } from '../../cylinders/index.js';
import type { Span } from '../../judging/index.js';
import { kindestShape } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import {
  type Check,
  checkIfGiven,
  type FileProblem,
  guardRingGapLimits,
} from '../../reading/index.js';
import type { BorePlace } from '../shed.js';
import { type Placed, partsIn, placed, type SoundShed } from './sound-shed.js';

/** Checks that bores, pistons and rings have sizes that could go together. */
export function boreChecks(shed: SoundShed): readonly Check[] {
  const { standard, ringGap } = shed.engine?.bores ?? {};
  if (standard === undefined) return [];
  return [
    ...checkIfGiven('engine.bores.ringGap', ringGap, (limits) =>
      guardRingGapLimits(standard.min, limits),
    ),
    ...boresIn(shed).flatMap(({ path, part }) =>
      checkIfGiven(path, part, (bore) => guardBore(bore, standard)),
    ),
    ...partsIn(shed, 'pistonSets').flatMap(({ path, part: { pistons = [], oversize } }) =>
      placed(pistons, `${path}.pistons`).flatMap(({ path: at, part: { diameter: piston } }) =>
        checkIfGiven(`${at}.diameter`, oversize, (step) =>
          piston === undefined
            ? undefined
            : pistonClearanceSpan({ bore: boredTo(standard, step), piston }),
        ),
      ),
    ),
    ...partsIn(shed, 'ringSets').flatMap(({ path, part: { rings = [], oversize } }) =>
      placed(rings, `${path}.rings`).flatMap(({ path: at, part: { gap, measuredIn } }) =>
        checkIfGiven(at, oversize, (step) =>
          ringFilingNeeded({ gap, measuredIn, smallestBore: boredTo(standard, step).min }),
        ),
      ),
    ),
  ];
}

/** A measured wall needs a limit to be judged by. */
export function leastWallMissing(shed: SoundShed): readonly FileProblem[] {
  const bores = shed.engine?.bores;
  if (!bores || Object.hasOwn(bores, 'leastWall')) return [];
  const measured = boresIn(shed).find(({ part }) => part.wall !== undefined);
  if (!measured) return [];
  const message = `is missing, but the wall of ${measured.path}, "${measured.part.name}", was measured`;
  return [{ path: 'engine.bores.leastWall', message }];
}

function boresIn(shed: SoundShed): readonly Placed<BorePlace>[] {
  return partsIn(shed, 'blocks').flatMap(({ path, part }) =>
    placed(part.bores ?? [], `${path}.bores`),
  );
}

function guardBore({ name, readings = [], ringTravel }: BorePlace, standard: Span<Length>): void {
  const shape = kindestShape(readings, ringTravel);
  if (shape === undefined) return;
  const { smallest, largest, outOfRound, taper } = shape;
  const cylinders = [{ name, smallest, largest, outOfRound, taper }];
  borePlan({ cylinders, standard, steps: [0 as Length] });
}

function boredTo({ min, max }: Span<Length>, oversize: Length): Span<Length> {
  return { min: (min + oversize) as Length, max: (max + oversize) as Length };
}
