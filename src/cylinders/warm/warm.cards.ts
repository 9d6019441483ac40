import { card, defined, diameter, everyStep } from '../../judging/internal.js';
import { linearExpansion, partTemperature } from '../../measuring/internal.js';
import {
  celsius,
  mm,
  ppmPerKelvin,
  type Temperature,
  type ThermalExpansion,
  thou,
} from '../../quantities/index.js';
import { ringGap, wantedRoom } from '../domains.js';
import { coldPistonClearance, hotPistonClearance } from './piston-clearance.js';
import { leastColdRingGap, ringGapHot } from './ring-gap.js';
import type { RunningPart } from './running-part.js';

/** A part that grows by that much at least, or at most: it is tightest where the bore grows least and what is in it most. */
const part = (
  end: 'min' | 'max',
  coefficient: ThermalExpansion,
  temperature: Temperature,
): RunningPart => ({
  expansion: {
    coefficient: { min: ppmPerKelvin(0), max: ppmPerKelvin(40), [end]: coefficient },
    from: celsius(0),
    to: celsius(200),
    source: 'a data sheet',
  },
  temperature,
});

const source = 'linear expansion';
const T_0 = {
  field: 'measuredAt',
  meaning: 'temperature when measured',
  domain: partTemperature,
  usual: [288, 298],
} as const;
const ofBore = {
  a_b: {
    field: 'warmBore.expansion.coefficient.min',
    written: 'boreExpansion',
    meaning: 'least expansion coefficient of the bore',
    domain: linearExpansion,
    usual: [10e-6, 12e-6],
  },
  T_b: {
    field: 'warmBore.temperature',
    written: 'boreTemperature',
    meaning: 'temperature of the bore',
    domain: partTemperature,
    usual: [340, 400],
  },
} as const;
const ofPiston = {
  a_p: {
    field: 'warmPiston.expansion.coefficient.max',
    written: 'pistonExpansion',
    meaning: 'greatest expansion coefficient of the piston',
    domain: linearExpansion,
    usual: [19e-6, 23e-6],
  },
  T_p: {
    field: 'warmPiston.temperature',
    written: 'pistonTemperature',
    meaning: 'temperature of the piston',
    domain: partTemperature,
    usual: [390, 480],
  },
} as const;
const ofRing = {
  a_r: {
    field: 'warmRing.expansion.coefficient.max',
    written: 'ringExpansion',
    meaning: 'greatest expansion coefficient of the ring',
    domain: linearExpansion,
    usual: [10e-6, 12e-6],
  },
  T_r: {
    field: 'warmRing.temperature',
    written: 'ringTemperature',
    meaning: 'temperature of the ring',
    domain: partTemperature,
    usual: [400, 500],
  },
} as const;
const bore = {
  field: 'bore',
  meaning: 'bore diameter when measured',
  domain: diameter,
  usual: [0.08, 0.081],
} as const;

