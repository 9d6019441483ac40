import { type CardInput, type FormulaCard, input } from '../card.js';

const W = 'W(v) = log10(log10(v + 0.7 + exp(-1.47 - 1.84 * v - 0.51 * v^2)))';
const Y = 'Y(w) = 10^(10^w) - 0.7';
const V = 'V(y) = (y - exp(-0.7487 - 3.295 * y + 0.6119 * y^2 - 0.3193 * y^3)) * 1 mm^2/s';
const LINE = [
  W,
  Y,
  V,
  'w_1 = W(nu_1 / (1 mm^2/s))',
  'w_2 = W(nu_2 / (1 mm^2/s))',
  'B = (w_2 - w_1) / (log10(T_2 / (1 K)) - log10(T_1 / (1 K)))',
];
const ON_LINE = 'V(Y(w_1 + B * (log10(T / (1 K)) - log10(T_1 / (1 K)))))';
const D341 = 'ASTM D341: ν in mm²/s and T in K where logarithms are taken';
const D1250 = 'ASTM D1250 (1980) and API MPMS chapter 11.1, table 54D, lubricating oils';
const API = 'API MPMS chapter 11.1 (2004), water of 999.016 kg/m³ at 60 °F';
const D2270 = 'ASTM D2270-10(2016); L and H interpolated between two rows of its table';

const line = [
  input('nu_1', 'kinematic viscosity at T_1', 'kinematicViscosity', 2e-5, 3e-4),
  input('T_1', 'first temperature', 'temperature', 310, 316),
  input('nu_2', 'kinematic viscosity at T_2', 'kinematicViscosity', 5e-6, 1.5e-5),
  input('T_2', 'second temperature', 'temperature', 370, 376),
];
const density15 = input('rho_15', 'density at 15 °C', 'density', 800, 1100);
const temperature = (least: number, most: number): CardInput =>
  input('T', 'temperature wanted', 'temperature', least, most);
const kinematic = {
  symbol: 'nu',
  meaning: 'kinematic viscosity at T',
  dimension: 'kinematicViscosity',
} as const;
const dynamic = {
  symbol: 'eta',
  meaning: 'dynamic viscosity at T',
  dimension: 'dynamicViscosity',
} as const;
const density = { symbol: 'rho', meaning: 'density at T', dimension: 'density' } as const;
const index = { symbol: 'VI', meaning: 'viscosity index', dimension: 'ratio' } as const;

const DYNAMIC = [
  ...LINE,
  'a = 0.6278 kg/m^3/K / rho_15',
  'x = a * (T - 288.15 K)',
  'rho = rho_15 * exp(-x * (1 + 0.8 * x))',
];

const at40 = (least: number, most: number): CardInput =>
  input('U', 'kinematic viscosity at 40 °C', 'kinematicViscosity', least, most);
const at100 = (least: number, most: number): CardInput =>
  input('nu', 'kinematic viscosity at 100 °C', 'kinematicViscosity', least, most);

