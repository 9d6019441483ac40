import {
  type BlendingLaw,
  blendViscosity,
  celsius,
  centistokes,
  dilutionFinding,
  dripFlow,
  fuelFraction,
  fuelInSump,
  hour,
  massFraction,
  mL,
  mLPerHour,
  percentByVolume,
  perHour,
  perMinute,
  quartUS,
  timeToDilution,
  type ViscosityLine,
  viscosityAt,
  volumeFraction,
} from 'crankwright';
import { calls } from './calls.js';

const line: ViscosityLine = [
  { temperature: celsius(40), viscosity: centistokes(32) },
  { temperature: celsius(100), viscosity: centistokes(5.4) },
];
const [warm, hot] = line;
const law: BlendingLaw = 'ASTM D7152';
const parts = [
  { viscosity: centistokes(100), fraction: volumeFraction(0.95) },
  { viscosity: centistokes(0.5), fraction: volumeFraction(0.05) },
];
const diluted = {
  law,
  oil: centistokes(100),
  fuel: centistokes(0.5),
  sample: centistokes(67),
};
const leak = { leak: mLPerHour(36), oil: quartUS(1) };
const losing = { ...leak, evaporation: perHour(0.1) };
const limit = percentByVolume(2.5);
const thresholds = { act: percentByVolume(2), critical: percentByVolume(4) };

export const oilCalls = {
  viscosityAt: calls(viscosityAt, {
    sound: [
      [line, celsius(80)],
      [[hot, warm], celsius(-20)],
    ],
    provoked: {
      'equal temperatures': [[warm, { ...hot, temperature: warm.temperature }], celsius(80)],
      'thicker when heated': [[warm, { ...hot, viscosity: centistokes(50) }], celsius(80)],
      'the temperature is out of range': [line, celsius(200)],
      'the result is out of range': [
        [
          { temperature: celsius(40), viscosity: centistokes(1e6) },
          { temperature: celsius(50), viscosity: centistokes(1) },
        ],
        celsius(150),
      ],
      'one point': [[warm], celsius(80)],
    },
  }),
  blendViscosity: calls(blendViscosity, {
    sound: [
      [{ law, parts }],
      [
        {
          law: 'Refutas',
          parts: parts.map(({ viscosity }) => ({ viscosity, fraction: massFraction(0.5) })),
        },
      ],
    ],
    provoked: {
      'not one in all': [{ law, parts: [...parts, ...parts] }],
      'a viscosity out of range': [{ law, parts: [{ ...parts[0], viscosity: 100 }, parts[1]] }],
      'an unknown law': [{ law: 'Arrhenius', parts }],
      'one part': [{ law, parts: [{ ...parts[0], fraction: 1 }] }],
      'no blend': [],
    },
  }),
  fuelFraction: calls(fuelFraction, {
    sound: [[diluted], [{ ...diluted, law: 'Refutas', sample: centistokes(110) }]],
    provoked: {
      'out of range': [{ ...diluted, oil: 100 }],
      'thinner than the fuel': [{ ...diluted, sample: centistokes(0.4) }],
      'a fuel thicker than the oil': [{ ...diluted, fuel: centistokes(200) }],
      'an unknown law': [{ ...diluted, law: 'constructor' }],
    },
  }),
  dripFlow: calls(dripFlow, {
    sound: [[{ drops: perMinute(12) }], [{ drops: perMinute(12), dropVolume: mL(0.04) }]],
    provoked: {
      'a negative rate': [{ drops: perMinute(-1) }],
      'not a drop': [{ drops: perMinute(12), dropVolume: quartUS(1) }],
      'no drip': [],
    },
  }),
  fuelInSump: calls(fuelInSump, {
    sound: [[{ ...leak, time: hour(2) }], [{ ...losing, time: hour(2) }]],
    provoked: {
      'a negative time': [{ ...leak, time: hour(-2) }],
      'not a sump': [{ ...leak, oil: 1, time: hour(2) }],
      'no sump': [],
    },
  }),
  timeToDilution: calls(timeToDilution, {
    sound: [
      [{ ...leak, fraction: limit }],
      [{ ...losing, fraction: limit }],
      [{ ...losing, evaporation: perHour(10), fraction: limit }],
      [{ ...leak, leak: mLPerHour(0), fraction: limit }],
    ],
    provoked: {
      'a negative leak': [{ ...leak, leak: mLPerHour(-1), fraction: limit }],
      'not a sump': [{ ...leak, oil: 1, fraction: limit }],
      'all of it fuel': [{ ...leak, fraction: percentByVolume(100) }],
      'no sump': [],
    },
  }),
  dilutionFinding: calls(dilutionFinding, {
    sound: [
      [percentByVolume(3.1)],
      [percentByVolume(1), { thresholds, basis: { kind: 'published', source: 'the laboratory' } }],
      [percentByVolume(6), { thresholds }],
    ],
    provoked: {
      'above one': [3.1],
      'less than none': [-0.01],
      'thresholds reversed': [limit, { thresholds: { act: 0.05, critical: 0.02 } }],
      'no options': [limit, null],
    },
  }),
};
