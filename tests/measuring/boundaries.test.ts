import { type Angle, boreShape, degree, inch, journalShape, type Length, mm } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { grid } from './readings.js';

/** Two angles alike at each of three stations, in tenths over 2 in. */
const shape = (...tenths: readonly number[]) =>
  journalShape(
    tenths.flatMap((size, i) =>
      [0, 90].map((angle) => ({
        station: inch(i),
        angle: degree(angle),
        diameter: inch(2 + size / 10_000),
      })),
    ),
  );

describe('journalShape at its boundaries', () => {
  it('refuses a reading more than 2 % from the middle of all', () => {
    expect(() => shape(0, 0, 399)).not.toThrow();
    expect(() => shape(0, 0, 401)).toThrow(/digit has slipped/);
  });

  it('does not call a middle that stands out by no more than the instrument a barrel', () => {
    expect(shape(0, 5, 4).form).toBe('tapered');
    expect(shape(0, 6, 4).form).toBe('barrel');
    expect(shape(6, 0, 1).form).toBe('tapered');
    expect(shape(6, 0, 2).form).toBe('hourglass');
  });
});

describe('an angle read the other way round', () => {
  const stations = [
    [2.1246, 2.1241],
    [2.1243, 2.124],
  ] as const;
  const [front, back] = stations;

  it('is the diameter that lies half a turn on', () => {
    const mixed = [...grid([0], [0, 90], [front]), ...grid([1], [0, -90], [back])];
    expect(journalShape(mixed)).toEqual(journalShape(grid([0, 1], [0, 90], stations)));
    const { lines } = journalShape(grid([0, 1], [0, -45], stations));
    expect(lines.map(({ angle }) => angle)).toEqual([0, expect.closeTo(degree(135), 12)]);
  });

  it('is not another angle at its station', () => {
    const twice = grid([0, 1], [90, -90], stations);
    expect(refusal(() => journalShape(twice)).parameter).toBe('readings');
  });
});

describe('a slipped digit', () => {
  it.each([0, 1, 2, 3, 4, 5])('is found out at place %d of six, and no other blamed', (slipped) => {
    const sizes = [2.1246, 2.1241, 2.1243, 2.124, 2.1244, 2.1242];
    const readings = grid(
      [0, 1, 2],
      [0, 90],
      [0, 2, 4].map((i) => [i, i + 1].map((j) => (sizes[j] as number) + (j === slipped ? 0.4 : 0))),
    );
    expect(refusal(() => journalShape(readings)).parameter).toBe(`readings[${slipped}].diameter`);
  });
});

describe('places that are one', () => {
  const row = [2.1246, 2.1241] as const;
  /** Two stations, the second angle of the second one off by a little. */
  const off = (by: { readonly station?: number; readonly angle?: number }) =>
    grid([0, 1], [0, 90], [row, row]).map((reading, i) =>
      i === 3
        ? {
            ...reading,
            station: (reading.station + (by.station ?? 0)) as Length,
            angle: (reading.angle + (by.angle ?? 0)) as Angle,
          }
        : reading,
    );

  it('lie within a nanometre and a microradian of each other', () => {
    for (const by of [{ station: 0.9e-9 }, { angle: 0.9e-6 }]) {
      const shape = journalShape(off(by));
      expect([shape.stations.length, shape.lines.length]).toEqual([2, 2]);
    }
  });

  it('and are two where they lie further apart, each with too few readings', () => {
    for (const by of [{ station: 2e-9 }, { angle: 2e-6 }]) {
      expect(refusal(() => journalShape(off(by))).parameter).toBe('readings');
    }
  });

  it('are two angles at one station if they differ by more than a microradian', () => {
    const close = (angle: number) =>
      [0, angle].flatMap((at) =>
        [0, 1].map((place) => ({
          station: inch(place),
          angle: at as Angle,
          diameter: inch(2),
        })),
      );
    expect(journalShape(close(2e-6)).lines).toHaveLength(2);
    expect(refusal(() => journalShape(close(0.9e-6))).parameter).toBe('readings');
  });
});

describe('stations and lines', () => {
  it('come in order along and around the part, however they were read', () => {
    const sizes = [
      [2.1246, 2.1241, 2.1244],
      [2.1243, 2.124, 2.1242],
    ];
    const shape = journalShape([...grid([0.5, 1.5], [0, 60, 120], sizes)].reverse());
    expect(shape.stations.map(({ station }) => station)).toEqual([inch(0.5), inch(1.5)]);
    expect(shape.lines.map(({ angle }) => angle)).toEqual([degree(0), degree(60), degree(120)]);
    expect(shape.stations[0]?.mean).toBeCloseTo(inch((2.1246 + 2.1241 + 2.1244) / 3), 15);
  });
});

describe('a bore', () => {
  const travelled = grid(
    [0.5, 3],
    [0, 90],
    [
      [3.006, 3.008],
      [3.001, 3.0015],
    ],
  );

  it('takes the resolution it is given, with its ring travel or without', () => {
    const options = { resolution: mm(0.2), ringTravel: { min: inch(0), max: inch(4) } };
    expect(boreShape(travelled, options).form).toBe('straight');
    expect(boreShape(travelled, { resolution: mm(0.2) }).form).toBe('straight');
    expect(boreShape(travelled, { ringTravel: options.ringTravel }).form).toBe('tapered');
  });

  it('refuses an option that is misspelt, and a travel outside any engine', () => {
    const misspelt = { ringTravl: { min: inch(0), max: inch(4) } };
    expect(refusal(() => boreShape(travelled, misspelt as object)).parameter).toBe(
      'options.ringTravl',
    );
    expect(refusal(() => journalShape(travelled, misspelt as object)).parameter).toBe(
      'options.ringTravl',
    );
    const bare = { ringTravel: { min: inch(0), max: 3 as Length } };
    expect(refusal(() => boreShape(travelled, bare)).parameter).toBe('options.ringTravel.max');
  });

  it('takes for unworn the mean of all readings outside the travel, above and below', () => {
    const land = [...grid([0.1], [0, 90], [[3, 3.0002]]), ...grid([4], [0], [[3.0001]])];
    const shape = boreShape([...land, ...travelled], {
      ringTravel: { min: inch(0.3), max: inch(3.5) },
    });
    expect(shape.unworn).toBeCloseTo(inch(3.0001), 12);
    expect(shape.wear).toBeCloseTo(inch(0.0079), 12);
  });
});
