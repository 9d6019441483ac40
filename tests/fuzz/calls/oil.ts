import {
  blendViscosity,
  celsius,
  centistokes,
  dilutedOil,
  dilutionFinding,
  dripFlow,
  dropVolume,
  fractionByMass,
  fractionByVolume,
  fuelFraction,
  fuelFractionSpan,
  fuelInSump,
  hour,
  hydraulicLockHours,
  kilogramPerCubicMetre,
  litre,
  massFraction,
  minute,
  mL,
  mLPerHour,
  mm,
  percent,
  percentByMass,
  percentByVolume,
  perHour,
  petrol,
  petrolLine,
  ppmPerKelvin,
  quartUS,
  sumpLog,
  thinningFinding,
  timeToDilution,
  type ViscosityLine,
  volumeFraction,
} from 'crankwright';
import { calls, refused } from './calls.js';

const line: ViscosityLine = [
  { temperature: celsius(40), viscosity: centistokes(32) },
  { temperature: celsius(100), viscosity: centistokes(5.4) },
];
const [warm, hot] = line;
const law = 'ASTM D7152';
const parts = [
  { viscosity: centistokes(100), fraction: volumeFraction(0.95) },
  { viscosity: centistokes(0.5), fraction: volumeFraction(0.05) },
];
const limit = percentByVolume(2.5);
const oilDensity = kilogramPerCubicMetre(880);
const fuelDensity = kilogramPerCubicMetre(740);
const oil = { line, density: oilDensity };
const fuel = { line: petrolLine, density: fuelDensity };
const leak = { leak: mLPerHour(36), oil: quartUS(1) };
const story = {
  oil: litre(0.9),
  fuel: mL(20),
  leak: { running: mLPerHour(1), standing: mLPerHour(6) },
  evaporation: { running: perHour(0.1), standing: perHour(0) },
  log: [
    { running: hour(2) },
    { standing: hour(12) },
    { drained: litre(0.3) },
    { added: litre(0.3) },
    { drained: 'all' },
  ],
} as const;
const thresholds = { act: percentByVolume(2), critical: percentByVolume(4) };

