import {
  blendViscosity,
  celsius,
  centistokes,
  dilutionFinding,
  dripFlow,
  fuelFraction,
  type KinematicViscosity,
  type MassFraction,
  mL,
  mLPerHour,
  percentByMass,
  percentByVolume,
  perMinute,
  petrolAt20C,
  type VolumeFraction,
  valueIn,
  viscosityAt,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const inCentistokes = (viscosity: KinematicViscosity) => valueIn(viscosity, centistokes);

describe('viscosity', () => {
  check({
    source: 'ASTM D341, equations, worked with 273.15',
    name: '32 mm²/s at 40 °C and 5.4 at 100 °C give 8.533 at 80 °C',
    given: [
      { temperature: celsius(40), viscosity: centistokes(32) },
      { temperature: celsius(100), viscosity: centistokes(5.4) },
    ] as const,
    expected: 8.533,
    tolerance: { absolute: 0.0005 },
    got: (line) => inCentistokes(viscosityAt(line, celsius(80))),
  });
});

describe('blends', () => {
  check({
    source: 'Refutas blending number, worked by hand',
    name: '60 % of 5 mm²/s and 40 % of 20 mm²/s by mass give 8.1085 mm²/s',
    given: [
      { viscosity: centistokes(5), fraction: percentByMass(60) },
      { viscosity: centistokes(20), fraction: percentByMass(40) },
    ],
    expected: 8.1085,
    tolerance: { absolute: 0.00005 },
    got: (parts) => inCentistokes(blendViscosity({ law: 'Refutas', parts })),
  });
  check({
    source: 'Refutas blending number, worked by hand',
    name: 'and the 60 % of the thinner by mass are found again from 8.1085 mm²/s',
    given: { oil: centistokes(20), fuel: centistokes(5), sample: centistokes(8.1085) },
    expected: 0.6,
    tolerance: { absolute: 1e-5 },
    got: (diluted): number => fuelFraction({ law: 'Refutas', ...diluted }),
  });

  // Assumed, not published: an SAE 30 oil of 10.5 to 11.5 mm²/s and petrol of 0.4 mm²/s,
  // both at 100 °C. By density 745 in 880 kg/m³, 5 % by volume is 4.27 % by mass.
  // SAE J300 (2015): grade 20 is 6.9 to below 9.3 mm²/s at 100 °C, so 8.1 ± 1.2.
  const thinned = {
    'ASTM D7152': (oil: number) =>
      blendViscosity({
        law: 'ASTM D7152',
        parts: [
          { viscosity: centistokes(oil), fraction: 0.95 as VolumeFraction },
          { viscosity: centistokes(0.4), fraction: 0.05 as VolumeFraction },
        ],
      }),
    Refutas: (oil: number) =>
      blendViscosity({
        law: 'Refutas',
        parts: [
          { viscosity: centistokes(oil), fraction: 0.9573 as MassFraction },
          { viscosity: centistokes(0.4), fraction: 0.0427 as MassFraction },
        ],
      }),
  };
  for (const law of ['ASTM D7152', 'Refutas'] as const) {
    check({
      source: 'oil-analysis literature; SAE J300 (2015) for the grades',
      name: `5 % of fuel takes SAE 30 to about SAE 20, by ${law}`,
      given: [10.5, 11, 11.5],
      expected: [8.1, 8.1, 8.1],
      tolerance: { absolute: 1.2 },
      got: (oils) => oils.map((oil) => inCentistokes(thinned[law](oil))),
    });
  }
  check({
    basis: 'from memory',
    name: 'petrol is 0.5 to 0.6 mm²/s at 20 °C',
    given: petrolAt20C,
    expected: 0.55,
    tolerance: { absolute: 0.05 },
    got: inCentistokes,
  });
});

describe('petrol in the sump', () => {
  check({
    basis: 'common practice',
    name: 'normal below 2 %, act between 2.5 and 5 %, critical above 5 %; laboratories differ',
    given: [0, 1, 1.9, 2.6, 3, 4.9, 5.1, 10].map(percentByVolume),
    expected: ['normal', 'normal', 'normal', 'act', 'act', 'act', 'critical', 'critical'],
    got: (fractions) => fractions.map((one) => dilutionFinding(one).stage as string),
  });
  check({
    basis: 'common practice',
    name: 'the limit is marked as a rule of thumb, since no standard sets one',
    given: percentByVolume(3),
    expected: 'common practice',
    got: (fraction) => dilutionFinding(fraction).finding.basis.kind as string,
  });
  check({
    basis: 'common practice',
    name: 'twenty drops make a millilitre',
    given: { drops: perMinute(20) },
    expected: 60,
    got: (drip) => valueIn(dripFlow(drip), mLPerHour) / valueIn(mL(1), mL),
  });
});
