import {
  type Angle,
  type BigEnd,
  bar,
  bigEndLoads,
  bigEndOrbit,
  degree,
  type Force,
  gasTrace,
  kilogram,
  kilonewton,
  kPaGauge,
  MPa,
  metre,
  metrePerSecond,
  metrePerSecondSquared,
  mm,
  newton,
  pascalSecond,
  pistonMotion,
  radianPerSecond,
  ratio,
  rpm,
  shortBearingMobility,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

/** Places around the cycle that begin at an angle below 30 degrees, or at 0 if that is among them. */
const around = (angle: number) =>
  Array.from({ length: 24 }, (_, i) => degree((angle % 30) + 30 * i));

const BOOK = 'Khurmi and Gupta, Theory of Machines';

describe('the motion of a piston', () => {
  const example = { stroke: metre(0.6), rodLength: metre(1.5), speed: rpm(180) };
  const at40 = { ...example, crankAngle: degree(40) };
  check({
    source: `${BOOK}, example 15.4, two terms: ours is exact and may differ by 0.4 %`,
    name: '4.19 m/s and 85.36 m/s² at 40 degrees',
    given: at40,
    expected: [4.19, 85.36],
    tolerance: { relative: 0.004 },
    got: (crank) => {
      const { velocity, acceleration } = pistonMotion(crank);
      return [valueIn(velocity, metrePerSecond), valueIn(acceleration, metrePerSecondSquared)];
    },
  });
  check({
    source: `${BOOK}, example 15.4, worked again in the exact form`,
    name: '4.1964 m/s',
    given: at40,
    expected: 4.1964,
    tolerance: { absolute: 0.00005 },
    got: (crank) => valueIn(pistonMotion(crank).velocity, metrePerSecond),
  });
  check({
    source: `${BOOK}, example 15.4, worked again in the exact form`,
    name: '85.599 m/s²',
    given: at40,
    expected: 85.599,
    tolerance: { absolute: 0.0005 },
    got: (crank) => valueIn(pistonMotion(crank).acceleration, metrePerSecondSquared),
  });
  check({
    source: `${BOOK}, example 15.4, worked again in the exact form`,
    name: 'no acceleration at 79.100 degrees: some half a thousandth before, and the other way after',
    given: [79.0995, 79.1005],
    expected: [1, -1],
    got: (angles) =>
      angles.map((angle) =>
        Math.sign(pistonMotion({ ...example, crankAngle: degree(angle) }).acceleration),
      ),
  });
  check({
    source: `${BOOK}, example 15.1, measured on a drawing (Klein)`,
    name: '15.24 m/s, 2880 m/s² and 29.66 rad/s',
    given: {
      stroke: mm(400),
      rodLength: mm(700),
      speed: radianPerSecond(120),
      crankAngle: degree(30),
    },
    expected: [15.24, 2880, 29.66],
    tolerance: { relative: 0.02 },
    got: (crank) => {
      const { velocity, acceleration, rodSpeed } = pistonMotion(crank);
      return [velocity, acceleration, rodSpeed];
    },
  });
  check({
    source: `${BOOK}, example 8.1, measured on a drawing`,
    name: 'a rod swings at 5.67 rad/s',
    given: { stroke: mm(300), rodLength: mm(600), speed: rpm(300), crankAngle: degree(45) },
    expected: 5.67,
    tolerance: { relative: 0.01 },
    got: (crank): number => pistonMotion(crank).rodSpeed,
  });
  check({
    source: `${BOOK}, example 15.13, two terms: 0.25 (1 - cos 45° + sin² 45° / 9) m`,
    name: 'a piston is 87.1 mm down at 45 degrees',
    given: { stroke: mm(500), rodLength: mm(1125), speed: rpm(180), crankAngle: degree(45) },
    expected: 87.1,
    tolerance: { relative: 0.003 },
    got: (crank) => valueIn(pistonMotion(crank).position, mm),
  });
});

describe('gas pressure', () => {
  check({
    source: `${BOOK}, example 15.13: 0.1 MPa compressed 14 to 1 with an exponent of 1.35`,
    name: 'is 3.526 MPa at the end of compression',
    given: {
      stroke: mm(500),
      rodLength: mm(1125),
      compressionRatio: ratio(14),
      intakePressure: MPa(0.1),
      compressionExponent: ratio(1.35),
    },
    expected: 3.526,
    tolerance: { absolute: 0.001 },
    got: (cycle) => valueIn(gasTrace(cycle).compressionPressure, MPa),
  });
  check({
    basis: 'common practice',
    name: 'at full load gives 6 to 9 bar mean, with nothing but the crank and a ratio of 6 to 7',
    given: [6, 6.5, 7],
    expected: [7.5, 7.5, 7.5],
    tolerance: { absolute: 1.5 },
    got: (ratios) =>
      ratios.map((compression) =>
        valueIn(
          gasTrace({ stroke: mm(80), rodLength: mm(150), compressionRatio: ratio(compression) })
            .meanEffectivePressure,
          bar,
        ),
      ),
  });
});

describe('the forces on a big end', () => {
  const first = <T>([one]: readonly T[]): T => {
    if (one === undefined) throw new Error('there is none');
    return one;
  };
  check({
    source: `${BOOK}, example 15.7, two terms`,
    name: 'a rod carries 50.65 kN and turns the crank with 14.49 kN·m at 60 degrees',
    given: around(60).map((crankAngle) => ({ crankAngle, gauge: kPaGauge(350) })),
    expected: [50.65, 14.49],
    tolerance: { relative: 0.004 },
    got: (gas) => {
      const { loads } = bigEndLoads({
        stroke: mm(600),
        rodLength: metre(1.2),
        bore: mm(500),
        speed: rpm(250),
        pistonMass: kilogram(250),
        smallEndMass: kilogram(0),
        bigEndMass: kilogram(0),
        gas,
      });
      const { along, torque } = first(loads.slice(2));
      return [valueIn(along, kilonewton), torque / 1000];
    },
  });
  const petrol = (speed: number) => {
    const gas = around(20).map((crankAngle) => ({ crankAngle, gauge: kPaGauge(700) }));
    const parts = { pistonMass: kilogram(1.1), smallEndMass: kilogram(0), bigEndMass: kilogram(0) };
    const crank = { stroke: mm(120), rodLength: mm(250), bore: mm(100), speed: rpm(speed) };
    return first(bigEndLoads({ ...crank, ...parts, gas }).loads).along;
  };
  check({
    basis: 'from memory',
    name: `a gudgeon pin carries 2265 N (${BOOK}, example 15.11, with the piston's weight, 11 N)`,
    given: 2000,
    expected: 2265,
    tolerance: { relative: 0.01 },
    got: (speed) => valueIn(petrol(speed), newton),
  });
  check({
    basis: 'from memory',
    name: `and is pulled instead above 2606 rpm (${BOOK}, example 15.11)`,
    given: [2606 * 0.99, 2606 * 1.01],
    expected: [1, -1],
    got: (speeds) => speeds.map((speed) => Math.sign(petrol(speed))),
  });
});

describe('the orbit of a journal', () => {
  check({
    basis: 'from memory',
    name: 'Booker: in the middle a short bearing gives way by 1/π, whichever way it is loaded',
    given: { along: ratio(0), across: ratio(0), lengthToDiameter: ratio(0.5) },
    expected: { along: 4 / Math.PI, across: 0 },
    got: (place): { along: number; across: number } => {
      const { along, across } = shortBearingMobility(place);
      return { along, across: Math.abs(across) };
    },
  });
  /** Eccentricity and attitude under a steady load, at a Sommerfeld number, with 30 turns a second. */
  const steady = (bearing: Omit<BigEnd, 'loads'>, sommerfeld: number) => {
    const { clearance, journal, length, viscosity } = bearing;
    const along = (viscosity * 30 * journal * length * (journal / clearance) ** 2) / sommerfeld;
    const loads = around(0).map((crankAngle) => ({
      crankAngle,
      along: along as Force,
      across: newton(0),
      rodAngle: 0 as Angle,
    }));
    const orbit = bigEndOrbit({ ...bearing, loads: { speed: rpm(1800), loads } });
    if (orbit.outcome !== 'settled') return [];
    const { film, onShell } = orbit.leastFilm;
    return [1 - film / (clearance / 2), valueIn(onShell, degree)];
  };
  const bearing = { clearance: mm(0.05), journal: mm(50), viscosity: pascalSecond(0.01) };
  check({
    basis: 'from memory',
    name: 'Ocvirk, NACA TN 2808: at S (L/D)² = 0.17046 a short bearing stands at 0.4 and 60.94 degrees',
    given: { ...bearing, length: mm(20), film: 'short' } as const,
    expected: [0.4, 60.94],
    tolerance: { relative: 0.05 },
    got: (short) => steady(short, 0.17046 / 0.4 ** 2),
  });
  check({
    basis: 'from memory',
    name: 'Raimondi and Boyd, Trans. ASLE 1 (1958): eccentricities at L/D 1',
    given: [0.121, 0.0446, 0.0188],
    expected: [0.6, 0.8, 0.9],
    tolerance: { relative: 0.005 },
    got: (numbers) =>
      numbers.map((one) => steady({ ...bearing, length: mm(50) }, one)[0] ?? Number.NaN),
  });
  check({
    basis: 'from memory',
    name: 'Raimondi and Boyd, Trans. ASLE 1 (1958): attitudes at L/D 1, a squeezed film a little ahead',
    given: [0.121, 0.0446, 0.0188],
    expected: [50.58, 36.24, 26.45],
    tolerance: { relative: 0.035 },
    got: (numbers) =>
      numbers.map((one) => steady({ ...bearing, length: mm(50) }, one)[1] ?? Number.NaN),
  });
});
