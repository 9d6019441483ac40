import { card } from '../judging/internal.js';
import { liquidViscosity } from './domains.js';
import { viscosityIndex } from './viscosity-index.js';

const D2270 = 'ASTM D2270-10(2016); L and H interpolated between two rows of its table';
const gives = { symbol: 'VI', meaning: 'viscosity index', dimension: 'ratio' } as const;

const at40 = (least: number, most: number) =>
  ({
    field: 'at40C',
    meaning: 'kinematic viscosity at 40 °C',
    domain: liquidViscosity,
    usual: [least, most],
  }) as const;
const at100 = (least: number, most: number) =>
  ({
    field: 'at100C',
    meaning: 'kinematic viscosity at 100 °C',
    domain: liquidViscosity,
    usual: [least, most],
  }) as const;

/** Formulas of the viscosity index. */
export const viscosityIndexCards = {
  viscosityIndex: card({
    of: viscosityIndex,
    name: 'viscosity index up to 100, from 8.8 to 8.9 mm²/s',
    gives,
    letters: { U: at40(7.2e-5, 8.4e-5), nu: at100(8.8e-6, 8.9e-6) },
    where: [
      'L = 118.5 + (120.9 - 118.5) * (nu / (1 mm^2/s) - 8.8) / 0.1',
      'H = 68.79 + (69.94 - 68.79) * (nu / (1 mm^2/s) - 8.8) / 0.1',
    ],
    tabled: ['L', 'H'],
    expression: '100 * (L - U / (1 mm^2/s)) / (L - H)',
    refuses: {
      'the index is not defined for so thin an oil': {
        with: { U: 5e-6, nu: 1.9e-6 },
        names: 'at100C',
      },
      'the oil does not thin by warming': { with: { U: 8e-6 }, names: 'at40C' },
    },
    source: D2270,
  }),
  viscosityIndexOfThickOil: card({
    of: viscosityIndex,
    name: 'viscosity index up to 100, above 70 mm²/s',
    gives,
    letters: { U: at40(3e-3, 4.5e-3), nu: at100(7.5e-5, 1e-4) },
    where: [
      'L = 0.8353 * (nu / (1 mm^2/s))^2 + 14.67 * nu / (1 mm^2/s) - 216',
      'H = 0.1684 * (nu / (1 mm^2/s))^2 + 11.85 * nu / (1 mm^2/s) - 97',
    ],
    expression: '100 * (L - U / (1 mm^2/s)) / (L - H)',
    source: 'ASTM D2270-10(2016)',
  }),
  viscosityIndexAbove100: card({
    of: viscosityIndex,
    name: 'viscosity index above 100, from 5.0 to 5.1 mm²/s',
    gives,
    letters: { U: at40(1.5e-5, 2.8e-5), nu: at100(5e-6, 5.1e-6) },
    where: [
      'H = 28.49 + (29.46 - 28.49) * (nu / (1 mm^2/s) - 5) / 0.1',
      'N = log(H / (U / (1 mm^2/s))) / log(nu / (1 mm^2/s))',
    ],
    tabled: ['H'],
    expression: '100 + (10^N - 1) / 0.00715',
    source: D2270,
  }),
};
