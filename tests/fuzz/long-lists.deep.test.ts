import {
  boreShape,
  degree,
  endPlay,
  grindPlan,
  inch,
  journalShape,
  pointsFromDial,
  ringGapAlongBore,
  roundness,
  runout,
  thou,
  undersizeSteps,
} from 'crankwright';
import { readShed } from 'crankwright/shed';
import { inspect, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { spoiltShed } from '../shed/sheds.js';

/** More than a function can be called with as arguments of its own. */
const MANY = 140_000;

/** Readings at two stations, all the way round: 2.1245 in, but for one of 2.1240 and one of 2.1250. */
const readings = Array.from({ length: MANY }, (_, i) => ({
  station: inch(i % 2 === 0 ? 0.25 : 1.25),
  angle: degree((180 * (i >> 1)) / (MANY / 2)),
  diameter: inch(i === 7 ? 2.124 : i === 9 ? 2.125 : 2.1245),
}));

describe('a hundred and forty thousand', () => {
  it('are more than a function can be called with', () => {
    const all = Array.from({ length: MANY }, (_, i) => i);
    expect(() => Math.max(...all)).toThrow(RangeError);
  });

  it.each([
    ['journalShape', journalShape],
    ['boreShape', boreShape],
  ])('readings tell %s', (_, shapeOf) => {
    const { smallest, largest, outOfRound, taper, stations, lines } = shapeOf(readings);
    expect([smallest, largest]).toEqual([inch(2.124), inch(2.125)]);
    expect(outOfRound).toBeCloseTo(inch(0.001), 12);
    expect(taper).toBeCloseTo(inch(0.0005), 12);
    expect([stations.length, lines.length]).toEqual([2, MANY / 2]);
  });

  it('points and readings round a part tell its roundness and its runout', () => {
    const round = Array.from({ length: MANY }, (_, i) => ({
      angle: degree((360 * i) / MANY),
      reading: thou(Math.cos((4 * Math.PI * i) / MANY)),
    }));
    expect(runout(round).total).toBeCloseTo(thou(2), 12);
    const { leastSquares, minimumZone } = roundness(
      pointsFromDial({ radius: inch(1), readings: round }),
    );
    expect(leastSquares.radialOutOfRound).toBeCloseTo(thou(2), 12);
    expect(minimumZone?.radialOutOfRound).toBeCloseTo(thou(2), 12);
  });

  it('turns of a shaft tell its end play', () => {
    const floats = Array.from({ length: MANY }, (_, i) => ({
      pushed: thou(0),
      pulled: thou(i === 7 ? 6 : i === 9 ? 9 : 8),
    }));
    expect(endPlay(floats).span).toEqual({ min: thou(6), max: thou(9) });
    const sheet = readSheet({ version: 1, engine: 'pump set', units: 'inch' });
    const found = inspect({ ...sheet, crankshaft: { endPlay: { readings: floats } } });
    expect(found.endPlay?.span).toEqual({ min: thou(6), max: thou(9) });
  });

  it('stations of a bore tell the travel of a ring', () => {
    const ring = { gap: thou(12), measuredIn: inch(3) };
    const stations = Array.from({ length: MANY }, (_, i) => ({
      station: inch((4 * i) / MANY),
      mean: inch(i === 7 ? 3.001 : 3),
    }));
    const { span } = ringGapAlongBore({ ...ring, stations });
    expect(span.min).toBeCloseTo(thou(12), 12);
    expect(span.max).toBeCloseTo(thou(12 + Math.PI), 12);
  });

  it('rows of a CSV, less its heading, read one bore', () => {
    const row = (i: number) => `block A, cylinder 1, 0.5 in, ${i % 180} deg, 3.0004 in`;
    const csv = [
      'part, feature, station, angle, reading',
      ...Array.from({ length: MANY - 2 }, (_, i) => row(i)),
    ];
    expect(() =>
      readShed(spoiltShed({ 'blocks[0].bores[0].readings': undefined }), csv.join('\n')),
    ).toThrow('must have at most 1000 entries');
  });

  it('journals are ground to one step', () => {
    const journal = { name: 'rod 1', smallest: inch(2.1189), largest: inch(2.1202) };
    const worn = { ...journal, outOfRound: inch(0.0013), taper: inch(0.0004) };
    const plan = grindPlan({
      journals: Array.from({ length: MANY }, () => worn),
      standard: { min: inch(2.1245), max: inch(2.125) },
      steps: undersizeSteps('inch'),
    });
    expect(plan).toMatchObject({ outcome: 'grind', undersize: thou(10) });
  });
});
