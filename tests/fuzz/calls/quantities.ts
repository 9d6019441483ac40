import {
  absolutePressure,
  celsius,
  celsiusDifference,
  convert,
  format,
  formatFraction,
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
      'a value is not finite': refused('b', inch(1), Number.NaN),
      'the result is too large': refused('result', huge, huge),
    },
  }),
  minus: calls(minus, {
    sound: [[inch(2.125), thou(20)]],
    provoked: {
      'a value is not finite': refused('a', '2.125', 0),
      'the result is too large': refused('result', huge, -huge),
    },
  }),
  times: calls(times, {
    sound: [
      [thou(10), 2],
      [celsiusDifference(4), -0.5],
    ],
    provoked: {
      'a value is not finite': refused('factor', thou(1), Infinity),
      'the result is too large': refused('result', huge, 2),
    },
  }),
  valueIn: calls(valueIn, {
    sound: [
      [inch(2.1248), mm],
      [celsius(40), celsius],
    ],
    provoked: {
      'a value is not finite': refused('quantity', Number.NaN, mm),
      'the unit is not one': refused('unit', inch(1), 'mm'),
      'the result is too large': refused('thou', huge, thou),
    },
  }),
  convert: calls(convert as (value: number, from: string, to: string) => number, {
    sound: [
      [2.1248, 'in', 'mm'],
      [68, '°F', '°C'],
      [22, 'mils', 'um'],
    ],
    provoked: {
      'a value is not finite': refused('value', Number.NaN, 'in', 'mm'),
      'a name is unknown': refused('from', 1, 'inchs', 'mm'),
      'a name wanted is unknown': refused('to', 1, 'in', 'toString'),
      'the two are of different dimensions': refused('to', 1, 'in', 'lbf·ft'),
      'a temperature is below absolute zero': refused('value', -300, '°C', 'K'),
      'the result is too large': refused('value', huge, 'in', 'µm'),
    },
  }),
  formatFraction: calls(formatFraction, {
    sound: [[inch(2.1248)], [inch(-0.4375), 16]],
    provoked: {
      'the length is not finite': refused('length', Number.NaN),
      'the finest fraction is none of those': refused('finest', inch(1), 10),
    },
  }),
  format: calls(format, {
    sound: [
      [inch(2.1248), mm],
      [inch(2.1248), inch, 5],
      [percent(50), percent, 0],
    ],
    provoked: {
      'a value is not finite': refused('quantity', Infinity, mm),
      'the decimals are not a whole number from 0 to 12': refused('decimals', inch(1), mm, -1),
      'decimals above 12': refused('decimals', inch(1), mm, 13),
      'decimals in part': refused('decimals', inch(1), mm, 1.5),
      'the unit is not one': refused('unit', inch(1), 'mm'),
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
      'the text is not one number and one unit of it': refused('text', '2.125', 'length'),
      'a unit of another dimension': refused('text', '2 in', 'torque'),
      'the dimension is unknown': refused('dimension', '2 in', 'size'),
      'an ambiguous unit': refused('text', '1 qt', 'volume'),
      'not text': refused('text', 2.125, 'length'),
      'no fraction': refused('text', '1 4/3 in', 'length'),
      'the number is too large': refused('text', '1e999 in', 'length'),
      'too small': refused('text', '1e-999 in', 'length'),
    },
  }),
  parseLength: calls(parseLength, {
    sound: [['2-1/8 in'], ['20 under'], ['+.020 in'], ["1' "]],
    provoked: {
      'the text is not one number and one unit of length': refused('text', '2 in mm'),
      'a comma': refused('text', '2,125 in'),
      'not an undersize': refused('text', '2.5 under'),
      'the number is too large': refused('text', '1e400 in'),
      'too small': refused('text', '1e-400 in'),
    },
  }),
  tradeUnit: calls(tradeUnit, {
    sound: [['length', 'inch']],
    provoked: {
      'the dimension is unknown': refused('dimension', 'toString', 'inch'),
      'the unit system is unknown': refused('system', 'length', 'imperial'),
    },
    notJson: 'a unit is a function',
  }),
  absolutePressure: calls(absolutePressure, {
    sound: [[psiGauge(120), standardAtmosphere]],
    provoked: {
      'a value is not finite': refused('reading', Number.NaN, standardAtmosphere),
      'out of range': refused('reading', 1e13, standardAtmosphere),
      'the atmosphere is not finite': refused('atmosphere', psiGauge(1), Infinity),
      'the result would be below a perfect vacuum': refused(
        'reading',
        psiGauge(-20),
        standardAtmosphere,
      ),
    },
  }),
  gaugePressure: calls(gaugePressure, {
    sound: [[kPa(150), standardAtmosphere]],
    provoked: {
      'a value is not finite': refused('absolute', Number.NaN, standardAtmosphere),
      'out of range': refused('absolute', 1e13, standardAtmosphere),
      'a pressure is below a perfect vacuum': refused('absolute', kPa(-1), standardAtmosphere),
      'an atmosphere below a perfect vacuum': refused('atmosphere', kPa(1), -1),
    },
  }),
};