/** Formulas of pistons and rings that get warm. */
export const warmCylinderCards = {
  coldPistonClearance: card({
    of: coldPistonClearance,
    name: 'piston clearance to fit cold',
    gives: {
      symbol: 'c',
      meaning: 'diametral clearance cold, at the tightest',
      dimension: 'length',
    },
    letters: {
      D: bore,
      c_h: {
        field: 'hotClearance',
        meaning: 'least diametral clearance wanted warm',
        domain: wantedRoom,
        usual: [0.00002, 0.00008],
        made: { inch: everyStep(thou, 1, 3, 0.5), metric: everyStep(mm, 0.02, 0.08, 0.01) },
      },
      ...ofBore,
      ...ofPiston,
      T_0,
    },
    call: ({ D, c_h, a_b, T_b, a_p, T_p, T_0 }) => [
      {
        bore: D,
        hotClearance: c_h,
        warmBore: part('min', a_b, T_b),
        warmPiston: part('max', a_p, T_p),
        measuredAt: T_0,
      },
    ],
    read: ({ clearance }) => clearance.max,
    where: [defined('D_w = D * (1 + a_b * (T_b - T_0))', 'bore when warm', 'warmedBore')],
    expression: 'D - (D_w - c_h) / (1 + a_p * (T_p - T_0))',
    example: {
      D: mm(80),
      c_h: mm(0.03),
      a_b: ppmPerKelvin(11),
      T_b: celsius(100),
      a_p: ppmPerKelvin(21),
      T_p: celsius(140),
      T_0: celsius(20),
    },
    source,
  }),
  hotPistonClearance: card({
    of: hotPistonClearance,
    name: 'clearance of a warm piston',
    gives: {
      symbol: 'c_h',
      meaning: 'least diametral clearance when warm',
      dimension: 'length',
    },
    letters: {
      D: bore,
      D_p: {
        field: 'piston',
        meaning: 'piston diameter when measured',
        domain: diameter,
        usual: [0.0795, 0.08],
      },
      ...ofBore,
      ...ofPiston,
      T_0,
    },
    call: ({ D, D_p, a_b, T_b, a_p, T_p, T_0 }) => [
      {
        bore: D,
        piston: D_p,
        warmBore: part('min', a_b, T_b),
        warmPiston: part('max', a_p, T_p),
        measuredAt: T_0,
      },
    ],
    read: ({ clearance }) => clearance.min,
    expression: 'D * (1 + a_b * (T_b - T_0)) - D_p * (1 + a_p * (T_p - T_0))',
    refuses: { 'the two are not of one cylinder': { with: { D_p: 0.076 }, names: 'piston' } },
    example: {
      D: mm(80),
      D_p: mm(79.84),
      a_b: ppmPerKelvin(11),
      T_b: celsius(100),
      a_p: ppmPerKelvin(21),
      T_p: celsius(140),
      T_0: celsius(20),
    },
    source,
  }),
  ringGapHot: card({
    of: ringGapHot,
    name: 'gap of a warm ring',
    gives: { symbol: 'g_h', meaning: 'least ring gap when warm', dimension: 'length' },
    letters: {
      g: {
        field: 'gap',
        meaning: 'ring gap measured',
        domain: ringGap,
        usual: [0.0002, 0.001],
      },
      D: { ...bore, field: 'measuredIn', meaning: 'bore it was measured in' },
      ...ofBore,
      ...ofRing,
      T_0,
    },
    call: ({ g, D, a_b, T_b, a_r, T_r, T_0 }) => [
      {
        gap: g,
        measuredIn: D,
        warmBore: part('min', a_b, T_b),
        warmRing: part('max', a_r, T_r),
        measuredAt: T_0,
      },
    ],
    read: ({ gap }) => gap.min,
    where: [defined('L = pi * D - g', 'length of the ring along its outside, cold')],
    expression: 'pi * D * (1 + a_b * (T_b - T_0)) - L * (1 + a_r * (T_r - T_0))',
    refuses: {
      'the gap is more than a tenth of the bore': { with: { g: 0.009 }, names: 'gap' },
    },
    source: 'geometry and linear expansion',
  }),
  leastColdRingGap: card({
    of: leastColdRingGap,
    name: 'least safe ring gap cold',
    gives: { symbol: 'g', meaning: 'least safe ring gap cold', dimension: 'length' },
    letters: {
      D: bore,
      g_h: {
        field: 'hotGap',
        meaning: 'least gap wanted warm',
        domain: wantedRoom,
        usual: [0, 0.0002],
        made: { inch: everyStep(thou, 2, 8, 1), metric: everyStep(mm, 0.05, 0.2, 0.05) },
      },
      ...ofBore,
      ...ofRing,
      T_0,
    },
    call: ({ D, g_h, a_b, T_b, a_r, T_r, T_0 }) => [
      {
        bore: D,
        hotGap: g_h,
        warmBore: part('min', a_b, T_b),
        warmRing: part('max', a_r, T_r),
        measuredAt: T_0,
      },
    ],
    read: ({ gap }) => gap.max,
    expression: 'pi * D - (pi * D * (1 + a_b * (T_b - T_0)) - g_h) / (1 + a_r * (T_r - T_0))',
    source: 'geometry and linear expansion',
  }),
};
