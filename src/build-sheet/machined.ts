import type { BuildJob } from '../planning/index.js';

/** Work that makes a bore to the size of its piston. */
export const isBored = ({ work }: Pick<BuildJob, 'work'>): boolean =>
  work === 'bore' || work === 'sleeve';

/** Work that makes a journal to the size of its shells. */
export const isGround = ({ work }: Pick<BuildJob, 'work'>): boolean =>
  work === 'grind rod journals' || work === 'grind main journals';
