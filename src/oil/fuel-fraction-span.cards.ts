import { card, defined } from '../judging/internal.js';
import { centistokes, gramPerCubicCm } from '../quantities/index.js';
import { DENSITIES, NOT_THINNED, R, REFUTAS, THINNED } from './card-letters.js';
import { fuelFractionSpan } from './fuel-fraction-span.js';

/** Formulas of the fuel in an oil by every law; the others are those of `fuelFraction`. */
export const fuelFractionSpanCards = {
  fuelByVolumeRefutas: card({
    of: fuelFractionSpan,
    name: 'fuel in oil from its viscosity, by Refutas turned to volume',
    gives: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    letters: { ...THINNED, ...DENSITIES },
    read: ({ byLaw }) => byLaw.Refutas.max,
    where: [
      R,
      defined(
        'w = (R(nu_o / (1 mm^2/s)) - R(nu_s / (1 mm^2/s))) / (R(nu_o / (1 mm^2/s)) - R(nu_f / (1 mm^2/s)))',
        'fuel by mass',
        'byMass',
      ),
    ],
    expression: 'w / rho_f / (w / rho_f + (1 - w) / rho_o)',
    refuses: {
      ...NOT_THINNED,
      'the sample is so thick that it cannot be that oil': { with: { nu_s: 1 }, names: 'sample' },
    },
    example: {
      nu_o: centistokes(100),
      nu_f: centistokes(0.6),
      nu_s: centistokes(60),
      rho_o: gramPerCubicCm(0.88),
      rho_f: gramPerCubicCm(0.74),
    },
    source: REFUTAS,
  }),
};