/** Calls of the oil room that no card makes: what may be left out, lists, words, and what has no card. */
export const oilCalls = {
  blendViscosity: calls(blendViscosity, {
    sound: [
      [{ law, parts }],
      [
        {
          law,
          parts: [...parts, ...parts].map((part) => ({ ...part, fraction: volumeFraction(0.25) })),
        },
      ],
      [
        {
          law: 'Refutas',
          parts: parts.map(({ viscosity }) => ({ viscosity, fraction: massFraction(0.5) })),
        },
      ],
    ],
    provoked: {
      'the law is unknown': refused('law', { law: 'Arrhenius', parts }),
      'there are fewer than two parts': refused('parts', {
        law,
        parts: [{ ...parts[0], fraction: 1 }],
      }),
      'the fractions do not add up to one': refused('parts', { law, parts: [...parts, ...parts] }),
      'no blend': refused('blend'),
    },
  }),
  fractionByMass: calls(fractionByMass, {
    sound: [[{ byVolume: limit, oilDensity }]],
    provoked: { 'no blend': refused('blend') },
  }),
  fractionByVolume: calls(fractionByVolume, {
    sound: [[{ byMass: percentByMass(5), oilDensity }]],
    provoked: { 'no blend': refused('blend') },
  }),
  fuelFraction: calls(fuelFraction, {
    sound: [
      [
        {
          law: 'Refutas',
          oil: centistokes(100),
          fuel: centistokes(0.5),
          sample: centistokes(110),
        },
      ],
    ],
    provoked: { 'the law is unknown': refused('law', { law: 'constructor' }) },
  }),
  fuelFractionSpan: calls(fuelFractionSpan, {
    sound: [
      [{ oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(102), oilDensity }],
    ],
    provoked: {
      'no blend': refused('diluted'),
      'a span is reversed': refused('fuel', {
        oil: centistokes(100),
        fuel: { min: centistokes(1), max: centistokes(0.5) },
        sample: centistokes(70),
        oilDensity,
      }),
    },
  }),
  dripFlow: calls(dripFlow, {
    sound: [[{ drops: 12, time: minute(1) }], [{ drops: 0, time: minute(1) }]],
    provoked: {
      'no drip': refused('drip'),
      'a span is reversed': refused('dropVolume', {
        drops: 12,
        time: minute(1),
        dropVolume: { min: mL(0.05), max: mL(0.018) },
      }),
    },
  }),
  dropVolume: calls(dropVolume, {
    sound: [[{ edge: mm(3) }]],
    provoked: { 'no drop': refused('drop') },
  }),
  hydraulicLockHours: calls(hydraulicLockHours, {
    sound: [[{ clearanceVolume: mL(60), leak: mLPerHour(18) }]],
    provoked: { 'no cylinder': refused('cylinder') },
  }),
  thinningFinding: calls(thinningFinding, {
    sound: [
      [{ oil: centistokes(100), sample: centistokes(85) }],
      [
        { oil: centistokes(100), sample: centistokes(85) },
        { thresholds: { act: percent(5), critical: percent(30) } },
      ],
    ],
    provoked: {
      'the thresholds are reversed': refused(
        'options.thresholds',
        { oil: 1e-4, sample: 9e-5 },
        { thresholds: { act: 0.3, critical: 0.2 } },
      ),
    },
  }),
  dilutedOil: calls(dilutedOil, {
    sound: [
      [{ oil, fraction: limit }],
      [
        {
          oil: { ...oil, expansion: ppmPerKelvin(710) },
          fuel: petrol,
          fraction: limit,
          law: 'Refutas',
        },
      ],
      [{ oil, fuel, fraction: limit, law: 'log-mean' }],
    ],
    provoked: {
      'no oil': refused('oil', { fraction: limit }),
      'no fuel': refused('fuel', { oil, fuel: null, fraction: limit }),
      'a line is none': refused('oil.line', { oil: { ...oil, line: [hot] }, fraction: limit }),
      'a line of a fuel is none': refused('fuel.line', {
        oil,
        fuel: { ...fuel, line: [hot] },
        fraction: limit,
      }),
      'the fuel is no thinner than the oil': refused('fuel.line', {
        oil: petrol,
        fuel: oil,
        fraction: limit,
      }),
      'the law is unknown': refused('law', { oil, fraction: limit, law: 'Walther' }),
      'the fuel is too thin where the line of the oil has a point': refused('result', {
        oil: { ...oil, line: [warm, { ...hot, temperature: celsius(200) }] },
        fraction: limit,
      }),
    },
  }),
  fuelInSump: calls(fuelInSump, {
    sound: [[{ ...leak, time: hour(2) }]],
    provoked: { 'no sump': refused('sump') },
  }),
  sumpLog: calls(sumpLog, {
    sound: [
      [story],
      [{ ...leak, log: [{ standing: hour(8) }] }],
      [{ ...story, evaporation: perHour(0.2), leak: mLPerHour(0) }],
    ],
    provoked: {
      'the log is empty': refused('log', { ...story, log: [] }),
      'an entry is not exactly one of the four': refused('log[0]', {
        ...story,
        log: [{ running: hour(1), added: litre(0.3) }],
      }),
      'the fuel at the start leaves hardly any oil': refused('fuel', {
        ...story,
        oil: mL(1),
        fuel: litre(0.1),
      }),
      'the leak outruns the sump': refused('leak.standing', {
        ...story,
        leak: { running: mLPerHour(1), standing: 1e-3 },
        log: [{ standing: hour(8) }],
      }),
      'one leak for both outruns the sump': refused('leak', {
        ...story,
        leak: 1e-3,
        log: [{ standing: hour(8) }],
      }),
      'an entry out of range': refused('log[0].running', { ...story, log: [{ running: -1 }] }),
      'no sump': refused('sump'),
    },
  }),
  timeToDilution: calls(timeToDilution, {
    sound: [
      [{ ...leak, fraction: limit }],
      [{ ...leak, evaporation: perHour(10), fraction: limit }],
      [{ ...leak, fuel: mL(50), fraction: limit }],
      [{ ...leak, leak: mLPerHour(0), fraction: limit }],
    ],
    provoked: { 'no sump': refused('sump') },
  }),
  dilutionFinding: calls(dilutionFinding, {
    sound: [
      [percentByVolume(3.1), { thresholds }],
      [percentByVolume(1), { thresholds, basis: { kind: 'published', source: 'the laboratory' } }],
      [percentByVolume(6)],
    ],
    provoked: {
      'a value is not finite': refused('fraction', Number.NaN),
      'out of range': refused('fraction', 3.1),
      'a threshold is out of range': refused('options.thresholds.critical', limit, {
        thresholds: { act: 0.05, critical: 5 },
      }),
      'the thresholds are reversed': refused('options.thresholds', limit, {
        thresholds: { act: 0.05, critical: 0.02 },
      }),
      'no thresholds': refused('options.thresholds', limit, { thresholds: null }),
      'no options': refused('options', limit, null),
    },
  }),
};
