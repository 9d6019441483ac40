import { card, defined } from '../judging/internal.js';
import { liquidViscosity } from './domains.js';
import { viscosityIndex } from './viscosity-index.js';

const D2270 = 'ASTM D2270-10(2016); L and H interpolated between two rows of its table';
// source: ASTM D2270, "Report": to the nearest whole number; from memory.
const gives = {
  symbol: 'VI',
  meaning: 'viscosity index',
  dimension: 'ratio',
  isWhole: true,
} as const;

const at40 = (least: number, most: number) =>
  ({
    field: 'at40C',
    meaning: 'kinematic viscosity at 40 °C (104 °F)',
    domain: liquidViscosity,
    usual: [least, most],
  }) as const;
const at100 = (least: number, most: number) =>
  ({
    field: 'at100C',
    meaning: 'kinematic viscosity at 100 °C (212 °F)',
    domain: liquidViscosity,
    usual: [least, most],
  }) as const;

/** Formulas of the viscosity index. */
export const viscosityIndexCards = {
  viscosityIndex: card({
    of: viscosityIndex,
    name: 'viscosity index up to 100, from 11.0 to 11.1 mm²/s',
    gives,
    letters: { U: at40(9.7e-5, 1.1e-4), nu: at100(1.1e-5, 1.11e-5) },
    where: [
      defined(
        'L = 173.9 + (176.6 - 173.9) * (nu / (1 mm^2/s) - 11) / 0.1',
        'viscosity at 40 °C of an oil of index 0, by the table',
      ),
      defined(
        'H = 95.19 + (96.45 - 95.19) * (nu / (1 mm^2/s) - 11) / 0.1',
        'viscosity at 40 °C of an oil of index 100, by the table',
      ),
    ],
    tabled: ['L', 'H'],
    expression: '100 * (L - U / (1 mm^2/s)) / (L - H)',
    refuses: {
      'the index is not defined for so thin an oil': {
        with: { U: 5e-6, nu: 1.9e-6 },
        names: 'at100C',
      },
      'the oil does not thin by warming': { with: { U: 1e-5 }, names: 'at40C' },
    },
    source: D2270,
  }),
  viscosityIndexOfThickOil: card({
    of: viscosityIndex,
    name: 'viscosity index up to 100 of a gear oil, above 70 mm²/s',
    gives,
    letters: { U: at40(2e-3, 2.6e-3), nu: at100(7.2e-5, 8e-5) },
    where: [
      defined(
        'L = 0.8353 * (nu / (1 mm^2/s))^2 + 14.67 * nu / (1 mm^2/s) - 216',
        'viscosity at 40 °C of an oil of index 0, by the table',
      ),
      defined(
        'H = 0.1684 * (nu / (1 mm^2/s))^2 + 11.85 * nu / (1 mm^2/s) - 97',
        'viscosity at 40 °C of an oil of index 100, by the table',
      ),
    ],
    expression: '100 * (L - U / (1 mm^2/s)) / (L - H)',
    source: 'ASTM D2270-10(2016)',
  }),
  viscosityIndexAbove100: card({
    of: viscosityIndex,
    name: 'viscosity index above 100, from 11.0 to 11.1 mm²/s',
    gives,
    letters: { U: at40(8e-5, 9.2e-5), nu: at100(1.1e-5, 1.11e-5) },
    where: [
      defined(
        'H = 95.19 + (96.45 - 95.19) * (nu / (1 mm^2/s) - 11) / 0.1',
        'viscosity at 40 °C of an oil of index 100, by the table',
      ),
      defined(
        'N = log(H / (U / (1 mm^2/s))) / log(nu / (1 mm^2/s))',
        'power by which the index is worked out',
      ),
    ],
    tabled: ['H'],
    expression: '100 + (10^N - 1) / 0.00715',
    source: D2270,
  }),
};
