import { type Judged, mayFail } from './clearances.js';

/** A clearance that holds with less than this is to be measured once more. */
const SURE = 0.99;

/** Whether a clearance is so near a limit that it should be measured once more. */
export const isNear = (one: Pick<Judged, 'clearance' | 'finding'>): boolean =>
  one.finding.uncertainty !== undefined &&
  (one.finding.verdict === 'undecided' || 1 - mayFail(one) < SURE);
