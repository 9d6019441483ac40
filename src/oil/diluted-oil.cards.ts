import { card } from '../judging/internal.js';
import {
  celsius,
  centistokes,
  gramPerCubicCm,
  kilogramPerCubicMetre,
  percentByVolume,
  ppmPerKelvin,
} from '../quantities/index.js';
import { IDEAL } from './card-letters.js';
import { dilutedOil } from './diluted-oil.js';
import { fuelShare, liquidDensity, liquidExpansion } from './domains.js';
import { petrol } from './petrol.js';

const line = [
  { temperature: celsius(40), viscosity: centistokes(100) },
  { temperature: celsius(100), viscosity: centistokes(11) },
] as const;
const x = {
  field: 'fraction',
  meaning: 'fuel by volume',
  domain: fuelShare,
  usual: [0, 0.3],
} as const;

/** Formulas of the oil that fuel makes of an oil. */
export const dilutedOilCards = {
  dilutedDensity: card({
    of: dilutedOil,
    name: 'density of diluted oil',
    gives: { symbol: 'rho', meaning: 'density of the mixture', dimension: 'density' },
    letters: {
      x,
      rho_o: {
        field: 'oil.density',
        meaning: 'density of the oil',
        domain: liquidDensity,
        usual: [820, 950],
      },
      rho_f: {
        field: 'fuel.density',
        meaning: 'density of the fuel',
        domain: liquidDensity,
        usual: [680, 800],
      },
    },
    call: (v) => [
      {
        oil: { line, density: v.rho_o },
        fuel: { ...petrol, density: v.rho_f },
        fraction: v.x,
      },
    ],
    read: ({ density }) => density,
    expression: 'x * rho_f + (1 - x) * rho_o',
    refuses: {
      'what has no expansion given is no lubricating oil': {
        with: { rho_o: 745 },
        names: 'oil.density',
      },
    },
    example: { x: percentByVolume(5), rho_o: gramPerCubicCm(0.88), rho_f: gramPerCubicCm(0.74) },
    source: IDEAL,
  }),
  dilutedExpansion: card({
    of: dilutedOil,
    name: 'thermal expansion of diluted oil',
    gives: {
      symbol: 'alpha',
      meaning: 'expansion of the mixture by volume',
      dimension: 'thermalExpansion',
    },
    letters: {
      x,
      alpha_o: {
        field: 'oil.expansion',
        meaning: 'expansion of the oil by volume',
        domain: liquidExpansion,
        usual: [6e-4, 8e-4],
      },
      alpha_f: {
        field: 'fuel.expansion',
        meaning: 'expansion of the fuel by volume',
        domain: liquidExpansion,
        usual: [8e-4, 1.4e-3],
      },
    },
    call: (v) => [
      {
        oil: { line, density: kilogramPerCubicMetre(880), expansion: v.alpha_o },
        fuel: { ...petrol, expansion: v.alpha_f },
        fraction: v.x,
      },
    ],
    read: ({ expansion }) => expansion,
    expression: 'x * alpha_f + (1 - x) * alpha_o',
    example: { x: percentByVolume(5), alpha_o: ppmPerKelvin(700), alpha_f: ppmPerKelvin(1100) },
    source: IDEAL,
  }),
};
