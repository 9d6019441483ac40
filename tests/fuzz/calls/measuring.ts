import { boreShape, type DiameterReading, degree, inch, journalShape, thou } from 'crankwright';
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
const [first, second, third] = journal;
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
