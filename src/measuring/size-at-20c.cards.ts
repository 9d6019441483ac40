import { card, diameter } from '../judging/internal.js';
import {
  celsius,
  mm,
  ppmPerKelvin,
  type Temperature,
  type ThermalExpansion,
} from '../quantities/index.js';
import { linearExpansion, partTemperature } from './domains.js';
import { type ReadWarm, sizeAt20C } from './size-at-20c.js';

const warm = (coefficient: ThermalExpansion, temperature: Temperature): ReadWarm => ({
  temperature,
  expansion: {
    coefficient: { min: coefficient, max: coefficient },
    from: celsius(0),
    to: celsius(100),
    source: 'a data sheet',
  },
});
const temperature = { domain: partTemperature, usual: [283, 308] } as const;
const expansion = { domain: linearExpansion, usual: [10e-6, 24e-6] } as const;

/** The formula of a size at 20 °C. */
export const sizeAt20CCards = {
  sizeAt20C: card({
    of: sizeAt20C,
    name: 'size at 20 °C',
    gives: { symbol: 'D_20', meaning: 'size at 20 °C (68 °F)', dimension: 'length' },
    letters: {
      D: { field: 'size', meaning: 'size as it was read', domain: diameter, usual: [0.02, 0.1] },
      a_p: {
        field: 'part.expansion.coefficient.min',
        written: 'partExpansion',
        meaning: 'expansion coefficient of the part',
        ...expansion,
      },
      T_p: {
        field: 'part.temperature',
        written: 'partTemperature',
        meaning: 'temperature of the part',
        ...temperature,
      },
      a_i: {
        field: 'instrument.expansion.coefficient.min',
        written: 'instrumentExpansion',
        meaning: 'expansion coefficient of the instrument',
        ...expansion,
      },
      T_i: {
        field: 'instrument.temperature',
        written: 'instrumentTemperature',
        meaning: 'temperature of the instrument',
        ...temperature,
      },
    },
    call: ({ D, a_p, T_p, a_i, T_i }) => [
      { size: D, part: warm(a_p, T_p), instrument: warm(a_i, T_i) },
    ],
    read: ({ size }) => size,
    expression: 'D * (1 + a_i * (T_i - 293.15 K)) / (1 + a_p * (T_p - 293.15 K))',
    example: {
      D: mm(80),
      a_p: ppmPerKelvin(23),
      T_p: celsius(30),
      a_i: ppmPerKelvin(11.5),
      T_i: celsius(22),
    },
    source: 'ISO 1 and linear expansion',
  }),
};
