import {
  card,
  diameter,
  diametralClearance,
  downFrom,
  everyStep,
  upFrom,
} from '../../judging/internal.js';
import { linearExpansion, partTemperature } from '../../measuring/internal.js';
import {
  celsius,
  micrometre,
  mm,
  ppmPerKelvin,
  type ThermalExpansion,
  thou,
} from '../../quantities/index.js';
import { bushingWall } from '../domains.js';
import { pinFit } from './pin-fit.js';
import { pinReamSize } from './ream-size.js';

const growing = (end: 'min' | 'max', coefficient: ThermalExpansion) => ({
  coefficient: { min: ppmPerKelvin(0), max: ppmPerKelvin(40), [end]: coefficient },
  from: celsius(0),
  to: celsius(200),
  source: 'a data sheet',
});
const pin = {
  field: 'pin',
  meaning: 'diameter of the pin',
  domain: diameter,
  usual: [0.02, 0.02001],
} as const;
const bore = {
  field: 'bore',
  meaning: 'bore for the pin',
  domain: diameter,
  usual: [0.02, 0.02002],
} as const;
const ofWarm = {
  D: bore,
  a_b: {
    field: 'warmBore.expansion.coefficient.min',
    written: 'boreExpansion',
    meaning: 'least expansion coefficient of the metal around the bore',
    domain: linearExpansion,
    usual: [19e-6, 22e-6],
  },
  T_b: {
    field: 'warmBore.temperature',
    written: 'boreTemperature',
    meaning: 'temperature around the bore',
    domain: partTemperature,
    usual: [380, 440],
  },
  d: pin,
  a_p: {
    field: 'warmPin.expansion.coefficient.max',
    written: 'pinExpansion',
    meaning: 'greatest expansion coefficient of the pin',
    domain: linearExpansion,
    usual: [11e-6, 12.1e-6],
  },
  T_p: {
    field: 'warmPin.temperature',
    written: 'pinTemperature',
    meaning: 'temperature of the pin',
    domain: partTemperature,
    usual: [380, 440],
  },
  T_0: {
    field: 'measuredAt',
    meaning: 'temperature when measured',
    domain: partTemperature,
    usual: [288, 298],
  },
} as const;
const NOT_ALIKE = {
  'the bore was never of the pin': { with: { D: 0.03 }, names: 'bore' },
};

/** Formulas of piston pins. */
export const pinCards = {
  pinFit: card({
    of: pinFit,
    name: 'clearance of a piston pin',
    gives: { symbol: 'c', meaning: 'diametral clearance', dimension: 'length' },
    letters: { D: bore, d: pin },
    call: ({ D, d }) => [{ joint: 'bushing' as const, pin: d, bore: D }],
    read: ({ clearance }) => clearance?.min,
    expression: 'D - d',
    refuses: NOT_ALIKE,
    example: { D: mm(20.01), d: mm(20) },
    source: 'geometry',
  }),
  warmPinFit: card({
    of: pinFit,
    name: 'clearance of a warm piston pin',
    gives: { symbol: 'c_h', meaning: 'least diametral clearance when warm', dimension: 'length' },
    letters: ofWarm,
    call: ({ D, a_b, T_b, d, a_p, T_p, T_0 }) => [
      {
        joint: 'floating' as const,
        pin: d,
        bore: D,
        warmBore: { expansion: growing('min', a_b), temperature: T_b },
        warmPin: { expansion: growing('max', a_p), temperature: T_p },
        measuredAt: T_0,
      },
    ],
    read: ({ warmClearance }) => warmClearance?.min,
    expression: 'D * (1 + a_b * (T_b - T_0)) - d * (1 + a_p * (T_p - T_0))',
    refuses: NOT_ALIKE,
    source: 'geometry and linear expansion',
  }),
  heldPinFit: card({
    of: pinFit,
    name: 'clearance of a warm piston pin in a pressed-in bushing',
    gives: { symbol: 'c_h', meaning: 'least diametral clearance when warm', dimension: 'length' },
    letters: {
      ...ofWarm,
      t: {
        field: 'bushingWall',
        meaning: 'wall of the bushing',
        domain: bushingWall,
        usual: [0.001, 0.003],
      },
      a_w: {
        field: 'warmBushing.expansion.coefficient.max',
        written: 'bushingExpansion',
        meaning: 'greatest expansion coefficient of the bushing',
        domain: linearExpansion,
        usual: [17e-6, 18e-6],
      },
      T_w: {
        field: 'warmBushing.temperature',
        written: 'bushingTemperature',
        meaning: 'temperature of the bushing',
        domain: partTemperature,
        usual: [380, 420],
      },
    },
    call: ({ D, a_b, T_b, d, a_p, T_p, T_0, t, a_w, T_w }) => [
      {
        joint: 'bushing' as const,
        pin: d,
        bore: D,
        bushingWall: t,
        warmBore: { expansion: growing('min', a_b), temperature: T_b },
        warmBushing: { expansion: growing('max', a_w), temperature: T_w },
        warmPin: { expansion: growing('max', a_p), temperature: T_p },
        measuredAt: T_0,
      },
    ],
    read: ({ warmClearance }) => warmClearance?.min,
    expression:
      '(D + 2 * t) * (1 + a_b * (T_b - T_0)) - 2 * t * (1 + a_w * (T_w - T_0)) - d * (1 + a_p * (T_p - T_0))',
    source: 'geometry and linear expansion',
  }),
  leastPinReamSize: card({
    of: pinReamSize,
    name: 'least bore to ream for a pin',
    gives: { symbol: 'D_min', meaning: 'least bore', dimension: 'length' },
    letters: {
      d: { ...pin, field: 'pin.max', written: 'largestPin', meaning: 'largest pin diameter' },
      c: {
        field: 'clearance.min',
        written: 'leastClearance',
        meaning: 'least diametral clearance wanted',
        domain: diametralClearance,
        usual: [0.000005, 0.00001],
        made: { inch: everyStep(thou, 0.2, 0.4, 0.1), metric: everyStep(micrometre, 5, 10, 1) },
      },
    },
    call: ({ d, c }) => [
      {
        pin: downFrom(diameter, d),
        clearance: upFrom(diametralClearance, c, 2e-5),
      },
    ],
    read: (ream) => ('reamTo' in ream ? ream.reamTo.min : undefined),
    expression: 'd + c',
    source: 'geometry',
  }),
  mostPinReamSize: card({
    of: pinReamSize,
    name: 'most bore to ream for a pin',
    gives: { symbol: 'D_max', meaning: 'most bore', dimension: 'length' },
    letters: {
      d: { ...pin, field: 'pin.min', written: 'smallestPin', meaning: 'smallest pin diameter' },
      c: {
        field: 'clearance.max',
        written: 'mostClearance',
        meaning: 'most diametral clearance wanted',
        domain: diametralClearance,
        usual: [0.00002, 0.00003],
        made: { inch: everyStep(thou, 0.8, 1.2, 0.1), metric: everyStep(micrometre, 20, 30, 5) },
      },
    },
    call: ({ d, c }) => [
      {
        pin: upFrom(diameter, d),
        clearance: downFrom(diametralClearance, c, 2e-5),
      },
    ],
    read: (ream) => ('reamTo' in ream ? ream.reamTo.max : undefined),
    expression: 'd + c',
    source: 'geometry',
  }),
};
