import { card } from '../judging/internal.js';
import { celsius, centistokes, gramPerCubicCm } from '../quantities/index.js';
import {
  D341,
  EXPANDED,
  LINE,
  lineAt,
  lineOfLetters,
  noLine,
  ON_LINE,
  TOO_STEEP,
  wantedAt,
} from './card-letters.js';
import { liquidDensity } from './domains.js';
import { dynamicViscosityAt, extrapolatedDynamicViscosity } from './oil.js';

const gives = {
  symbol: 'eta',
  meaning: 'dynamic viscosity at T',
  dimension: 'dynamicViscosity',
} as const;
const letters = {
  ...lineAt('oil.line'),
  rho_15: {
    field: 'oil.density',
    meaning: 'density at 15 °C (59 °F)',
    domain: liquidDensity,
    usual: [860, 920],
  },
} as const;
const where = [...LINE, ...EXPANDED];
const expression = `${ON_LINE} * rho_15 * exp(-x * (1 + 0.8 * x))`;
const source = `${D341}; ASTM D1250 (1980) and API MPMS chapter 11.1, table 54D, lubricating oils`;
const refuses = {
  ...noLine('oil.line'),
  ...TOO_STEEP,
  'what has no expansion given is no lubricating oil': {
    with: { rho_15: 745 },
    names: 'oil.density',
  },
};

/** Formulas of an oil in a film. */
export const filmOilCards = {
  dynamicViscosityAt: card({
    of: dynamicViscosityAt,
    name: 'dynamic viscosity at a temperature',
    gives,
    letters: { ...letters, T: wantedAt(285, 420) },
    call: (v) => [{ line: lineOfLetters(v), density: v.rho_15 }, v.T],
    where,
    expression,
    refuses: {
      ...refuses,
      'the line would have to be taken too far': { with: { T: 430 }, names: 'temperature' },
    },
    example: {
      nu_1: centistokes(100),
      T_1: celsius(40),
      nu_2: centistokes(11),
      T_2: celsius(100),
      rho_15: gramPerCubicCm(0.88),
      T: celsius(80),
    },
    source,
  }),
  extrapolatedDynamicViscosity: card({
    of: extrapolatedDynamicViscosity,
    name: 'dynamic viscosity beyond the range of the line',
    gives,
    letters: { ...letters, T: wantedAt(424, 480) },
    call: (v) => [{ line: lineOfLetters(v), density: v.rho_15 }, v.T],
    read: ({ viscosity }) => viscosity,
    where,
    expression,
    refuses,
    example: {
      nu_1: centistokes(100),
      T_1: celsius(40),
      nu_2: centistokes(11),
      T_2: celsius(100),
      rho_15: gramPerCubicCm(0.88),
      T: celsius(130),
    },
    source,
  }),
};