const IN_MM2 = ['u = U / (1 mm^2/s)', 'y = nu / (1 mm^2/s)'];
/** Formulas of the oil room about one oil: viscosity, density, index, Saybolt seconds. */
export const viscosityCards = {
  extrapolatedViscosity: {
    name: 'viscosity beyond the range of the line',
    computedBy: 'extrapolatedViscosity',
    result: kinematic,
    inputs: [...line, temperature(424, 480)],
    where: LINE,
    expression: ON_LINE,
    source: D341,
  },
  densityFromApiGravity: {
    name: 'density from API gravity',
    computedBy: 'densityFromApiGravity',
    result: { symbol: 'rho', meaning: 'density at 60 °F', dimension: 'density' },
    inputs: [input('G', 'API gravity', 'ratio', 10, 45)],
    where: [],
    expression: '999.016 kg/m^3 * 141.5 / (G + 131.5)',
    source: API,
  },
  apiGravity: {
    name: 'API gravity from density',
    computedBy: 'apiGravity',
    result: { symbol: 'G', meaning: 'API gravity', dimension: 'ratio' },
    inputs: [input('rho', 'density at 60 °F', 'density', 700, 950)],
    where: [],
    expression: '141.5 * (999.016 kg/m^3) / rho - 131.5',
    source: API,
  },
  densityAt: {
    name: 'density of a lubricating oil at a temperature',
    computedBy: 'densityAt',
    result: density,
    inputs: [density15, temperature(230, 420)],
    where: ['a = 0.6278 kg/m^3/K / rho_15', 'x = a * (T - 288.15 K)'],
    expression: 'rho_15 * exp(-x * (1 + 0.8 * x))',
    source: D1250,
  },
  densityWithExpansion: {
    name: 'density from a known expansion',
    computedBy: 'densityAt',
    result: density,
    inputs: [
      input('rho_0', 'density at T_0', 'density', 800, 1100),
      input('T_0', 'temperature it is known at', 'temperature', 280, 300),
      temperature(230, 420),
      input('a', 'expansion of the volume', 'thermalExpansion', 5e-4, 1.3e-3),
    ],
    where: ['x = a * (T - T_0)'],
    expression: 'rho_0 * exp(-x * (1 + 0.8 * x))',
    source: D1250,
  },
  dynamicViscosityAt: {
    name: 'dynamic viscosity at a temperature',
    computedBy: 'dynamicViscosityAt',
    result: dynamic,
    inputs: [...line, density15, temperature(285, 420)],
    where: DYNAMIC,
    expression: `${ON_LINE} * rho`,
    source: `${D341}; ${D1250}`,
  },
  extrapolatedDynamicViscosity: {
    name: 'dynamic viscosity beyond the range of the line',
    computedBy: 'extrapolatedDynamicViscosity',
    result: dynamic,
    inputs: [...line, density15, temperature(424, 480)],
    where: DYNAMIC,
    expression: `${ON_LINE} * rho`,
    source: `${D341}; ${D1250}`,
  },
  viscosityIndex: {
    name: 'viscosity index up to 100, from 8.8 to 8.9 mm²/s',
    computedBy: 'viscosityIndex',
    result: index,
    inputs: [at40(7.2e-5, 8.4e-5), at100(8.8e-6, 8.9e-6)],
    where: [
      ...IN_MM2,
      'L = 118.5 + (120.9 - 118.5) * (y - 8.8) / 0.1',
      'H = 68.79 + (69.94 - 68.79) * (y - 8.8) / 0.1',
    ],
    expression: '100 * (L - u) / (L - H)',
    source: D2270,
  },
  viscosityIndexOfThickOil: {
    name: 'viscosity index up to 100, above 70 mm²/s',
    computedBy: 'viscosityIndex',
    result: index,
    inputs: [at40(3e-3, 4.5e-3), at100(7.5e-5, 1e-4)],
    where: [...IN_MM2, 'L = 0.8353 * y^2 + 14.67 * y - 216', 'H = 0.1684 * y^2 + 11.85 * y - 97'],
    expression: '100 * (L - u) / (L - H)',
    source: 'ASTM D2270-10(2016)',
  },
  viscosityIndexAbove100: {
    name: 'viscosity index above 100, from 5.0 to 5.1 mm²/s',
    computedBy: 'viscosityIndex',
    result: index,
    inputs: [at40(1.5e-5, 2.8e-5), at100(5e-6, 5.1e-6)],
    where: [...IN_MM2, 'H = 28.49 + (29.46 - 28.49) * (y - 5) / 0.1', 'N = log(H / u) / log(y)'],
    expression: '100 + (10^N - 1) / 0.00715',
    source: D2270,
  },
  sayboltUniversal: {
    name: 'Saybolt Universal seconds',
    computedBy: 'sayboltUniversal',
    result: { symbol: 't', meaning: 'Saybolt Universal seconds', dimension: 'time' },
    inputs: [
      input('nu', 'kinematic viscosity', 'kinematicViscosity', 2e-6, 5e-4),
      input('T', 'temperature of both', 'temperature', 260, 440),
    ],
    where: [
      'v = nu / (1 mm^2/s)',
      'at100 = 4.6324 * v + (1 + 0.03264 * v) / ((3930.2 + 262.7 * v + 23.97 * v^2 + 1.646 * v^3) * 1e-5)',
      'f = 1 + 0.000061 * (T / (1 K) * 1.8 - 459.67 - 100)',
    ],
    expression: 'at100 * f * 1 s',
    source: 'ASTM D2161: ν in mm²/s, temperature in °F in the factor',
  },
} as const satisfies Record<string, FormulaCard>;
