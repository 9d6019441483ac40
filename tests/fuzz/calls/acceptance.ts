import {
  type BearingToAccept,
  bearingAcceptance,
  bigEndLoads,
  celsius,
  centistokes,
  gasTrace,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  lbf,
  MPa,
  micrometre,
  mLPerMinute,
  percent,
  ratio,
  rpm,
  shellLimits,
  supplyFinding,
  thou,
} from 'crankwright';
import { calls, refused } from './calls.js';

const crank = { stroke: inch(3.25), rodLength: inch(6) };
const made = bigEndLoads({
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
});
// Torques and their mean are not looked at.
const loads = {
  speed: made.speed,
  loads: made.loads.map(({ torque: _, ...load }) => load),
};
const oil = {
  line: [
    { temperature: celsius(40), viscosity: centistokes(100) },
    { temperature: celsius(100), viscosity: centistokes(11.1) },
  ],
  density: kilogramPerCubicMetre(885),
} as const;
const bearing: BearingToAccept = {
  journal: inch(1.625),
  length: inch(1),
  clearance: thou(1.6),
  speed: rpm(1800),
  load: lbf(400),
  inlet: celsius(70),
  oil,
};
const own = {
  name: 'white metal on steel',
  meanPressure: MPa(8),
  peakPressure: MPa(14),
  temperature: celsius(130),
  by: 'the maker',
};
const whole: BearingToAccept = {
  ...bearing,
  clearance: { min: thou(1.4), max: thou(2) },
  material: own,
  roughness: { journal: micrometre(0.3), shell: micrometre(0.5) },
  duty: 'closely fitted',
  largestParticle: micrometre(5),
  supply: { by: 'splash', measured: mLPerMinute(100) },
  rule: 'Trumpler',
  startUpLoad: lbf(50),
};

export const acceptanceCalls = {
  shellLimits: calls(shellLimits, {
    sound: [[own], ['tin babbitt'], ['aluminium']],
    provoked: {
      'the metal is unknown': refused('material', 'butter'),
      'a value is not finite': refused('material.temperature', { ...own, temperature: NaN }),
      'out of range': refused('material.meanPressure', { ...own, meanPressure: 8 }),
    },
  }),
  supplyFinding: calls(supplyFinding, {
    sound: [
      [{ need: mLPerMinute(100), supply: { by: 'pump', measured: mLPerMinute(120) } }],
      [{ need: mLPerMinute(100) }],
    ],
    provoked: {
      'a value is not finite': refused('need', { need: Infinity }),
      'out of range': refused('need', { need: 100 }),
      'the supply is neither a pump nor a splash': refused('supply.by', {
        need: mLPerMinute(100),
        supply: { by: 'luck' },
      }),
    },
  }),
  bearingAcceptance: calls(bearingAcceptance, {
    sound: [
      [whole],
      [bearing],
      [{ ...bearing, loads }],
      [{ ...bearing, loads, largestParticle: 'no filter', loadDoubt: percent(25) }],
      [{ ...bearing, load: lbf(90_000) }],
    ],
    provoked: {
      'a value is not finite': refused('load', { ...whole, load: NaN }),
      'out of range': refused('largestParticle', { ...whole, largestParticle: 5 }),
      'the bearing is too short for its journal': refused('length', { ...whole, length: 0.004 }),
      'the clearance leaves no room to turn': refused('clearance', {
        ...bearing,
        clearance: -1e-5,
      }),
      'a span is reversed': refused('clearance', {
        ...whole,
        clearance: { min: thou(2), max: thou(1) },
      }),
      'the oil is not one': refused('oil.density', { ...whole, oil: { ...oil, density: 0.9 } }),
      'the metal is unknown': refused('material', { ...whole, material: 'butter' }),
      'the supply is neither a pump nor a splash': refused('supply.by', {
        ...whole,
        supply: { by: 'luck' },
      }),
      'the loads do not go once around the cycle': refused('loads.loads', {
        ...bearing,
        loads: { ...loads, loads: loads.loads.slice(0, 12) },
      }),
      'they are those of another speed': refused('loads.speed', {
        ...bearing,
        speed: rpm(900),
        loads,
      }),
    },
    cases: 200,
  }),
};
