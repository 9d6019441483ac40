import {
  type Angle,
  bigEndLoads,
  bigEndOrbit,
  degree,
  gasTrace,
  inch,
  kilogram,
  kilonewton,
  kPa,
  kPaGauge,
  millipascalSecond,
  mm,
  newton,
  pistonMotion,
  ratio,
  rpm,
} from 'crankwright';
import { calls, refused } from './calls.js';

const crank = { stroke: inch(3.25), rodLength: inch(6) };
const moving = { ...crank, speed: rpm(1800), crankAngle: degree(40) };
const cycle = { ...crank, compressionRatio: ratio(6) };
const everyKnob = {
  ...cycle,
  intakePressure: kPa(90),
  exhaustPressure: kPa(112),
  airPressure: kPa(99),
  compressionExponent: ratio(1.3),
  expansionExponent: ratio(1.25),
  ignition: degree(25),
  peakAngle: degree(12),
  peakPressure: kPa(2800),
  exhaustOpens: degree(135),
  valveOverlap: degree(15),
  places: 72,
};
const around = Array.from({ length: 24 }, (_, i) => degree(30 * i));
const gas = around.map((crankAngle, i) => ({ crankAngle, gauge: kPaGauge(i === 1 ? 2900 : 0) }));
const engine = {
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas,
};
const loads = {
  speed: rpm(1800),
  loads: around.map((crankAngle, i) => ({
    crankAngle,
    along: i === 1 ? kilonewton(11) : kilonewton(-1),
    across: newton(200),
    rodAngle: (0.27 * Math.sin(crankAngle)) as Angle,
  })),
};
const bigEnd = {
  journal: inch(1.625),
  length: inch(0.8),
  clearance: inch(0.0017),
  viscosity: millipascalSecond(15),
  loads,
};

export const motionCalls = {
  pistonMotion: calls(pistonMotion, {
    sound: [[{ ...moving, speed: rpm(0) }]],
    provoked: { 'no crank': refused('crank') },
  }),
  gasTrace: calls(gasTrace, {
    sound: [[{ ...cycle, places: 72 }], [everyKnob]],
    provoked: {
      'compression alone exceeds the peak': refused('peakPressure', {
        ...cycle,
        peakPressure: kPa(500),
      }),
      'no air around': refused('airPressure', { ...cycle, airPressure: null }),
      'no places': refused('places', { ...cycle, places: null }),
      'no peak': refused('peakPressure', { ...cycle, peakPressure: null }),
      'a place too few': refused('places', { ...cycle, places: 71 }),
    },
  }),
  bigEndLoads: calls(bigEndLoads, {
    sound: [[engine], [{ ...engine, speed: rpm(0) }]],
    provoked: {
      'the gas readings do not go once around the cycle': refused('gas', {
        ...engine,
        gas: gas.slice(0, 12),
      }),
      'out of order': refused('gas[1].crankAngle', { ...engine, gas: [...gas].reverse() }),
    },
  }),
  bigEndOrbit: calls(bigEndOrbit, {
    sound: [
      [bigEnd],
      [{ ...bigEnd, clearance: inch(0.02), thinnerThan: inch(0.0003), tolerance: ratio(1e-3) }],
      [{ ...bigEnd, loads: { ...loads, speed: rpm(0) } }],
      [{ ...bigEnd, film: 'short' }],
    ],
    provoked: {
      'a value is not finite': refused('length', { ...bigEnd, length: Number.NaN }),
      'out of range': refused('viscosity', { ...bigEnd, viscosity: 15 * 10_000 }),
      'the bearing is too short for its journal': refused('length', { ...bigEnd, length: mm(0.8) }),
      'the clearance leaves no room to turn': refused('clearance', { ...bigEnd, clearance: 0 }),
      'the film is unknown': refused('film', { ...bigEnd, film: 'long' }),
      'the loads do not go once around the cycle': refused('loads.loads', {
        ...bigEnd,
        loads: { ...loads, loads: loads.loads.slice(0, 12) },
      }),
    },
    cases: 400,
  }),
};
