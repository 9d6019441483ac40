import type { Build, BuildBearing, BuildJob } from '../planning/index.js';

/** Work that makes a bore to the size of its piston. */
export const isBored = ({ work }: Pick<BuildJob, 'work'>): boolean =>
  work === 'bore' || work === 'sleeve';

/** Work that makes a journal to the size of its shells. */
export const isGround = ({ work }: Pick<BuildJob, 'work'>): boolean =>
  work === 'grind rod journals' || work === 'grind main journals';

/** Whether the shells of a bearing are made to suit it, and so after its journal and housing are finished. */
export const isMadeToSuit = ({ madeTo }: Pick<BuildBearing, 'madeTo'>): boolean =>
  madeTo !== undefined;

/** The bearings whose journals a job grinds. */
export const groundBy = (
  { work, places }: Pick<BuildJob, 'work' | 'places'>,
  { bearings }: Pick<Build, 'bearings'>,
): readonly BuildBearing[] =>
  bearings.filter(
    ({ kind, journal }) =>
      work === (kind === 'rods' ? 'grind rod journals' : 'grind main journals') &&
      places.includes(journal),
  );
