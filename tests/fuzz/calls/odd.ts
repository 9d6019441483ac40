import {
  type DiameterReading,
  degree,
  describeOddReading,
  inch,
  mm,
  oddReadings,
  thou,
} from 'crankwright';
import { calls, refused } from './calls.js';

const reading = (station: number, angle: number, diameter: number): DiameterReading => ({
  station: mm(station),
  angle: degree(angle),
  diameter: mm(diameter),
});
const readings = [
  reading(6, 0, 31.99),
  reading(6, 90, 31.98),
  reading(30, 0, 31.59),
  reading(30, 90, 31.98),
];
const [odd] = oddReadings(readings);
/** Four hundredths of a millimetre less: it may be any of the four. */
const [oneOfFour] = oddReadings([
  ...readings.slice(0, 2),
  reading(30, 0, 31.95),
  ...readings.slice(3),
]);

export const oddReadingCalls = {
  oddReadings: calls(oddReadings, {
    sound: [
      [readings],
      [readings, { uncertainty: inch(0.0002), falseAlarm: 0.05 }],
      [
        [...readings, reading(50, 0, 31.97), reading(50, 90, 31.97)],
        { localWear: { min: mm(0), max: mm(0.03) } },
      ],
    ],
    provoked: {
      'a field is misspelt': refused('options.falseAlarms', readings, { falseAlarms: 0.01 }),
      'a value is not finite': refused('readings[0].diameter', [
        { ...readings[0], diameter: Number.NaN },
        ...readings.slice(1),
      ]),
      'out of range': refused('options.falseAlarm', readings, { falseAlarm: 0.5 }),
      'a span is reversed': refused('options.localWear', readings, {
        localWear: { min: thou(2), max: thou(1) },
      }),
      'a reading stands out against the others by more than any part wears': refused(
        'readings[2].diameter',
        [...readings.slice(0, 2), reading(30, 0, 319.9), ...readings.slice(3)],
      ),
    },
  }),
  describeOddReading: calls(describeOddReading, {
    sound: [odd, oneOfFour].flatMap((one) => (one ? [[one, { units: 'metric' }]] : [])),
    provoked: {
      'a field is misspelt': refused('wording.unit', odd, { units: 'inch', unit: 'inch' }),
      'it is not what `oddReadings` gives': refused(
        'odd.reading',
        { ...odd, reading: undefined },
        {
          units: 'inch',
        },
      ),
      'the unit system is unknown': refused('wording.units', odd, { units: 'imperial' }),
    },
  }),
};
