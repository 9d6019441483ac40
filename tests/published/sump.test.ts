import {
  cubicMetrePerSecond,
  dilutionFinding,
  fuelFromLevelRise,
  fuelInSump,
  gallonUS,
  inch,
  litre,
  minute,
  mL,
  mLPerMinute,
  percentByVolume,
  perMinute,
  squareInch,
  sumpLog,
  timeToDilution,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

describe('fuel that runs in and evaporates', () => {
  // A tank of 100 gal takes in 3 gal of brine a minute, 1/4 lb of salt to the gallon, and loses 3 gal of
  // what is in it: 0.75 lb comes and 3 % goes in a minute, so that it settles at 25 lb. In millilitres here.
  const tank = { leak: mLPerMinute(0.75), evaporation: perMinute(0.03) };
  const T = Math.log(50) / 0.03;

  check({
    source:
      'Boyce and DiPrima, Elementary Differential Equations, section 2.3, example 1 (from memory)',
    name: 'from 50 it is within 2 % of 25 after ln 50 / 0.03 = 130.4 minutes',
    given: { ...tank, oil: litre(1), fuel: mL(50), time: minute(130.4) },
    expected: 25.5,
    tolerance: { absolute: 0.0005 },
    got: (sump) => valueIn(fuelInSump(sump).fuel, mL),
  });
  check({
    source:
      'Boyce and DiPrima, Elementary Differential Equations, section 2.3, example 1 (from memory)',
    name: 'and from none it gets to 24.5 in that time, the other side of 25',
    given: { ...tank, oil: mL(975.5), fraction: percentByVolume(2.45) },
    expected: T,
    tolerance: { relative: 1e-9 },
    got: (sump) => {
      const until = timeToDilution(sump);
      return until.reached ? valueIn(until.time, minute) : Number.NaN;
    },
  });
  check({
    source:
      'Boyce and DiPrima, Elementary Differential Equations, section 2.3, example 1 (from memory)',
    name: 'it settles at 25, from above and from below',
    given: [0, 50].map((fuel) => mL(fuel)),
    expected: [25, 25],
    got: (starts) =>
      starts.map((fuel) => {
        const sump = { ...tank, oil: litre(1), fuel, log: [{ standing: minute(5000) }] };
        return valueIn(sumpLog(sump).end.fuel, mL);
      }),
  });
});

describe('a sump that is drained and filled up', () => {
  check({
    source: 'school arithmetic, the milk vessel: 40 L, 4 L replaced by water three times',
    name: '29.16 of 40 are left, (1 - 4/40)³ of what there was',
    given: { oil: litre(36), fuel: litre(4), leak: cubicMetrePerSecond(0) },
    expected: 29.16 / 40,
    got: (sump) => {
      const once = [{ drained: litre(4) }, { added: litre(4) }];
      const { end } = sumpLog({ ...sump, log: [...once, ...once, ...once] });
      return end.fuel / sump.fuel;
    },
  });
});

describe('a level that has risen', () => {
  check({
    source: 'NIST SP 811 (2008), App. B: the US gallon is 231 in³',
    name: 'one inch over 231 square inches is a gallon',
    given: { rise: inch(1), surface: squareInch(231), oil: gallonUS(3) },
    expected: 1,
    got: (sump) => valueIn(fuelFromLevelRise(sump).fuel, gallonUS),
  });
});

describe('thresholds', () => {
  check({
    source: 'engine guide of an oil laboratory, petrol in oil: < 2.4, 2.5–3.4, 3.5–4.9, > 5.0 %',
    name: 'normal, raised, alarm and critical are normal, act, act and critical',
    given: [2.4, 2.6, 3.4, 3.5, 4.9, 5.1].map(percentByVolume),
    expected: ['normal', 'act', 'act', 'act', 'act', 'critical'],
    got: (fractions) => fractions.map((one) => dilutionFinding(one).stage as string),
  });
  check({
    source: 'oil-analysis guide: corrective action above 2.5 to 5 %, by volume',
    name: 'the stages change at 2.5 and at 5 %',
    given: percentByVolume(0),
    expected: { act: 0.025 as number, critical: 0.05 as number },
    got: (none) => ({ ...dilutionFinding(none).thresholds }),
  });
});
