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
import { calls } from './calls.js';

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
      'an eccentricity outside': [{ ...place, eccentricity: 1 }],
      'a shorter bearing': [{ ...place, lengthToDiameter: 0.05 }],
    },
  }),
  finiteBearingAt: calls(finiteBearingAt, {
    sound: [[{ sommerfeld: ratio(0.135), lengthToDiameter: ratio(1) }]],
    provoked: {
      'an eccentricity below': [{ sommerfeld: 1e6, lengthToDiameter: 1 }],
      'an eccentricity above': [{ sommerfeld: 1e-8, lengthToDiameter: 1 }],
      'a shorter bearing': [{ sommerfeld: 0.1, lengthToDiameter: 0.05 }],
    },
  }),
  solveReynolds: calls(solveReynolds, {
    sound: [[place], [{ ...place, placesAround: 24 }], [infinite]],
    provoked: {
      'an eccentricity outside': [{ ...place, eccentricity: 0 }],
      'a shorter bearing': [{ ...place, lengthToDiameter: 0.05 }],
      'not a grid': [{ ...place, placesAround: 50 }],
    },
  }),
  shortBearing: calls(shortBearing, {
    sound: [[place]],
    provoked: {
      'an eccentricity outside': [{ ...place, eccentricity: -0.1 }],
      'a length outside': [{ ...place, lengthToDiameter: 0 }],
    },
  }),
  sommerfeldNumber: calls(sommerfeldNumber, {
    sound: [[oiled], [{ ...oiled, speed: rpm(0) }]],
    provoked: {
      'not of a bearing': [{ ...oiled, length: 100 }],
      'a clearance of nothing or less': [{ ...oiled, clearance: -1e-5 }],
      'no load': [{ ...oiled, load: 0 }],
    },
  }),
  petroff: calls(petroff, {
    sound: [[turning], [{ ...turning, speed: rpm(0) }]],
    provoked: {
      'not of a bearing': [{ ...turning, journal: 1.625 }],
      'a clearance of nothing or less': [{ ...turning, clearance: 0 }],
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
      'not of a bearing': [{ ...oiled, viscosity: 0 }],
      'a clearance of nothing or less': [{ ...oiled, clearance: -1e-5 }],
      'shorter than a tenth': [{ ...oiled, length: 0.001 }],
    },
  }),
  temperatureRise: calls(temperatureRise, {
    sound: [
      [warmed],
      [{ ...warmed, specificHeat: joulePerKilogramKelvin(1900), carried: percent(80) }],
    ],
    provoked: {
      negative: [{ ...warmed, power: -1 }],
      'no flow': [{ ...warmed, flow: 0, sideFlow: 0 }],
      'more leaves': [{ ...warmed, sideFlow: 4e-6 }],
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
      'not of a bearing': [{ ...fed, load: -1 }],
      'not of an oil': [{ ...fed, oil: { ...oil, density: 0.885 } }],
      'a clearance of nothing or less': [{ ...fed, clearance: 0 }],
    },
  }),
  filmRegime: calls(filmRegime, {
    sound: [
      [micrometre(2), roughness],
      [micrometre(2), roughness, { thresholds, basis: { kind: 'specified', by: 'the shop' } }],
    ],
    provoked: {
      'a negative film': [-1e-6, roughness],
      'not a roughness': [1e-6, { ...roughness, shell: 0 }],
      'thresholds reversed': [1e-6, roughness, { thresholds: { mixed: 4, full: 1 } }],
    },
  }),
  maxFuelDilution: calls(maxFuelDilution, {
    sound: [
      [rough],
      [{ ...rough, fuel, law: 'Refutas', filmRatio: ratio(4) }],
      [{ ...rough, speed: rpm(0) }],
    ],
    provoked: {
      'not of a bearing': [{ ...rough, speed: -1 }],
      'not of an oil': [{ ...rough, oil: { ...oil, line: [] } }],
      'not of a fuel': [{ ...rough, fuel: { ...fuel, density: 7 } }],
      'a clearance of nothing or less': [{ ...rough, clearance: 0 }],
    },
    cases: 300,
  }),
  safeHours: calls(safeHours, {
    sound: [[{ sump, bearing: rough }], [{ sump, bearing: rough, limit: percentByVolume(3) }]],
    provoked: {
      'not of a sump': [{ sump: { ...sump, oil: 1 }, bearing: rough }],
      'not of a bearing': [{ sump, bearing: { ...rough, journal: 1 } }],
      'not of an oil': [{ sump, bearing: { ...rough, oil: null } }],
      'not of a fuel': [{ sump, bearing: { ...rough, fuel: { ...fuel, line: null } } }],
      'a clearance of nothing or less': [{ sump, bearing: { ...rough, clearance: -1 } }],
      'not a fraction': [{ sump, bearing: rough, limit: 5 }],
    },
    cases: 300,
  }),
};
