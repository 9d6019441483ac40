import { card } from '../judging/internal.js';
import { dialReading } from '../measuring/internal.js';
import { mm } from '../quantities/index.js';
import { endPlay } from './end-play.js';

const dial = { domain: dialReading, usual: [-0.001, 0.001] } as const;

/** The formula of end play. */
export const endPlayCards = {
  endPlay: card({
    of: endPlay,
    name: 'end play from a dial',
    gives: { symbol: 'e', meaning: 'end play', dimension: 'length' },
    letters: {
      x_1: { field: 'readings[0].pushed', meaning: 'dial reading with the shaft pushed', ...dial },
      x_2: { field: 'readings[0].pulled', meaning: 'dial reading with the shaft pulled', ...dial },
    },
    call: ({ x_1, x_2 }) => [[{ pushed: x_1, pulled: x_2 }]],
    read: ({ mean }) => mean,
    expression: 'abs(x_2 - x_1)',
    example: { x_1: mm(0.02), x_2: mm(0.17) },
    source: 'definition of the trade',
  }),
};
