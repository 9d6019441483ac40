import { type DiameterReading, degree, mm, oddReadings } from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

// Readings of one place have one column: their mean. Then the deleted residual of the largest is a function of Grubbs'
// G = (largest - mean) / s. Without it, the mean moves by (largest - mean) / (n - 1), and the sum of squares falls by
// n / (n - 1) times (largest - mean) squared, so that with n - 2 degrees of freedom left
//
//     t² = n (n - 2) G² / ((n - 1)² - n G²)
//
// and G is past its critical value exactly where t is past Student's quantile.

/** Readings of one place. */
const atOnePlace = (sizes: readonly number[]): readonly DiameterReading[] =>
  sizes.map((size) => ({ station: mm(10), angle: degree(0), diameter: mm(size) }));

/** The oddest of readings whose instrument explains nothing of their scatter. */
const oddest = (sizes: readonly number[], falseAlarm: number) =>
  oddReadings(atOnePlace(sizes), { falseAlarm, uncertainty: mm(0.00001) }).slice(0, 1);

/**
 * Readings about 50 mm, of which the last has a given G. The others are spread evenly about 50 mm, so that it does not
 * stand apart from them by more than their range.
 */
function withG(n: number, g: number): readonly number[] {
  const t = g * Math.sqrt((n * (n - 2)) / ((n - 1) ** 2 - n * g * g));
  const others = Array.from({ length: n - 1 }, (_, i) => (2 * i) / (n - 2) - 1);
  const squares = others.reduce((sum, one) => sum + one * one, 0);
  const off = t * Math.sqrt(squares / (n - 2)) * Math.sqrt(1 + 1 / (n - 1));
  return [...others, off].map((one) => 50 + 0.01 * one);
}

/** Which of two sets of readings has an odd one: that of a G just below a critical value, and that of one just above. */
const aroundCritical = (n: number, critical: number, falseAlarm: number) =>
  [critical - 0.001, critical + 0.001].map((g) =>
    oddest(withG(n, g), falseAlarm).map(({ index, against }) => `${index}, ${against}`),
  );

describe('critical values of the oddest of many readings', () => {
  check({
    source: 'NIST/SEMATECH e-Handbook 1.3.5.17.1, Grubbs: 8 measurements, the largest tested, 5 %',
    name: 'the critical value of G is 2.032',
    // One tail of 0.05 / 8; the search shares its rate among two tails and two tests of each reading.
    given: 4 * 0.05,
    expected: [[], ['7, scatter']] as readonly (readonly string[])[],
    got: (falseAlarm) => aroundCritical(8, 2.032, falseAlarm),
  });
  const rosner = [3.158, 3.151, 3.143, 3.136, 3.128, 3.12, 3.111, 3.103, 3.094, 3.085];
  rosner.forEach((critical, i) => {
    const n = 54 - i;
    check({
      source: 'NIST/SEMATECH e-Handbook 1.3.5.17.3, generalized ESD test, Rosner: both tails, 5 %',
      name: `the critical value of ${n} readings is ${critical}`,
      // Two tails of 0.05 / 2n, and two tests.
      given: 2 * 0.05,
      expected: [[], [`${n - 1}, scatter`]] as readonly (readonly string[])[],
      got: (falseAlarm) => aroundCritical(n, critical, falseAlarm),
    });
  });
  check({
    source: 'NIST/SEMATECH e-Handbook 1.3.5.17.1, Grubbs: 245.57 among 8 measurements',
    name: 'the largest of them is the odd one',
    // No part differs by a fifth: here they are hundredths of a millimetre about 50 mm.
    given: [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57],
    expected: [7],
    got: (sizes) =>
      oddest(
        sizes.map((size) => 50 + (size - 200) / 100),
        0.05,
      ).map(({ index }) => index),
  });
});
