import { isTest } from '../shed/internal.js';
import type { Build } from './plan-types.js';

/** The machining and repairs of an engine: a test changes nothing of a part. */
export const workIn = ({ jobs }: Pick<Build, 'jobs'>): Build['jobs'] =>
  jobs.filter(({ work }) => !isTest(work));
