import { card, defined } from '../judging/internal.js';
import { celsius, gramPerCubicCm, ppmPerKelvin } from '../quantities/index.js';
import { densityWantedAt, EXPANDED } from './card-letters.js';
import { apiGravity, densityAt, densityFromApiGravity } from './density.js';
import { apiDegrees, densityTemperature, liquidDensity, liquidExpansion } from './domains.js';

const API = 'API MPMS chapter 11.1 (2004), water of 999.016 kg/m³ at 60 °F';
const D1250 = 'ASTM D1250 (1980) and API MPMS chapter 11.1, table 54D, lubricating oils';
const gives = { symbol: 'rho', meaning: 'density at T', dimension: 'density' } as const;

/** Formulas of an oil's density. */
export const densityCards = {
  densityFromApiGravity: card({
    of: densityFromApiGravity,
    name: 'density from API gravity',
    gives: { symbol: 'rho', meaning: 'density at 60 °F (15.6 °C)', dimension: 'density' },
    letters: {
      G: { field: 'gravity', meaning: 'API gravity', domain: apiDegrees, usual: [22, 34] },
    },
    call: ({ G }) => [G],
    expression: '999.016 kg/m^3 * 141.5 / (G + 131.5)',
    source: API,
  }),
  apiGravity: card({
    of: apiGravity,
    name: 'API gravity from density',
    gives: { symbol: 'G', meaning: 'API gravity', dimension: 'ratio' },
    letters: {
      rho: {
        field: 'density',
        meaning: 'density at 60 °F (15.6 °C)',
        domain: liquidDensity,
        usual: [700, 950],
      },
    },
    call: ({ rho }) => [rho],
    expression: '141.5 * (999.016 kg/m^3) / rho - 131.5',
    refuses: {
      'the gravity of the density is out of range': { with: { rho: 1200 }, names: 'density' },
    },
    source: API,
  }),
  densityAt: card({
    of: densityAt,
    name: 'density of a lubricating oil at a temperature',
    gives,
    letters: {
      rho_15: {
        field: 'density',
        meaning: 'density at 15 °C (59 °F)',
        domain: liquidDensity,
        usual: [860, 920],
      },
      T: densityWantedAt,
    },
    call: ({ rho_15, T }) => [{ density: rho_15, at: celsius(15), temperature: T }],
    where: EXPANDED,
    expression: 'rho_15 * exp(-x * (1 + 0.8 * x))',
    refuses: {
      'what has no expansion given is no lubricating oil': {
        with: { rho_15: 745 },
        names: 'density',
      },
    },
    example: { rho_15: gramPerCubicCm(0.88), T: celsius(90) },
    source: D1250,
  }),
  densityWithExpansion: card({
    of: densityAt,
    name: 'density from a known expansion',
    gives,
    letters: {
      rho_0: {
        field: 'density',
        meaning: 'density at T_0',
        domain: liquidDensity,
        usual: [860, 920],
      },
      T_0: {
        field: 'at',
        meaning: 'temperature at which it is known',
        domain: densityTemperature,
        usual: [280, 300],
      },
      T: densityWantedAt,
      a: {
        field: 'expansion',
        meaning: 'expansion coefficient by volume',
        domain: liquidExpansion,
        usual: [5e-4, 1.3e-3],
      },
    },
    where: [defined('x = a * (T - T_0)', 'a times the rise of temperature')],
    expression: 'rho_0 * exp(-x * (1 + 0.8 * x))',
    refuses: {
      'the expansion given leaves no liquid': {
        with: { rho_0: 650, T: 423, a: 2e-3 },
        names: 'temperature',
      },
    },
    example: {
      rho_0: gramPerCubicCm(0.88),
      T_0: celsius(15),
      T: celsius(90),
      a: ppmPerKelvin(700),
    },
    source: D1250,
  }),
};
