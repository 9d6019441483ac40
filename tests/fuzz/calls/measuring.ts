import {
  boreShape,
  type DiameterReading,
  degree,
  describe,
  inch,
  journalShape,
  judge,
  percentByVolume,
  thou,
} from 'crankwright';
import { calls, refused } from './calls.js';

const reading = (station: number, angle: number, diameter: number): DiameterReading => ({
  station: inch(station),
  angle: degree(angle),
  diameter: inch(diameter),
});
const journal = [
  reading(0.25, 0, 2.1246),
  reading(0.25, 90, 2.1241),
  reading(1.25, 0, 2.1243),
  reading(1.25, 90, 2.124),
];
const bore = [
  reading(0.1, 0, 3),
  reading(0.5, 0, 3.006),
  reading(0.5, 90, 3.008),
  reading(3, 0, 3.001),
  reading(3, 90, 3.0015),
];
const withoutLast = journal.slice(0, 3);
const [first, second, third, fourth] = journal;
const finding = judge({
  feature: 'end play',
  dimension: 'length',
  value: thou(12),
  limits: { min: thou(4), max: thou(10) },
  basis: { kind: 'specified', by: 'the manual' },
  uncertainty: thou(0.1),
});
const sound = { feature: 'gap', dimension: 'length', value: thou(1), basis: { kind: 'specified' } };

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
};

export const measuringCalls = {
  journalShape: calls(journalShape, {
    sound: [[journal], [journal, { resolution: thou(0.2) }]],
    provoked: {
      'a station has one angle only': refused('readings', withoutLast),
      'an angle has one station only': refused('readings', [
        first,
        second,
        third,
        reading(1.25, 45, 2.124),
      ]),
      'there is no reading': refused('readings', []),
      'the resolution is out of range': refused('options.resolution', journal, {
        resolution: thou(-1),
      }),
    },
  }),
  boreShape: calls(boreShape, {
    sound: [[bore.slice(1)], [bore, { ringTravel: { min: inch(0.3), max: inch(3.5) } }]],
    provoked: {
      'lacks a station': refused('readings', bore, {
        ringTravel: { min: inch(0.3), max: inch(0.6) },
      }),
      'lacks an angle': refused('readings', bore, {
        ringTravel: { min: inch(0), max: inch(3.5) },
      }),
      'has no reading in it': refused('options.ringTravel', bore, {
        ringTravel: { min: inch(5), max: inch(6) },
      }),
      'the ring travel is reversed': refused('options.ringTravel', bore, {
        ringTravel: { min: inch(3.5), max: inch(0.3) },
      }),
      'the options are none': refused('options', bore, null),
    },
  }),
};
