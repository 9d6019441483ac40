import {
  type Basis,
  conformanceProbability,
  falseAcceptanceRisk,
  falseRejectionRisk,
  inch,
  judge,
  kPa,
  type Length,
  type Limits,
  type MeasuredAgainstLimits,
  mm,
  type Pressure,
  psiGauge,
  times,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const verdictOf = (value: Length, limits: Limits<Length>, source: string, uncertainty?: Length) => {
  const basis: Basis = { kind: 'published', source };
  const extra = uncertainty === undefined ? {} : { uncertainty };
  const feature = 'size';
  return judge({ feature, dimension: 'length', value, limits, basis, ...extra }).verdict as string;
};

describe('limits of manuals', () => {
  const endPlay = 'TM 5-3895-346-14';
  check({
    source: endPlay,
    name: 'crankshaft end play 0.0040 to 0.0110 in new, 0.0180 in worn: both limits belong',
    given: [0.0039, 0.004, 0.011, 0.0111, 0.018, 0.0181].map(inch),
    expected: [
      ['below', 'within', 'within', 'above', 'above', 'above'],
      ['within', 'within', 'within', 'within', 'within', 'above'],
    ],
    got: (plays) => [
      plays.map((play) => verdictOf(play, { min: inch(0.004), max: inch(0.011) }, endPlay)),
      plays.map((play) => verdictOf(play, { max: inch(0.018) }, endPlay)),
    ],
  });
  check({
    source: endPlay,
    name: 'rod clearance 0.0015 to 0.0045 in new, 0.0060 in worn',
    given: [0.0014, 0.0015, 0.0045, 0.006, 0.0061].map(inch),
    expected: [
      ['below', 'within', 'within', 'above', 'above'],
      ['within', 'within', 'within', 'within', 'above'],
    ],
    got: (all) => [
      all.map((one) => verdictOf(one, { min: inch(0.0015), max: inch(0.0045) }, endPlay)),
      all.map((one) => verdictOf(one, { max: inch(0.006) }, endPlay)),
    ],
  });
  const rebuild = 'TM 9-6115-604-34, p. 9-62';
  check({
    source: rebuild,
    name: 'rebuild when out-of-round exceeds 0.002 in or taper 0.0005 in',
    given: [0.002, 0.0021, 0.0005, 0.0006].map(inch),
    expected: ['within', 'above', 'within', 'above'],
    got: (all) =>
      all.map((one, i) => verdictOf(one, { max: inch(i < 2 ? 0.002 : 0.0005) }, rebuild)),
  });
  const perInch = 'TM 10-3930-647-14&P (order of its labels inferred)';
  check({
    source: perInch,
    name: 'journal out-of-round at most 0.0004 in for each inch: 0.001 in on a 2.5 in journal',
    given: [0.001, 0.0011].map(inch),
    expected: ['within', 'above'],
    got: (all) => all.map((one) => verdictOf(one, { max: times(inch(2.5), 0.0004) }, perInch)),
  });
  check({
    source: perInch,
    name: 'bore wear at most 0.001 in for each inch: 0.003 in on a 3 in bore',
    given: [0.003, 0.0031].map(inch),
    expected: ['within', 'above'],
    got: (all) => all.map((one) => verdictOf(one, { max: times(inch(3), 0.001) }, perInch)),
  });
  check({
    source: perInch,
    name: 'piston wear at most 0.0005 in for each inch: 0.0015 in on a 3 in piston',
    given: [0.0015, 0.0016].map(inch),
    expected: ['within', 'above'],
    got: (all) => all.map((one) => verdictOf(one, { max: times(inch(3), 0.0005) }, perInch)),
  });
});

describe('compression rules, which conflict', () => {
  const gauges = [150, 148, 130].map(psiGauge);
  const lowest = psiGauge(130);
  const verdict = (min: number, source: string) =>
    judge({
      feature: 'lowest compression',
      dimension: 'gaugePressure',
      value: lowest,
      limits: { min: psiGauge(min) },
      basis: { kind: 'published', source },
    }).verdict as string;
  const rules = [
    ['TM 5-3895-359-14&P', 'spread at most 25 psi', 150 - 25, 'within'],
    ['TM 5-4210-230-14&P-1', 'lowest at least 75 % of highest', 0.75 * 150, 'within'],
    ['TM 1-1500-204-23-1', 'within 20 % of the average', 0.8 * (428 / 3), 'within'],
    ['TM 10-3930-618-20', 'within 10 psi', 150 - 10, 'below'],
  ] as const;
  for (const [source, rule, min, expected] of rules) {
    const name = `150, 148 and 130 psi, ${rule}`;
    check({
      source,
      name,
      given: gauges,
      expected: expected as string,
      got: () => verdict(min, source),
    });
  }
});

describe('measurement uncertainty', () => {
  check({
    source: 'ISO 14253-1, decision rule',
    name: 'conforming by more than U, not conforming by more than U, else undecided',
    given: [29.99, 29.995, 30, 30.005, 30.01].map(mm),
    expected: ['within', 'undecided', 'undecided', 'undecided', 'above'],
    got: (sizes) => sizes.map((size) => verdictOf(size, { max: mm(30) }, 'drawing', mm(0.008))),
  });
  check({
    basis: 'from memory',
    name: 'JCGM 106:2012, 7.3.3: 509.7 kPa, standard uncertainty 8.6, lower limit 490: conforms with U = 2u',
    given: kPa(509.7),
    expected: ['within', 'undecided'],
    got: (value) =>
      [2 * 8.6, 3 * 8.6].map((uncertainty) => strength(value, kPa(uncertainty)) as string),
  });
});

function strength(value: Pressure, uncertainty: Pressure) {
  return judge({
    feature: 'breaking strength',
    dimension: 'pressure',
    value,
    limits: { min: kPa(490) },
    basis: { kind: 'specified' },
    uncertainty,
  }).verdict;
}

describe('decision rules and their risks', () => {
  const u = { standardUncertainty: mm(0.25) };
  const lot = { lot: { mean: mm(0), standardDeviation: mm(1) } };
  const limits = { min: mm(-2), max: mm(2) };
  const rule = 'simple acceptance' as const;
  check({
    basis: 'from memory',
    name: 'JCGM 106:2012, 7.3.3: -5.47 V, standard uncertainty 0.05, upper limit -5.40: 0.92; 509.7 kPa, 8.6, lower limit 490: 0.99',
    given: [
      { value: -5.47, standardUncertainty: 0.05, limits: { max: -5.4 } },
      { value: 509.7, standardUncertainty: 8.6, limits: { min: 490 } },
    ] as unknown as readonly MeasuredAgainstLimits<'length'>[],
    expected: [0.92, 0.99],
    tolerance: { absolute: 0.005 },
    got: (all) => all.map((one) => conformanceProbability(one) as number),
  });
  check({
    source: 'ILAC-G8:09/2019, guard bands of 0, U and, by ISO 14253-1:2017, 0.83 U',
    name: 'at the edge of the band one verdict in 2, less than 2.5 and less than 5 of a hundred are wrong',
    given: [0, 1, 0.83],
    expected: [true, true, true],
    got: (shares) =>
      shares.map((share, i) => {
        const risk =
          1 -
          conformanceProbability({
            value: mm(-2 * share),
            standardUncertainty: mm(1),
            limits: { max: mm(0) },
          });
        return risk <= ([0.5, 0.025, 0.05][i] as number) + 1e-15;
      }),
  });
  check({
    source: 'Deaver, p. 7 and 10, as the tests of a public risk calculator quote it',
    name: 'limits at 2 sigma of the lot, readings four and two times as good: false acceptance 0.8 %, false rejection 1.5 %; with a guard band of 0.91 of the limits 0.8 and 6.6 %',
    given: [
      { ...lot, ...u, limits, rule },
      { ...lot, standardUncertainty: mm(0.5), limits, rule: { guardBand: mm(0.18) } },
    ],
    expected: [
      [0.008, 0.015],
      [0.008, 0.066],
    ],
    tolerance: { absolute: 0.0005 },
    got: (all) =>
      all.map((one) => [falseAcceptanceRisk(one) as number, falseRejectionRisk(one) as number]),
  });
});
