import { type DiameterReading, journalShape } from 'crankwright/measuring';
import { degree, format, inch, thou } from 'crankwright/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const read = (station: number, angle: number, diameter: number): DiameterReading => ({
  station: inch(station),
  angle: degree(angle),
  diameter: inch(diameter),
});
const [a, b, c, d] = [
  read(0.25, 0, 2.1246),
  read(0.25, 90, 2.1241),
  read(1.25, 0, 2.1243),
  read(1.25, 90, 2.124),
] as const;

describe('readings that are taken again at the same place', () => {
  it('count with their mean, half a turn apart too', () => {
    // By hand: 2.1246 and 2.1248 have the mean 2.1247, and at 90 degrees it reads 2.1241.
    for (const angle of [0, 180, -180]) {
      const shape = journalShape([a, b, c, d, read(0.25, angle, 2.1248)]);
      expect(format(shape.largest, inch)).toBe('2.1247 in');
      expect(format(shape.outOfRound, thou)).toBe('0.6 thou');
    }
  });

  it('tell how readings scatter: the deviations from the mean of each place, over readings less places', () => {
    // By hand: 2.1246, 2.1248 deviate by 1 tenth each, 2.1239, 2.1240, 2.1241 by 1, 0 and 1 tenth:
    // the squares are 2 and 2, the degrees of freedom 1 and 2, so the variance is 4/3 square tenths.
    const shape = journalShape([
      a,
      b,
      c,
      d,
      read(0.25, 0, 2.1248),
      read(1.25, 90, 2.1239),
      read(1.25, 90, 2.1241),
    ]);
    expect(shape.repeats?.degreesOfFreedom).toBe(3);
    expect(shape.repeats?.standardDeviation).toBeCloseTo(inch(0.0001) * Math.sqrt(4 / 3), 12);
  });

  it('say nothing of their scatter if there are none', () => {
    expect(journalShape([a, b, c, d]).repeats).toBeUndefined();
  });

  it('change nothing if every reading is given as often, whatever the order', () => {
    const once = [a, b, c, d];
    fc.assert(
      fc.property(fc.shuffledSubarray([...once, ...once], { minLength: 8 }), (readings) => {
        const { repeats, ...shape } = journalShape(readings);
        expect(shape).toEqual(journalShape(once));
        expect(repeats).toEqual({ standardDeviation: 0, degreesOfFreedom: 4 });
      }),
    );
  });
});
