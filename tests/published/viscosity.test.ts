import {
  apiGravity,
  celsius,
  centistokes,
  densityAt,
  densityFromApiGravity,
  dynamicViscosityAt,
  extrapolatedViscosity,
  fahrenheit,
  isoGrade,
  type KinematicViscosity,
  kilogramPerCubicMetre,
  kinematicFromSaybolt,
  millipascalSecond,
  ratio,
  saeGrade,
  sayboltUniversal,
  second,
  type ViscosityLine,
  valueIn,
  viscosityAt,
  viscosityIndex,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const lineOf = (warm: number, at: number, hot: number): ViscosityLine => [
  { temperature: celsius(40), viscosity: centistokes(warm) },
  { temperature: celsius(at), viscosity: centistokes(hot) },
];

describe('the viscosity line', () => {
  check({
    source: 'worked example of an oil laboratory on ASTM D341: gear oil of SAE 140',
    name: '404 mm²/s at 40 °C and 28 at 100 °C give 132.126 at 60 °C',
    given: lineOf(404, 100, 28),
    expected: [132.126, 132.126],
    tolerance: { absolute: 0.0005 },
    got: (line) => [
      valueIn(viscosityAt(line, celsius(60)), centistokes),
      valueIn(extrapolatedViscosity(line, celsius(60)).viscosity, centistokes),
    ],
  });
  check({
    source: 'worked example of an oil laboratory on ASTM D341 and D2270',
    name: '68 mm²/s at 40 °C and 14.85 at 80 °C give 8.8 at 100 °C, and so an index of 102',
    given: lineOf(68, 80, 14.85),
    expected: [8.8, 102],
    tolerance: { absolute: 0.05 },
    got: (line) => [
      valueIn(viscosityAt(line, celsius(100)), centistokes),
      Math.round(viscosityIndex({ at40C: centistokes(68), at100C: centistokes(8.8) })),
    ],
  });
  check({
    source: 'ASTM D341, equations, worked by hand with 273.15 and no correction below 2 mm²/s',
    name: 'the line of 32 and 5.4 mm²/s taken to 180 °C gives 1.69, above its range',
    given: lineOf(32, 100, 5.4),
    expected: { viscosity: 1.69, range: 'above' },
    tolerance: { absolute: 0.01 },
    got: (line) => {
      const { viscosity, range } = extrapolatedViscosity(line, celsius(180));
      return { viscosity: valueIn(viscosity, centistokes), range: range as string };
    },
  });
});

describe('grades', () => {
  const gradesAt = (viscosities: readonly number[]) =>
    viscosities.map((v) => saeGrade(centistokes(v)).grades.join(' ') as string);
  check({
    source: 'SAE J300 (2015), kinematic viscosity at 100 °C',
    name: 'each grade from 16 begins at its least viscosity',
    given: [6.1, 6.9, 9.3, 12.5, 16.3, 21.9],
    expected: ['12 16', '12 16 20', '30', '40', '50', '60'],
    got: gradesAt,
  });
  check({
    source: 'SAE J300 (2015), kinematic viscosity at 100 °C: the most is just not reached',
    name: 'each grade from 16 ends just below its most',
    given: [8.19, 8.2, 9.29, 12.49, 16.29, 21.89, 26.09, 26.1],
    expected: ['16 20', '20', '20', '30', '40', '50', '60', ''],
    got: gradesAt,
  });
  check({
    basis: 'from memory',
    name: 'SAE 8 is 4.0 to below 6.1 and SAE 12 is 5.0 to below 7.1 mm²/s',
    given: [3.99, 4, 4.99, 5, 6.09, 7.09, 7.1],
    expected: ['', '8', '8', '8 12', '8 12', '12 16 20', '16 20'],
    got: gradesAt,
  });
  check({
    source: 'SAE J300 (2015), least viscosity at 100 °C of the W grades',
    name: '3.8 for 0W and 5W, 4.1 for 10W, 5.6 for 15W and 20W, 9.3 for 25W',
    given: [3.79, 3.8, 4.1, 5.6, 9.3],
    expected: ['', '0W 5W', '0W 5W 10W', '0W 5W 10W 15W 20W', '0W 5W 10W 15W 20W 25W'],
    got: (all) => all.map((v) => saeGrade(centistokes(v)).winterNotRuledOut.join(' ') as string),
  });
  // Midpoint, least and most at 40 °C, mm²/s.
  const iso: Readonly<Record<string, readonly [number, number, number]>> = {
    'ISO VG 2': [2.2, 1.98, 2.42],
    'ISO VG 3': [3.2, 2.88, 3.52],
    'ISO VG 5': [4.6, 4.14, 5.06],
    'ISO VG 7': [6.8, 6.12, 7.48],
    'ISO VG 10': [10, 9, 11],
    'ISO VG 15': [15, 13.5, 16.5],
    'ISO VG 22': [22, 19.8, 24.2],
    'ISO VG 32': [32, 28.8, 35.2],
    'ISO VG 46': [46, 41.4, 50.6],
    'ISO VG 68': [68, 61.2, 74.8],
    'ISO VG 100': [100, 90, 110],
    'ISO VG 150': [150, 135, 165],
    'ISO VG 220': [220, 198, 242],
    'ISO VG 320': [320, 288, 352],
    'ISO VG 460': [460, 414, 506],
    'ISO VG 680': [680, 612, 748],
    'ISO VG 1000': [1000, 900, 1100],
    'ISO VG 1500': [1500, 1350, 1650],
  };
  const inMm2 = (viscosity: KinematicViscosity | undefined) =>
    viscosity === undefined ? Number.NaN : valueIn(viscosity, centistokes);
  check({
    source: 'ISO 3448:1992, table 1',
    name: 'every grade has its midpoint and its limits',
    given: Object.values(iso),
    expected: Object.entries(iso) as readonly (readonly [
      string,
      readonly [number, number, number],
    ])[],
    got: (all) =>
      all.map(([midpoint]) => {
        const { grade } = isoGrade(centistokes(midpoint));
        const limits = [grade?.midpoint, grade?.limits.min, grade?.limits.max];
        return [grade?.name as string, limits.map(inMm2) as [number, number, number]] as const;
      }),
  });
  check({
    source: 'ASTM D2422, 4.1 and 4.3: twenty grades, within 10 % of the midpoint',
    name: 'the limits themselves are in the grade, and what is just past them is not',
    given: Object.values(iso),
    expected: Object.keys(iso).map((name) => [name, name, false, false]),
    got: (all) =>
      all.map(([, min, max]) => {
        const at = (v: number) => isoGrade(centistokes(v)).grade?.name;
        const past = [at(min * 0.999), at(max * 1.001)].map((name) => name !== undefined);
        return [at(min) as string, at(max) as string, ...past];
      }),
  });
});

describe('Saybolt seconds', () => {
  const at = (f: number) => (v: number) =>
    valueIn(sayboltUniversal(centistokes(v), fahrenheit(f)), second);
  check({
    source: 'ASTM D2161, equation, worked by hand',
    name: '10 mm²/s is 58.84 s and 100 is 463.46 s at 100 °F',
    given: [10, 100],
    expected: [58.84, 463.46],
    tolerance: { absolute: 0.01 },
    got: (all) => all.map(at(100)),
  });
  check({
    source: 'ASTM D2161, 5.1: table 1 runs from 1.81 to 500 mm²/s at 100 °F; 32 s from memory',
    name: 'the tables begin at 32 s, at 1.81 mm²/s and 100 °F, at 1.77 mm²/s and 210 °F',
    given: [at(100)(1.81), at(210)(1.77)],
    expected: [32, 32],
    tolerance: { absolute: 0.05 },
    got: (all) => all,
  });
  check({
    source: 'ASTM D2161, 5.2: times 4.632 at 100 °F, 4.664 at 210 °F, beyond the tables',
    name: 'thick oils take so many times their mm²/s',
    given: [at(100)(500) / 500, at(210)(139.8) / 139.8, at(100)(5000) / 5000],
    expected: [4.632, 4.664, 4.632],
    tolerance: { absolute: 0.0006 },
    got: (all) => all,
  });
  check({
    basis: 'from memory',
    name: 'handbook table at 100 °F: 100 s is 20.6 mm²/s, 200 is 43.2, 500 is 108, 1000 is 216',
    given: [100, 200, 500, 1000],
    expected: [20.6, 43.2, 108, 216],
    tolerance: { relative: 0.01 },
    got: (all) =>
      all.map((s) => valueIn(kinematicFromSaybolt(second(s), fahrenheit(100)), centistokes)),
  });
});

describe('density', () => {
  check({
    source: "Marks' Standard Handbook for Mechanical Engineers, degrees API and relative density",
    name: '15, 20, 25, 30, 35 and 40 degrees are 0.966, 0.934, 0.904, 0.876, 0.850 and 0.825 of water',
    given: [10, 15, 20, 25, 30, 35, 40],
    expected: [1, 0.966, 0.934, 0.904, 0.876, 0.85, 0.825],
    tolerance: { absolute: 0.0005 },
    got: (all) =>
      all.map((g) => valueIn(densityFromApiGravity(ratio(g)), kilogramPerCubicMetre) / 999.016),
  });
  check({
    source: 'data sheet of a hydraulic oil: 31.0 degrees API, relative density 0.871 at 60 °F',
    name: 'a relative density of 0.871 is 31.0 degrees',
    given: 0.871 * 999.016,
    expected: 31,
    tolerance: { absolute: 0.06 },
    got: (density): number => apiGravity(kilogramPerCubicMetre(density)),
  });
  check({
    source: 'API MPMS chapter 11.1 (2004), lubricating oils at 60 °F, worked by hand',
    name: '880 kg/m³ at 60 °F is 844.74 at 160 °F, by 0.34878/880 for a degree Fahrenheit',
    given: { at: fahrenheit(60), temperature: fahrenheit(160) },
    expected: 844.74,
    tolerance: { absolute: 0.02 },
    got: (two) =>
      valueIn(densityAt({ density: kilogramPerCubicMetre(880), ...two }), kilogramPerCubicMetre),
  });
  check({
    basis: 'common practice',
    name: 'oil loses 0.63 to 0.66 kg/m³ for each degree that it warms near room temperature',
    given: [850, 880, 920],
    expected: [0.645, 0.645, 0.645],
    tolerance: { absolute: 0.02 },
    got: (all) =>
      all.map((density) => {
        const [at, temperature] = [celsius(15), celsius(35)];
        const warm = densityAt({ density: kilogramPerCubicMetre(density), at, temperature });
        return (density - valueIn(warm, kilogramPerCubicMetre)) / 20;
      }),
  });
  check({
    source: 'ASTM D1250 (1980), table 54D, worked by hand: 864.22 kg/m³ at 40 °C',
    name: '100 mm²/s at 40 °C and 880 kg/m³ at 15 °C are 86.42 mPa·s at 40 °C',
    given: lineOf(100, 100, 11),
    expected: 86.422,
    tolerance: { absolute: 0.002 },
    got: (line) => {
      const oil = { line, density: kilogramPerCubicMetre(880) };
      return valueIn(dynamicViscosityAt(oil, celsius(40)), millipascalSecond);
    },
  });
});
