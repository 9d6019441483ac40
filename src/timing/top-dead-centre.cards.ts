import { card } from '../judging/internal.js';
import { crankPlace } from './crank-place.js';
import { wheelReading } from './domains.js';
import { topDeadCentre } from './top-dead-centre.js';

const stops = {
  a_1: {
    field: 'first',
    meaning: 'reading on one side',
    domain: wheelReading,
    usual: [0.1, 0.5],
  },
  a_2: {
    field: 'second',
    meaning: 'reading on the other side',
    domain: wheelReading,
    usual: [0.8, 1.5],
  },
} as const;
const APART = {
  'the readings are less than 4 degrees apart': { with: { a_2: 0.35 }, names: 'second' },
  'more than 150': { with: { a_2: 3.2 }, names: 'second' },
};

/** Formulas of top dead centre on a degree wheel. */
export const topDeadCentreCards = {
  topDeadCentre: card({
    of: topDeadCentre,
    name: 'top dead centre from two readings at a stop',
    gives: { symbol: 'a_t', meaning: 'reading at top dead centre', dimension: 'angle' },
    letters: stops,
    read: ({ top }) => top,
    expression: '(a_1 + a_2) / 2',
    refuses: APART,
    source: 'common practice; geometry',
  }),
  angleFromStop: card({
    of: topDeadCentre,
    name: 'crank angle of a stop from top dead centre',
    gives: { symbol: 'a_s', meaning: 'crank from top dead centre', dimension: 'angle' },
    letters: stops,
    read: ({ fromStop }) => fromStop,
    expression: '(a_2 - a_1) / 2',
    source: 'common practice; geometry',
  }),
  crankPlace: card({
    of: crankPlace,
    name: 'crank angle from a degree wheel',
    gives: { symbol: 'a', meaning: 'crank after top dead centre', dimension: 'angle' },
    letters: {
      a_w: {
        field: 'reading',
        meaning: 'reading of the wheel',
        domain: wheelReading,
        usual: [0.3, 1],
      },
      a_t: {
        field: 'top',
        meaning: 'reading of the wheel at top dead centre',
        domain: wheelReading,
        usual: [0.01, 0.2],
      },
    },
    call: ({ a_w, a_t }) => [{ reading: a_w, top: a_t, numbersRise: 'forwards' as const }],
    read: ({ angle }) => angle,
    expression: 'a_w - a_t',
    source: 'geometry',
  }),
};
