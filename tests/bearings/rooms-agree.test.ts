import {
  bigEndLoads,
  bigEndOrbit,
  celsius,
  centipoise,
  centistokes,
  type Density,
  type DynamicViscosity,
  densityAt,
  dripFlow,
  dynamicViscosityAt,
  type Force,
  filmRegime,
  filmThickness,
  fuelInSump,
  gasTrace,
  hour,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  kPa,
  type Length,
  litre,
  maxFuelDilution,
  micrometre,
  mLPerMinute,
  mm,
  newton,
  percentByVolume,
  petroff,
  type RotationalSpeed,
  ratio,
  rpm,
  safeHours,
  shortBearingMobility,
  type Time,
  temperatureRise,
  type Volume,
  watt,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { bearingLoad, crankSpeed, pinForce } from '../../src/motion/domains.js';
import { countingTime, singleDrop } from '../../src/oil/domains.js';
import { refusal } from '../quantities/refusal.js';

const bearing = { journal: mm(50), length: mm(25), clearance: mm(0.05) };
const oil = {
  line: [
    { temperature: celsius(40), viscosity: centistokes(100) },
    { temperature: celsius(100), viscosity: centistokes(11.1) },
  ],
  density: kilogramPerCubicMetre(885),
} as const;
const roughness = { journal: micrometre(0.2), shell: micrometre(0.4) };

/** A model engine: a piston of a few grams, so that it may turn as fast as any. */
const model = (speed: RotationalSpeed) => {
  const crank = { stroke: mm(10), rodLength: mm(20) };
  return bigEndLoads({
    ...crank,
    bore: mm(10),
    speed,
    pistonMass: kilogram(0.003),
    smallEndMass: kilogram(0.001),
    bigEndMass: kilogram(0.002),
    gas: gasTrace({ ...crank, compressionRatio: ratio(8), places: 72 }).readings,
  });
};

describe('what one room gives, the next one takes', () => {
  it.each([0, crankSpeed.least, 1900, 2100, crankSpeed.most])('a shaft at %d rad/s', (value) => {
    const speed = value as RotationalSpeed;
    const viscosity = centipoise(10);
    const loads = model(speed);
    const pin = { journal: mm(5), length: mm(4), clearance: mm(0.01), viscosity };
    expect(() => bigEndOrbit({ ...pin, loads, film: 'short' })).not.toThrow();
    expect(petroff({ ...bearing, viscosity, speed }).power).toBeGreaterThanOrEqual(0);
    expect(() => filmThickness({ ...bearing, viscosity, speed, load: newton(100) })).not.toThrow();
  });

  it('a load of a large engine, steady or around the cycle', () => {
    const large = { journal: mm(700), length: mm(400), clearance: mm(0.5) };
    const load = newton(5e6);
    const film = filmThickness({ ...large, viscosity: centipoise(50), speed: rpm(120), load });
    expect(film.outcome).toBe('floats');
    expect(bearingLoad.most).toBe(pinForce.most);
  });

  it('no load that no big end carries', () => {
    const crank = { stroke: mm(1000), rodLength: mm(2000) };
    const heavy = {
      ...crank,
      bore: mm(500),
      pistonMass: kilogram(500),
      smallEndMass: kilogram(200),
      bigEndMass: kilogram(500),
      gas: gasTrace({ ...crank, compressionRatio: ratio(8) }).readings,
    };
    const forces = bigEndLoads({ ...heavy, speed: rpm(500) }).loads;
    for (const { along, across } of forces) {
      for (const force of [along, across]) expect(pinForce('force', force)).toBe(force);
    }
    const error = refusal(() => bigEndLoads({ ...heavy, speed: rpm(5000) }));
    expect(error.parameter).toBe('result');
    expect(error.message).toContain('at most 100000 kN');
  });

  it('the gauge pressures of an engine on a mountain', () => {
    const crank = { stroke: mm(80), rodLength: mm(150) };
    const masses = { pistonMass: kilogram(0.4), smallEndMass: kilogram(0.2) };
    for (const air of [kPa(10), kPa(110)]) {
      const cycle = { ...crank, compressionRatio: ratio(8), airPressure: air };
      const gas = gasTrace({ ...cycle, intakePressure: kPa(1) }).readings;
      const engine = { ...crank, ...masses, bigEndMass: kilogram(0.4), bore: mm(80), gas };
      expect(() => bigEndLoads({ ...engine, speed: rpm(2000) })).not.toThrow();
    }
    const thick = { ...crank, compressionRatio: ratio(8), airPressure: kPa(200) };
    expect(refusal(() => gasTrace(thick)).parameter).toBe('airPressure');
  });

  it('the density of a heavy oil in the cold', () => {
    const known = { density: 1160 as Density, at: celsius(15), temperature: celsius(-50) };
    const density = densityAt(known);
    expect(density).toBeGreaterThan(1200);
    const warmed = { power: watt(50), flow: mLPerMinute(200), sideFlow: mLPerMinute(100), density };
    expect(temperatureRise(warmed)).toBeGreaterThan(0);
  });

  it('the viscosity of an oil in the cold, but for one that no engine turns in', () => {
    const cold = (degrees: number) => ({
      ...bearing,
      viscosity: dynamicViscosityAt(oil, celsius(degrees)),
      speed: rpm(10),
      load: newton(100),
    });
    expect(filmThickness(cold(-20)).outcome).toBe('floats');
    expect(cold(-30).viscosity).toBeGreaterThan(20);
    expect(refusal(() => filmThickness(cold(-30))).parameter).toBe('viscosity');
    // 32 cP as a bare number.
    const bare = { ...cold(-20), viscosity: 32 as DynamicViscosity };
    expect(refusal(() => filmThickness(bare)).parameter).toBe('viscosity');
  });

  it('the slowest drip of the smallest drop', () => {
    const counted = { drops: 1, time: countingTime.most as Time };
    const { max: leak } = dripFlow({ ...counted, dropVolume: singleDrop.least as Volume });
    const sump = { leak, oil: litre(3), time: hour(8) };
    expect(fuelInSump(sump).fuel).toBeGreaterThan(0);
  });

  it('the film of a bearing with as much play as there is', () => {
    const journal = mm(1000);
    const wide = { journal, length: mm(500), clearance: mm(20), viscosity: centipoise(50) };
    const { film } = filmThickness({ ...wide, speed: rpm(100), load: 0 as Force });
    expect(filmRegime(film, roughness).regime).toBe('full');
  });

  it('a film ratio, be it asked for or a threshold', () => {
    const fed = { ...bearing, oil, inlet: celsius(60), speed: rpm(1800), load: newton(100) };
    const filmRatio = ratio(500);
    expect(maxFuelDilution({ ...fed, roughness, filmRatio }).needed).toBeGreaterThan(0);
    const thresholds = { mixed: ratio(1), full: filmRatio };
    expect(filmRegime(mm(0.01) as Length, roughness, { thresholds }).regime).toBe('mixed');
  });

  it('a limit on fuel in oil', () => {
    const fed = { ...bearing, oil, inlet: celsius(60), speed: rpm(1800), load: newton(100) };
    const sump = { leak: mLPerMinute(1), oil: litre(3), fuel: litre(0) };
    const limit = percentByVolume(95);
    const hours = safeHours({ sump, bearing: { ...fed, roughness }, limit });
    expect(hours.limit.fraction).toBe(limit);
  });

  it('the length of a big end whose film may be reckoned as short', () => {
    const place = { along: ratio(0.5), across: ratio(0), lengthToDiameter: ratio(2) };
    expect(shortBearingMobility(place).along).toBeGreaterThan(0);
    const pin = { journal: mm(5), length: mm(10), clearance: mm(0.01), viscosity: centipoise(10) };
    expect(() => bigEndOrbit({ ...pin, loads: model(rpm(5000)), film: 'short' })).not.toThrow();
    expect(
      refusal(() => bigEndOrbit({ ...pin, length: inch(0.5), loads: model(rpm(5000)) })).parameter,
    ).toBe('length');
  });
});
