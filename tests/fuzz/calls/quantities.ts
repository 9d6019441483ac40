import {
  absolutePressure,
  celsius,
  celsiusDifference,
  convert,
  format,
  gaugePressure,
  inch,
  kPa,
  minus,
  mm,
  parse,
  parseLength,
  percent,
  plus,
  psiGauge,
  standardAtmosphere,
  thou,
  times,
  tradeUnit,
  valueIn,
} from 'crankwright';
import { calls, refused } from './calls.js';

const huge = Number.MAX_VALUE;

export const quantityCalls = {
  plus: calls(plus, {
    sound: [
      [inch(2.105), thou(20)],
      [thou(-1), thou(1)],
    ],
    provoked: {
      'not a finite number': refused('b', inch(1), Number.NaN),
      'the sum is too large': refused('result', huge, huge),
    },
  }),
  minus: calls(minus, {
    sound: [[inch(2.125), thou(20)]],
    provoked: {
      'not a finite number': refused('a', '2.125', 0),
      'the difference is too large': refused('result', huge, -huge),
    },
  }),
  times: calls(times, {
    sound: [
      [thou(10), 2],
      [celsiusDifference(4), -0.5],
    ],
    provoked: {
      'not a finite number': refused('factor', thou(1), Infinity),
      'the product is too large': refused('result', huge, 2),
    },
  }),
  valueIn: calls(valueIn, {
    sound: [
      [inch(2.1248), mm],
      [celsius(40), celsius],
    ],
    provoked: {
      'not a finite number': refused('quantity', Number.NaN, mm),
      'the unit is not one': refused('unit', inch(1), 'mm'),
      'the number is too large': refused('thou', huge, thou),
    },
  }),
  convert: calls(convert, {
    sound: [
      [2.1248, 'in', 'mm'],
      [68, '°F', '°C'],
    ],
    provoked: {
      'not finite': refused('value', Number.NaN, 'in', 'mm'),
      'unknown symbol': refused('from', 1, 'inch', 'mm'),
      'unknown symbol wanted': refused('to', 1, 'in', 'toString'),
      'another dimension': refused('to', 1, 'in', 'lbf·ft'),
      'the number is too large': refused('value', huge, 'in', 'µm'),
    },
  }),
  format: calls(format, {
    sound: [
      [inch(2.1248), mm],
      [inch(2.1248), inch, 5],
      [percent(50), percent, 0],
    ],
    provoked: {
      'not finite': refused('quantity', Infinity, mm),
      'decimals below 0': refused('decimals', inch(1), mm, -1),
      'decimals above 12': refused('decimals', inch(1), mm, 13),
      'decimals in part': refused('decimals', inch(1), mm, 1.5),
      'a unit in quotes': refused('unit', inch(1), 'mm'),
    },
  }),
  parse: calls(parse, {
    sound: [
      ['18 ft-lb', 'torque'],
      ['104 °F', 'temperature'],
      ['-1.5e-3 %', 'ratio'],
    ],
    provoked: {
      'no number': refused('text', 'inch', 'length'),
      'no unit': refused('text', '2.125', 'length'),
      'a unit of another dimension': refused('text', '2 in', 'torque'),
      'an unknown dimension': refused('dimension', '2 in', 'size'),
      'an ambiguous unit': refused('text', '1 qt', 'volume'),
      'not text': refused('text', 2.125, 'length'),
      'no fraction': refused('text', '1 4/3 in', 'length'),
      'a number too large': refused('text', '1e999 in', 'length'),
      'a number too small': refused('text', '1e-999 in', 'length'),
    },
  }),
  parseLength: calls(parseLength, {
    sound: [['2-1/8 in'], ['20 under'], ['+.020 in'], ["1' "]],
    provoked: {
      'two units': refused('text', '2 in mm'),
      'a comma': refused('text', '2,125 in'),
      'not an undersize': refused('text', '2.5 under'),
      'a number too large': refused('text', '1e400 in'),
      'a number too small': refused('text', '1e-400 in'),
    },
  }),
  tradeUnit: calls(tradeUnit, {
    sound: [['length', 'inch']],
    provoked: {
      'unknown dimension': refused('dimension', 'toString', 'inch'),
      'unknown system': refused('system', 'length', 'imperial'),
    },
    notJson: 'a unit is a function',
  }),
  absolutePressure: calls(absolutePressure, {
    sound: [[psiGauge(120), standardAtmosphere]],
    provoked: {
      'the reading is not finite': refused('reading', Number.NaN, standardAtmosphere),
      'the atmosphere is not finite': refused('atmosphere', psiGauge(1), Infinity),
      'below a perfect vacuum': refused('reading', psiGauge(-20), standardAtmosphere),
    },
  }),
  gaugePressure: calls(gaugePressure, {
    sound: [[kPa(150), standardAtmosphere]],
    provoked: {
      'not finite': refused('absolute', Number.NaN, standardAtmosphere),
      'below a perfect vacuum': refused('absolute', kPa(-1), standardAtmosphere),
      'an atmosphere below a perfect vacuum': refused('atmosphere', kPa(1), -1),
    },
  }),
};
