import { type FormulaCard, input } from '../card.js';

const W = 'W(v) = log10(log10(v + 0.7 + exp(-1.47 - 1.84 * v - 0.51 * v^2)))';
const Y = 'Y(w) = 10^(10^w) - 0.7';
const V = 'V(y) = (y - exp(-0.7487 - 3.295 * y + 0.6119 * y^2 - 0.3193 * y^3)) * 1 mm^2/s';
const R = 'R(v) = 14.534 * log(log(v + 0.8)) + 10.975';
const S = 'S(r) = (exp(exp((r - 10.975) / 14.534)) - 0.8) * 1 mm^2/s';
const D341 = 'ASTM D341: ν in mm²/s and T in K where logarithms are taken';
const D7152 = 'ASTM D7152: log log Z of ASTM D341, by volume at one temperature';
const REFUTAS = 'Refutas blending number, by mass at one temperature';
const BALANCE = 'mass balance with first-order loss';

const oil = input('nu_o', 'kinematic viscosity of the oil', 'kinematicViscosity', 2e-5, 4e-4);
const fuel = input('nu_f', 'kinematic viscosity of the fuel', 'kinematicViscosity', 4e-7, 8e-7);
const sample = input(
  'nu_s',
  'kinematic viscosity of the sample',
  'kinematicViscosity',
  2e-6,
  1.9e-5,
);
const blend = {
  symbol: 'nu',
  meaning: 'kinematic viscosity of the blend',
  dimension: 'kinematicViscosity',
} as const;
const byVolume = input('x', 'fuel by volume', 'volumeFraction', 0, 0.3);
const byMass = input('x', 'fuel by mass', 'massFraction', 0, 0.3);
const leak = input('q', 'fuel that leaks in a time', 'flow', 1e-9, 1e-7);
const sump = input('V_o', 'clean oil in the sump', 'volume', 5e-4, 5e-3);
const loss = input('k', 'share of the fuel that evaporates in a time', 'rate', 1e-7, 1e-5);
const limit = input('x', 'fuel fraction that is too much', 'volumeFraction', 0.001, 0.05);

/** Formulas of the oil room. */
export const oilCards = {
  viscosityAt: {
    name: 'viscosity at a temperature',
    computedBy: 'viscosityAt',
    result: {
      symbol: 'nu',
      meaning: 'kinematic viscosity at T',
      dimension: 'kinematicViscosity',
    },
    inputs: [
      input('nu_1', 'kinematic viscosity at T_1', 'kinematicViscosity', 2e-5, 3e-4),
      input('T_1', 'first temperature', 'temperature', 310, 316),
      input('nu_2', 'kinematic viscosity at T_2', 'kinematicViscosity', 5e-6, 1.5e-5),
      input('T_2', 'second temperature', 'temperature', 370, 376),
      input('T', 'temperature wanted', 'temperature', 285, 420),
    ],
    where: [
      W,
      Y,
      V,
      'w_1 = W(nu_1 / (1 mm^2/s))',
      'w_2 = W(nu_2 / (1 mm^2/s))',
      'B = (w_2 - w_1) / (log10(T_2 / (1 K)) - log10(T_1 / (1 K)))',
    ],
    expression: 'V(Y(w_1 + B * (log10(T / (1 K)) - log10(T_1 / (1 K)))))',
    source: D341,
  },
  blendByVolume: {
    name: 'viscosity of a blend, by volume',
    computedBy: 'blendViscosity',
    result: blend,
    inputs: [oil, fuel, byVolume],
    where: [W, Y, V, 'w_o = W(nu_o / (1 mm^2/s))', 'w_f = W(nu_f / (1 mm^2/s))'],
    expression: 'V(Y((1 - x) * w_o + x * w_f))',
    source: D7152,
  },
  blendByMass: {
    name: 'viscosity of a blend, by mass',
    computedBy: 'blendViscosity',
    result: blend,
    inputs: [oil, fuel, byMass],
    where: [R, S, 'r_o = R(nu_o / (1 mm^2/s))', 'r_f = R(nu_f / (1 mm^2/s))'],
    expression: 'S((1 - x) * r_o + x * r_f)',
    source: REFUTAS,
  },
  fuelByVolume: {
    name: 'fuel in oil from its viscosity, by volume',
    computedBy: 'fuelFraction',
    result: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    inputs: [oil, fuel, sample],
    where: [
      W,
      'w_o = W(nu_o / (1 mm^2/s))',
      'w_f = W(nu_f / (1 mm^2/s))',
      'w_s = W(nu_s / (1 mm^2/s))',
    ],
    expression: '(w_o - w_s) / (w_o - w_f)',
    source: D7152,
  },
  fuelByMass: {
    name: 'fuel in oil from its viscosity, by mass',
    computedBy: 'fuelFraction',
    result: { symbol: 'x', meaning: 'fuel by mass', dimension: 'massFraction' },
    inputs: [oil, fuel, sample],
    where: [
      R,
      'r_o = R(nu_o / (1 mm^2/s))',
      'r_f = R(nu_f / (1 mm^2/s))',
      'r_s = R(nu_s / (1 mm^2/s))',
    ],
    expression: '(r_o - r_s) / (r_o - r_f)',
    source: REFUTAS,
  },
  dripFlow: {
    name: 'flow of a drip',
    computedBy: 'dripFlow',
    result: { symbol: 'q', meaning: 'flow', dimension: 'flow' },
    inputs: [
      input('n', 'drops in a time', 'rate', 0.01, 2),
      input('V_d', 'volume of one drop', 'volume', 2e-8, 8e-8),
    ],
    where: [],
    expression: 'n * V_d',
    source: 'definition; 20 drops to the millilitre is common practice',
  },
  fuelInSump: {
    name: 'fuel in a sump after a time',
    computedBy: 'fuelInSump',
    result: { symbol: 'V_f', meaning: 'fuel in the sump', dimension: 'volume' },
    inputs: [leak, loss, input('t', 'time', 'time', 3600, 360000)],
    where: [],
    expression: 'q / k * -expm1(-k * t)',
    source: BALANCE,
  },
  fuelFractionInSump: {
    name: 'fuel fraction in a sump',
    computedBy: 'fuelInSump',
    result: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    inputs: [leak, sump, input('t', 'time', 'time', 3600, 360000)],
    where: ['V_f = q * t'],
    expression: 'V_f / (V_o + V_f)',
    source: 'volume balance with nothing evaporating',
  },
  timeToDilution: {
    name: 'time until oil is diluted',
    computedBy: 'timeToDilution',
    result: { symbol: 't', meaning: 'time', dimension: 'time' },
    inputs: [leak, sump, limit],
    where: ['V_f = V_o * x / (1 - x)'],
    expression: 'V_f / q',
    source: 'volume balance with nothing evaporating',
  },
  timeToDilutionWithLoss: {
    name: 'time until oil is diluted, with evaporation',
    computedBy: 'timeToDilution',
    result: { symbol: 't', meaning: 'time', dimension: 'time' },
    inputs: [
      input('q', 'fuel that leaks in a time', 'flow', 5e-9, 1e-7),
      input('V_o', 'clean oil in the sump', 'volume', 5e-4, 1e-3),
      input('x', 'fuel fraction that is too much', 'volumeFraction', 0.001, 0.02),
      input('k', 'share of the fuel that evaporates in a time', 'rate', 1e-7, 1e-4),
    ],
    where: ['V_f = V_o * x / (1 - x)'],
    expression: '-log1p(-k * V_f / q) / k',
    source: BALANCE,
  },
} as const satisfies Record<string, FormulaCard>;
