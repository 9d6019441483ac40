import {
  boltPreload,
  boltStrength,
  boltStretch,
  degree,
  format,
  inch,
  jointUnderLoad,
  kilonewton,
  lbf,
  lbfFoot,
  lbfInch,
  lbfPerInch,
  MPa,
  memberStiffness,
  mm,
  newtonPerMm,
  nutFactor,
  preloadFromTorque,
  proofLoad,
  psi,
  ratio,
  screwTorque,
  squareInch,
  squareMm,
  threadAreas,
  threadOf,
  tighteningTorque,
  unknownBolt,
  valueIn,
  wrenchSetting,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const areasIn = (names: readonly string[], decimals: number) =>
  names.map((name) => format(threadAreas(threadOf(name)).stressArea, squareInch, decimals));

describe('threads', () => {
  check({
    source: 'ASME B1.1, tensile stress areas in square inches',
    name: 'coarse and fine unified threads, to the printed digits',
    given: ['1/4-20 UNC', '5/16-18 UNC', '3/8-16 UNC', '3/8-24 UNF', '7/16-14 UNC', '1/2-13 UNC'],
    expected: ['0.0318', '0.0524', '0.0775', '0.0878', '0.1063', '0.1419'].map(
      (area) => `${area} in²`,
    ),
    got: (names) => areasIn(names, 4),
  });
  check({
    source: 'ASME B1.1, tensile stress area in square inches',
    // Its own formula gives π / 4 * (0.5 - 0.974279 / 20)² = 0.159953, which the table cuts off. We trust the formula.
    name: '1/2-20 UNF is printed as 0.1599, cut off instead of rounded',
    given: '1/2-20 UNF',
    expected: 0.1599,
    got: (name) =>
      Math.floor(valueIn(threadAreas(threadOf(name)).stressArea, squareInch) * 1e4) / 1e4,
  });
  check({
    source: 'ASME B1.1, tensile stress areas in square inches',
    name: 'larger ones are printed to three decimals',
    given: ['5/8-11 UNC', '9/16-18 UNF', '5/8-18 UNF', '3/4-16 UNF', '7/8-14 UNF', '1-12 UNF'],
    expected: ['0.226', '0.203', '0.256', '0.373', '0.509', '0.663'].map((area) => `${area} in²`),
    got: (names) => areasIn(names, 3),
  });
  check({
    source: 'ASME B1.1, as a table of the UNF series prints it: area at the root of the bolt',
    name: 'minor area of fine unified threads',
    given: ['1/4-28 UNF', '3/8-24 UNF', '1/2-20 UNF', '3/4-16 UNF'],
    expected: [0.0326, 0.0809, 0.1486, 0.351],
    tolerance: { absolute: 0.000_51 },
    got: (names) => names.map((name) => valueIn(threadAreas(threadOf(name)).minorArea, squareInch)),
  });
  check({
    source: 'ISO 898-1, nominal stress areas of coarse threads in mm²',
    name: 'M3 to M36, as printed to three figures',
    given: ['M3', 'M4', 'M5', 'M6', 'M7', 'M8', 'M10', 'M12', 'M14', 'M16', 'M18', 'M20', 'M24'],
    expected: [5.03, 8.78, 14.2, 20.1, 28.9, 36.6, 58.0, 84.3, 115, 157, 192, 245, 353],
    got: (names) =>
      names.map((name) =>
        Number(valueIn(threadAreas(threadOf(name)).stressArea, squareMm).toPrecision(3)),
      ),
  });
  check({
    source: 'ISO 898-1, nominal stress areas of fine threads in mm²',
    name: 'M8x1 and M10x1.25',
    given: ['M8x1', 'M10x1.25'],
    expected: [39.2, 61.2],
    got: (names) =>
      names.map((name) =>
        Number(valueIn(threadAreas(threadOf(name)).stressArea, squareMm).toPrecision(3)),
      ),
  });
  for (const [name, diameter, pitch, minor] of [
    ['1/4 BSW', 0.25, 0.218, 0.186],
    ['5/16 BSW', 0.3125, 0.2769, 0.2414],
    ['3/8 BSW', 0.375, 0.335, 0.295],
    ['7/16 BSW', 0.4375, 0.3918, 0.346],
    ['1/2 BSW', 0.5, 0.4466, 0.3933],
    ['5/8 BSW', 0.625, 0.5668, 0.5086],
    ['3/4 BSW', 0.75, 0.686, 0.6219],
    ['1 BSW', 1, 0.92, 0.8399],
  ] as const) {
    check({
      source: 'BS 84, as a table of Whitworth threads prints it',
      name: `${name}: effective and core diameter`,
      given: threadOf(name),
      expected: { diameter: inch(diameter), pitch: inch(pitch), minor: inch(minor) },
      // Printed to a tenth of a thou, and cut off rather than rounded in places.
      tolerance: { absolute: inch(0.000_11) },
      got: (thread) => {
        const { pitchDiameter, minorDiameter } = threadAreas(thread);
        return { diameter: thread.diameter, pitch: pitchDiameter, minor: minorDiameter };
      },
    });
  }
  check({
    source:
      'BS 811, as a table of cycle threads prints it: core diameters of 26 threads in an inch',
    name: '1/4, 3/8 and 1/2 in',
    given: ['1/4 BSC', '3/8-26 BSC', '1/2 CEI'],
    expected: [0.209, 0.334, 0.459].map(inch),
    tolerance: { absolute: inch(0.0005) },
    got: (names) => names.map((name) => threadAreas(threadOf(name)).minorDiameter),
  });
  check({
    source: 'a table of BA screws: diameter in inches and threads in an inch',
    name: '0, 2, 4, 6 and 10 BA',
    given: [0, 2, 4, 6, 10],
    expected: [
      [0.2362, 25.38],
      [0.185, 31.35],
      [0.1417, 38.46],
      [0.1102, 47.85],
      [0.0669, 72.46],
    ],
    // The printed threads in an inch are rounded twice.
    tolerance: { relative: 0.002 },
    got: (numbers) =>
      numbers.map((number) => {
        const { diameter, pitch } = threadOf(`${number} BA`);
        return [valueIn(diameter, inch), 1 / valueIn(pitch, inch)];
      }),
  });
  check({
    source:
      'BS 93: the pitch of number k is 0.9 to the power k in mm, the diameter 6 times its 1.2th power',
    name: 'every BA size, rounded to two figures',
    given: Array.from({ length: 13 }, (_, k) => k),
    expected: Array.from({ length: 13 }, (_, k) => {
      const pitch = Number((0.9 ** k).toPrecision(2));
      return { pitch: mm(pitch), diameter: mm(Number((6 * 0.9 ** (1.2 * k)).toPrecision(2))) };
    }),
    got: (numbers) =>
      numbers.map((number) => {
        const { diameter, pitch } = threadOf(`${number} BA`);
        return { pitch, diameter };
      }),
  });
});

const SHIGLEY = "Shigley's Mechanical Engineering Design, 9th ed.";

describe('strength of bolts', () => {
  for (const [grade, size, proof, yields, tensile] of [
    ['SAE 1', 0.5, 33, 36, 60],
    ['SAE 2', 0.75, 55, 57, 74],
    ['SAE 2', 0.875, 33, 36, 60],
    ['SAE 5', 1, 85, 92, 120],
    ['SAE 5', 1.125, 74, 81, 105],
    ['SAE 8', 1.5, 120, 130, 150],
  ] as const) {
    check({
      source: 'SAE J429, as tables of it print it, in ksi',
      name: `${grade}, ${size} in`,
      given: { grade, diameter: inch(size) },
      expected: [proof, yields, tensile].map((ksi) => psi(ksi * 1000)),
      got: (bolt) => {
        const { proofStress, yieldStrength, tensileStrength } = boltStrength(bolt);
        return [proofStress, yieldStrength, tensileStrength];
      },
    });
  }
  for (const [grade, size, proof, yields, tensile] of [
    ['ISO 4.8', 10, 310, 340, 420],
    ['ISO 5.8', 10, 380, 420, 520],
    ['ISO 8.8', 16, 580, 640, 800],
    ['ISO 8.8', 18, 600, 660, 830],
    ['ISO 10.9', 12, 830, 940, 1040],
    ['ISO 12.9', 12, 970, 1100, 1220],
  ] as const) {
    check({
      source: 'ISO 898-1:1999, Table 3, in MPa',
      name: `${grade}, M${size}`,
      given: { grade, diameter: mm(size) },
      expected: [proof, yields, tensile].map((stress) => MPa(stress)),
      got: (bolt) => {
        const { proofStress, yieldStrength, tensileStrength } = boltStrength(bolt);
        return [proofStress, yieldStrength, tensileStrength];
      },
    });
  }
  check({
    source: 'ISO 898-1:1999, Table 3: least hardness of a class beside its least tensile strength',
    // 3.6: 90 HB, 330 MPa; 5.6: 147, 500; 8.8: 238, 800; 10.9: 304, 1040; 12.9: 366, 1220.
    name: 'the strength of every class lies in the span that its hardness gives',
    given: [
      [90, 330, 180],
      [114, 400, 225],
      [147, 500, 280],
      [238, 800, 580],
      [304, 1040, 830],
      [366, 1220, 970],
    ],
    expected: [true, true, true, true, true, true],
    got: (classes) =>
      classes.map(([hardness = 0, tensile = 0, proof = 0]) => {
        const bolt = unknownBolt({ hardness: { scale: 'HB', number: ratio(hardness) } });
        if (bolt.outcome !== 'from hardness') return false;
        const within = (span: { min: number; max: number }, value: number) =>
          span.min <= MPa(value) && MPa(value) <= span.max;
        return within(bolt.tensile, tensile) && within(bolt.proof, proof);
      }),
  });
  check({
    source: 'a table of hardness and tensile strength of steel, in ksi',
    name: '111 ksi at 229 HB, 146 at 302, 202 at 401',
    given: [
      [229, 111],
      [302, 146],
      [401, 202],
    ],
    expected: [true, true, true],
    got: (rows) =>
      rows.map(([hardness = 0, ksi = 0]) => {
        const bolt = unknownBolt({ hardness: { scale: 'HB', number: ratio(hardness) } });
        if (bolt.outcome !== 'from hardness') return false;
        return bolt.tensile.min <= psi(ksi * 1000) && psi(ksi * 1000) <= bolt.tensile.max;
      }),
  });
});

describe('preload and torque', () => {
  check({
    source: `${SHIGLEY}, Example 8-3 (b)`,
    name: '25 kip on a 3/4 in bolt at K 0.20: 3750 lbf·in',
    given: { preload: lbf(25_000), diameter: inch(0.75), nutFactor: ratio(0.2) },
    expected: ['3750 lbf·in', '3750 lbf·in'],
    got: (bolt) => {
      const { min, max } = tighteningTorque(bolt);
      return [min, max].map((torque) => format(torque, lbfInch, 0));
    },
  });
  check({
    source: `${SHIGLEY}, Example 8-3 (c)`,
    name: 'the full equation with 0.15 in the thread and under the nut: 3551 lbf·in',
    given: {
      thread: threadOf('3/4-16 UNF'),
      preload: lbf(25_000),
      threadFriction: ratio(0.15),
      faceFriction: ratio(0.15),
    },
    expected: '3551 lbf·in',
    got: (bolt) => format(screwTorque(bolt).torque.max, lbfInch, 0),
  });
  check({
    source: `${SHIGLEY}, Table 8-15`,
    name: 'nut factors as printed',
    given: ['dry', 'zinc plated', 'oiled', 'cadmium plated', 'anti-seize'] as const,
    // Its 0.30 is for plain black steel; 0.20 is what the text gives where the state is not known.
    expected: [0.3, 0.2, 0.18, 0.16, 0.12],
    got: (conditions) =>
      conditions.map((condition) => {
        const { usual, span } = nutFactor(condition);
        return condition === 'dry' ? span.max : usual;
      }),
  });
  check({
    source: `${SHIGLEY}, solution to Problem 8-22: 0.75 of 84.3 mm² at 600 MPa, 37.9 kN`,
    name: 'preload of an M12 bolt that is taken apart again',
    given: { stressArea: squareMm(84.3), proofStress: MPa(600) },
    expected: '37.9 kN',
    got: (bolt) => format(boltPreload(bolt), kilonewton, 1),
  });
  check({
    source: 'ISO 898-1, proof loads: M8 of class 8.8, 36.6 mm² at 580 MPa, 21 200 N',
    name: 'proof load, printed to three figures',
    given: { stressArea: squareMm(36.6), proofStress: MPa(580) },
    expected: 21_200,
    got: (bolt) => Number(proofLoad(bolt).toPrecision(3)),
  });
  check({
    source:
      'a guide to nut factors: a 3/8-16 bolt at 4940 lbf takes 30 lbf·ft at 0.20, 23 lbf·ft at 0.15',
    name: 'torque of a common bolt, cut to the pound-foot',
    given: [0.2, 0.15],
    expected: [30, 23],
    got: (factors) =>
      factors.map((factor) => {
        const bolt = { preload: lbf(4940), diameter: inch(0.375), nutFactor: ratio(factor) };
        return Math.floor(valueIn(tighteningTorque(bolt).max, lbfFoot));
      }),
  });
  check({
    source: 'Mechanical Fastening, Joining, and Assembly, p. 85: 0.190 in, 1275 lbf, K 0.3 to 0.1',
    name: '72.7, 60.6, 48.5, 36.3 and 24.2 lbf·in',
    given: [0.3, 0.25, 0.2, 0.15, 0.1],
    expected: [72.7, 60.6, 48.5, 36.3, 24.2],
    tolerance: { absolute: 0.051 },
    got: (factors) =>
      factors.map((factor) =>
        valueIn(
          tighteningTorque({
            preload: lbf(1275),
            diameter: inch(0.19),
            nutFactor: ratio(factor),
          }).max,
          lbfInch,
        ),
      ),
  });
  check({
    basis: 'from memory',
    name: 'preload is torque turned round',
    // 30 lbf·ft = 360 lbf·in; / (0.2 * 0.375) = 4800 lbf.
    given: { torque: lbfFoot(30), diameter: inch(0.375), nutFactor: ratio(0.2) },
    expected: { min: lbf(4800), max: lbf(4800) },
    got: preloadFromTorque,
  });
});

describe('joints', () => {
  const steel = psi(30e6);
  const iron = psi(14.5e6);
  check({
    source: `${SHIGLEY}, solution to Problem 8-24`,
    name: 'a 1/2-13 bolt, 0.72 in of thread and 0.5 in of shank: 3.936 Mlbf/in',
    given: {
      preload: lbf(1000),
      elasticity: steel,
      sections: [
        { length: inch(0.72), diameter: threadAreas(threadOf('1/2-13 UNC')).stressDiameter },
        { length: inch(0.5), diameter: inch(0.5) },
      ],
    },
    expected: 3.936,
    tolerance: { absolute: 0.0011 },
    got: (bolt) => valueIn(boltStretch(bolt).stiffness, lbfPerInch) / 1e6,
  });
  check({
    source: `${SHIGLEY}, solution to Problem 8-24`,
    name: 'four frusta of steel and cast iron under it: 10.79 Mlbf/in',
    given: {
      hole: inch(0.5),
      face: inch(0.75),
      layers: [
        { thickness: inch(0.5), elasticity: steel },
        { thickness: inch(0.625), elasticity: iron },
        { thickness: inch(0.095), elasticity: steel },
      ],
    },
    expected: 10.79,
    // The book's 0.5774 and 1.155 stand for 1/√3 and 2/√3.
    tolerance: { absolute: 0.011 },
    got: (parts) => valueIn(memberStiffness(parts), lbfPerInch) / 1e6,
  });
  check({
    source: `${SHIGLEY}, solution to Problem 8-22`,
    name: 'three frusta under an M12 bolt, 20 mm of steel on 25 mm of cast iron: 1379 MN/m',
    given: {
      hole: mm(12),
      face: mm(18),
      layers: [
        { thickness: mm(20), elasticity: MPa(207_000) },
        { thickness: mm(25), elasticity: MPa(100_000) },
      ],
    },
    expected: 1379,
    tolerance: { absolute: 1 },
    got: (parts) => valueIn(memberStiffness(parts), newtonPerMm) / 1000,
  });
  check({
    source: `${SHIGLEY}, solution to a problem on an M10 bolt: 20 mm of steel on 25 mm of iron of 96 GPa`,
    name: '1057 MN/m',
    given: {
      hole: mm(10),
      face: mm(15),
      layers: [
        { thickness: mm(20), elasticity: MPa(207_000) },
        { thickness: mm(25), elasticity: MPa(96_000) },
      ],
    },
    expected: 1057,
    tolerance: { absolute: 1 },
    got: (parts) => valueIn(memberStiffness(parts), newtonPerMm) / 1000,
  });
  check({
    source: `${SHIGLEY}, Example 8-3 (a)`,
    name: '6 kip on 25 kip of preload: the bolt takes 0.320 of it, 72.17 ksi on 0.373 in²',
    given: {
      preload: lbf(25_000),
      pull: lbf(6000),
      boltStiffness: lbfPerInch(6.5e6),
      memberStiffness: lbfPerInch(13.8e6),
    },
    expected: { share: 0.32, stress: 72.17 },
    tolerance: { relative: 0.0007 },
    got: (joint) => {
      const { share, boltLoad } = jointUnderLoad(joint);
      return { share, stress: valueIn(boltLoad.max, lbf) / 0.373 / 1000 };
    },
  });
  check({
    source: `${SHIGLEY}, solution to Problem 8-24`,
    name: 'the bolt takes 0.267 of the pull',
    given: { boltStiffness: lbfPerInch(3.94e6), memberStiffness: lbfPerInch(10.79e6) },
    expected: 0.267,
    tolerance: { absolute: 0.0005 },
    got: (stiffness) => jointUnderLoad({ preload: lbf(9000), pull: lbf(1000), ...stiffness }).share,
  });
});

describe('the torque wrench', () => {
  for (const [source, torque, wrench, adapter, angle, expected] of [
    ['TM 5-3810-305-23: 300 lbf·ft, 18 in wrench, 6 in extension', lbfFoot(300), 18, 6, 0, '225.0'],
    ['TM 1-1500-204-23-9: 300 lbf·in, 10 in, 4 in', lbfFoot(300), 10, 4, 0, '214.3'],
    [
      'TM 9-254, fig. 45: 70 lbf·in at a 2 in extension of a 12 in wrench',
      lbfFoot(70),
      12,
      2,
      0,
      '60.0',
    ],
    [
      'TM 9-254, fig. 46: the arm at an angle is wrench + adapter * cos',
      lbfFoot(70),
      12,
      4,
      60,
      '60.0',
    ],
    ['common practice: at a right angle nothing changes', lbfFoot(70), 12, 4, 90, '70.0'],
    [
      'TM 55-2815-574-24: an adapter that shortens the arm is taken off it; 135 * 10 / 8.5 by hand',
      lbfFoot(135),
      10,
      1.5,
      180,
      '158.8',
    ],
  ] as const) {
    check({
      source,
      name: `set ${expected}`,
      given: {
        torque,
        adapter: { wrench: inch(wrench), adapter: inch(adapter), angle: degree(angle) },
      },
      expected: `${expected} lbf·ft`,
      got: (wanted) => format(wrenchSetting(wanted), lbfFoot),
    });
  }
  check({
    source: 'AC 43.13-1B, paragraph 7-40: add the friction drag torque to the desired torque',
    name: '480 lbf·in and 10 lbf·in of drag: 490',
    given: { torque: lbfInch(480), prevailing: lbfInch(10) },
    expected: '490 lbf·in',
    got: (wanted) => format(wrenchSetting(wanted), lbfInch, 0),
  });
});
