import {
  centistokes,
  grindPlan,
  inch,
  judge,
  type KinematicViscosity,
  kilogramPerCubicMetre,
  type Length,
  mm,
  type Ratio,
  ratio,
  thou,
  undersizeSteps,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { diameter } from '../../src/judging/domains.js';
import { guardBetween, guardList, guardWord } from '../../src/judging/guards.js';
import { guardSpan } from '../../src/judging/limits.js';
import { showLength, showNumber, showQuantity } from '../../src/judging/showing.js';
import { refusal } from '../quantities/refusal.js';

describe('a number as a person would write it', () => {
  it.each([
    [0.1 + 0.2, '0.3'],
    [inch(2.1248) * 1000, '53.96992'],
    [0.1e-6 + 0.3e-6, '0.0000004'],
    [-2.5e-10, '-0.00000000025'],
    [1e20, '100000000000000000000'],
    [1e26, 'a huge number'],
    [-1e26, 'a huge number'],
    [5e-324, '0'],
    [0, '0'],
    [-0, '0'],
  ])('%d is %s', (value, shown) => {
    expect(showNumber(value)).toBe(shown);
  });

  it('has its unit: lengths in millimetres, others as they are kept', () => {
    expect(showLength(inch(2.1248))).toBe('53.96992 mm');
    expect(showLength(2.1248)).toBe('2.1248 m');
    expect(showLength(-1e-6)).toBe('-0.001 mm');
    expect(showQuantity(inch(2.1248), 'length')).toBe('53.96992 mm');
    expect(showQuantity(centistokes(0.4), 'kinematicViscosity')).toBe('0.0000004 m²/s');
    expect(showQuantity(0.025, 'ratio')).toBe('0.025');
  });
});

describe('a quantity outside its bounds', () => {
  const viscosity = (value: number) =>
    refusal(() =>
      guardBetween(
        'oil',
        value as KinematicViscosity,
        centistokes,
        [0.21e-6, 20],
        'centistokes(32)',
      ),
    );

  it('is told in the unit of the trade, with what was given', () => {
    expect(viscosity(centistokes(0.2)).message).toBe(
      'oil: 0.2 cSt is outside 0.21 … 20000000 cSt. Kinematic viscosity is in m²/s here, and 0.0000002 was given; wrap it in its unit, e.g. centistokes(32).',
    );
    expect(viscosity(32).message).toContain('oil: 32000000 cSt is outside');
    expect(viscosity(32).hint).toContain('m²/s here, and 32 was given');
  });

  it('is told once where that unit is the one it is kept in, and without a unit where it has none', () => {
    const density = refusal(() =>
      guardBetween('oil', 0.88 as never, kilogramPerCubicMetre, [600, 1150], 'x(1)'),
    );
    expect(density.message).toBe(
      'oil: 0.88 kg/m³ is outside 600 … 1150 kg/m³. Density is in kg/m³ here; wrap it in its unit, e.g. x(1).',
    );
    const share = refusal(() => guardBetween('share', 2 as Ratio, ratio, [0, 1], 'ratio(0.5)'));
    expect(share.message).toBe(
      'share: 2 is outside 0 … 1. Ratio is a plain number here, e.g. ratio(0.5).',
    );
  });

  it('is just outside where it would read like the bound', () => {
    const hair = refusal(() => diameter('journal', (0.003 - 1e-12) as Length));
    expect(hair.message).toContain('3 mm is just outside 3 mm … 1 m');
    expect(viscosity(20 * (1 + 1e-12)).message).toContain(
      '20000000 cSt is just outside 0.21 … 20000000 cSt',
    );
    expect(viscosity(0.2e-6).message).not.toContain('just');
  });
});

describe('a message', () => {
  it.each([
    [
      'ends the wrong way round, in millimetres',
      () => guardSpan('bore', { min: inch(3), max: inch(2) }, (_, value) => value),
      'bore: min 76.2 mm and max 50.8 mm are the wrong way round. Swap the two.',
    ],
    [
      'limits the wrong way round, in the unit of their dimension',
      () => judgeViscosity({ limits: { min: centistokes(5), max: centistokes(4) } }),
      'limits: min 0.000005 m²/s and max 0.000004 m²/s are the wrong way round. Swap the two.',
    ],
    [
      'an uncertainty with its unit',
      () => judgeViscosity({ uncertainty: centistokes(-0.4) }),
      'uncertainty: -0.0000004 m²/s is not an uncertainty of zero or more. Give the half width of the interval, without its sign.',
    ],
    [
      'a word that is not known',
      () => guardWord('wear', 'even', ['one side', 'all round']),
      'wear: "even" is not a known value. One of: one side, all round.',
    ],
    [
      'a list that is none',
      () => guardList('shims', 'a', 0, 'shims'),
      'shims: "a" is not a list of shims. Put them in square brackets.',
    ],
    [
      'a list that is too short',
      () => guardList('shells', [], 1, 'shell'),
      'shells: an empty list is not a list of at least 1 shell. Is it the right list?',
    ],
    [
      'a hole in a list, with its place',
      () => guardList('shells', Object.assign([], { 0: 1, 2: 3 }), 1, 'shell'),
      'shells[1]: is missing; expected something at each place of the list. A list has no holes: is there a comma too many?',
    ],
    [
      'a misspelt field, with those that are known',
      () => judgeViscosity({ uncertanity: 1 }),
      'judgement.uncertanity: "uncertanity" is not a known field. Fields: feature, dimension, value, limits, basis, limitsOf, service, uncertainty, rule.',
    ],
  ])('tells of %s', (_, call, message) => {
    expect(refusal(call).message).toBe(message);
  });
});

const judgeViscosity = (more: object) =>
  judge({
    feature: 'viscosity',
    dimension: 'kinematicViscosity',
    value: centistokes(4),
    limits: { max: centistokes(5) },
    basis: { kind: 'specified' },
    ...more,
  });

describe('a misspelt field never reads as if it were not there', () => {
  const journal = {
    name: 'rod 1',
    smallest: inch(2.1247),
    largest: inch(2.1249),
    outOfRound: thou(0.1),
    taper: thou(0.1),
  };
  const plan = (one: object) =>
    grindPlan({
      journals: [{ ...journal, ...one }],
      standard: { min: inch(2.1245), max: inch(2.125) },
      steps: undersizeSteps('inch'),
    });

  it('fault for faults, which would use a cracked journal as it is', () => {
    expect(plan({ faults: ['cracked'] }).outcome).not.toBe('use as it is');
    expect(refusal(() => plan({ fault: ['cracked'] })).parameter).toBe('journals[0].fault');
  });

  it('the wrong source of a basis, which would not be named', () => {
    const limits = { max: thou(1) };
    const shape = { limits, basis: { kind: 'published', source: 'the manual', by: 'me' } } as const;
    const call = () =>
      grindPlan({
        journals: [journal],
        standard: { min: mm(53.962), max: mm(53.975) },
        steps: undersizeSteps('metric'),
        shape,
      });
    expect(refusal(call).parameter).toBe('shape.basis.by');
  });
});
