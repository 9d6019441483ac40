import { card, defined } from '../judging/internal.js';
import { celsius, centistokes } from '../quantities/index.js';
import { sayboltTemperature, sayboltViscosity } from './domains.js';
import { sayboltUniversal } from './saybolt.js';

const NU = 'nu / (1 mm^2/s)';

/** Formulas of Saybolt seconds. */
export const sayboltCards = {
  sayboltUniversal: card({
    of: sayboltUniversal,
    name: 'Saybolt Universal seconds',
    gives: { symbol: 't', meaning: 'Saybolt Universal seconds', dimension: 'time' },
    letters: {
      nu: {
        field: 'viscosity',
        meaning: 'kinematic viscosity',
        domain: sayboltViscosity,
        usual: [1e-5, 2e-5],
      },
      T: {
        field: 'temperature',
        meaning: 'temperature of the oil',
        domain: sayboltTemperature,
        usual: [311, 372],
      },
    },
    call: ({ nu, T }) => [nu, T],
    where: [
      defined(
        `q = (3930.2 + 262.7 * ${NU} + 23.97 * (${NU})^2 + 1.646 * (${NU})^3) * 1e-5`,
        'number to divide by, by the standard',
        'divisor',
      ),
      defined(
        `t_100 = 4.6324 * ${NU} + (1 + 0.03264 * ${NU}) / q`,
        'Saybolt Universal seconds at 100 °F',
        'secondsAt100F',
      ),
      defined(
        'f = 1 + 0.000061 * (T / (1 K) * 1.8 - 459.67 - 100)',
        'factor for another temperature',
      ),
    ],
    expression: 't_100 * f * 1 s',
    example: { nu: centistokes(32), T: celsius(40) },
    source: 'ASTM D2161: ν in mm²/s, temperature in °F in the factor',
  }),
};
