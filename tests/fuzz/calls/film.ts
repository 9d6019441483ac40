import {
  celsius,
  centipoise,
  centistokes,
  cubicMetrePerSecond,
  filmRegime,
  filmThickness,
  finiteBearing,
  finiteBearingAt,
  heatBalance,
  inch,
  joulePerKilogramKelvin,
  kelvinDifference,
  kilogramPerCubicMetre,
  lbf,
  maxFuelDilution,
  maxFuelDilutionSpan,
  micrometre,
  mL,
  mLPerHour,
  percent,
  percentByVolume,
  petroff,
  petrolLine,
  quartUS,
  type Rate,
  ratio,
  rpm,
  safeHours,
  solveReynolds,
  sommerfeldNumber,
  temperatureRise,
  thou,
  watt,
} from 'crankwright';
import { calls, refused } from './calls.js';

const place = { eccentricity: ratio(0.6), lengthToDiameter: ratio(0.5) };
const infinite = { ...place, lengthToDiameter: 'infinite' } as const;
const bearing = { journal: inch(1.625), length: inch(1), clearance: thou(1.6) };
const turning = { ...bearing, viscosity: centipoise(15), speed: rpm(1800) };
const loaded = { ...bearing, speed: rpm(1800), load: lbf(400) };
const oiled = { ...turning, load: lbf(400) };
const oil = {
  line: [
    { temperature: celsius(40), viscosity: centistokes(100) },
    { temperature: celsius(100), viscosity: centistokes(11.1) },
  ],
  density: kilogramPerCubicMetre(885),
} as const;
const tar = [
  { temperature: celsius(40), viscosity: centistokes(20_000) },
  { temperature: celsius(100), viscosity: centistokes(200) },
] as const;
const fed = { ...loaded, oil, inlet: celsius(70) };
const roughness = { journal: micrometre(0.3), shell: micrometre(0.5) };
const rough = { ...fed, roughness };
const fuel = { line: petrolLine, density: kilogramPerCubicMetre(745) };
const sump = { leak: mLPerHour(18), oil: quartUS(1), fuel: mL(0) };
const warmed = {
  power: watt(50),
  flow: cubicMetrePerSecond(3e-6),
  sideFlow: cubicMetrePerSecond(1e-6),
  density: kilogramPerCubicMetre(860),
};
const thresholds = { mixed: ratio(1), full: ratio(4) };
export const filmCalls = {
  finiteBearing: calls(finiteBearing, {
    sound: [[place], [infinite]],
    provoked: {
      'a value is not finite': refused('lengthToDiameter', { ...place, lengthToDiameter: NaN }),
      'out of range': refused('eccentricity', { ...place, eccentricity: 1 }),
    },
  }),
  finiteBearingAt: calls(finiteBearingAt, {
    sound: [[{ sommerfeld: ratio(0.135), lengthToDiameter: ratio(1) }]],
    provoked: {
      'a value is not finite': refused('sommerfeld', { sommerfeld: NaN, lengthToDiameter: 1 }),
      'out of range': refused('lengthToDiameter', { sommerfeld: 0.1, lengthToDiameter: 0.05 }),
      'the Sommerfeld number is one of an eccentricity that no film is computed for': refused(
        'sommerfeld',
        { sommerfeld: 1e-8, lengthToDiameter: 1 },
      ),
      'so is one of an eccentricity that is too small': refused('sommerfeld', {
        sommerfeld: 1e6,
        lengthToDiameter: 1,
      }),
    },
  }),
  solveReynolds: calls(solveReynolds, {
    sound: [[place], [{ ...place, placesAround: 24 }], [infinite]],
    provoked: {
      'a value is not finite': refused('eccentricity', { ...place, eccentricity: NaN }),
      'out of range': refused('lengthToDiameter', { ...place, lengthToDiameter: 0.05 }),
      'the grid is not one': refused('placesAround', { ...place, placesAround: 50 }),
    },
  }),
  sommerfeldNumber: calls(sommerfeldNumber, {
    sound: [[{ ...oiled, speed: rpm(0) }]],
    provoked: {},
  }),
  petroff: calls(petroff, { sound: [[{ ...turning, speed: rpm(0) }]], provoked: {} }),
  filmThickness: calls(filmThickness, {
    sound: [
      [oiled],
      [{ ...oiled, speed: rpm(0) }],
      [{ ...oiled, load: lbf(0) }],
      [{ ...oiled, speed: rpm(20), load: lbf(90_000) }],
    ],
    provoked: {
      'a value is not finite': refused('load', { ...oiled, load: Infinity }),
      'out of range': refused('viscosity', { ...oiled, viscosity: 0 }),
      'the bearing is too short for its journal': refused('length', { ...oiled, length: 0.004 }),
      'the clearance leaves no room to turn': refused('clearance', { ...oiled, clearance: -1e-5 }),
    },
  }),
  temperatureRise: calls(temperatureRise, { sound: [[warmed]], provoked: {} }),
  heatBalance: calls(heatBalance, {
    sound: [
      [fed],
      [{ ...fed, specificHeat: joulePerKilogramKelvin(1900), carried: percent(80) }],
      [{ ...fed, load: lbf(0) }],
      [{ ...fed, speed: rpm(0) }],
    ],
    provoked: {
      'a value is not finite': refused('speed', { ...fed, speed: NaN }),
      'out of range': refused('load', { ...fed, load: -1 }),
      'the bearing is too short for its journal': refused('length', { ...fed, length: 0.004 }),
      'the clearance leaves no room to turn': refused('clearance', { ...fed, clearance: 0 }),
      'the oil is not one': refused('oil.density', { ...fed, oil: { ...oil, density: 0.885 } }),
      'it comes in too thick': refused('inlet', {
        ...fed,
        oil: { ...oil, line: tar },
        inlet: celsius(-40),
      }),
      'too thin to reckon with': refused('inlet', {
        ...fed,
        oil: { ...oil, line: petrolLine },
        inlet: celsius(225),
      }),
    },
  }),
  filmRegime: calls(filmRegime, {
    sound: [
      [micrometre(2), roughness, { thresholds, basis: { kind: 'specified', by: 'the shop' } }],
    ],
    provoked: {
      'the thresholds are reversed': refused('options.thresholds', 1e-6, roughness, {
        thresholds: { mixed: 4, full: 1 },
      }),
    },
  }),
  maxFuelDilution: calls(maxFuelDilution, {
    sound: [
      [rough],
      [{ ...rough, fuel, law: 'Refutas', filmRatio: ratio(4) }],
      [{ ...rough, speed: rpm(0) }],
    ],
    provoked: {
      'a value is not finite': refused('filmRatio', { ...rough, filmRatio: NaN }),
      'out of range': refused('speed', { ...rough, speed: -1 }),
      'the bearing is too short for its journal': refused('length', { ...rough, length: 0.004 }),
      'the clearance leaves no room to turn': refused('clearance', { ...rough, clearance: 0 }),
      'the oil is not one': refused('oil.line', { ...rough, oil: { ...oil, line: [] } }),
      'the fuel is not one': refused('fuel.density', { ...rough, fuel: { ...fuel, density: 7 } }),
      'it is no thinner than the oil': refused('fuel.line', { ...rough, fuel: oil }),
    },
    cases: 300,
  }),
  maxFuelDilutionSpan: calls(maxFuelDilutionSpan, {
    sound: [[rough], [{ ...rough, fuel, law: 'Refutas' }, { inlet: kelvinDifference(5) }]],
    provoked: {
      'a value is not finite': refused('doubt.load', rough, { load: NaN }),
      'out of range': refused('doubt.inlet', rough, { inlet: -1 }),
      'the bearing is too short for its journal': refused('length', { ...rough, length: 0.004 }),
      'the clearance leaves no room to turn': refused('clearance', { ...rough, clearance: 0 }),
      'the oil is not one': refused('oil.line', { ...rough, oil: { ...oil, line: [] } }),
      'the fuel is not one': refused('fuel.density', { ...rough, fuel: { ...fuel, density: 7 } }),
      'it is no thinner than the oil': refused('fuel.line', { ...rough, fuel: oil }),
    },
    cases: 100,
  }),
  safeHours: calls(safeHours, {
    sound: [
      [{ sump, bearing: rough }],
      [{ sump, bearing: rough, limit: percentByVolume(3), doubt: { inlet: kelvinDifference(5) } }],
      [
        {
          sump: {
            ...sump,
            leak: { min: mLPerHour(6), max: mLPerHour(18) },
            evaporation: 1e-5 as Rate,
          },
          bearing: rough,
        },
      ],
    ],
    provoked: {
      'a span is reversed': refused('sump.leak', {
        sump: { ...sump, leak: { min: mLPerHour(18), max: mLPerHour(6) } },
        bearing: rough,
      }),
      'a value is not finite': refused('limit', { sump, bearing: rough, limit: NaN }),
      'out of range': refused('sump.oil', { sump: { ...sump, oil: 1 }, bearing: rough }),
      'the bearing is too short for its journal': refused('bearing.length', {
        sump,
        bearing: { ...rough, length: 0.004 },
      }),
      'the clearance leaves no room to turn': refused('bearing.clearance', {
        sump,
        bearing: { ...rough, clearance: -1 },
      }),
      'the oil is not one': refused('bearing.oil', { sump, bearing: { ...rough, oil: null } }),
      'the fuel is not one': refused('bearing.fuel.line', {
        sump,
        bearing: { ...rough, fuel: { ...fuel, line: null } },
      }),
    },
    cases: 100,
  }),
};
