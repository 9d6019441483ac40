import { wallsToSuit } from '../bearings/internal.js';
import type { Limits } from '../judging/index.js';
import type { BuildBearing, BuildCylinder } from '../planning/index.js';
import { type Length, minus, plus, times } from '../quantities/index.js';

// What a size may be for its clearance to be within limits at both ends of the
// sizes that go with it.

/** Journals in a housing with its shells. */
export function journalLimits(
  { housingBore, wall }: Pick<BuildBearing, 'housingBore' | 'wall'>,
  { min, max }: Limits<Length>,
): Limits<Length> {
  const widest = minus(housingBore.max, times(wall.min, 2));
  const tightest = minus(housingBore.min, times(wall.max, 2));
  return {
    ...(max !== undefined && { min: minus(widest, max) }),
    ...(min !== undefined && { max: minus(tightest, min) }),
  };
}

/** Housings for a journal with its shells. */
export function housingLimits(
  { journalSize, wall }: Pick<BuildBearing, 'journalSize' | 'wall'>,
  clearance: Limits<Length>,
): Limits<Length> {
  return around(
    plus(journalSize.min, times(wall.min, 2)),
    plus(journalSize.max, times(wall.max, 2)),
    clearance,
  );
}

/** Bores for a piston. */
export function boreLimits(
  { min, max }: BuildCylinder['pistonSize'],
  clearance: Limits<Length>,
): Limits<Length> {
  return around(min, max, clearance);
}

/** What lies around something, with that clearance. */
function around(smallest: Length, largest: Length, { min, max }: Limits<Length>): Limits<Length> {
  return {
    ...(min !== undefined && { min: plus(largest, min) }),
    ...(max !== undefined && { max: plus(smallest, max) }),
  };
}

/** Pistons for a bore. */
export function pistonLimits(
  { min, max }: BuildCylinder['boreSize'],
  clearance: Limits<Length>,
): Limits<Length> {
  return {
    ...(clearance.max !== undefined && { min: minus(max, clearance.max) }),
    ...(clearance.min !== undefined && { max: minus(min, clearance.min) }),
  };
}

/** Walls of shells for a housing and a journal. */
export const wallLimits = ({
  housingBore,
  journalSize,
  finding,
}: Pick<BuildBearing, 'housingBore' | 'journalSize' | 'finding'>): Limits<Length> =>
  wallsToSuit(housingBore, journalSize, finding.limits);
