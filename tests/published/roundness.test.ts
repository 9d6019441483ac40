import {
  type Angle,
  bend,
  type DialReading,
  degree,
  harmonics,
  inch,
  type Length,
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
import { describe } from 'vitest';
import { check } from './check.js';

/** A whole turn in equal steps, from a law of the angle in radians. */
const turn = (steps: number, law: (angle: number) => number): DialReading[] =>
  Array.from({ length: steps }, (_, i) => {
    const angle = (2 * Math.PI * i) / steps;
    return { angle: angle as Angle, reading: law(angle) as Length };
  });
const degrees = (angles: readonly number[]) => angles.map(degree);

describe('circles', () => {
  // The figures have no unit; here they are centimetres.
  const cm = 0.01;
  check({
    source: 'Gander, Golub and Strebel, BIT 34 (1994), the six points and their geometric circle',
    name: 'centre, radius and root mean square distance of the least-squares circle',
    given: [
      [1, 7],
      [2, 6],
      [5, 8],
      [7, 7],
      [9, 5],
      [3, 7],
    ],
    expected: { x: 4.739782, y: 2.983533, radius: 4.714226, scatter: 0.4523271 },
    tolerance: { absolute: 6e-7 },
    got: (given) => {
      const points = given.map(([x = 0, y = 0]) => ({ x: x * cm, y: y * cm }) as PlanePoint);
      const { centre, radius, scatter } = roundness(points).leastSquares;
      return { x: centre.x / cm, y: centre.y / cm, radius: radius / cm, scatter: scatter / cm };
    },
  });
  check({
    // By hand: about any centre off the middle, one of the two far points is farther, or one of the two near ones nearer.
    source: 'ISO 12181-1: minimum zone, worked out by hand for an oval of four points',
    name: 'four points, two far and two near by turns, hold the minimum zone between them',
    given: [0.026, 0.025],
    expected: { radius: 0.0255, radialOutOfRound: 0.001 },
    tolerance: { absolute: 1e-15 },
    got: ([far = 0, near = 0]) => {
      const points = [
        [far, 0],
        [0, near],
        [-far, 0],
        [0, -near],
      ].map(([x, y]) => ({ x, y }) as PlanePoint);
      const found = roundness(points);
      const { radius, radialOutOfRound } = found.minimumZone ?? found.leastSquares;
      return { radius, radialOutOfRound };
    },
  });
});

describe('what a micrometer misses', () => {
  const lobes = (count: number, high: number) =>
    turn(36, (angle) => thou(high) * Math.cos(count * angle));
  check({
    source: 'geometry, by hand: radii half a turn apart add up to the same all round',
    name: 'three and five lobes of 2 thou on the radius read nothing; two and six read twice their height',
    given: [3, 5, 2, 6],
    expected: [0, 0, 8, 8].map((high) => thou(high) as number),
    tolerance: { absolute: 1e-15 },
    got: (counts) => counts.map((count) => twoPointOutOfRound(lobes(count, 2))),
  });
  check({
    // Doubled, 0, 60 and 120 degrees are the corners of a triangle of equal sides in a circle of radius 1: its
    // least breadth is its height, 1.5. Of a square it is the side, √2; of two points, nothing.
    source: 'geometry, by hand: half the least breadth of a polygon in a circle of radius 1',
    name: 'the share of an oval that is sure to show',
    given: [
      [0, 90],
      [0, 60, 120],
      [0, 45, 90, 135],
      [0, 30, 60, 90, 120, 150],
    ],
    expected: [0, 0.75, Math.SQRT1_2, Math.cos(Math.PI / 6)],
    tolerance: { absolute: 1e-12 },
    got: (sets) => sets.map((angles) => shareOfOvalSeen(degrees(angles)) as number),
  });
  check({
    // f = 1 + cos n(90° + θ/2) / sin(θ/2), by hand: cos 360°, 240°, 600° over sin 30°; cos 405°, 270°, 945° over sin 45°.
    source:
      'J. Japan Soc. Precision Eng. 43 (1977) 1167, abstract: the magnifying power of a V-block',
    name: 'a V-block of 60° shows three lobes threefold, and hides ovals and five lobes; of 90°, twofold, once, and hides seven',
    given: [
      [3, 60],
      [2, 60],
      [5, 60],
      [3, 90],
      [2, 90],
      [7, 90],
    ] as const,
    expected: [3, 0, 0, 2, 1, 0],
    tolerance: { absolute: 1e-12 },
    got: (parts) =>
      parts.map(([lobes, angle]) =>
        vBlockFactor({ lobes: ratio(lobes), includedAngle: degree(angle) }),
      ) as number[],
  });
  check({
    source: "Fourier's series: the parts that a trace was put together from",
    name: 'lobes of a trace read at unequal angles',
    given: [3, 17, 40, 62, 77, 101, 120, 155, 171, 190, 222, 240, 266, 281, 305, 322, 349],
    expected: [1, 3, 0, 2, 0, 0],
    tolerance: { absolute: 1e-12 },
    got: (angles) => {
      const readings = degrees(angles).map((angle) => ({
        angle,
        reading: thou(
          1 * Math.cos(angle - 1) + 3 * Math.cos(2 * angle) + 2 * Math.cos(4 * (angle - 0.3)),
        ),
      }));
      const found = harmonics(readings, { most: 4 }).harmonics;
      const second = found[1] as (typeof found)[number];
      const fourth = found[3] as (typeof found)[number];
      return [
        ...found.map(({ amplitude }) => amplitude / thou(1)),
        // The oval has its top at the mark, and the four lobes a little past it.
        Math.sin(2 * second.at),
        fourth.at - 0.3,
      ].map((value) => (Math.abs(value) < 1e-12 ? 0 : value));
    },
  });
});

describe('runout and bend', () => {
  check({
    source: 'TM 10-3930-653-14&P, measuring crankshaft for bending: half of the full-turn reading',
    name: 'a shaft that reads 4 thou over a turn at its middle stands off its axis by 2',
    given: thou(2),
    expected: { total: thou(4) as number, eccentricity: thou(2) as number },
    tolerance: { absolute: 1e-15 },
    got: (off) => {
      const { total, eccentricity } = runout(
        turn(8, (angle) => off * Math.cos(angle - Math.PI / 4)),
      );
      return { total, eccentricity };
    },
  });
  check({
    source: 'geometry: straight lines on both sides of a kink, a parabola for a bow, by hand',
    name: 'kink of 4 thou at 8 of 20 in; bow of 4 thou',
    given: [4, 8, 12, 16],
    expected: [
      { outcome: 'kink', amount: 4, at: 8 },
      { outcome: 'bow', amount: 4, at: 0 },
    ],
    tolerance: { absolute: 1e-5 },
    got: (stations) =>
      // At 4, 8, 12 and 16 in a kink at 8 stands off by 2, 4, 8/3 and 4/3; a bow by 4 · 4x(20−x)/20².
      [
        [2, 4, 8 / 3, 4 / 3],
        [2.56, 3.84, 3.84, 2.56],
      ].map((offs) => {
        const found = bend({
          supports: { min: inch(0), max: inch(20) },
          stations: stations.map((station, i) => ({
            station: inch(station),
            readings: turn(6, (angle) => thou(offs[i] as number) * Math.cos(angle - 2)),
          })),
        });
        const { outcome } = found;
        const amount = 'amount' in found ? found.amount / thou(1) : Number.NaN;
        return { outcome: outcome as string, amount, at: 'at' in found ? found.at / inch(1) : 0 };
      }),
  });
  check({
    source: 'geometry, by hand',
    name: 'a dial that shows nothing on a part of 1 in radius is a point 1 in from the axis',
    given: degree(90),
    expected: { x: 0, y: inch(1) as number },
    tolerance: { absolute: 1e-15 },
    got: (angle) => {
      const [point] = pointsFromDial({ radius: inch(1), readings: [{ angle, reading: thou(0) }] });
      return { x: point?.x ?? Number.NaN, y: point?.y ?? Number.NaN };
    },
  });
});
