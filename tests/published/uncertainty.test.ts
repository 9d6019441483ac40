import {
  type Contributor,
  celsius,
  expandedUncertainty,
  type Length,
  meanExpansion,
  mm,
  ppmPerKelvin,
  repeatability,
  type Span,
  sizeAt20C,
  type ThermalExpansion,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

/** What the univariate sets hold after their first number: two numbers in turn, 500 times each. */
const inTurn = (first: number, low: number, high: number) => [
  first,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
];
const found = (readings: readonly number[]) => {
  const { mean, standardDeviation } = repeatability(readings as readonly Length[]);
  return { mean: mean as number, standardDeviation: standardDeviation as number };
};

describe('readings again and again', () => {
  check({
    source: 'NIST StRD, univariate, NumAcc1 (certified)',
    name: 'three readings of eight digits',
    given: [10000001, 10000003, 10000002],
    expected: { mean: 10000002, standardDeviation: 1 },
    tolerance: { relative: 1e-15 },
    got: found,
  });
  check({
    source: 'NIST StRD, univariate, NumAcc2 (certified)',
    name: '1001 readings of two digits',
    given: inTurn(1.2, 1.1, 1.3),
    expected: { mean: 1.2, standardDeviation: 0.1 },
    tolerance: { relative: 1e-14 },
    got: found,
  });
  check({
    source: 'NIST StRD, univariate, NumAcc3 (certified)',
    // Read into doubles, the numbers themselves are off by 1e-9 of what they differ in.
    name: '1001 readings of eight digits',
    given: inTurn(1000000.2, 1000000.1, 1000000.3),
    expected: { mean: 1000000.2, standardDeviation: 0.1 },
    tolerance: { relative: 1e-9 },
    got: found,
  });
  check({
    source: 'NIST StRD, univariate, NumAcc4 (certified)',
    name: '1001 readings of nine digits',
    given: inTurn(10000000.2, 10000000.1, 10000000.3),
    expected: { mean: 10000000.2, standardDeviation: 0.1 },
    tolerance: { relative: 1e-8 },
    got: found,
  });
});

const factor = (degreesOfFreedom: number, coverage: number) =>
  expandedUncertainty(
    [{ name: 'it', kind: 'standard error', standardError: mm(1), degreesOfFreedom }],
    { coverage },
  ).coverageFactor as number;

describe('coverage factors', () => {
  const table = 'NIST Technical Note 1297, table B.1';
  const columns = [0.6827, 0.9, 0.95, 0.9545, 0.99, 0.9973] as const;
  const rows = [
    [1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.8],
    [2, 1.32, 2.92, 4.3, 4.53, 9.92, 19.21],
    [3, 1.2, 2.35, 3.18, 3.31, 5.84, 9.22],
    [5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51],
    [10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96],
    [16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54],
    [50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16],
  ] as const;
  for (const [degrees, ...printed] of rows) {
    check({
      source: table,
      name: `${degrees} degrees of freedom`,
      given: degrees,
      expected: printed.slice(0, 5) as readonly number[],
      tolerance: { absolute: 0.0051 },
      got: (nu) => columns.slice(0, 5).map((coverage) => factor(nu, coverage)),
    });
  }
  check({
    source: table,
    // The percentages are those within 1, 2 and 3 standard deviations, cut to four digits: 235.8 is of 99.73002.
    name: 'the last column, to 1 part in 1000',
    given: rows.map(([degrees]) => degrees),
    expected: rows.map((row): number => row[6]),
    tolerance: { relative: 1.5e-3 },
    got: (all) => all.map((nu) => factor(nu, 0.9973)),
  });
});

describe('budgets', () => {
  // End-gauge calibration, in metres: what each line is found from, as H.1.3 tells.
  const length = 50.000623e-3;
  const endGauge: readonly Contributor[] = [
    {
      name: 'standard',
      kind: 'normal',
      expanded: 75e-9 as Length,
      coverageFactor: 3,
      degreesOfFreedom: 18,
    },
    {
      name: 'readings',
      kind: 'readings',
      standardDeviation: 13e-9 as Length,
      readings: 5,
      degreesOfFreedom: 24,
    },
    {
      name: 'comparator, random',
      kind: 'normal',
      expanded: 10e-9 as Length,
      coverageFactor: 2.57,
      degreesOfFreedom: 5,
    },
    {
      name: 'comparator, systematic',
      kind: 'normal',
      expanded: 20e-9 as Length,
      coverageFactor: 3,
      degreesOfFreedom: 8,
    },
    {
      name: 'difference of expansions',
      kind: 'rectangular',
      halfWidth: 1e-6,
      sensitivity: length * 0.1,
      degreesOfFreedom: 50,
    },
    {
      name: 'difference of temperatures',
      kind: 'rectangular',
      halfWidth: 0.05,
      sensitivity: length * 11.5e-6,
      degreesOfFreedom: 2,
    },
  ];
  const nanometres = (of: Contributor) =>
    Math.round(expandedUncertainty([of]).standard * 1e10) / 10;
  check({
    source: 'JCGM 100:2008, H.1, table H.1 and H.1.6',
    name: 'contributions 25, 5.8, 3.9, 6.7, 2.9 and 16.6 nm; together 32 nm with 16 degrees of freedom',
    given: endGauge,
    expected: { each: [25, 5.8, 3.9, 6.7, 2.9, 16.6], standard: 32, degrees: 16 },
    got: (budget) => {
      const { standard, degreesOfFreedom = 0 } = expandedUncertainty(budget);
      return {
        each: budget.map(nanometres),
        standard: Math.round(standard * 1e9),
        degrees: Math.floor(degreesOfFreedom),
      };
    },
  });
  check({
    source: 'JCGM 100:2008, H.1.6',
    // It multiplies the rounded 32 nm by 2.92; the unrounded 31.66 nm gives 92.5.
    name: 'at 99 % the factor is 2.92 and the end gauge is known to 93 nm',
    given: endGauge,
    expected: [2.92, 93],
    tolerance: { relative: 0.006 },
    got: (budget) => {
      const { coverageFactor, expanded } = expandedUncertainty(budget, { coverage: 0.99 });
      return [coverageFactor as number, expanded * 1e9];
    },
  });
  check({
    basis: 'from memory',
    name: 'JCGM 100:2008, 4.4.5 and 4.4.6: 96 to 104 °C is 2.3 °C if rectangular, 1.6 °C if triangular',
    given: ['rectangular', 'triangular'] as const,
    expected: [2.3, 1.6],
    tolerance: { absolute: 0.05 },
    got: (kinds) =>
      kinds.map(
        (kind) =>
          expandedUncertainty<'temperatureDifference'>([
            { name: 'temperature', kind, halfWidth: 4, sensitivity: 1 },
          ]).standard as number,
      ),
  });
});

describe('sizes at 20 °C', () => {
  check({
    source: 'Swyt, J. Res. NIST 99 (1994) 31: aluminium 23.1, steel 11.5 ppm/K near 20 °C',
    name: 'aluminium read with steel, both at 30 °C: 100 mm shows 11.6 µm too much',
    given: [23.1, 11.5].map((coefficient) => ({
      temperature: celsius(30),
      expansion: {
        coefficient: ppmPerKelvin(coefficient),
        from: celsius(15),
        to: celsius(30),
        source: 'Swyt',
      },
    })),
    expected: mm(99.9884),
    tolerance: { absolute: 1e-8 },
    got: ([part, instrument]) =>
      sizeAt20C({
        size: mm(100),
        part: part as NonNullable<typeof part>,
        instrument: instrument as NonNullable<typeof part>,
      }).size,
  });
  check({
    source: 'data sheets of C36000: 11.4e-6 per °F for 68 to 572 °F',
    name: 'the expansion of free-cutting brass',
    given: 'brass' as const,
    expected: 11.4e-6 * 1.8,
    tolerance: { absolute: 5e-8 },
    got: (material) =>
      (meanExpansion(material).coefficient as Span<ThermalExpansion>).max as number,
  });
});
