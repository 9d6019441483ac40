import {
  celsius,
  centistokes,
  densityAt,
  dynamicViscosityAt,
  extrapolatedDynamicViscosity,
  extrapolatedViscosity,
  fahrenheit,
  isoGrade,
  kilogramPerCubicMetre,
  kinematicFromSaybolt,
  type Oil,
  ppmPerKelvin,
  saeGrade,
  second,
  viscosityAt,
} from 'crankwright';
import { calls, refused } from './calls.js';

const line = [
  { temperature: celsius(40), viscosity: centistokes(100) },
  { temperature: celsius(100), viscosity: centistokes(11) },
] as const;
const [warm, hot] = line;
const oil: Oil = { line, density: kilogramPerCubicMetre(885), expansion: ppmPerKelvin(700) };
const ofExpansion = 'the expansion is out of range';

/** Calls of one oil that no card makes: lines the other way round, what may be left out, what has no card. */
export const viscosityCalls = {
  viscosityAt: calls(viscosityAt, {
    sound: [[[hot, warm], celsius(-20)]],
    provoked: { 'there are not two points': refused('line', [warm], celsius(80)) },
  }),
  extrapolatedViscosity: calls(extrapolatedViscosity, {
    sound: [
      [[hot, warm], celsius(80)],
      [line, celsius(-50)],
    ],
    provoked: { 'there are not two points': refused('line', [warm], celsius(80)) },
  }),
  densityAt: calls(densityAt, {
    sound: [[{ density: oil.density, at: celsius(100), temperature: celsius(40) }]],
    provoked: { 'no density': refused('known') },
  }),
  dynamicViscosityAt: calls(dynamicViscosityAt, {
    sound: [[oil, celsius(-20)]],
    provoked: {
      [ofExpansion]: refused('oil.expansion', { ...oil, expansion: 700 }, celsius(80)),
    },
  }),
  extrapolatedDynamicViscosity: calls(extrapolatedDynamicViscosity, {
    sound: [[oil, celsius(80)]],
    provoked: {
      [ofExpansion]: refused('oil.expansion', { ...oil, expansion: 700 }, celsius(80)),
      'the expansion given leaves no liquid': refused(
        'temperature',
        { ...oil, expansion: ppmPerKelvin(2000) },
        celsius(220),
      ),
    },
  }),
  saeGrade: calls(saeGrade, {
    sound: [[centistokes(8.1)], [centistokes(2)], [centistokes(40)]],
    provoked: {
      'a value is not finite': refused('viscosityAt100C', Number.NaN),
      'out of range': refused('viscosityAt100C', 8.1e3),
    },
  }),
  isoGrade: calls(isoGrade, {
    sound: [[centistokes(67)], [centistokes(55)], [centistokes(1)], [centistokes(5000)]],
    provoked: {
      'a value is not finite': refused('viscosityAt40C', Number.NaN),
      'out of range': refused('viscosityAt40C', 6.7e4),
    },
  }),
  kinematicFromSaybolt: calls(kinematicFromSaybolt, {
    sound: [
      [second(150), fahrenheit(100)],
      [second(1e6), fahrenheit(0)],
    ],
    provoked: {
      'a value is not finite': refused('time', Number.NaN, fahrenheit(100)),
      'out of range': refused('time', second(31), fahrenheit(100)),
      'a time of no oil': refused('time', second(1e12), fahrenheit(100)),
      'a temperature out of range': refused('temperature', second(150), fahrenheit(-1)),
    },
  }),
};
