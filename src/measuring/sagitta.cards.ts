import { card } from '../judging/internal.js';
import { chordOfArc, radiusFromSagitta, riseOfArc } from './sagitta.js';

/** Formulas of an arc. */
export const sagittaCards = {
  radiusFromSagitta: card({
    of: radiusFromSagitta,
    name: 'radius of an arc from its chord and sagitta',
    gives: { symbol: 'R', meaning: 'radius of the arc', dimension: 'length' },
    letters: {
      c: { field: 'chord', meaning: 'chord', domain: chordOfArc, usual: [0.004, 0.04] },
      s: {
        field: 'sagitta',
        meaning: 'rise from the middle of the chord',
        domain: riseOfArc,
        usual: [0.0001, 0.0019],
      },
    },
    expression: 'c^2 / (8 * s) + s / 2',
    refuses: { 'the arc is more than half a circle': { with: { s: 0.1 }, names: 'sagitta' } },
    source: 'Euclid, Elements, book III, proposition 35',
  }),
};
