import {
  endPlay,
  format,
  type GrindPlan,
  grindPlan,
  inch,
  minus,
  mm,
  type Span,
  thou,
  undersizeSteps,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

/** A plan for one journal of that size, round and straight; all round wear, the allowance left. */
const planFor = (size: number, standard: Span<ReturnType<typeof inch>>): GrindPlan =>
  grindPlan({
    journals: [
      {
        name: 'rod 1',
        smallest: inch(size),
        largest: inch(size),
        outOfRound: inch(0),
        taper: inch(0),
      },
    ],
    standard,
    steps: undersizeSteps('inch'),
  });

describe('rod journals', () => {
  const standard = { min: inch(2.748), max: inch(2.749) };
  const table = [
    ['standard', 2.7485, 2748, 2749],
    ['0.010 in under', 2.741, 2738, 2739],
    ['0.020 in under', 2.731, 2728, 2729],
    ['0.030 in under', 2.721, 2718, 2719],
  ] as const;
  for (const [name, given, min, max] of table) {
    check({
      source: 'TM 5-3805-262-34, p. 4-24',
      name: `${name} is ${min} to ${max} thou`,
      given,
      expected: { min: thou(min), max: thou(max) },
      got: (size) => {
        const plan = planFor(size, standard);
        return plan.outcome === 'none' ? standard : plan.target;
      },
    });
  }
  check({
    source: 'TM 5-3805-262-34, p. 4-24',
    name: 'one out of round by more than 0.0005 in is ground, by 0.0005 in is not',
    given: [0.0005, 0.0006],
    expected: ['use as it is', 'grind'],
    got: (flaws) =>
      flaws.map(
        (flaw) =>
          grindPlan({
            journals: [
              {
                name: 'rod 1',
                smallest: inch(2.7481),
                largest: inch(2.7488),
                outOfRound: inch(flaw),
                taper: inch(0),
              },
            ],
            standard,
            steps: undersizeSteps('inch'),
          }).outcome as string,
      ),
  });
});

describe('steps', () => {
  check({
    basis: 'common practice',
    name: 'shells and grinds come in 0.010, 0.020 and 0.030 in under',
    given: 'inch' as const,
    expected: ['0.000 in', '0.010 in', '0.020 in', '0.030 in'],
    got: (system) => undersizeSteps(system).map((step) => format(step, inch, 3)),
  });
  check({
    source: 'TM 5-4320-302-14, p. 6-181',
    name: 'three metric undersizes: the bore of the shells falls from 60.040 by 0.5 mm a step',
    given: 'metric' as const,
    expected: [60.04, 59.54, 59.04, 58.54].map(mm),
    got: (system) => {
      const steps = undersizeSteps(system, mm(1.5)).filter((_, i) => i % 2 === 0);
      return steps.map((step) => minus(mm(60.04), step));
    },
  });
  check({
    basis: 'common practice',
    name: 'rods and mains of one crankshaft may be ground to different steps',
    given: { rods: 2.1166, mains: 2.4885 },
    expected: ['10.0 thou', '20.0 thou'],
    got: ({ rods, mains }) =>
      [
        planFor(rods, { min: inch(2.1245), max: inch(2.125) }),
        planFor(mains, { min: inch(2.4995), max: inch(2.5) }),
      ].map((plan) => (plan.outcome === 'none' ? 'none' : format(plan.undersize, thou))),
  });
});

describe('end play', () => {
  const source = 'TM 5-3895-346-14';
  const verdicts = (plays: readonly number[], min: number, max: number) =>
    plays.map(
      (play) =>
        endPlay([{ pushed: inch(0), pulled: inch(play) }], {
          limits: { min: inch(min), max: inch(max) },
          basis: { kind: 'published', source },
        }).finding.verdict as string,
    );
  check({
    source,
    name: '0.0040 to 0.0110 in new, 0.0180 in the wear limit',
    given: [0.0039, 0.004, 0.011, 0.0111, 0.018, 0.0181],
    expected: [
      ['below', 'within', 'within', 'above', 'above', 'above'],
      ['below', 'within', 'within', 'within', 'within', 'above'],
    ],
    got: (plays) => [verdicts(plays, 0.004, 0.011), verdicts(plays, 0.004, 0.018)],
  });
  check({
    source: 'TM 10-3930-647-14&P (order of its labels inferred)',
    // The high limit is that of TM 5-3895-346-14; the rule is this manual's.
    name: 'the wear limit is 0.005 in over the high limit: 0.016 in over 0.011 in',
    given: [0.016, 0.0161],
    expected: ['within', 'above'],
    got: (plays) => verdicts(plays, 0.004, 0.011 + 0.005),
  });
  check({
    basis: 'common practice',
    name: 'a quarter inch of crankshaft end play is never acceptable',
    given: [{ pushed: inch(0), pulled: inch(0.25) }],
    expected: { verdict: 'above', basis: 'common practice' },
    got: (readings) => {
      const { verdict, basis } = endPlay(readings).finding;
      return { verdict: verdict as string, basis: basis.kind as string };
    },
  });
});
