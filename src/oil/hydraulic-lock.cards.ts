import { card } from '../judging/internal.js';
import { mL, mLPerHour } from '../quantities/index.js';
import { clearanceSpace, leakFlow } from './domains.js';
import { hydraulicLockHours } from './hydraulic-lock.js';

/** Formula of a cylinder that a leak floods. */
export const hydraulicLockCards = {
  hydraulicLockHours: card({
    of: hydraulicLockHours,
    name: 'time until a leak floods a cylinder',
    gives: { symbol: 't', meaning: 'time until the clearance volume is full', dimension: 'time' },
    letters: {
      V_c: {
        field: 'clearanceVolume',
        meaning: 'space above the piston at top dead centre',
        domain: clearanceSpace,
        usual: [2e-5, 2e-4],
      },
      q: {
        field: 'leak',
        meaning: 'flow of the leak',
        domain: leakFlow,
        usual: [1e-9, 1e-7],
      },
    },
    expression: 'V_c / q',
    refuses: { 'nothing leaks': { with: { q: 0 }, names: 'leak' } },
    example: { V_c: mL(100), q: mLPerHour(5) },
    source: 'volume balance',
  }),
};
