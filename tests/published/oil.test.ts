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
  type KinematicViscosity,
  kilogramPerCubicMetre,
  type MassFraction,
  minute,
  mL,
  mLPerHour,
  mm,
  newtonPerMetre,
  percentByMass,
  percentByVolume,
  petrol,
  petrolAt20C,
  petrolDensity,
  petrolLine,
  petrolSpanAt20C,
  thinningFinding,
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

  check({
    source: 'ASTM D7152 with the equations of ASTM D341, worked by hand',
    name: '5 % of 0.5 mm²/s in 100 mm²/s, W = -0.9689 and 0.3017, give W = 0.2382: 53.06 mm²/s',
    given: [
      { viscosity: centistokes(100), fraction: percentByVolume(95) },
      { viscosity: centistokes(0.5), fraction: percentByVolume(5) },
    ],
    expected: 53.06,
    tolerance: { absolute: 0.01 },
    got: (parts) => inCentistokes(blendViscosity({ law: 'ASTM D7152', parts })),
  });

  // One blend by two laws, in a published worked example that takes the same fractions for both.
  const threeParts = [
    [46, 0.5],
    [100, 0.3],
    [10, 0.2],
  ] as const;
  check({
    source: 'logarithmic mixing rule, worked example of three oils, worked again by hand',
    name: '50 % of 46, 30 % of 100 and 20 % of 10 mm²/s make 42.79 mm²/s by the log-mean',
    given: threeParts.map(([viscosity, fraction]) => ({
      viscosity: centistokes(viscosity),
      fraction: fraction as VolumeFraction,
    })),
    expected: 42.79,
    tolerance: { absolute: 0.005 },
    got: (parts) => inCentistokes(blendViscosity({ law: 'log-mean', parts })),
  });
  check({
    source: 'Refutas blending number, worked example of three oils, worked again by hand',
    name: 'and 39.23 mm²/s by Refutas',
    given: threeParts.map(([viscosity, fraction]) => ({
      viscosity: centistokes(viscosity),
      fraction: fraction as MassFraction,
    })),
    expected: 39.23,
    tolerance: { absolute: 0.005 },
    got: (parts) => inCentistokes(blendViscosity({ law: 'Refutas', parts })),
  });
  check({
    // Another index than any of ours: what laws that are made for base oils have in common.
    source: 'base oil blending factor, log ν / (3 + log ν), refinery example',
    name: '32.05 % of 5 mm²/s and 67.95 % of 12 mm²/s make about 9 mm²/s, by every law',
    given: [5, 12],
    expected: [9, 9, 9],
    tolerance: { relative: 0.03 },
    got: ([thin = 0, thick = 0]) =>
      (['ASTM D7152', 'Refutas', 'log-mean'] as const).map((law) =>
        inCentistokes(
          blendViscosity({
            law,
            parts: [
              { viscosity: centistokes(thin), fraction: 0.3205 as never },
              { viscosity: centistokes(thick), fraction: 0.6795 as never },
            ],
          }),
        ),
      ),
  });

  // Charts for diesel fuel in engine oil; densities assumed, of which the span hardly depends.
  const diesel = {
    oilDensity: kilogramPerCubicMetre(885),
    fuelDensity: kilogramPerCubicMetre(840),
  };
  const holds = (sample: Parameters<typeof fuelFractionSpan>[0], fuel: number): boolean => {
    const { min, max } = fuelFractionSpan(sample).span;
    return min <= fuel && fuel <= max && max - min < 0.02;
  };
  check({
    source: 'fuel dilution chart of a workshop viscosimeter, mm²/s at 40 °C, example below it',
    name: '160 mm²/s thinned to 137 by fuel of 3.0 is 3 %: between the laws',
    given: {
      ...diesel,
      oil: centistokes(160),
      fuel: centistokes(3),
      sample: centistokes(137),
    },
    expected: true as boolean,
    got: (sample) => holds(sample, 0.03),
  });
  check({
    // ASTM D2161: at 100 °F, SUS = 4.632 times mm²/s for the oils, and 37 SUS is 3.3 mm²/s.
    source: 'fuel dilution chart of a workshop viscosimeter, Saybolt at 100 °F, example below it',
    name: '850 s thinned to 755 by fuel of 37 s is 2 %: between the laws',
    given: {
      ...diesel,
      oil: centistokes(850 / 4.632),
      fuel: centistokes(3.3),
      sample: centistokes(755 / 4.632),
    },
    expected: true as boolean,
    got: (sample) => holds(sample, 0.02),
  });

  check({
    source: 'lecture slides on water in hydrocarbons, examples 1 and 2',
    name: '1 and 30 % by mass of 1000 in 700 kg/m³ are 0.7 and 23 % by volume',
    given: [1, 30].map(percentByMass),
    expected: [0.7, 23],
    tolerance: { relative: 0.02 },
    got: (masses) =>
      masses.map((byMass) =>
        valueIn(
          fractionByVolume({
            byMass,
            oilDensity: kilogramPerCubicMetre(700),
            fuelDensity: kilogramPerCubicMetre(1000),
          }),
          percentByVolume,
        ),
      ),
  });
  check({
    source: 'definition, worked by hand: 37.25 in 37.25 + 836 kg',
    name: '5 % by volume of petrol in oil of 880 kg/m³ is 4.27 % by mass',
    given: { byVolume: percentByVolume(5), oilDensity: kilogramPerCubicMetre(880) },
    expected: 4.266,
    tolerance: { absolute: 0.0005 },
    got: (blend) => valueIn(fractionByMass(blend), percentByMass),
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

describe('petrol', () => {
  const at = (degrees: number) => inCentistokes(viscosityAt(petrolLine, celsius(degrees)));

  check({
    basis: 'from memory',
    name: 'EN 228 allows 720 to 775 kg/m³ at 15 °C',
    given: petrolDensity,
    expected: 747.5,
    tolerance: { absolute: 27.5 },
    got: (density) => valueIn(density, kilogramPerCubicMetre),
  });
  check({
    source: 'ASTM D1250 (1980), table 54B, gasolines: (346.4228 + 0.4388 ρ) / ρ² (from memory)',
    name: 'it expands by 1.21e-3 for a kelvin',
    given: petrol,
    expected: (346.4228 + 0.4388 * 745) / 745 ** 2,
    tolerance: { relative: 0.005 },
    got: ({ expansion }): number => expansion,
  });
  check({
    source: 'exercise in chemical engineering, blending by specific gravity',
    name: 'gasoline of 0.70 and kerosene of 0.82, 0.71 to 1 by volume, make 0.77',
    given: 0.71 / 1.71,
    expected: 770,
    tolerance: { absolute: 0.5 },
    got: (share): number =>
      dilutedOil({
        oil: {
          line: [
            { temperature: celsius(20), viscosity: centistokes(2) },
            { temperature: celsius(60), viscosity: centistokes(1) },
          ],
          density: kilogramPerCubicMetre(820),
        },
        fuel: { line: petrolLine, density: kilogramPerCubicMetre(700) },
        fraction: share as VolumeFraction,
      }).density,
  });
  check({
    source: 'US Department of Energy, fuel property comparison for ethanol, gasoline and diesel',
    name: 'gasoline is 0.37 to 0.44 mPa·s at 60 °F, and 0.72 to 0.78 as heavy as water',
    given: petrolDensity,
    expected: [0.405, 0.75],
    tolerance: { absolute: 0.035 },
    got: (density) => [at(15.56) * 1e-3 * density, density / 999],
  });

  // What it is made of; liquids under their own vapour pressure, 20 to 100 °C, in mm²/s.
  const heptane = { 20: 0.602, 40: 0.5, 60: 0.424, 80: 0.365, 100: 0.3185 };
  const pentane = { 20: 0.302, 40: 0.2553, 60: 0.2169, 80: 0.1848, 100: 0.1573 };
  const toluene = { 20: 0.677, 40: 0.548, 60: 0.458, 80: 0.391, 100: 0.341 };
  const temperatures = Object.keys(heptane).map(Number) as (keyof typeof heptane)[];
  check({
    source:
      'reference correlations of n-pentane and n-heptane (J. Phys. Chem. Ref. Data 43 (2014) 023103), evaluated at saturation',
    name: 'the line of petrol lies between that of n-pentane and that of n-heptane',
    given: temperatures,
    expected: temperatures.map(() => true),
    got: (some) => some.map((t) => pentane[t] < at(t) && at(t) < heptane[t]),
  });
  check({
    source:
      'reference correlation of toluene (J. Phys. Chem. Ref. Data 44 (2015) 033101), evaluated at saturation',
    name: 'and is as steep as that of toluene',
    given: temperatures,
    expected: temperatures.map((t) => toluene[t] / toluene[20]),
    tolerance: { relative: 0.02 },
    got: (some) => some.map((t) => at(t) / at(20)),
  });
  check({
    source: 'J. Chem. Eng. Data 59 (2014), n-heptane + 2,2,4-trimethylpentane, abstract',
    name: 'at 25 °C it is thinner than the 0.572 and 0.729 mm²/s of n-heptane and isooctane, for it holds light ends',
    given: [0.389 / 679.61, 0.501 / 687.7].map((one) => one * 1000),
    expected: [true, true] as boolean[],
    got: (both) => both.map((one) => at(25) < one && at(25) > 0.7 * one),
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
    name: 'twenty drops make a millilitre, at the most',
    given: { drops: 20, time: minute(1) },
    expected: 60,
    got: (drip) => valueIn(dripFlow(drip).max, mLPerHour) / valueIn(mL(1), mL),
  });
  check({
    source:
      'USP 32, general chapter 1101: a dropper of 3 mm delivers water in drops of 45 to 55 mg; surface tension and density of water from memory',
    name: 'water off an edge of 3 mm',
    given: {
      edge: mm(3),
      surfaceTension: newtonPerMetre(0.0728),
      density: kilogramPerCubicMetre(998.2),
    },
    expected: 50,
    tolerance: { absolute: 5 },
    got: (drop) => valueIn(dropVolume(drop), mL) * 998.2,
  });
  check({
    source:
      'Zhu and others, Experimental analysis of the evaporation process for gasoline (2012): from 0.86 to 1.51 mPa·s while 86 % evaporated',
    name: 'weathered petrol is as much thicker than the middle of fresh petrol',
    given: { fresh: petrolAt20C, weathered: petrolSpanAt20C.max },
    expected: 1.51 / 0.86,
    tolerance: { relative: 0.05 },
    got: ({ fresh, weathered }) => weathered / fresh,
  });
  check({
    source:
      'engine guide of an oil laboratory, viscosity: alarm at 10 % below the new oil, critical at 20 %',
    name: 'an oil that has lost 9, 11, 19 and 21 % of its viscosity',
    given: [91, 89, 81, 79].map((left) => centistokes(left)),
    expected: ['normal', 'act', 'act', 'critical'],
    got: (samples) =>
      samples.map((sample) => thinningFinding({ oil: centistokes(100), sample }).stage as string),
  });
});
