import {
  bend,
  type DialReading,
  degree,
  harmonics,
  inch,
  mm,
  type PlanePoint,
  pointsFromDial,
  ratio,
  roundness,
  runout,
  shareOfOvalSeen,
  thou,
  twoPointOutOfRound,
  vBlockFactor,
} from 'crankwright';
import { calls, refused } from './calls.js';

const dial = (angle: number, reading: number): DialReading => ({
  angle: degree(angle),
  reading: thou(reading),
});
const turn = (high: number) => [dial(0, high), dial(90, 0), dial(180, -high), dial(270, 0)];
const oneSided = [dial(0, 1), dial(60, 2), dial(120, 1)];
const point = (x: number, y: number): PlanePoint => ({ x: mm(x), y: mm(y) });
const square = [point(25, 0), point(0, 25.01), point(-25, 0), point(0, -25)];
// Its points rise by less than they scatter.
const flat = [point(0, 0), point(10, 0.001), point(20, 0), point(30, 0.001), point(40, 0)];
const shaft = {
  supports: { min: inch(0), max: inch(20) },
  stations: [
    { station: inch(5), readings: turn(2) },
    { station: inch(10), readings: turn(4) },
    { station: inch(15), readings: turn(2) },
  ],
};
const [first] = shaft.stations;
const withReadings = (readings: readonly DialReading[]) => ({
  ...shaft,
  stations: [{ ...first, readings }],
});

export const roundnessCalls = {
  roundness: calls(roundness, {
    sound: [[square], [square, { pointUncertainty: mm(0.001) }]],
    provoked: {
      'a field is misspelt': refused('points[0].misspelt', [
        { ...square[0], misspelt: 1 },
        ...square.slice(1),
      ]),
      'a value is not finite': refused('points[3].y', [
        ...square.slice(0, 3),
        { x: mm(0), y: Number.NaN },
      ]),
      'out of range': refused('options.pointUncertainty', square, { pointUncertainty: mm(1) }),
      'there are fewer than four points': refused('points', square.slice(1)),
      'a point is given twice': refused('points[4]', [...square, square[1]]),
      'the points span more than a part can': refused('points', [...square, point(2125, 0)]),
      'lie on one line': refused(
        'points',
        [0, 1, 2, 3].map((i) => point(i, 2 * i)),
      ),
      'lie as well on a line as on any circle': refused('points', flat),
    },
  }),
  pointsFromDial: calls(pointsFromDial, {
    sound: [[{ radius: inch(1), readings: turn(1) }]],
    provoked: {
      'there is no reading': refused('readings', { radius: inch(1), readings: [] }),
      'an angle was read twice': refused('readings[4].angle', {
        radius: inch(1),
        readings: [...turn(1), dial(360, 1)],
      }),
    },
  }),
  harmonics: calls(harmonics, {
    sound: [[turn(1)], [[...turn(1), dial(45, 1)], { most: 1 }]],
    provoked: {
      'a value is not finite': refused('readings[0].reading', [
        { angle: degree(0), reading: Infinity },
        ...turn(1).slice(1),
      ]),
      'out of range': refused('readings[0].reading', [dial(0, 4000), ...turn(1).slice(1)]),
      'there are fewer than three readings': refused('readings', turn(1).slice(2)),
      'an angle was read twice': refused('readings[4].angle', [...turn(1), dial(-90, 1)]),
      'the readings leave half a turn out': refused('readings', oneSided),
      'more lobes are asked for than they show': refused('options.most', turn(1), { most: 2 }),
    },
  }),
  twoPointOutOfRound: calls(twoPointOutOfRound, {
    sound: [[turn(1)]],
    provoked: {
      'there are fewer than four readings': refused('readings', turn(1).slice(1)),
      'an angle was read twice': refused('readings[4].angle', [...turn(1), dial(450, 1)]),
      'a reading has none half a turn from it': refused('readings[1].angle', [
        ...turn(1).slice(0, 3),
        dial(271, 0),
      ]),
    },
  }),
  shareOfOvalSeen: calls(shareOfOvalSeen, {
    sound: [[[0, 60, 120].map(degree)], [[0, 90].map(degree)]],
    provoked: {
      'there is no angle': refused('angles', []),
      'an angle is not finite': refused('angles[1]', [degree(0), Number.NaN]),
      'out of range': refused('angles[0]', [degree(800)]),
    },
  }),
  vBlockFactor: calls(vBlockFactor, {
    sound: [[{ lobes: ratio(5), includedAngle: degree(60) }]],
    provoked: {
      'the lobes are no whole number': refused('lobes', {
        lobes: ratio(2.5),
        includedAngle: degree(60),
      }),
    },
  }),
  runout: calls(runout, {
    sound: [[turn(2)], [[dial(0, 1), dial(120, 2), dial(240, 3)]]],
    provoked: {
      'there are fewer than three readings': refused('readings', turn(1).slice(2)),
      'an angle was read twice': refused('readings[4].angle', [...turn(1), dial(360, 1)]),
      'the readings leave half a turn out': refused('readings', oneSided),
    },
  }),
  bend: calls(bend, {
    sound: [
      [shaft],
      [{ ...shaft, roundnessChecked: true }],
      [{ ...shaft, stations: shaft.stations.slice(1), resolution: thou(0.5) }],
    ],
    provoked: {
      'a value is not finite': refused('supports.max', {
        ...shaft,
        supports: { min: inch(0), max: Infinity },
      }),
      'out of range': refused('resolution', { ...shaft, resolution: inch(1) }),
      'there is no station': refused('stations', { ...shaft, stations: [] }),
      'a station was read twice': refused('stations[3].station', {
        ...shaft,
        stations: [...shaft.stations, first],
      }),
      'a station is a support': refused('stations[0].station', {
        ...shaft,
        stations: [{ ...first, station: inch(20) }],
      }),
      'the supports are one place': refused('supports', {
        ...shaft,
        supports: { min: inch(5), max: inch(5) },
      }),
      'a station has fewer than three readings': refused(
        'stations[0].readings',
        withReadings(turn(1).slice(2)),
      ),
      'an angle was read twice': refused(
        'stations[0].readings[4].angle',
        withReadings([...turn(1), dial(360, 1)]),
      ),
      'readings leave half a turn out': refused('stations[0].readings', withReadings(oneSided)),
    },
  }),
};
