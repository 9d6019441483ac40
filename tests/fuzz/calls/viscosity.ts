import {
  apiGravity,
  celsius,
  centistokes,
  densityAt,
  densityFromApiGravity,
  dynamicViscosityAt,
  extrapolatedDynamicViscosity,
  extrapolatedViscosity,
  fahrenheit,
  isoGrade,
  kilogramPerCubicMetre,
  kinematicFromSaybolt,
  type Oil,
  ppmPerKelvin,
  ratio,
  saeGrade,
  sayboltUniversal,
  second,
  type ViscosityLine,
  viscosityIndex,
} from 'crankwright';
import { calls, refused } from './calls.js';

const line: ViscosityLine = [
  { temperature: celsius(40), viscosity: centistokes(100) },
  { temperature: celsius(100), viscosity: centistokes(11) },
];
const [warm, hot] = line;
const closed = [warm, { ...hot, temperature: warm.temperature }];
const thickening = [warm, { ...hot, viscosity: centistokes(150) }];
const steep = [
  { temperature: celsius(40), viscosity: centistokes(1e6) },
  { temperature: celsius(50), viscosity: centistokes(1) },
];
const oil: Oil = { line, density: kilogramPerCubicMetre(885) };
const petrol = {
  density: kilogramPerCubicMetre(745),
  at: celsius(15),
  temperature: celsius(40),
};
const known = { ...petrol, density: kilogramPerCubicMetre(880) };

export const viscosityCalls = {
  extrapolatedViscosity: calls(extrapolatedViscosity, {
    sound: [
      [line, celsius(180)],
      [[hot, warm], celsius(80)],
      [line, celsius(-50)],
    ],
    provoked: {
      'equal temperatures': refused('line', closed, celsius(180)),
      'thicker when heated': refused('line', thickening, celsius(180)),
      'not an oil temperature': refused('temperature', line, celsius(300)),
      'the result is out of range': refused('result', steep, celsius(150)),
      'one point': refused('line', [warm], celsius(80)),
    },
  }),
  densityFromApiGravity: calls(densityFromApiGravity, {
    sound: [[ratio(28)], [ratio(-5)]],
    provoked: { 'outside the scale': refused('gravity', ratio(200)) },
  }),
  apiGravity: calls(apiGravity, {
    sound: [[kilogramPerCubicMetre(886)]],
    provoked: { 'not a density': refused('density', 0.886) },
  }),
  densityAt: calls(densityAt, {
    sound: [
      [known],
      [{ ...known, at: celsius(100) }],
      [{ ...petrol, expansion: ppmPerKelvin(1200) }],
    ],
    provoked: {
      'a temperature outside the range': refused('temperature', {
        ...known,
        temperature: celsius(151),
      }),
      'the other temperature outside the range': refused('at', { ...known, at: celsius(-51) }),
      'not an oil density': refused('density', { ...known, density: 0.88 }),
      'an expansion without its unit': refused('expansion', { ...known, expansion: 700 }),
      'an expansion that takes it out of the range': refused('temperature', {
        ...petrol,
        temperature: celsius(150),
        expansion: ppmPerKelvin(2000),
      }),
      'petrol with the default': refused('density', petrol),
      'a misspelt field': refused('known.expansoin', { ...known, expansoin: ppmPerKelvin(700) }),
    },
  }),
  dynamicViscosityAt: calls(dynamicViscosityAt, {
    sound: [
      [oil, celsius(80)],
      [{ ...oil, expansion: ppmPerKelvin(700) }, celsius(-20)],
    ],
    provoked: {
      'not a line': refused('oil.line', { ...oil, line: thickening }, celsius(80)),
      'not a density': refused('oil.density', { ...oil, density: 0.885 }, celsius(80)),
      'not an expansion': refused('oil.expansion', { ...oil, expansion: 700 }, celsius(80)),
      'the temperature is out of range': refused('temperature', oil, celsius(160)),
      'the result is out of range': refused('result', { ...oil, line: steep }, celsius(150)),
      'petrol with the default': refused(
        'oil.density',
        { ...oil, density: petrol.density },
        celsius(80),
      ),
    },
  }),
  extrapolatedDynamicViscosity: calls(extrapolatedDynamicViscosity, {
    sound: [
      [oil, celsius(180)],
      [oil, celsius(80)],
    ],
    provoked: {
      'not a line': refused('oil.line', { ...oil, line: closed }, celsius(80)),
      'not a density': refused('oil.density', { ...oil, density: 0.885 }, celsius(80)),
      'not an expansion': refused('oil.expansion', { ...oil, expansion: 700 }, celsius(80)),
      'not an oil temperature': refused('temperature', oil, celsius(300)),
      'an expansion that takes it out of the range': refused(
        'temperature',
        { ...oil, expansion: ppmPerKelvin(2000) },
        celsius(220),
      ),
      'the result is out of range': refused('result', { ...oil, line: steep }, celsius(150)),
    },
  }),
  viscosityIndex: calls(viscosityIndex, {
    sound: [
      [{ at40C: centistokes(73.3), at100C: centistokes(8.86) }],
      [{ at40C: centistokes(22.83), at100C: centistokes(5.05) }],
      [{ at40C: centistokes(3000), at100C: centistokes(80) }],
    ],
    provoked: {
      'not a viscosity': refused('at40C', { at40C: 73.3, at100C: centistokes(8.86) }),
      'too thin for an index': refused('at100C', {
        at40C: centistokes(5),
        at100C: centistokes(1.9),
      }),
      'where no index is defined': refused('at100C', {
        at40C: centistokes(5),
        at100C: centistokes(1),
      }),
      'thicker when heated': refused('at40C', {
        at40C: centistokes(8.86),
        at100C: centistokes(73.3),
      }),
    },
  }),
  saeGrade: calls(saeGrade, {
    sound: [[centistokes(8.1)], [centistokes(2)], [centistokes(40)]],
    provoked: { 'not a viscosity': refused('viscosityAt100C', 8.1e3) },
  }),
  isoGrade: calls(isoGrade, {
    sound: [[centistokes(67)], [centistokes(55)], [centistokes(1)], [centistokes(5000)]],
    provoked: { 'not a viscosity': refused('viscosityAt40C', 6.7e4) },
  }),
  sayboltUniversal: calls(sayboltUniversal, {
    sound: [[centistokes(32), fahrenheit(100)]],
    provoked: {
      'thinner than the tables': refused('viscosity', centistokes(1.7), fahrenheit(100)),
      'not a viscosity': refused('viscosity', 32, fahrenheit(100)),
      'too hot': refused('temperature', centistokes(32), fahrenheit(351)),
    },
  }),
  kinematicFromSaybolt: calls(kinematicFromSaybolt, {
    sound: [
      [second(150), fahrenheit(100)],
      [second(1e6), fahrenheit(0)],
    ],
    provoked: {
      'thinner than the tables': refused('time', second(31), fahrenheit(100)),
      'not an oil': refused('time', second(1e12), fahrenheit(100)),
      'too cold': refused('temperature', second(150), fahrenheit(-1)),
    },
  }),
};
