import {
  boreAfterPressing,
  celsius,
  elasticConstants,
  fitOf,
  heatingLimit,
  type InchFitClass,
  inch,
  inchFit,
  interferencePressure,
  limitsOfSize,
  MPa,
  meanExpansion,
  mm,
  pressFit,
  ratio,
  shrinkTemperature,
} from 'crankwright';
import { calls, refused } from './calls.js';

const steel = elasticConstants('steel');
const parts = {
  diameter: mm(40),
  diametralInterference: { min: mm(0.018), max: mm(0.059) },
  shaft: { ...steel, bore: mm(10), yieldStrength: MPa(350) },
  hub: { ...steel, outside: mm(80), yieldStrength: MPa(350), tensileStrength: MPa(500) },
  length: mm(30),
  friction: { min: ratio(0.1), max: ratio(0.2) },
};
const reversed = { min: mm(0.059), max: mm(0.018) };
const shrink = {
  diameter: mm(40),
  diametralInterference: { min: mm(0.018), max: mm(0.059) },
  handlingGap: mm(0.04),
  hub: meanExpansion('steel'),
  shaft: meanExpansion('steel'),
  shaftTemperature: celsius(-20),
  measuredAt: celsius(20),
  heating: heatingLimit('mild steel'),
};
const bushing = { outside: mm(25.05), bore: mm(20), ...elasticConstants('bronze') };
const housing = { bore: mm(25), outside: mm(40), ...steel };

const designations = {
  'the designation is none': refused('designation', '40J9x'),
  'its size is not above 0 and up to 500 mm': refused('designation', '501H7/g6'),
  'its letter does not exist': refused('designation', '40I7'),
  'its class is not defined at the size': refused('designation', '40J9'),
};

export const fitCalls = {
  limitsOfSize: calls(limitsOfSize, {
    sound: [['40H7'], ['12.5 js9'], ['280M6']],
    provoked: {
      ...designations,
      'its size is not above 0 and up to 500 mm': refused('designation', '0H7'),
    },
  }),
  fitOf: calls(fitOf, {
    sound: [['40H7/g6'], ['40 P7 / h6']],
    provoked: {
      'the designation is none': refused('designation', '40H7'),
      'its size is not above 0 and up to 500 mm': refused('designation', '501H7/g6'),
      'a letter does not exist': refused('designation', '40H7/i6'),
      'a class is not defined at the size': refused('designation', '40H7/j9'),
      'the hole does not come first': refused('designation', '40g6/H7'),
    },
  }),
  inchFit: calls(inchFit, {
    sound: [[{ fitClass: 'RC4', basic: inch(2) }], [{ fitClass: 'FN3', basic: inch(3.5) }]],
    provoked: {
      'the class does not exist': refused('fitClass', {
        fitClass: 'RC10' as InchFitClass,
        basic: inch(2),
      }),
      'the size is not finite': refused('basic', { fitClass: 'RC4', basic: Number.NaN }),
      'out of range': refused('basic', { fitClass: 'RC4', basic: inch(19.7) }),
      'the class is not defined at the size': refused('basic', {
        fitClass: 'FN3',
        basic: inch(0.95),
      }),
    },
  }),
  elasticConstants: calls(elasticConstants, {
    sound: [['grey iron']],
    provoked: { 'the metal is not in the table': refused('metal', 'wood') },
  }),
  heatingLimit: calls(heatingLimit, {
    sound: [['rolling bearing']],
    provoked: { 'the part is not in the table': refused('part', 'wood') },
  }),
  interferencePressure: calls(interferencePressure, {
    sound: [
      [
        {
          diameter: mm(40),
          diametralInterference: mm(0.04),
          shaft: steel,
          hub: { ...steel, outside: mm(80) },
        },
      ],
    ],
    provoked: {},
  }),
  pressFit: calls(pressFit, {
    sound: [[parts]],
    provoked: {
      'a span is reversed': refused('diametralInterference', {
        ...parts,
        diametralInterference: reversed,
      }),
      'length and friction do not come together': refused('length', {
        ...parts,
        length: undefined,
      }),
    },
  }),
  shrinkTemperature: calls(shrinkTemperature, {
    sound: [[shrink]],
    provoked: {
      'a span is reversed': refused('diametralInterference', {
        ...shrink,
        diametralInterference: reversed,
      }),
      'the range of a mean is reversed': refused('hub', {
        ...shrink,
        hub: { ...shrink.hub, from: celsius(100), to: celsius(20) },
      }),
    },
  }),
  boreAfterPressing: calls(boreAfterPressing, {
    sound: [[{ bushing, housing }]],
    provoked: {},
  }),
};
