import { card, diameter } from '../../judging/internal.js';
import { bearingLoad } from '../../motion/internal.js';
import { bearingPressure } from './bearing-pressure.js';
import { trumplerFilm } from './trumpler.js';

/** Formulas of a bearing's acceptance. */
export const acceptanceCards = {
  bearingPressure: card({
    of: bearingPressure,
    name: 'pressure on a bearing',
    gives: { symbol: 'p', meaning: 'load over projected area', dimension: 'pressure' },
    letters: {
      W: {
        field: 'load',
        meaning: 'load across the shaft',
        domain: bearingLoad,
        usual: [100, 5000],
      },
      D: { field: 'journal', meaning: 'journal diameter', domain: diameter, usual: [0.02, 0.09] },
      L: {
        field: 'length',
        meaning: 'length of the bearing',
        domain: diameter,
        usual: [0.015, 0.06],
      },
    },
    expression: 'W / (D * L)',
    refuses: {
      'the bearing is too short for its journal': { with: { L: 0.003, D: 0.09 }, names: 'length' },
    },
    source: "Mechanical Engineer's Data Handbook, section 2.9; definition",
  }),
  trumplerFilm: card({
    of: trumplerFilm,
    name: 'least film by Trumpler',
    gives: { symbol: 'h', meaning: 'least film', dimension: 'length' },
    letters: {
      D: { field: 'journal', meaning: 'journal diameter', domain: diameter, usual: [0.02, 0.09] },
    },
    call: ({ D }) => [D],
    expression: '0.0002 in + 0.00004 * D',
    source: "Shigley's Mechanical Engineering Design, 9th ed., section 12-7, from memory",
  }),
};
