import { card } from '../judging/internal.js';
import { litre, mm, squareMm } from '../quantities/index.js';
import { levelRise, oilSurface, sumpVolume } from './domains.js';
import { fuelFromLevelRise } from './level-rise.js';

const letters = {
  h: { field: 'rise', meaning: 'rise of the level', domain: levelRise, usual: [0, 0.02] },
  A: {
    field: 'surface',
    meaning: 'free surface of the oil',
    domain: oilSurface,
    usual: [0.005, 0.05],
  },
} as const;

/** Formulas of a level that has risen. */
export const levelRiseCards = {
  fuelFromLevelRise: card({
    of: fuelFromLevelRise,
    name: 'fuel from a risen level',
    gives: { symbol: 'V_f', meaning: 'fuel in the sump', dimension: 'volume' },
    letters,
    call: ({ h, A }) => [{ rise: h, surface: A, oil: litre(1) }],
    read: ({ fuel }) => fuel,
    expression: 'h * A',
    refuses: {
      'the level has fallen': { with: { h: -0.003 }, names: 'rise' },
      'the rise leaves hardly any oil': { with: { h: 0.4, A: 1 }, names: 'rise' },
    },
    example: { h: mm(3), A: squareMm(28000) },
    source: 'geometry',
  }),
  fractionFromLevelRise: card({
    of: fuelFromLevelRise,
    name: 'fuel fraction from a risen level',
    gives: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    letters: {
      ...letters,
      V_o: {
        field: 'oil',
        meaning: 'clean oil in the sump',
        domain: sumpVolume,
        usual: [5e-4, 5e-3],
      },
    },
    read: ({ fraction }) => fraction,
    expression: 'h * A / (V_o + h * A)',
    example: { h: mm(3), A: squareMm(28000), V_o: litre(2.8) },
    source: 'geometry',
  }),
};
