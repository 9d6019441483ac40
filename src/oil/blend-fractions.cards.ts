import { card } from '../judging/internal.js';
import { gramPerCubicCm, percentByMass, percentByVolume } from '../quantities/index.js';
import { fractionByMass, fractionByVolume } from './blend-fractions.js';
import { DENSITIES, IDEAL } from './card-letters.js';
import { fuelByMass, fuelShare } from './domains.js';

/** Formulas that turn fuel by volume to fuel by mass and back. */
export const blendFractionCards = {
  fractionByMass: card({
    of: fractionByMass,
    name: 'fuel by mass from fuel by volume',
    gives: { symbol: 'w', meaning: 'fuel by mass', dimension: 'massFraction' },
    letters: {
      x: { field: 'byVolume', meaning: 'fuel by volume', domain: fuelShare, usual: [0, 0.3] },
      ...DENSITIES,
    },
    expression: 'x * rho_f / (x * rho_f + (1 - x) * rho_o)',
    example: { x: percentByVolume(5), rho_o: gramPerCubicCm(0.88), rho_f: gramPerCubicCm(0.74) },
    source: IDEAL,
  }),
  fractionByVolume: card({
    of: fractionByVolume,
    name: 'fuel by volume from fuel by mass',
    gives: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    letters: {
      w: { field: 'byMass', meaning: 'fuel by mass', domain: fuelByMass, usual: [0, 0.3] },
      ...DENSITIES,
    },
    expression: 'w / rho_f / (w / rho_f + (1 - w) / rho_o)',
    example: { w: percentByMass(5), rho_o: gramPerCubicCm(0.88), rho_f: gramPerCubicCm(0.74) },
    source: IDEAL,
  }),
};
