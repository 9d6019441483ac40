import {
  type Contributor,
  celsius,
  celsiusDifference,
  describeSettling,
  expandedUncertainty,
  inch,
  instrumentBudget,
  judge,
  meanExpansion,
  mm,
  readingUncertainty,
  repeatability,
  sizeAt20C,
  whatSettles,
} from 'crankwright';
import { calls, refused } from './calls.js';

const tenth = inch(0.0001);
const zero = { name: 'zero error', kind: 'rectangular', halfWidth: tenth, common: true } as const;
const spread = {
  name: 'repeatability',
  kind: 'readings',
  standardDeviation: tenth,
  readings: 3,
} as const;
const budget: readonly Contributor[] = [
  zero,
  spread,
  { name: 'warmth', kind: 'triangular', halfWidth: 2, sensitivity: 6e-7, degreesOfFreedom: 8 },
  { name: 'standard', kind: 'normal', expanded: tenth, coverageFactor: 2 },
  { name: 'drift', kind: 'standard error', standardError: tenth, degreesOfFreedom: 4 },
  { name: 'draught', kind: 'arcsine', halfWidth: tenth },
];
const refusedBudgets = (at: string) => ({
  'there is no contributor': refused(at, []),
  'a spread is negative': refused(`${at}[0].halfWidth`, [{ ...zero, halfWidth: -1 }]),
  'a contributor is of no known kind': refused(`${at}[0].kind`, [{ ...zero, kind: 'guess' }]),
  'there are no degrees of freedom': refused(`${at}[1].degreesOfFreedom`, [
    zero,
    { ...spread, degreesOfFreedom: 0 },
  ]),
  'nothing adds anything': refused(at, [{ ...zero, halfWidth: 0 }]),
});

const finding = judge({
  feature: 'bore',
  dimension: 'length',
  value: inch(3.0019),
  limits: { max: inch(3.002) },
  basis: { kind: 'specified' },
  uncertainty: expandedUncertainty(budget).expanded,
});
const repeats = { standardDeviation: tenth, degreesOfFreedom: 9 };
const micrometer = { kind: 'micrometer', division: tenth, zeroError: tenth, repeats } as const;
const warmth = {
  size: inch(2.75),
  apart: celsiusDifference(2),
  from20C: celsiusDifference(10),
  part: meanExpansion('cast piston alloy'),
  instrument: meanExpansion('steel'),
};
const warm = { temperature: celsius(30), expansion: meanExpansion('brass') };
const read = { size: mm(70), part: warm, instrument: warm };

export const uncertaintyCalls = {
  repeatability: calls(repeatability, {
    sound: [[[2.1241, 2.1242, 2.124].map(inch)]],
    provoked: {
      'there are fewer than two readings': refused('readings', [mm(5)]),
      'one is not finite': refused('readings[1]', [mm(5), Number.NaN]),
    },
  }),
  expandedUncertainty: calls(expandedUncertainty, {
    sound: [[budget], [budget, { coverage: 0.99 }]],
    provoked: {
      ...refusedBudgets('contributors'),
      'the coverage is not between 0 and 1': refused('options.coverage', budget, { coverage: 1 }),
    },
    cases: 120,
  }),
  readingUncertainty: calls(readingUncertainty, {
    sound: [[{ expanded: tenth }], [budget]],
    provoked: {
      'the stated uncertainty is out of range': refused('instrument.expanded', { expanded: 0 }),
      'the budget is refused by `expandedUncertainty`': refused('instrument', []),
    },
    cases: 120,
  }),
  instrumentBudget: calls(instrumentBudget, {
    sound: [
      [micrometer],
      [{ ...micrometer, warmth }],
      [{ kind: 'bore gauge', division: tenth, repeats, setWith: budget }],
      [
        {
          kind: 'dial indicator',
          division: tenth,
          repeats: [mm(1), mm(1.001)],
          travelError: tenth,
        },
      ],
      [{ kind: 'feeler gauge', division: inch(0.001), repeats, readings: 3, bladeError: tenth }],
    ],
    provoked: {
      'the kind of instrument is unknown': refused('instrument.kind', {
        ...micrometer,
        kind: 'ruler',
      }),
      'a value is not finite': refused('instrument.division', { ...micrometer, division: NaN }),
      'out of range': refused('instrument.zeroError', { ...micrometer, zeroError: -1 }),
      'there are fewer than two repeat readings': refused('instrument.repeats', {
        ...micrometer,
        repeats: [mm(5)],
      }),
      'there are no degrees of freedom': refused('instrument.repeats.degreesOfFreedom', {
        ...micrometer,
        repeats: { ...repeats, degreesOfFreedom: 0 },
      }),
      'the budget that it was set with is none': refused('instrument.setWith', {
        kind: 'bore gauge',
        division: tenth,
        repeats,
        setWith: [],
      }),
    },
    cases: 120,
  }),
  whatSettles: calls(whatSettles, {
    sound: [[finding], [finding, budget]],
    provoked: {
      'the finding is not one': refused('finding.feature', {}),
      'the budget is refused by `expandedUncertainty`': refused('budget', finding, []),
      'the budget is not of the uncertainty of the finding': refused('budget', finding, [zero]),
    },
    cases: 60,
  }),
  describeSettling: calls(describeSettling, {
    sound: [
      [finding, { units: 'inch' }],
      [finding, { units: 'metric' }, budget],
    ],
    provoked: {
      'the unit system is unknown': refused('wording.units', finding, { units: 'imperial' }),
      '`whatSettles` refuses the finding': refused('finding.feature', {}, { units: 'inch' }),
      'the budget': refused('budget', finding, { units: 'inch' }, []),
    },
    cases: 60,
  }),
  sizeAt20C: calls(sizeAt20C, {
    sound: [[read]],
    provoked: {
      'a value is not finite': refused('size', { ...read, size: Infinity }),
      'out of range': refused('part.temperature', { ...read, part: { ...warm, temperature: 30 } }),
      'a span is reversed': refused('part.expansion.coefficient', {
        ...read,
        part: { ...warm, expansion: { ...warm.expansion, coefficient: { min: 2e-5, max: 1e-5 } } },
      }),
      'the range of a mean is reversed': refused('part.expansion', {
        ...read,
        part: { ...warm, expansion: { ...warm.expansion, to: celsius(10) } },
      }),
    },
  }),
};
