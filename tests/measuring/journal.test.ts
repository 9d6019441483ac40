import {
  type Angle,
  type DiameterReading,
  degree,
  format,
  inch,
  journalShape,
  type Length,
  mm,
  type ShapeOptions,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { grid, moved, someReadings } from './readings.js';

const worn = grid(
  [0.25, 1.25],
  [0, 90],
  [
    [2.1246, 2.1241],
    [2.1243, 2.124],
  ],
);

describe('journalShape', () => {
  it('tells out-of-round at a station from taper along a line', () => {
    const shape = journalShape(worn);
    expect(format(shape.smallest, inch)).toBe('2.1240 in');
    expect(format(shape.largest, inch)).toBe('2.1246 in');
    expect(format(shape.outOfRound, inch)).toBe('0.0005 in');
    expect(format(shape.taper, inch)).toBe('0.0003 in');
    expect(shape.stations.map((s) => format(s.outOfRound, thou))).toEqual(['0.5 thou', '0.3 thou']);
    expect(shape.stations.map((s) => format(s.mean, inch, 5))).toEqual([
      '2.12435 in',
      '2.12415 in',
    ]);
    expect(shape.lines.map((line) => format(line.taper, thou))).toEqual(['0.3 thou', '0.1 thou']);
    expect(shape.lines.map((line) => line.angle)).toEqual([0, degree(90)]);
  });

  it.each([
    ['straight', [2.1245, 2.1245, 2.1245]],
    ['tapered', [2.1245, 2.1243, 2.1241]],
    ['tapered', [2.1241, 2.1243, 2.1245]],
    ['barrel', [2.124, 2.1245, 2.1241]],
    ['hourglass', [2.1245, 2.124, 2.1244]],
    ['barrel', [2.1238, 2.1245, 2.1236, 2.1237]],
    ['hourglass', [2.1245, 2.1236, 2.1246, 2.1245]],
  ] as const)('calls %s what runs %j', (form, means) => {
    const stations = means.map((_, i) => 0.25 + 0.5 * i);
    const diameters = means.map((mean) => [mean, mean]);
    expect(journalShape(grid(stations, [0, 90], diameters)).form).toBe(form);
  });

  it('takes an angle that was read at one station, names it, and tells taper and form by the others', () => {
    const sixty = { ...(worn[0] as DiameterReading), angle: degree(45), diameter: inch(2.1236) };
    const { taperNotRead, ...shape } = journalShape([...worn, sixty]);
    expect(taperNotRead).toEqual([degree(45)]);
    expect(shape.lines).toEqual(journalShape(worn).lines);
    // It counts in the size, in the out-of-round of its station, 2.1246 - 2.1236 in, and in the mean there alone.
    const [means, others] = [shape, journalShape(worn)].map(({ stations }) =>
      stations.map(({ mean }) => mean),
    );
    expect(means?.[0]).toBeCloseTo(inch((2.1246 + 2.1241 + 2.1236) / 3), 12);
    expect(means?.[1]).toBe(others?.[1]);
    // By all three the mean would grow by 0.05 thou to the other end, by the two it falls by 0.2.
    expect(shape.form).toBe(journalShape(worn).form);
    expect(format(shape.smallest, inch)).toBe('2.1236 in');
    expect(format(shape.outOfRound, inch)).toBe('0.0010 in');
  });

  it('calls two stations straight or tapered, never more', () => {
    const two = (end: number) =>
      grid(
        [0, 1],
        [0, 90],
        [
          [2.1245, 2.1245],
          [end, end],
        ],
      );
    expect(journalShape(two(2.1245)).form).toBe('straight');
    expect(journalShape(two(2.1242)).form).toBe('tapered');
  });

  it('takes the resolution it is given', () => {
    expect(journalShape(worn, { resolution: thou(0.5) }).form).toBe('straight');
    expect(journalShape(worn, { resolution: thou(0) }).form).toBe('tapered');
  });

  it('calls a difference of one tenth the instrument’s, at any size', () => {
    const called: string[] = [];
    for (let size = 20_001; size < 22_000; size++) {
      const [large, small] = [size / 10_000, (size - 1) / 10_000];
      const readings = grid(
        [0, 1],
        [0, 90],
        [
          [large, large],
          [small, small],
        ],
      );
      if (journalShape(readings).form !== 'straight') called.push(`${large} in`);
    }
    expect(called).toEqual([]);
  });

  it('takes just short of half a turn for none', () => {
    const near = worn.map((reading, i) =>
      i === 0 ? { ...reading, angle: (Math.PI - 1e-9) as Angle } : reading,
    );
    expect(journalShape(near)).toEqual(journalShape(worn));
  });

  it('takes half a turn apart for the same diameter', () => {
    const turned = worn.map((reading, i) => ({
      ...reading,
      angle: (reading.angle + (i % 2 ? Math.PI : -Math.PI)) as Angle,
    }));
    const [one, other] = [journalShape(worn), journalShape(turned)];
    expect(other.outOfRound).toBe(one.outOfRound);
    expect(other.taper).toBe(one.taper);
    expect(other.lines).toHaveLength(2);
    other.lines.forEach((line, i) => {
      expect(line.angle).toBeCloseTo(one.lines[i]?.angle as number, 12);
    });
  });
});

describe('the shape of any journal', () => {
  it('does not depend on the order of the readings', () => {
    const shuffled = someReadings.chain((readings) =>
      fc.tuple(
        fc.constant(readings),
        fc.shuffledSubarray(readings, { minLength: readings.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([readings, other]) => {
        const close = JSON.stringify(journalShape(other), rounded);
        expect(close).toBe(JSON.stringify(journalShape(readings), rounded));
      }),
    );
  });

  it('does not change as the part is turned or turned round', () => {
    fc.assert(
      fc.property(someReadings, fc.integer({ min: -360, max: 360 }), (readings, by) => {
        const one = journalShape(readings);
        for (const other of [
          journalShape(moved(readings, { angle: (at) => at + degree(by) })),
          journalShape(moved(readings, { angle: (at) => -at })),
          journalShape(moved(readings, { station: (at) => 0.15 - at })),
          journalShape(moved(readings, { station: (at) => at + 0.7 })),
        ]) {
          expect(other.outOfRound).toBe(one.outOfRound);
          expect(other.taper).toBe(one.taper);
          expect([other.smallest, other.largest]).toEqual([one.smallest, one.largest]);
          expect(other.form).toBe(one.form);
          expect(other.lines).toHaveLength(one.lines.length);
        }
      }),
    );
  });

  it('has a range of diameters between the worse of out-of-round and taper and both together', () => {
    fc.assert(
      fc.property(someReadings, (readings) => {
        const { smallest, largest, outOfRound, taper, stations, lines } = journalShape(readings);
        const range = largest - smallest;
        expect(outOfRound).toBeLessThanOrEqual(range);
        expect(taper).toBeLessThanOrEqual(range);
        expect(range).toBeLessThanOrEqual(outOfRound + taper + 1e-15);
        expect(Math.max(...stations.map((s) => s.outOfRound))).toBe(outOfRound);
        expect(Math.max(...lines.map((line) => line.taper))).toBe(taper);
        for (const { mean } of stations) {
          expect(mean).toBeGreaterThanOrEqual(smallest - 1e-15);
          expect(mean).toBeLessThanOrEqual(largest + 1e-15);
        }
      }),
    );
  });

  it('grows with the part', () => {
    fc.assert(
      fc.property(someReadings, (readings) => {
        const [one, other] = [readings, moved(readings, { diameter: (d) => 2 * d })].map((r) =>
          journalShape(r, { resolution: 0 as Length }),
        );
        expect(other?.outOfRound).toBe(2 * (one?.outOfRound as number));
        expect(other?.taper).toBe(2 * (one?.taper as number));
        expect(other?.form).toBe(one?.form);
      }),
    );
  });

  it('leaves the readings alone', () => {
    const frozen = Object.freeze(worn.map((reading) => Object.freeze({ ...reading })));
    expect(journalShape(frozen, Object.freeze({}))).toEqual(journalShape(worn));
  });
});

describe('journalShape refuses', () => {
  const [first, ...others] = worn as [DiameterReading, ...DiameterReading[]];

  it('a station with one angle, and says which', () => {
    const error = refusal(() => journalShape(worn.slice(0, 3)));
    expect(error.message).toContain('a second angle at station 31.75 mm is missing');
    expect(error.message).toContain('0 and 180 deg are one diameter');
  });

  it.each([
    [80, 'It is 10 deg from the line at 90 deg: if they are one line and the mark was off, write'],
    [175, 'It is 5 deg from the line at 0 deg: '],
    [15, 'It is 15 deg from the line at 0 deg: '],
  ])(
    'an angle with one station, %d deg, that may be another with the mark off, and says so',
    (angle, off) => {
      const { message } = refusal(() =>
        journalShape([...worn, { ...first, angle: degree(angle) }]),
      );
      expect(message).toContain(`a second station at angle ${angle} deg is missing`);
      expect(message).toContain(off);
    },
  );

  it('an angle with one station where there are not two others, and says which', () => {
    const moved = { ...first, angle: degree(45) };
    const error = refusal(() => journalShape([...worn.slice(1), moved]));
    expect(error.message).toContain('a second station at angle 0 deg is missing');
    expect(error.message).toMatch(/best near the two ends\.$/);
  });

  it('a slipped digit among the readings', () => {
    const error = refusal(() => journalShape([{ ...first, diameter: inch(2.5246) }, ...others]));
    expect(error.parameter).toBe('readings[0].diameter');
    expect(error.message).toContain('A digit has slipped');
  });

  it.each([
    ['station', 3 as Length, 'readings[1].station'],
    ['angle', 90 as Angle, 'readings[1].angle'],
    ['diameter', 2.1 as Length, 'readings[1].diameter'],
    ['diameter', Number.NaN as Length, 'readings[1].diameter'],
    ['diameter', undefined, 'readings[1].diameter'],
  ])('a %s of %s', (field, value, parameter) => {
    const readings = [first, { ...first, [field]: value }] as DiameterReading[];
    expect(refusal(() => journalShape(readings)).parameter).toBe(parameter);
  });

  it.each([[[]], [undefined], ['readings'], [[5]], [[null]]])('%j for readings', (readings) => {
    const call = () => journalShape(readings as unknown as DiameterReading[]);
    expect(refusal(call).parameter).toMatch(/^readings/);
  });

  it.each([null, 5, []])('%j for options', (options) => {
    expect(refusal(() => journalShape(worn, options as ShapeOptions)).parameter).toBe('options');
  });

  it('a resolution that is none', () => {
    const error = refusal(() => journalShape(worn, { resolution: mm(-1) }));
    expect(error.parameter).toBe('options.resolution');
  });
});

/** Means are sums, and a sum in another order is off in its last digit. */
function rounded(key: string, value: unknown): unknown {
  return key === 'mean' ? Number((value as number).toPrecision(14)) : value;
}
