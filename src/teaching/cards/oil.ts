import { type FormulaCard, input } from '../card.js';

const W = 'W(v) = log10(log10(v + 0.7 + exp(-1.47 - 1.84 * v - 0.51 * v^2)))';
const Y = 'Y(w) = 10^(10^w) - 0.7';
const V = 'V(y) = (y - exp(-0.7487 - 3.295 * y + 0.6119 * y^2 - 0.3193 * y^3)) * 1 mm^2/s';
const R = 'R(v) = 14.534 * log(log(v + 0.8)) + 10.975';
const S = 'S(r) = (exp(exp((r - 10.975) / 14.534)) - 0.8) * 1 mm^2/s';
const D341 = 'ASTM D341: ν in mm²/s and T in K where logarithms are taken';
const D7152 = 'ASTM D7152: log log Z of ASTM D341, by volume at one temperature';
const REFUTAS = 'Refutas blending number, by mass at one temperature';
const LOG_MEAN = 'log-mean rule after Arrhenius, by volume at one temperature';
const IDEAL = 'definition; ideal mixing, the volumes add up';

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

const oilDensity = input('rho_o', 'density of the oil', 'density', 820, 950);
const fuelDensity = input('rho_f', 'density of the fuel', 'density', 680, 800);

/** Formulas of the oil room: viscosity and blends. */
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
  blendLogMean: {
    name: 'viscosity of a blend, by the log-mean',
    computedBy: 'blendViscosity',
    result: blend,
    inputs: [oil, fuel, byVolume],
    where: ['l_o = log(nu_o / (1 mm^2/s))', 'l_f = log(nu_f / (1 mm^2/s))'],
    expression: 'exp((1 - x) * l_o + x * l_f) * 1 mm^2/s',
    source: LOG_MEAN,
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
  fuelLogMean: {
    name: 'fuel in oil from its viscosity, by the log-mean',
    computedBy: 'fuelFraction',
    result: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    inputs: [oil, fuel, sample],
    where: [],
    expression: 'log(nu_o / nu_s) / log(nu_o / nu_f)',
    source: LOG_MEAN,
  },
  fractionByMass: {
    name: 'fuel by mass from fuel by volume',
    computedBy: 'fractionByMass',
    result: { symbol: 'w', meaning: 'fuel by mass', dimension: 'massFraction' },
    inputs: [byVolume, oilDensity, fuelDensity],
    where: [],
    expression: 'x * rho_f / (x * rho_f + (1 - x) * rho_o)',
    source: IDEAL,
  },
  fractionByVolume: {
    name: 'fuel by volume from fuel by mass',
    computedBy: 'fractionByVolume',
    result: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    inputs: [input('w', 'fuel by mass', 'massFraction', 0, 0.3), oilDensity, fuelDensity],
    where: [],
    expression: 'w / rho_f / (w / rho_f + (1 - w) / rho_o)',
    source: IDEAL,
  },
  dilutedDensity: {
    name: 'density of diluted oil',
    computedBy: 'dilutedOil',
    result: { symbol: 'rho', meaning: 'density of the mixture', dimension: 'density' },
    inputs: [byVolume, oilDensity, fuelDensity],
    where: [],
    expression: 'x * rho_f + (1 - x) * rho_o',
    source: IDEAL,
  },
  dilutedExpansion: {
    name: 'thermal expansion of diluted oil',
    computedBy: 'dilutedOil',
    result: {
      symbol: 'alpha',
      meaning: 'expansion of the mixture by volume',
      dimension: 'thermalExpansion',
    },
    inputs: [
      byVolume,
      input('alpha_o', 'expansion of the oil by volume', 'thermalExpansion', 6e-4, 8e-4),
      input('alpha_f', 'expansion of the fuel by volume', 'thermalExpansion', 8e-4, 1.4e-3),
    ],
    where: [],
    expression: 'x * alpha_f + (1 - x) * alpha_o',
    source: IDEAL,
  },
  fuelByVolumeRefutas: {
    name: 'fuel in oil from its viscosity, by Refutas turned to volume',
    computedBy: 'fuelFractionSpan',
    result: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    inputs: [oil, fuel, sample, oilDensity, fuelDensity],
    where: [
      R,
      'r_o = R(nu_o / (1 mm^2/s))',
      'r_f = R(nu_f / (1 mm^2/s))',
      'r_s = R(nu_s / (1 mm^2/s))',
      'w = (r_o - r_s) / (r_o - r_f)',
    ],
    expression: 'w / rho_f / (w / rho_f + (1 - w) / rho_o)',
    source: REFUTAS,
  },
} as const satisfies Record<string, FormulaCard>;
