import {
  conformanceProbability,
  describe,
  falseAcceptanceRisk,
  falseRejectionRisk,
  type InspectedLot,
  judge,
  percentByVolume,
  thou,
} from 'crankwright';
import { type Calls, calls, refused } from './calls.js';

const finding = judge({
  feature: 'end play',
  dimension: 'length',
  value: thou(12),
  limits: { min: thou(4), max: thou(10) },
  basis: { kind: 'specified', by: 'the manual' },
  uncertainty: thou(0.1),
});
const sound = { feature: 'gap', dimension: 'length', value: thou(1), basis: { kind: 'specified' } };

/** Limits that are refused wherever they are taken. */
const refusedLimits = (good: object): Calls['provoked'] => ({
  'a limit is not finite': refused('limits.max', { ...good, limits: { max: Infinity } }),
  'there is no limit at all': refused('limits', { ...good, limits: {} }),
  'the limits are reversed': refused('limits', {
    ...good,
    limits: { min: thou(2), max: thou(1) },
  }),
  'the dimension is unknown': refused('dimension', {
    ...good,
    limits: { max: thou(2) },
    dimension: 'size',
  }),
});

const lot: InspectedLot<'length'> = {
  lot: { mean: thou(7), standardDeviation: thou(1) },
  standardUncertainty: thou(0.5),
  limits: { min: thou(4), max: thou(10) },
  rule: 'simple acceptance',
};
const lots = {
  sound: [[lot], [{ ...lot, rule: { guardBand: thou(0.2) } }]] as const,
  provoked: {
    ...refusedLimits(lot),
    'a value is not finite': refused('lot.mean', {
      ...lot,
      lot: { ...lot.lot, mean: Number.NaN },
    }),
    'a spread is not more than zero': refused('lot.standardDeviation', {
      ...lot,
      lot: { ...lot.lot, standardDeviation: 0 },
    }),
    'the rule is unknown': refused('rule', { ...lot, rule: 'luck' }),
  },
  cases: 60,
};

export const judgingCalls = {
  judge: calls(judge, {
    sound: [
      [
        {
          feature: 'end play',
          dimension: 'length',
          value: thou(12),
          limits: { min: thou(4), max: thou(10) },
          basis: { kind: 'published', source: 'TM 5-4320-302-14' },
          uncertainty: thou(3),
        },
      ],
      [
        {
          feature: 'end play',
          dimension: 'length',
          value: thou(12),
          limits: { max: thou(10) },
          basis: { kind: 'specified' },
          rule: { guardBand: thou(1) },
        },
      ],
      [
        {
          feature: 'fuel',
          dimension: 'volumeFraction',
          value: percentByVolume(3),
          limits: { max: percentByVolume(2.5) },
          basis: { kind: 'common practice', rule: 'a rule' },
        },
      ],
    ],
    provoked: {
      'the value is not finite': refused('value', {
        ...sound,
        value: Number.NaN,
        limits: { max: thou(2) },
      }),
      'a limit is not finite': refused('limits.max', { ...sound, limits: { max: Infinity } }),
      'there is no limit at all': refused('limits', { ...sound, limits: {} }),
      'the limits are reversed': refused('limits', {
        ...sound,
        limits: { min: thou(2), max: thou(1) },
      }),
      'the rule is unknown': refused('rule', { ...sound, limits: { max: thou(2) }, rule: 'luck' }),
      'the guard band is negative': refused('rule.guardBand', {
        ...sound,
        limits: { max: thou(2) },
        rule: { guardBand: thou(-1) },
      }),
      'the basis is none': refused('basis.kind', {
        ...sound,
        limits: { max: thou(2) },
        basis: { kind: 'hearsay' },
      }),
      'the dimension is unknown': refused('dimension', {
        ...sound,
        limits: { max: thou(2) },
        dimension: 'size',
      }),
      'there is no feature': refused('feature', {
        ...sound,
        limits: { max: thou(2) },
        feature: ' ',
      }),
      'there is no judgement': refused('judgement'),
    },
  }),
  describe: calls(describe, {
    sound: [
      [finding, { units: 'inch' }],
      [finding, { units: 'metric' }],
    ],
    provoked: {
      'the finding is not one': refused('finding.feature', {}, { units: 'inch' }),
      'there is no finding': refused('finding', undefined, { units: 'inch' }),
      'the unit system is unknown': refused('wording.units', finding, { units: 'imperial' }),
      'there is no wording': refused('wording', finding),
    },
  }),
  conformanceProbability: calls(conformanceProbability, {
    sound: [
      [{ value: thou(9), standardUncertainty: thou(1), limits: { min: thou(4), max: thou(10) } }],
      [
        {
          dimension: 'volumeFraction',
          value: percentByVolume(3),
          standardUncertainty: percentByVolume(0.5),
          limits: { max: percentByVolume(2.5) },
        },
      ],
    ],
    provoked: {
      ...refusedLimits({ value: thou(9), standardUncertainty: thou(1) }),
      'the value is not finite': refused('value', {
        value: Infinity,
        standardUncertainty: thou(1),
        limits: { max: thou(10) },
      }),
      'the standard uncertainty is not more than zero': refused('standardUncertainty', {
        value: thou(9),
        standardUncertainty: 0,
        limits: { max: thou(10) },
      }),
    },
  }),
  falseAcceptanceRisk: calls(falseAcceptanceRisk, lots),
  falseRejectionRisk: calls(falseRejectionRisk, lots),
};
