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
  kilogramPerCubicMetre,
  lbf,
  maxFuelDilution,
  micrometre,
  mLPerHour,
  percent,
  percentByVolume,
  petroff,
  petrolLine,
  quartUS,
  ratio,
  rpm,
  safeHours,
  shortBearing,
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
const fed = { ...loaded, oil, inlet: celsius(70) };
const roughness = { journal: micrometre(0.3), shell: micrometre(0.5) };
const rough = { ...fed, roughness };
const fuel = { line: petrolLine, density: kilogramPerCubicMetre(745) };
const sump = { leak: mLPerHour(18), oil: quartUS(1) };
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
      'an eccentricity outside': refused('eccentricity', { ...place, eccentricity: 1 }),
      'a shorter bearing': refused('lengthToDiameter', { ...place, lengthToDiameter: 0.05 }),
    },
  }),
  finiteBearingAt: calls(finiteBearingAt, {
    sound: [[{ sommerfeld: ratio(0.135), lengthToDiameter: ratio(1) }]],
    provoked: {
      'an eccentricity below': refused('sommerfeld', { sommerfeld: 1e6, lengthToDiameter: 1 }),
      'an eccentricity above': refused('sommerfeld', { sommerfeld: 1e-8, lengthToDiameter: 1 }),
      'a shorter bearing': refused('lengthToDiameter', { sommerfeld: 0.1, lengthToDiameter: 0.05 }),
    },
  }),
  solveReynolds: calls(solveReynolds, {
    sound: [[place], [{ ...place, placesAround: 24 }], [infinite]],
    provoked: {
      'an eccentricity outside': refused('eccentricity', { ...place, eccentricity: 0 }),
      'a shorter bearing': refused('lengthToDiameter', { ...place, lengthToDiameter: 0.05 }),
      'not a grid': refused('placesAround', { ...place, placesAround: 50 }),
    },
  }),
  shortBearing: calls(shortBearing, {
    sound: [[place]],
    provoked: {
      'an eccentricity outside': refused('eccentricity', { ...place, eccentricity: -0.1 }),
      'a length outside': refused('lengthToDiameter', { ...place, lengthToDiameter: 0 }),
    },
  }),
  sommerfeldNumber: calls(sommerfeldNumber, {
    sound: [[oiled], [{ ...oiled, speed: rpm(0) }]],
    provoked: {
      'not of a bearing': refused('length', { ...oiled, length: 100 }),
      'a clearance of nothing or less': refused('clearance', { ...oiled, clearance: -1e-5 }),
      'no load': refused('load', { ...oiled, load: 0 }),
    },
  }),
  petroff: calls(petroff, {
    sound: [[turning], [{ ...turning, speed: rpm(0) }]],
    provoked: {
      'not of a bearing': refused('journal', { ...turning, journal: 1.625 }),
      'a clearance of nothing or less': refused('clearance', { ...turning, clearance: 0 }),
    },
  }),
  filmThickness: calls(filmThickness, {
    sound: [
      [oiled],
      [{ ...oiled, speed: rpm(0) }],
      [{ ...oiled, load: lbf(0) }],
      [{ ...oiled, speed: rpm(20), load: lbf(90_000) }],
    ],
    provoked: {
      'not of a bearing': refused('viscosity', { ...oiled, viscosity: 0 }),
      'a clearance of nothing or less': refused('clearance', { ...oiled, clearance: -1e-5 }),
      'shorter than a tenth': refused('length', { ...oiled, length: 0.001 }),
    },
  }),
  temperatureRise: calls(temperatureRise, {
    sound: [
      [warmed],
      [{ ...warmed, specificHeat: joulePerKilogramKelvin(1900), carried: percent(80) }],
    ],
    provoked: {
      negative: refused('power', { ...warmed, power: -1 }),
      'no flow': refused('flow', { ...warmed, flow: 0, sideFlow: 0 }),
      'more leaves': refused('sideFlow', { ...warmed, sideFlow: 4e-6 }),
    },
  }),
  heatBalance: calls(heatBalance, {
    sound: [
      [fed],
      [{ ...fed, specificHeat: joulePerKilogramKelvin(1900), carried: percent(80) }],
      [{ ...fed, load: lbf(0) }],
      [{ ...fed, speed: rpm(0) }],
    ],
    provoked: {
      'not of a bearing': refused('load', { ...fed, load: -1 }),
      'not of an oil': refused('oil.density', { ...fed, oil: { ...oil, density: 0.885 } }),
      'a clearance of nothing or less': refused('clearance', { ...fed, clearance: 0 }),
    },
  }),
  filmRegime: calls(filmRegime, {
    sound: [
      [micrometre(2), roughness],
      [micrometre(2), roughness, { thresholds, basis: { kind: 'specified', by: 'the shop' } }],
    ],
    provoked: {
      'a negative film': refused('film', -1e-6, roughness),
      'not a roughness': refused('roughness.shell', 1e-6, { ...roughness, shell: 0 }),
      'thresholds reversed': refused('options.thresholds', 1e-6, roughness, {
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
      'not of a bearing': refused('speed', { ...rough, speed: -1 }),
      'not of an oil': refused('oil.line', { ...rough, oil: { ...oil, line: [] } }),
      'not of a fuel': refused('fuel.density', { ...rough, fuel: { ...fuel, density: 7 } }),
      'a clearance of nothing or less': refused('clearance', { ...rough, clearance: 0 }),
    },
    cases: 300,
  }),
  safeHours: calls(safeHours, {
    sound: [[{ sump, bearing: rough }], [{ sump, bearing: rough, limit: percentByVolume(3) }]],
    provoked: {
      'not of a sump': refused('sump.oil', { sump: { ...sump, oil: 1 }, bearing: rough }),
      'not of a bearing': refused('bearing.length', { sump, bearing: { ...rough, journal: 1 } }),
      'not of an oil': refused('bearing.oil', { sump, bearing: { ...rough, oil: null } }),
      'not of a fuel': refused('bearing.fuel.line', {
        sump,
        bearing: { ...rough, fuel: { ...fuel, line: null } },
      }),
      'a clearance of nothing or less': refused('bearing.clearance', {
        sump,
        bearing: { ...rough, clearance: -1 },
      }),
      'not a fraction': refused('limit', { sump, bearing: rough, limit: 5 }),
    },
    cases: 300,
  }),
};
