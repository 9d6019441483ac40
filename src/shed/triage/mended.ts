import type { SeenFaults } from './seen-faults.js';
import { MENDS } from './tests.js';
import type { Job } from './triage-types.js';
import type { Shop } from './ways.js';

/**
 * The repair of a cracked casting, by the cheapest shop that stitches or welds it. Without such a
 * shop the casting is kept aside: whether it can be mended, only a shop can say.
 */
export function mended(
  { mend }: SeenFaults,
  { machining = [] }: Shop,
): { readonly repairs: readonly Job[]; readonly aside: boolean } {
  if (!mend) return { repairs: [], aside: false };
  const [cheapest] = machining
    .filter(({ work }) => MENDS.includes(work))
    .sort((a, b) => a.price.amount - b.price.amount);
  return cheapest
    ? { repairs: [{ work: cheapest.work, places: [] }], aside: false }
    : { repairs: [], aside: true };
}
