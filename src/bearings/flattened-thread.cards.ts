import { card } from '../judging/internal.js';
import { flattenedStripe, gaugingThread } from './domains.js';
import { flattenedThreadGap } from './flattened-thread.js';

/** The formula of a gauging thread. */
export const flattenedThreadCards = {
  flattenedThreadGap: card({
    of: flattenedThreadGap,
    name: 'gap from a flattened gauging thread',
    gives: { symbol: 'h', meaning: 'gap where the thread lay', dimension: 'length' },
    letters: {
      d: {
        field: 'threadDiameter',
        meaning: 'diameter of the thread as new',
        domain: gaugingThread,
        usual: [0.00015, 0.0002],
      },
      w: {
        field: 'flattenedWidth',
        meaning: 'width of the flattened stripe',
        domain: flattenedStripe,
        usual: [0.00035, 0.00065],
      },
    },
    expression: 'pi * d^2 / (4 * w)',
    refuses: {
      'the stripe is narrower than the thread': { with: { w: 0.0001 }, names: 'flattenedWidth' },
    },
    source: 'conservation of area, the flattened section taken as a rectangle',
  }),
};
