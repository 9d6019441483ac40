import { card, defined, diameter, everyStep } from '../judging/internal.js';
import { linearExpansion } from '../measuring/internal.js';
import { celsius, mm, ppmPerKelvin, type ThermalExpansion, thou } from '../quantities/index.js';
import { fittingTemperature, handlingRoom, interference } from './domains.js';
import { shrinkTemperature } from './shrink-temperature.js';

const growing = (coefficient: ThermalExpansion) => ({
  coefficient: { min: coefficient, max: coefficient },
  from: celsius(0),
  to: celsius(200),
  source: 'a data sheet',
});

/** The formula of a hub that is shrunk on. */
export const shrinkTemperatureCards = {
  shrinkTemperature: card({
    of: shrinkTemperature,
    name: 'temperature to slip a hub over its shaft',
    gives: { symbol: 'T', meaning: 'temperature of the hub', dimension: 'temperature' },
    letters: {
      d: {
        field: 'diameter',
        meaning: 'bore of the hub',
        domain: diameter,
        usual: [0.02, 0.05],
      },
      i: {
        field: 'diametralInterference',
        meaning: 'interference, in diameter',
        domain: interference,
        usual: [0.00001, 0.00005],
      },
      g: {
        field: 'handlingGap',
        meaning: 'diametral gap to slip it on',
        domain: handlingRoom,
        usual: [0.00003, 0.00006],
        made: { inch: everyStep(thou, 1.5, 2.5, 0.5), metric: everyStep(mm, 0.03, 0.06, 0.01) },
      },
      a_h: {
        field: 'hub.coefficient.min',
        written: 'hub.coefficient',
        meaning: 'expansion coefficient of the hub',
        domain: linearExpansion,
        usual: [10.5e-6, 12.5e-6],
      },
      a_s: {
        field: 'shaft.coefficient.min',
        written: 'shaft.coefficient',
        meaning: 'expansion coefficient of the shaft',
        domain: linearExpansion,
        usual: [11e-6, 12.5e-6],
      },
      T_s: {
        field: 'shaftTemperature',
        meaning: 'temperature of the shaft',
        domain: fittingTemperature,
        usual: [283, 303],
      },
      T_0: {
        field: 'measuredAt',
        meaning: 'temperature when both were measured',
        domain: fittingTemperature,
        usual: [288, 298],
      },
    },
    call: ({ d, i, g, a_h, a_s, T_s, T_0 }) => [
      {
        diameter: d,
        diametralInterference: i,
        handlingGap: g,
        hub: growing(a_h),
        shaft: growing(a_s),
        shaftTemperature: T_s,
        measuredAt: T_0,
      },
    ],
    read: ({ hubTemperature }) => hubTemperature.max,
    where: [
      defined(
        'd_s = (d + i) * (1 + a_s * (T_s - T_0))',
        'diameter of the shaft at its temperature',
        'shaftSize',
      ),
    ],
    expression: 'T_0 + (d_s + g - d) / (a_h * d)',
    refuses: {
      'the interference is more than a twentieth of the diameter': {
        with: { i: 0.003, d: 0.02 },
        names: 'diametralInterference',
      },
      'the hub does not grow': { with: { a_h: 0 }, names: 'hub.coefficient.min' },
    },
    example: {
      d: mm(35),
      i: mm(0.03),
      g: mm(0.045),
      a_h: ppmPerKelvin(11.5),
      a_s: ppmPerKelvin(11.5),
      T_s: celsius(20),
      T_0: celsius(20),
    },
    source: 'linear expansion',
  }),
};
