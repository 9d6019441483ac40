import {
  format,
  inch,
  mm,
  squareInch,
  squareMm,
  threadAreas,
  threadOf,
  valueIn,
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
