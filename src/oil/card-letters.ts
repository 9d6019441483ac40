import { defined } from '../judging/internal.js';
import { celsius } from '../quantities/index.js';
import { densityTemperature, liquidDensity, liquidViscosity, oilTemperature } from './domains.js';
import type { ViscosityLine, ViscosityPoint } from './viscosity.js';

// What several cards of this room write alike.

/** log10 log10 Z of ASTM D341, and the way back in two steps. */
export const W = 'W(v) = log10(log10(v + 0.7 + exp(-1.47 - 1.84 * v - 0.51 * v^2)))';
export const Y = 'Y(w) = 10^(10^w) - 0.7';
export const V = 'V(y) = (y - exp(-0.7487 - 3.295 * y + 0.6119 * y^2 - 0.3193 * y^3)) * 1 mm^2/s';
/** The Refutas blending number, and the way back. */
export const R = 'R(v) = 14.534 * log(log(v + 0.8)) + 10.975';
export const S = 'S(r) = (exp(exp((r - 10.975) / 14.534)) - 0.8) * 1 mm^2/s';

export const D7152 = 'ASTM D7152: log log Z of ASTM D341, by volume at one temperature';
export const REFUTAS = 'Refutas blending number, by mass at one temperature';
export const LOG_MEAN = 'log-mean rule after Arrhenius, by volume at one temperature';
export const IDEAL = 'definition; ideal mixing, the volumes add up';

/** The line of ASTM D341 through two points, and the viscosity on it. */
export const LINE = [
  W,
  Y,
  V,
  defined('w_1 = W(nu_1 / (1 mm^2/s))', 'height of the first point on the chart'),
  defined('w_2 = W(nu_2 / (1 mm^2/s))', 'height of the second point on the chart'),
  defined(
    'B = (w_2 - w_1) / (log10(T_2 / (1 K)) - log10(T_1 / (1 K)))',
    'slope of the line on the chart',
  ),
] as const;
/** How an oil expands from 15 °C to the temperature wanted. */
export const EXPANDED = [
  defined('a = 0.6278 kg/m^3/K / rho_15', 'expansion of the oil at 15 °C, by volume'),
  defined('x = a * (T - 288.15 K)', 'a times the rise of temperature'),
] as const;
export const ON_LINE = 'V(Y(w_1 + B * (log10(T / (1 K)) - log10(T_1 / (1 K)))))';
export const D341 = 'ASTM D341: ν in mm²/s and T in K where logarithms are taken';

/** The two points of a line, at its place in an argument. */
export const lineAt = <P extends string>(line: P) =>
  ({
    nu_1: {
      field: `${line}[0].viscosity`,
      meaning: 'kinematic viscosity at T_1',
      domain: liquidViscosity,
      usual: [7e-5, 2e-4],
    },
    T_1: {
      field: `${line}[0].temperature`,
      meaning: 'first temperature',
      domain: oilTemperature,
      usual: [310, 316],
      made: [celsius(40)],
    },
    nu_2: {
      field: `${line}[1].viscosity`,
      meaning: 'kinematic viscosity at T_2',
      domain: liquidViscosity,
      usual: [8e-6, 1.6e-5],
    },
    T_2: {
      field: `${line}[1].temperature`,
      meaning: 'second temperature',
      domain: oilTemperature,
      usual: [370, 376],
      made: [celsius(100)],
    },
  }) as const;

/** What makes the two points none of a line. */
export const noLine = (line: string) => ({
  'the two temperatures are equal': { with: { T_1: 340, T_2: 340 }, names: line },
  'the oil would thicken when heated': { with: { nu_2: 1e-3 }, names: line },
});

/** A line so steep that it leaves the range of its equation. */
export const TOO_STEEP = {
  'the result is outside the range of the equation': {
    with: { nu_1: 1, T_1: 313.15, nu_2: 1e-6, T_2: 323.15, T: 423 },
    names: 'result',
  },
};

export const lineOfLetters = (points: {
  readonly nu_1: ViscosityPoint['viscosity'];
  readonly T_1: ViscosityPoint['temperature'];
  readonly nu_2: ViscosityPoint['viscosity'];
  readonly T_2: ViscosityPoint['temperature'];
}): ViscosityLine => [
  { temperature: points.T_1, viscosity: points.nu_1 },
  { temperature: points.T_2, viscosity: points.nu_2 },
];

/** A temperature that a viscosity is wanted at, and one that a density is. */
export const wantedAt = (least: number, most: number) =>
  ({
    field: 'temperature',
    meaning: 'temperature wanted',
    domain: oilTemperature,
    usual: [least, most],
  }) as const;
export const densityWantedAt = {
  field: 'temperature',
  meaning: 'temperature wanted',
  domain: densityTemperature,
  usual: [270, 400],
} as const;

/** The three viscosities of an oil that fuel has thinned. */
export const THINNED = {
  nu_o: {
    field: 'oil',
    meaning: 'kinematic viscosity of the oil',
    domain: liquidViscosity,
    usual: [6.5e-5, 2e-4],
  },
  nu_f: {
    field: 'fuel',
    meaning: 'kinematic viscosity of the fuel',
    domain: liquidViscosity,
    usual: [4e-7, 8e-7],
  },
  nu_s: {
    field: 'sample',
    meaning: 'kinematic viscosity of the sample',
    domain: liquidViscosity,
    usual: [3e-5, 6e-5],
  },
} as const;

/** What makes them none of one oil. */
export const NOT_THINNED = {
  'the fuel is no thinner than the oil': { with: { nu_f: 1e-3 }, names: 'fuel' },
  'the sample is thinner than the fuel': { with: { nu_s: 3e-7 }, names: 'sample' },
};

/** The densities of an oil and of the fuel in it. */
export const DENSITIES = {
  rho_o: {
    field: 'oilDensity',
    meaning: 'density of the oil',
    domain: liquidDensity,
    usual: [820, 950],
  },
  rho_f: {
    field: 'fuelDensity',
    meaning: 'density of the fuel',
    domain: liquidDensity,
    usual: [680, 800],
  },
} as const;
