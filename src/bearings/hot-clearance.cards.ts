import { card, diameter, diametralClearance } from '../judging/internal.js';
import { linearExpansion, partTemperature } from '../measuring/internal.js';
import {
  celsius,
  ppmPerKelvin,
  type Temperature,
  type ThermalExpansion,
} from '../quantities/index.js';
import { shellWall } from './domains.js';
import { type HotClearance, hotOilClearance, type WarmPart } from './hot-clearance.js';

/** A part that grows by that much at least, or at most: the clearance is least where the journal and the bush grow most. */
const part = (
  end: 'min' | 'max',
  coefficient: ThermalExpansion,
  temperature: Temperature,
): WarmPart => ({
  expansion: {
    coefficient: { min: ppmPerKelvin(0), max: ppmPerKelvin(40), [end]: coefficient },
    from: celsius(0),
    to: celsius(200),
    source: 'a data sheet',
  },
  temperature,
});

const cold = {
  D: {
    field: 'journal',
    meaning: 'journal diameter when measured',
    domain: diameter,
    usual: [0.02, 0.05],
  },
  c: {
    field: 'clearance',
    meaning: 'diametral clearance when measured',
    domain: diametralClearance,
    usual: [0.00003, 0.00008],
  },
  T_0: {
    field: 'measuredAt',
    meaning: 'temperature when measured',
    domain: partTemperature,
    usual: [288, 298],
  },
  a_s: {
    field: 'shaft.expansion.coefficient.max',
    written: 'shaftExpansion',
    meaning: 'greatest expansion coefficient of the journal',
    domain: linearExpansion,
    usual: [11.2e-6, 12.1e-6],
  },
  T_s: {
    field: 'shaft.temperature',
    written: 'shaftTemperature',
    meaning: 'temperature of the journal',
    domain: partTemperature,
    usual: [340, 390],
  },
} as const;

const expansion = { domain: linearExpansion, usual: [10e-6, 24e-6] } as const;
const temperature = { domain: partTemperature, usual: [340, 390] } as const;
const gives = { meaning: 'least diametral clearance when warm', dimension: 'length' } as const;
const read = ({ clearance }: HotClearance) => clearance.min;
const source = 'linear expansion';

/** Formulas of a clearance when warm. */
export const hotClearanceCards = {
  hotClearanceOfFreeRing: card({
    of: hotOilClearance,
    name: 'clearance of a warm journal in a free ring',
    gives: { symbol: 'c_h', ...gives },
    letters: {
      ...cold,
      a_r: {
        field: 'bore.ring.expansion.coefficient.min',
        written: 'ringExpansion',
        meaning: 'least expansion coefficient of the ring',
        ...expansion,
      },
      T_r: {
        field: 'bore.ring.temperature',
        written: 'ringTemperature',
        meaning: 'temperature of the ring',
        ...temperature,
      },
    },
    call: ({ D, c, T_0, a_s, T_s, a_r, T_r }) => [
      {
        journal: D,
        clearance: c,
        measuredAt: T_0,
        shaft: part('max', a_s, T_s),
        bore: { kind: 'free ring' as const, ring: part('min', a_r, T_r) },
      },
    ],
    read,
    expression: '(D + c) * (1 + a_r * (T_r - T_0)) - D * (1 + a_s * (T_s - T_0))',
    source,
  }),
  hotClearanceOfHeldBush: card({
    of: hotOilClearance,
    name: 'clearance of a warm journal in a bush that its housing holds',
    gives: { symbol: 'c_h', ...gives },
    letters: {
      ...cold,
      t: {
        field: 'bore.wall',
        meaning: 'wall of the bush',
        domain: shellWall,
        usual: [0.0015, 0.004],
      },
      a_b: {
        field: 'bore.bush.expansion.coefficient.max',
        written: 'bushExpansion',
        meaning: 'greatest expansion coefficient of the bush',
        ...expansion,
      },
      T_b: {
        field: 'bore.bush.temperature',
        written: 'bushTemperature',
        meaning: 'temperature of the bush',
        ...temperature,
      },
      a_h: {
        field: 'bore.housing.expansion.coefficient.min',
        written: 'housingExpansion',
        meaning: 'least expansion coefficient of the housing',
        ...expansion,
      },
      T_h: {
        field: 'bore.housing.temperature',
        written: 'housingTemperature',
        meaning: 'temperature of the housing',
        ...temperature,
      },
    },
    call: ({ D, c, T_0, a_s, T_s, t, a_b, T_b, a_h, T_h }) => [
      {
        journal: D,
        clearance: c,
        measuredAt: T_0,
        shaft: part('max', a_s, T_s),
        bore: {
          kind: 'held bush' as const,
          wall: t,
          bush: part('max', a_b, T_b),
          housing: part('min', a_h, T_h),
        },
      },
    ],
    read,
    expression:
      '(D + c + 2 * t) * (1 + a_h * (T_h - T_0)) - 2 * t * (1 + a_b * (T_b - T_0)) - D * (1 + a_s * (T_s - T_0))',
    source,
  }),
};
