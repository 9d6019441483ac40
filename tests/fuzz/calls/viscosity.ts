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
import { calls } from './calls.js';

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
      'equal temperatures': [closed, celsius(180)],
      'thicker when heated': [thickening, celsius(180)],
      'not an oil temperature': [line, celsius(300)],
      'the result is out of range': [steep, celsius(150)],
      'one point': [[warm], celsius(80)],
    },
  }),
  densityFromApiGravity: calls(densityFromApiGravity, {
    sound: [[ratio(28)], [ratio(-5)]],
    provoked: { 'outside the scale': [ratio(200)] },
  }),
  apiGravity: calls(apiGravity, {
    sound: [[kilogramPerCubicMetre(886)]],
    provoked: { 'not a density': [0.886] },
  }),
  densityAt: calls(densityAt, {
    sound: [
      [known],
      [{ ...known, at: celsius(100) }],
      [{ ...petrol, expansion: ppmPerKelvin(1200) }],
    ],
    provoked: {
      'a temperature outside the range': [{ ...known, temperature: celsius(151) }],
      'the other temperature outside the range': [{ ...known, at: celsius(-51) }],
      'not an oil density': [{ ...known, density: 0.88 }],
      'an expansion without its unit': [{ ...known, expansion: 700 }],
      'an expansion that takes it out of the range': [
        { ...petrol, temperature: celsius(150), expansion: ppmPerKelvin(2000) },
      ],
      'petrol with the default': [petrol],
      'a misspelt field': [{ ...known, expansoin: ppmPerKelvin(700) }],
    },
  }),
  dynamicViscosityAt: calls(dynamicViscosityAt, {
    sound: [
      [oil, celsius(80)],
      [{ ...oil, expansion: ppmPerKelvin(700) }, celsius(-20)],
    ],
    provoked: {
      'not a line': [{ ...oil, line: thickening }, celsius(80)],
      'not a density': [{ ...oil, density: 0.885 }, celsius(80)],
      'not an expansion': [{ ...oil, expansion: 700 }, celsius(80)],
      'the temperature is out of range': [oil, celsius(160)],
      'the result is out of range': [{ ...oil, line: steep }, celsius(150)],
      'petrol with the default': [{ ...oil, density: petrol.density }, celsius(80)],
    },
  }),
  extrapolatedDynamicViscosity: calls(extrapolatedDynamicViscosity, {
    sound: [
      [oil, celsius(180)],
      [oil, celsius(80)],
    ],
    provoked: {
      'not a line': [{ ...oil, line: closed }, celsius(80)],
      'not a density': [{ ...oil, density: 0.885 }, celsius(80)],
      'not an expansion': [{ ...oil, expansion: 700 }, celsius(80)],
      'not an oil temperature': [oil, celsius(300)],
      'an expansion that takes it out of the range': [
        { ...oil, expansion: ppmPerKelvin(2000) },
        celsius(220),
      ],
      'the result is out of range': [{ ...oil, line: steep }, celsius(150)],
    },
  }),
  viscosityIndex: calls(viscosityIndex, {
    sound: [
      [{ at40C: centistokes(73.3), at100C: centistokes(8.86) }],
      [{ at40C: centistokes(22.83), at100C: centistokes(5.05) }],
      [{ at40C: centistokes(3000), at100C: centistokes(80) }],
    ],
    provoked: {
      'not a viscosity': [{ at40C: 73.3, at100C: centistokes(8.86) }],
      'too thin for an index': [{ at40C: centistokes(5), at100C: centistokes(1.9) }],
      'where no index is defined': [{ at40C: centistokes(5), at100C: centistokes(1) }],
      'thicker when heated': [{ at40C: centistokes(8.86), at100C: centistokes(73.3) }],
    },
  }),
  saeGrade: calls(saeGrade, {
    sound: [[centistokes(8.1)], [centistokes(2)], [centistokes(40)]],
    provoked: { 'not a viscosity': [8.1e3] },
  }),
  isoGrade: calls(isoGrade, {
    sound: [[centistokes(67)], [centistokes(55)], [centistokes(1)], [centistokes(5000)]],
    provoked: { 'not a viscosity': [6.7e4] },
  }),
  sayboltUniversal: calls(sayboltUniversal, {
    sound: [[centistokes(32), fahrenheit(100)]],
    provoked: {
      'thinner than the tables': [centistokes(1.7), fahrenheit(100)],
      'not a viscosity': [32, fahrenheit(100)],
      'too hot': [centistokes(32), fahrenheit(351)],
    },
  }),
  kinematicFromSaybolt: calls(kinematicFromSaybolt, {
    sound: [
      [second(150), fahrenheit(100)],
      [second(1e6), fahrenheit(0)],
    ],
    provoked: {
      'thinner than the tables': [second(31), fahrenheit(100)],
      'not an oil': [second(1e12), fahrenheit(100)],
      'too cold': [second(150), fahrenheit(-1)],
    },
  }),
};
