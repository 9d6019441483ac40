import {
  boreShape,
  type DiameterReading,
  degree,
  inch,
  journalShape,
  judge,
  type Length,
  mm,
  radiusFromSagitta,
  times,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from './check.js';

/** Diameters in inches: a row for each station, 0 and 90 degrees in it. */
const readings = (rows: readonly (readonly [station: number, at0: number, at90: number])[]) =>
  rows.flatMap(([station, ...diameters]): DiameterReading[] =>
    diameters.map((diameter, i) => ({
      station: inch(station),
      angle: degree(90 * i),
      diameter: inch(diameter),
    })),
  );

describe('arcs', () => {
  check({
    // Half the chord by the other half is what stands above it by what stands below it: 4 · 4 = 2 · 8.
    source: 'Euclid, Elements, book III, proposition 35',
    name: 'a chord of 8 that lies 2 below the top belongs to a circle of 10 across',
    given: { chord: mm(8), sagitta: mm(2) },
    expected: mm(5),
    got: radiusFromSagitta,
  });
  it('gives the radius that chord and sagitta were taken from', () => {
    const radii = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    const halfAngles = fc.double({ min: 0.2, max: Math.PI / 2, noNaN: true });
    fc.assert(
      fc.property(radii, halfAngles, (radius, angle) => {
        const chord = (2 * radius * Math.sin(angle)) as Length;
        const sagitta = Math.min(radius * (1 - Math.cos(angle)), chord / 2) as Length;
        expect(radiusFromSagitta({ chord, sagitta }) / radius).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('journals', () => {
  check({
    basis: 'common practice',
    name: 'out-of-round is the difference at one station, taper that along one line; the worst counts',
    given: readings([
      [0.25, 2.7482, 2.7478],
      [1.5, 2.748, 2.7479],
    ]),
    expected: { outOfRound: inch(0.0004), taper: inch(0.0002) },
    tolerance: { absolute: 1e-12 },
    got: (all) => {
      const { outOfRound, taper } = journalShape(all);
      return { outOfRound, taper };
    },
  });
  const source = 'TM 5-3805-262-34, p. 4-24';
  check({
    source,
    name: 'taper and out-of-round up to 0.0005 in pass, both limits included',
    given: [0.0005, 0.0006],
    expected: [
      ['within', 'within'],
      ['above', 'above'],
    ],
    got: (flaws) =>
      flaws.map((flaw) => {
        const shape = journalShape(
          readings([
            [0.25, 2.7485, 2.7485 - flaw],
            [1.5, 2.7485 - flaw, 2.7485],
          ]),
        );
        const max = { max: inch(0.0005) };
        return [shape.outOfRound, shape.taper].map((value) => verdict(value, max.max, source));
      }),
  });
  check({
    basis: 'common practice',
    name: 'a journal larger in its middle is barrelled, smaller an hourglass',
    given: [2.7485, 2.7475],
    expected: ['barrel', 'hourglass'],
    got: (middles) =>
      middles.map(
        (middle) =>
          journalShape(
            readings([
              [0.25, 2.748, 2.748],
              [0.9, middle, middle],
              [1.5, 2.748, 2.748],
            ]),
          ).form as string,
      ),
  });
});

describe('bores', () => {
  const worn = readings([
    [0.1, 3, 3],
    [0.5, 3.0025, 3.003],
    [3.5, 3.0005, 3.001],
  ]);
  const shape = () => boreShape(worn, { ringTravel: { min: inch(0.3), max: inch(3.8) } });
  check({
    basis: 'common practice',
    name: 'wear is the largest worn diameter less the unworn land above the rings',
    given: worn,
    expected: inch(0.003),
    tolerance: { absolute: 1e-12 },
    got: () => shape().wear as Length,
  });
  const source = 'TM 10-3930-647-14&P (order of its labels inferred)';
  check({
    source,
    name: 'taper at most 0.0005 in for each inch of travel: 0.0015 in over 3 in, here 0.0020',
    given: inch(3),
    expected: ['above', 'within'],
    got: (travel) => [
      verdict(shape().taper, times(travel, 0.0005), source),
      // Wear of 0.001 in for each inch of diameter is 0.003 in here, just allowed.
      verdict(shape().wear as Length, times(inch(3), 0.001), source),
    ],
  });
});

function verdict(value: Length, max: Length, source: string): string {
  return judge({
    feature: 'shape',
    dimension: 'length',
    value,
    limits: { max },
    basis: { kind: 'published', source },
  }).verdict;
}
