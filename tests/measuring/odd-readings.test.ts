import { type DiameterReading, oddReadings } from 'crankwright/measuring';
import { degree, inch, type Length, mm, thou } from 'crankwright/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

/** A grid of diameters in inches: a row for each station, a column for each angle. */
const grid = (
  rows: readonly (readonly number[])[],
  unit: (size: number) => Length = inch,
): readonly DiameterReading[] =>
  rows.flatMap((row, i) =>
    row.map((diameter, j) => ({
      station: inch(0.25 + i),
      angle: degree((180 / row.length) * j),
      diameter: unit(diameter),
    })),
  );
const indices = (readings: readonly DiameterReading[], options = {}) =>
  oddReadings(readings, options).map(({ index }) => index);

describe('a reading that does not fit the others', () => {
  it('is a slipped digit inside the guard of 2 %: 31.59 for 31.99', () => {
    const [odd, ...more] = oddReadings(
      grid(
        [
          [31.99, 31.98],
          [31.59, 31.98],
        ],
        mm,
      ),
    );
    expect(more).toEqual([]);
    expect(odd?.index).toBe(2);
    // By hand: 31.99 - 31.98 + 31.98.
    expect(odd?.expected).toBeCloseTo(mm(31.99), 9);
    expect(odd?.others).toEqual({ min: mm(31.98), max: mm(31.99) });
    expect(odd?.against).toBe('instrument');
  });

  it('counts in deviations that can be checked by hand', () => {
    // Of four readings each deleted residual is d11 - d12 - d21 + d22, of 2 standard deviations of one reading.
    const [odd] = oddReadings(
      grid([
        [1.6048, 1.6047],
        [1.6147, 1.6046],
      ]),
      { uncertainty: thou(0.2) },
    );
    expect(odd?.deviation).toBeCloseTo(10 / (0.1 * 2), 6);
    // Normal distribution, two tails of 0.01 over 4 readings and 2 tests: tables give 3.2272 for a tail of 0.000625.
    expect(odd?.critical).toBeCloseTo(3.2272, 3);
  });

  it('is found in an oval and tapered journal by its form, not by its range alone', () => {
    // A journal worn by 1.2 thou across; 1.5933 for 1.6033.
    expect(
      indices(
        grid([
          [1.6046, 1.6034],
          [1.6044, 1.5933],
        ]),
      ),
    ).toEqual([3]);
  });

  it('may be a repeat', () => {
    const readings = grid([
      [2.1246, 2.1241],
      [2.1243, 2.124],
    ]);
    const repeats = [2.1246, 2.1346, 2.1247].map((diameter) => ({
      ...(readings[0] as DiameterReading),
      diameter: inch(diameter),
    }));
    expect(indices([...readings, ...repeats])).toEqual([5]);
  });

  it('may be two, if the second still stands apart once the first is out', () => {
    const rows = [
      [2.0, 1.9995, 1.9998],
      [2.0001, 1.9996, 1.9999],
      [2.03, 1.9994, 1.9997],
      [2.0, 1.9995, 1.9898],
    ];
    expect(indices(grid(rows))).toEqual([6, 11]);
  });

  it('is named by the scatter of the others where they are many, though it lies among them', () => {
    // Oval by 4 thou; one reading is 2 thou off and still between the largest and the smallest.
    const rows = Array.from({ length: 5 }, (_, i) => [
      2 + ((i * 7) % 3) * 5e-5,
      1.996 + ((i * 5) % 3) * 5e-5,
      1.998 + ((i * 11) % 3) * 5e-5,
    ]);
    (rows[2] as number[])[1] = 1.998;
    const [odd] = oddReadings(grid(rows));
    expect(odd).toMatchObject({ index: 7, against: 'scatter' });
  });

  it('is none of a worn journal, and none of a bore worn most at the top', () => {
    for (const rows of [
      [
        [1.999, 1.998],
        [1.9987, 1.9976],
      ],
      [
        [3.006, 3.008],
        [3.001, 3.0015],
      ],
      [
        [3.0008, 3.0012],
        [3.0005, 3.0006],
        [3.0001, 3.0002],
      ],
    ]) {
      expect(indices(grid(rows))).toEqual([]);
    }
  });

  it('is not looked for where the others do not tell what it should be', () => {
    expect(
      indices(
        grid([
          [2, 2.009],
          [2, 2],
        ]).slice(0, 3),
      ),
    ).toEqual([]);
  });

  it('stays the same whatever the order, the size and where angles are counted from', () => {
    const rows = [
      [1.6048, 1.6047],
      [1.6147, 1.6046],
    ];
    const readings = grid(rows);
    fc.assert(
      fc.property(
        fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }),
        fc.integer({ min: -90, max: 90 }),
        (order, turn) => {
          const turned = order.map((i) => {
            const reading = readings[i] as DiameterReading;
            return { ...reading, angle: (reading.angle + degree(turn)) as typeof reading.angle };
          });
          const [odd] = oddReadings(turned);
          expect(odd && turned[odd.index]?.diameter).toBe(inch(1.6147));
        },
      ),
    );
  });

  it('is seldom called so by mistake: no more often than was asked for', () => {
    // Sums of twelve uniform draws are nearly normal; the generator is Park and Miller's.
    let state = 1;
    const uniform = () => {
      state = (state * 48271) % 2147483647;
      return state / 2147483647;
    };
    const normal = () => Array.from({ length: 12 }, uniform).reduce((sum, u) => sum + u, -6);
    const parts = 1500;
    const rate = 0.05;
    const alarms = Array.from({ length: parts }, () => {
      const readings = grid(
        Array.from({ length: 4 }, (_, i) =>
          [0, 1, 2].map((j) => 2 - 0.0002 * i - 0.0007 * j + 0.00005 * normal()),
        ),
      );
      return oddReadings(readings, { uncertainty: thou(0.001), falseAlarm: rate }).length > 0;
    }).filter(Boolean).length;
    // Three standard deviations of a binomial count on top of the rate.
    expect(alarms / parts).toBeLessThan(rate + 3 * Math.sqrt((rate * (1 - rate)) / parts));
    expect(alarms).toBeGreaterThan(0);
  });
});

describe('it refuses', () => {
  const readings = grid([
    [2, 2],
    [2, 2],
  ]);
  it.each([
    [{ uncertainty: -1 as Length }, 'options.uncertainty'],
    [{ falseAlarm: 0 }, 'options.falseAlarm'],
    [{ falseAlarm: 0.5 }, 'options.falseAlarm'],
    [{ falseAlarm: Number.NaN }, 'options.falseAlarm'],
  ])('%o', (options, parameter) => {
    expect(refusal(() => oddReadings(readings, options)).parameter).toBe(parameter);
  });
});
