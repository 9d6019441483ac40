import {
  type BlendingLaw,
  blendViscosity,
  celsius,
  centistokes,
  dilutedOil,
  dilutionFinding,
  dripFlow,
  fractionByMass,
  fractionByVolume,
  fuelFraction,
  fuelFractionSpan,
  fuelFromLevelRise,
  fuelInSump,
  hour,
  kilogramPerCubicMetre,
  litre,
  massFraction,
  mL,
  mLPerHour,
  mm,
  percentByMass,
  percentByVolume,
  perHour,
  perMinute,
  petrol,
  petrolLine,
  ppmPerKelvin,
  quartUS,
  squareMm,
  sumpLog,
  timeToDilution,
  type ViscosityLine,
  viscosityAt,
  volumeFraction,
} from 'crankwright';
import { calls, refused } from './calls.js';

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
const oilDensity = kilogramPerCubicMetre(880);
const fuelDensity = kilogramPerCubicMetre(740);
const fuel = { line: petrolLine, density: fuelDensity };
const thinned = {
  oil: centistokes(100),
  fuel: centistokes(0.5),
  sample: centistokes(67),
  oilDensity,
};
const risen = { rise: mm(3), surface: squareMm(15000), oil: quartUS(1) };
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

export const oilCalls = {
  viscosityAt: calls(viscosityAt, {
    sound: [
      [line, celsius(80)],
      [[hot, warm], celsius(-20)],
    ],
    provoked: {
      'equal temperatures': refused(
        'line',
        [warm, { ...hot, temperature: warm.temperature }],
        celsius(80),
      ),
      'thicker when heated': refused(
        'line',
        [warm, { ...hot, viscosity: centistokes(50) }],
        celsius(80),
      ),
      'the temperature is out of range': refused('temperature', line, celsius(200)),
      'the result is out of range': refused(
        'result',
        [
          { temperature: celsius(40), viscosity: centistokes(1e6) },
          { temperature: celsius(50), viscosity: centistokes(1) },
        ],
        celsius(150),
      ),
      'one point': refused('line', [warm], celsius(80)),
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
      [{ law: 'log-mean', parts }],
    ],
    provoked: {
      'not one in all': refused('parts', { law, parts: [...parts, ...parts] }),
      'a viscosity out of range': refused('parts[0].viscosity', {
        law,
        parts: [{ ...parts[0], viscosity: 100 }, parts[1]],
      }),
      'an unknown law': refused('law', { law: 'Arrhenius', parts }),
      'one part': refused('parts', { law, parts: [{ ...parts[0], fraction: 1 }] }),
      'no blend': refused('blend'),
    },
  }),
  fuelFraction: calls(fuelFraction, {
    sound: [[diluted], [{ ...diluted, law: 'Refutas', sample: centistokes(110) }]],
    provoked: {
      'out of range': refused('oil', { ...diluted, oil: 100 }),
      'thinner than the fuel': refused('sample', { ...diluted, sample: centistokes(0.4) }),
      'a fuel thicker than the oil': refused('fuel', { ...diluted, fuel: centistokes(200) }),
      'an unknown law': refused('law', { ...diluted, law: 'constructor' }),
    },
  }),
  fractionByMass: calls(fractionByMass, {
    sound: [[{ byVolume: limit, oilDensity }], [{ byVolume: limit, oilDensity, fuelDensity }]],
    provoked: {
      'percent as a plain number': refused('byVolume', { byVolume: 5, oilDensity }),
      'not an oil’s density': refused('oilDensity', { byVolume: limit, oilDensity: 0.88 }),
      'not a fuel’s density': refused('fuelDensity', {
        byVolume: limit,
        oilDensity,
        fuelDensity: 0.74,
      }),
      'no blend': refused('blend'),
    },
  }),
  fractionByVolume: calls(fractionByVolume, {
    sound: [
      [{ byMass: percentByMass(5), oilDensity }],
      [{ byMass: percentByMass(5), oilDensity, fuelDensity }],
    ],
    provoked: {
      'percent as a plain number': refused('byMass', { byMass: 5, oilDensity }),
      'not an oil’s density': refused('oilDensity', { byMass: 0.05, oilDensity: 0.88 }),
      'not a fuel’s density': refused('fuelDensity', {
        byMass: 0.05,
        oilDensity,
        fuelDensity: 0.74,
      }),
      'no blend': refused('blend'),
    },
  }),
  fuelFractionSpan: calls(fuelFractionSpan, {
    sound: [[thinned], [{ ...thinned, fuelDensity, sample: centistokes(102) }]],
    provoked: {
      'a viscosity out of range': refused('oil', { ...thinned, oil: 100 }),
      'a density out of range': refused('oilDensity', { ...thinned, oilDensity: 0.88 }),
      'thinner than the fuel': refused('sample', { ...thinned, sample: centistokes(0.4) }),
      'far thicker than the oil': refused('sample', { ...thinned, sample: centistokes(1e6) }),
      'no blend': refused('diluted'),
    },
  }),
  dripFlow: calls(dripFlow, {
    sound: [[{ drops: perMinute(12) }], [{ drops: perMinute(12), dropVolume: mL(0.04) }]],
    provoked: {
      'a negative rate': refused('drops', { drops: perMinute(-1) }),
      'not a drop': refused('dropVolume', { drops: perMinute(12), dropVolume: quartUS(1) }),
      'no drip': refused('drip'),
    },
  }),
  dilutedOil: calls(dilutedOil, {
    sound: [
      [{ oil: { line, density: oilDensity }, fraction: limit }],
      [
        {
          oil: { line, density: oilDensity, expansion: ppmPerKelvin(710) },
          fuel: petrol,
          fraction: limit,
          law: 'Refutas',
        },
      ],
      [{ oil: { line, density: oilDensity }, fuel, fraction: limit, law: 'log-mean' }],
    ],
    provoked: {
      'no oil': refused('oil', { fraction: limit }),
      'an oil of no density': refused('oil.density', {
        oil: { line, density: 0.88 },
        fraction: limit,
      }),
      'a fuel of no density': refused('fuel.density', {
        oil: { line, density: oilDensity },
        fuel: { line, density: 0.74 },
        fraction: limit,
      }),
      'oil and fuel swapped': refused('fuel.line', {
        oil: petrol,
        fuel: { line, density: oilDensity },
        fraction: limit,
      }),
      'percent as a plain number': refused('fraction', {
        oil: { line, density: oilDensity },
        fraction: 5,
      }),
      'an unknown law': refused('law', {
        oil: { line, density: oilDensity },
        fraction: limit,
        law: 'Walther',
      }),
      'a fuel below the range': refused('result', {
        oil: { line: [warm, { ...hot, temperature: celsius(200) }], density: oilDensity },
        fraction: limit,
      }),
    },
  }),
  fuelInSump: calls(fuelInSump, {
    sound: [
      [{ ...leak, time: hour(2) }],
      [{ ...losing, time: hour(2) }],
      [{ ...losing, fuel: mL(20), time: hour(2) }],
    ],
    provoked: {
      'a negative time': refused('time', { ...leak, time: hour(-2) }),
      'not a sump': refused('oil', { ...leak, oil: 1, time: hour(2) }),
      'a leak that outruns it': refused('leak', { ...leak, leak: 36e-6, time: hour(2000) }),
      'more fuel than oil can be': refused('fuel', {
        ...leak,
        oil: mL(1),
        fuel: litre(1),
        time: hour(2),
      }),
      'no sump': refused('sump'),
    },
  }),
  sumpLog: calls(sumpLog, {
    sound: [
      [story],
      [{ oil: quartUS(1), leak: mLPerHour(36), log: [{ standing: hour(8) }] }],
      [{ ...story, evaporation: perHour(0.2), leak: mLPerHour(0) }],
    ],
    provoked: {
      'a negative time': refused('log[0].running', { ...story, log: [{ running: -1 }] }),
      'not a sump': refused('oil', { ...story, oil: 1 }),
      'two things at once': refused('log[0]', {
        ...story,
        log: [{ running: hour(1), added: litre(0.3) }],
      }),
      'more drained than there is': refused('log[0].drained', {
        ...story,
        log: [{ drained: litre(1) }],
      }),
      'a leak that outruns it': refused('leak', {
        ...story,
        leak: 1e-3,
        log: [{ standing: hour(8) }],
      }),
      'an empty log': refused('log', { ...story, log: [] }),
      'no sump': refused('sump'),
    },
  }),
  fuelFromLevelRise: calls(fuelFromLevelRise, {
    sound: [[risen], [{ ...risen, rise: mm(0) }]],
    provoked: {
      'a fallen level': refused('rise', { ...risen, rise: mm(-3) }),
      'not a sump': refused('surface', { ...risen, surface: 15000 }),
      'nearly all fuel': refused('rise', { ...risen, rise: 0.4, surface: 1 }),
      'no sump': refused('sump'),
    },
  }),
  timeToDilution: calls(timeToDilution, {
    sound: [
      [{ ...leak, fraction: limit }],
      [{ ...losing, fraction: limit }],
      [{ ...losing, evaporation: perHour(10), fraction: limit }],
      [{ ...losing, fuel: mL(5), fraction: limit }],
      [{ ...leak, leak: mLPerHour(0), fraction: limit }],
    ],
    provoked: {
      'a negative leak': refused('leak', { ...leak, leak: mLPerHour(-1), fraction: limit }),
      'not a sump': refused('oil', { ...leak, oil: 1, fraction: limit }),
      'all of it fuel': refused('fraction', { ...leak, fraction: percentByVolume(100) }),
      'no sump': refused('sump'),
    },
  }),
  dilutionFinding: calls(dilutionFinding, {
    sound: [
      [percentByVolume(3.1)],
      [percentByVolume(1), { thresholds, basis: { kind: 'published', source: 'the laboratory' } }],
      [percentByVolume(6), { thresholds }],
    ],
    provoked: {
      'above one': refused('fraction', 3.1),
      'less than none': refused('fraction', -0.01),
      'thresholds reversed': refused('options.thresholds', limit, {
        thresholds: { act: 0.05, critical: 0.02 },
      }),
      'no options': refused('options', limit, null),
    },
  }),
};
