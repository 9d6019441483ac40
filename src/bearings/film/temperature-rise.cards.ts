import { card } from '../../judging/internal.js';
import { liquidDensity } from '../../oil/internal.js';
import { drawnOil, frictionPower, heatShare, oilSpecificHeat } from './domains.js';
import { temperatureRise } from './temperature-rise.js';

/** The formula of how a bearing warms its oil. */
export const temperatureRiseCards = {
  temperatureRise: card({
    of: temperatureRise,
    name: 'rise of the oil temperature in a bearing',
    gives: { symbol: 't', meaning: 'rise of temperature', dimension: 'temperatureDifference' },
    letters: {
      P: { field: 'power', meaning: 'power of friction', domain: frictionPower, usual: [30, 600] },
      Q: {
        field: 'flow',
        meaning: 'flow through the widest gap',
        domain: drawnOil,
        usual: [2.5e-6, 1e-5],
      },
      Q_s: {
        field: 'sideFlow',
        meaning: 'flow over both ends',
        domain: drawnOil,
        usual: [1e-7, 2e-6],
      },
      rho: {
        field: 'density',
        meaning: 'density of the oil',
        domain: liquidDensity,
        usual: [780, 900],
      },
      H: {
        field: 'specificHeat',
        meaning: 'specific heat of the oil',
        domain: oilSpecificHeat,
        usual: [1700, 2200],
      },
      k: {
        field: 'carried',
        meaning: 'share of the heat that the oil carries away',
        domain: heatShare,
        usual: [0.5, 1],
      },
    },
    expression: 'k * P / (rho * H * (Q - Q_s / 2))',
    refuses: {
      'more leaves at the ends than flows in': { with: { Q_s: 3e-5 }, names: 'sideFlow' },
    },
    source: 'Raimondi and Boyd, Trans. ASLE 1 (1958): all heat carried by the oil',
  }),
};
