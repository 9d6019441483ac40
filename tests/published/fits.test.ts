import {
  fitOf,
  type InchFitClass,
  inch,
  inchFit,
  interferencePressure,
  type Length,
  limitsOfSize,
  MPa,
  micrometre,
  mm,
  type Pressure,
  pressFit,
  type Ratio,
  ratio,
  thou,
  times,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const rounded = (value: number) => Math.round(value * 1000) / 1000;
const inMicrometres = ({ min, max }: { readonly min: Length; readonly max: Length }) => [
  rounded(valueIn(min, micrometre)),
  rounded(valueIn(max, micrometre)),
];
const inThou = ({ min, max }: { readonly min: Length; readonly max: Length }) => [
  rounded(valueIn(min, thou)),
  rounded(valueIn(max, thou)),
];

describe('standard tolerances of ISO 286-1', () => {
  for (const [size, tolerances] of [
    [24, [9, 13, 21, 33, 52]],
    [40, [11, 16, 25, 39, 62]],
    [65, [13, 19, 30, 46, 74]],
    [100, [15, 22, 35, 54, 87]],
  ] as const) {
    check({
      source: 'ISO 286-1, table 1, IT5 to IT9',
      name: `of ${size} mm`,
      given: size,
      expected: tolerances,
      got: (given) =>
        [5, 6, 7, 8, 9].map((grade) =>
          rounded(valueIn(limitsOfSize(`${given}h${grade}`).tolerance, micrometre)),
        ) as never,
    });
  }
});

describe('limits of size', () => {
  // JIS B 0401-2 has the tables of ISO 286-2 for regularly used fits; read in a maker's technical pages.
  for (const [designation, expected] of [
    ['20b9', [-212, -160]],
    ['20c9', [-162, -110]],
    ['20d8', [-98, -65]],
    ['20e7', [-61, -40]],
    ['20f7', [-41, -20]],
    ['20g5', [-16, -7]],
    ['20k5', [2, 11]],
    ['20m5', [8, 17]],
    ['20n6', [15, 28]],
    ['20p6', [22, 35]],
    ['20r6', [28, 41]],
    ['20s6', [35, 48]],
    ['20u6', [41, 54]],
    ['20x6', [54, 67]],
    ['25t6', [41, 54]],
    ['25u6', [48, 61]],
    ['35t6', [48, 64]],
    ['45u6', [70, 86]],
    ['2n6', [4, 10]],
    ['8x6', [34, 43]],
    ['40js6', [-8, 8]],
  ] as const) {
    check({
      source: 'JIS B 0401 (1999), dimensional tolerances for regularly used shafts',
      name: designation,
      given: designation,
      expected,
      got: (given) => inMicrometres(limitsOfSize(given).deviations) as never,
    });
  }

  // A table of ISO 286-2, tables 8 to 10, typed out with its grades side by side.
  for (const [letter, grade, sizes] of [
    ['N', 3, [-4, -7, -9, -11, -13.5, -15.5]],
    ['N', 4, [-4, -6.5, -8.5, -10, -13, -14]],
    ['N', 5, [-4, -7, -8, -9, -12, -13, -15, -18, -21, -25, -27, -30, -33]],
    ['N', 6, [-4, -5, -7, -9, -11, -12, -14, -16, -20, -22, -25, -26, -27]],
    ['N', 7, [-4, -4, -4, -5, -7, -8, -9, -10, -12, -14, -14, -16, -17]],
    ['N', 8, [-4, -2, -3, -3, -3, -3, -4, -4, -4, -5, -5, -5, -6]],
    ['N', 9, [-4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]],
    ['K', 4, [0, 0.5, 0.5, 1, 0]],
    ['K', 6, [0, 2, 2, 2, 2]],
    ['K', 7, [0, 3, 5, 6, 6]],
    ['K', 8, [0, 5, 6, 8, 10]],
    ['P', 4, [-6, -10.5, -13.5, -16, -20]],
    ['P', 6, [-6, -9, -12, -15, -18]],
    ['P', 7, [-6, -8, -9, -11, -14]],
    ['P', 8, [-6, -12, -15, -18, -22]],
  ] as const) {
    const ends = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
    check({
      source: 'ISO 286-2, tables 8 to 10, upper deviations of holes, in a typed copy',
      name: `${letter}${grade}`,
      given: ends.slice(0, sizes.length),
      expected: sizes,
      got: (given) =>
        given.map((size) =>
          rounded(valueIn(limitsOfSize(`${size}${letter}${grade}`).deviations.max, micrometre)),
        ) as never,
    });
  }

  check({
    basis: 'from memory',
    name: 'M6 over 250 up to 315 mm has -9 in place of -20 + 9, a note to table 3 of ISO 286-1',
    given: '280M6',
    expected: [-41, -9],
    got: (given) => inMicrometres(limitsOfSize(given).deviations) as never,
  });
  check({
    basis: 'from memory',
    name: 'Δ of ISO 286-1, table 3, over 80 up to 120 mm, for IT3 to IT8: 2, 4, 5, 7, 13, 19',
    given: [3, 4, 5, 6, 7, 8],
    expected: [2, 4, 5, 7, 13, 19],
    // A hole M lies above the mirrored shaft m, which is 13 there, by Δ.
    got: (grades) =>
      grades.map((grade) =>
        rounded(valueIn(limitsOfSize(`100M${grade}`).deviations.max, micrometre) + 13),
      ),
  });
});

describe('fits of ISO 286', () => {
  for (const [designation, expected, kind] of [
    ['40H7/g6', [9, 50], 'clearance'],
    ['40H7/p6', [-42, -1], 'interference'],
    ['40H7/s6', [-59, -18], 'interference'],
    ['40H7/k6', [-18, 23], 'transition'],
    ['40P7/h6', [-42, -1], 'interference'],
  ] as const) {
    check({
      basis: 'from memory',
      name: designation,
      given: designation,
      expected: [expected, kind],
      got: (given) => {
        const fit = fitOf(given);
        return [inMicrometres(fit.clearance), fit.kind] as never;
      },
    });
  }

  // Bhandari prints the limits of the hub and the shaft of this fit.
  check({
    source: 'Bhandari, Design of Machine Elements, ex. 3.3: 50 H7-s6',
    name: 'hole +25, 0 and shaft +59, +43 µm',
    given: '50H7/s6',
    expected: [
      [0, 25],
      [43, 59],
    ],
    got: (given) => {
      const { hole, shaft } = fitOf(given);
      return [inMicrometres(hole.deviations), inMicrometres(shaft.deviations)] as never;
    },
  });
});

/** One size in each range of ANSI B4.1. */
const SIZES = [0.1, 0.2, 0.3, 0.5, 1, 1.5, 2.5, 4, 6, 8, 11, 14, 18];

describe('inch fits: least and most clearance, which the tables print beside the limits that they follow from', () => {
  for (const [fitClass, clearances] of [
    [
      'RC1',
      '.1 .45 .15 .5 .2 .6 .25 .75 .3 .95 .4 1.1 .4 1.2 .5 1.5 .6 1.8 .6 2 .8 2.3 1 2.7 1.2 3',
    ],
    [
      'RC2',
      '.1 .55 .15 .65 .2 .85 .25 .95 .3 1.2 .4 1.4 .4 1.6 .5 2 .6 2.3 .6 2.6 .8 2.9 1 3.4 1.2 3.8',
    ],
    [
      'RC3',
      '.3 .95 .4 1.2 .5 1.5 .6 1.7 .8 2.1 1 2.6 1.2 3.1 1.4 3.7 1.6 4.2 2 5 2.5 5.7 3 6.6 4 8.1',
    ],
    ['RC4', '.3 1.3 .4 1.6 .5 2 .6 2.3 .8 2.8 1 3.6 1.2 4.2 1.4 5 1.6 5.7 2 6.6 2.5 7.5 3 8.7'],
    ['RC5', '.6 1.6 .8 2 1 2.5 1.2 2.9 1.6 3.6 2 4.6 2.5 5.5 3 6.6 3.5 7.6 4 8.6'],
    ['RC6', '.6 2.2 .8 2.7 1 3.3 1.2 3.8 1.6 4.8 2 6.1 2.5 7.3 3 8.7'],
    ['RC7', '1 2.6 1.2 3.1 1.6 3.9 2 4.6 2.5 5.7 3 7.1 4 8.8'],
    ['RC8', '2.5 5.1 2.8 5.8 3 6.6 3.5 7.9'],
    ['RC9', '4 8.1 4.5 9 5 10.7 6 12.8 7 15.5 8 18 9 20.5 10 24 12 28 15 34 18 38 22 45 25 51'],
    ['LC6', '.3 1.9 .4 2.3 .5 2.8 .6 3.2 .8 4 1 5.1'],
    ['LC7', '.6 3.2 .8 3.8 1 4.6 1.2 5.6 1.6 7.1 2 8.5'],
    ['LC9', '2.5 6.6 2.8 7.6 3 8.7 3.5 10.3'],
    ['LC10', '4 12 4.5 14.5 5 17 6 20 7 23'],
    ['LC11', '5 17 6 20 7 25 8 28 10 34'],
    [
      'LT2',
      '-.2 .8 -.25 .95 -.3 1.2 -.35 1.35 -.4 1.6 -.5 2.1 -.6 2.4 -.7 2.9 -.8 3.3 -.9 3.7 -1 4 -1 4.5 -1.2 5.2',
    ],
    [
      'LN1',
      '-.45 0 -.5 0 -.65 0 -.8 0 -1 0 -1.1 0 -1.3 -.1 -1.6 -.1 -1.9 -.2 -2.2 -.2 -2.3 -.2 -2.6 -.2 -2.8 -.2',
    ],
    [
      'LN2',
      '-.65 0 -.8 0 -1 0 -1.1 0 -1.3 0 -1.6 0 -2.1 -.2 -2.5 -.2 -2.8 -.2 -3.2 -.2 -3.4 -.2 -3.9 -.3 -4.4 -.3',
    ],
    [
      'LN3',
      '-.75 -.1 -.9 -.1 -1.2 -.2 -1.4 -.3 -1.7 -.4 -2 -.4 -2.3 -.4 -2.9 -.6 -3.5 -.9 -4.2 -1.2 -4.7 -1.5 -5.9 -2.3 -6.6 -2.5',
    ],
  ] as const) {
    const printed = clearances.split(' ').map(Number);
    check({
      source:
        "ANSI/ASME B4.1-1967 in Machinery's Handbook, 31st ed., tables 8 to 12, and a second copy for LC",
      name: fitClass,
      given: SIZES.slice(0, printed.length / 2),
      expected: printed,
      got: (sizes) =>
        sizes.flatMap((size) => inThou(inchFit({ fitClass, basic: inch(size) }).clearance)),
      tolerance: { absolute: 1e-6 },
    });
  }

  // The copy read prints 2.0 for the most clearance there; its own hole of 1.6 and shaft of -2.0 make 3.6, as all its
  // other rows do. The limits are trusted.
  check({
    source: 'ANSI/ASME B4.1-1967, table LC8, up to 0.12 in, with its misprint put right',
    name: 'LC8',
    given: inch(0.1),
    expected: [1, 3.6],
    got: (basic) => inThou(inchFit({ fitClass: 'LC8', basic }).clearance) as never,
  });

  for (const [size, interferences] of [
    [0.1, '.05 .5 .2 .85 - - .3 .95 .3 1.3'],
    [0.2, '.1 .6 .2 1 - - .4 1.2 .5 1.7'],
    [0.3, '.1 .75 .4 1.4 - - .6 1.6 .5 2'],
    [0.5, '.1 .8 .5 1.6 - - .7 1.8 .6 2.3'],
    [0.6, '.2 .9 .5 1.6 - - .7 1.8 .8 2.5'],
    [0.8, '.2 1.1 .6 1.9 - - .8 2.1 1 3'],
    [1, '.3 1.2 .6 1.9 .8 2.1 1 2.3 1.3 3.3'],
    [1.3, '.3 1.3 .8 2.4 1 2.6 1.5 3.1 1.4 4'],
    [1.75, '.4 1.4 .8 2.4 1.2 2.8 1.8 3.4 2.4 5'],
    [2, '.6 1.8 .8 2.7 1.3 3.2 2.3 4.2 3.2 6.2'],
    [3, '.7 1.9 1 2.9 1.8 3.7 2.8 4.7 4.2 7.2'],
    [3.5, '.9 2.4 1.4 3.7 2.1 4.4 3.6 5.9 4.8 8.4'],
    [5, '1.2 2.9 1.9 4.5 3.4 6 5.4 8 7.5 11.6'],
    [6, '1.5 3.2 2.4 5 3.4 6 5.4 8 9.5 13.6'],
    [7, '1.8 3.5 2.9 5.5 4.4 7 6.4 9 9.5 13.6'],
    [7.5, '1.8 3.8 3.2 6.2 5.2 8.2 7.2 10.2 11.2 15.8'],
    [8, '2.3 4.3 3.2 6.2 5.2 8.2 8.2 11.2 13.2 17.8'],
    [9, '2.3 4.3 4.2 7.2 6.2 9.2 10.2 13.2 13.2 17.8'],
  ] as const) {
    const printed = interferences
      .split(' ')
      .map((text) => (text === '-' ? undefined : Number(text)));
    check({
      source: "ANSI/ASME B4.1-1967, table 11, in Machinery's Handbook, 27th and 31st ed.",
      name: `least and most interference of FN1 to FN5 at ${size} in`,
      given: inch(size),
      expected: printed,
      got: (basic) =>
        (['FN1', 'FN2', 'FN3', 'FN4', 'FN5'] as const).flatMap((fitClass, i) =>
          printed[2 * i] === undefined
            ? [undefined, undefined]
            : inThou(inchFit({ fitClass: fitClass as InchFitClass, basic }).interference),
        ),
      tolerance: { absolute: 1e-6 },
    });
  }
});

const compound = (diametral: Length) => ({
  diameter: mm(250),
  diametralInterference: diametral,
  shaft: { bore: mm(200), elasticity: MPa(200_000), poisson: ratio(0.3) },
  hub: { outside: mm(300), elasticity: MPa(200_000), poisson: ratio(0.3) },
});

describe('parts pressed together', () => {
  // The book asks for the shrinkage of a radius: 0.189 mm; diametral it is twice that, 0.379 mm as printed.
  check({
    source:
      'Bhavikatti, Strength of Materials, ex. 8.16: radial shrinkage 0.189 mm, diametral twice',
    name: 'the pressure of 30 N/mm² comes back',
    given: times(mm(0.189), 2),
    expected: MPa(30),
    got: (diametral) => interferencePressure(compound(diametral)),
    // The shrinkage is printed to three digits: 0.1885 to 0.1895.
    tolerance: { relative: 0.0027 },
  });
  check({
    source:
      'Bhavikatti, Strength of Materials, ex. 8.16, to more digits by hand: 2 × 30 × 125 / 2e5 × (5.5455 + 4.5556)',
    name: 'hoop stresses of 30 N/mm²: hub 30 × 38125 / 6875, shaft -30 × 25625 / 5625 and at its bore -30 × 31250 / 5625',
    given: mm(0.378787878787879),
    expected: [166.36363636, -136.66666667, -166.66666667],
    got: (diametral) => {
      const { hubBore, shaftSurface, shaftBore } = pressFit(compound(diametral));
      return [hubBore, shaftSurface, shaftBore].map((at) =>
        valueIn(at?.hoop as Pressure, MPa),
      ) as never;
    },
    tolerance: { relative: 1e-8 },
  });
  // Solid shaft and hub of one material: p = E δ / (2 d) (1 - (d / D)²).
  check({
    source: 'a form that handbooks give for a solid shaft in a hub of its own material',
    name: 'E δ (D² - d²) / (2 d D²)',
    given: { d: 40, D: 90, delta: 0.03, E: 205_000 },
    expected: MPa((205_000 * 0.03 * (90 ** 2 - 40 ** 2)) / (2 * 40 * 90 ** 2)),
    got: ({ d, D, delta, E }) => {
      const steel = { elasticity: MPa(E), poisson: 0.29 as Ratio };
      return interferencePressure({
        diameter: mm(d),
        diametralInterference: mm(delta),
        shaft: steel,
        hub: { ...steel, outside: mm(D) },
      });
    },
    tolerance: { relative: 1e-12 },
  });
});
