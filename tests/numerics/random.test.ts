import { describe, expect, it } from 'vitest';
import { randomBits, splitMix64, uniform, xoshiro128 } from '../../src/numerics/random.js';
import { normalTail } from '../../src/numerics/student.js';
import { layers, normal } from '../../src/numerics/ziggurat.js';

const many = <T>(count: number, draw: () => T) => Array.from({ length: count }, draw);

const count = (boxes: number[], box: number) => {
  boxes[box] = (boxes[box] ?? 0) + 1;
};

/** Sum of the squares of what differs, over what was to be expected. */
const chiSquare = (seen: readonly number[], expected: readonly number[]) =>
  seen.reduce((sum, count, i) => {
    const due = expected[i] as number;
    return sum + (count - due) ** 2 / due;
  }, 0);

describe('random bits', () => {
  it('are those that the authors of xoshiro128** 1.1 give for the state 1, 2, 3, 4', () => {
    // Blackman and Vigna's reference code, as several ports of it print it.
    expect(many(10, xoshiro128([1, 2, 3, 4]))).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
      4258142804,
    ]);
  });

  it('are seeded by the words of SplitMix64', () => {
    // From memory: the first words of the seed 1234567, as they are printed with many ports.
    expect(splitMix64(1234567, 5)).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });

  it('are the same for a seed, and others for its neighbour', () => {
    const of = (seed: number) => many(4, randomBits(seed));
    expect(of(7)).toEqual(of(7));
    expect(of(7)).not.toEqual(of(8));
    expect(of(0)).not.toEqual(of(2 ** 32));
  });
});

describe('uniform numbers', () => {
  it('fill 100 equal boxes as chance does', () => {
    const bits = randomBits(1);
    const boxes = new Array<number>(100).fill(0);
    for (let i = 0; i < 200_000; i++) count(boxes, Math.floor(100 * uniform(bits)));
    // Chi-square of 99 degrees of freedom: 1 in 1000 lies above 148.2, 1 in 1000 below 60.9 (from memory, tables).
    const found = chiSquare(boxes, new Array<number>(100).fill(2000));
    expect(found).toBeLessThan(148.2);
    expect(found).toBeGreaterThan(60.9);
  });

  it('never meet 0 or 1', () => {
    expect(uniform(() => 0)).toBeGreaterThan(0);
    expect(uniform(() => 2 ** 32 - 1)).toBeLessThan(1);
  });
});

describe('the ziggurat', () => {
  it('closes at the top of the bell: its layers are of one area', () => {
    const { width, foot } = layers;
    const area = (i: number) =>
      (width[i] as number) * ((foot[i + 1] as number) - (foot[i] as number));
    for (let i = 2; i < 128; i++) expect(area(i) / area(1)).toBeCloseTo(1, 8);
  });

  const draws = 400_000;
  const drawn = () => {
    const bits = randomBits(5);
    return many(draws, () => normal(bits));
  };

  it('gives the moments of a normal distribution', () => {
    const numbers = drawn();
    const moment = (k: number) => numbers.reduce((sum, x) => sum + x ** k, 0) / draws;
    // Within four standard errors: the moments have variances of 1, 2, 15 and 96 over the number of draws.
    const off = (variance: number) => 4 * Math.sqrt(variance / draws);
    expect(Math.abs(moment(1))).toBeLessThan(off(1));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(off(2));
    expect(Math.abs(moment(3))).toBeLessThan(off(15));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(off(96));
  });

  it('fills boxes as the exact distribution does, out to the tails', () => {
    // Boxes of a quarter of a standard deviation from -4 to 4, and both tails past them.
    const edges = Array.from({ length: 33 }, (_, i) => -4 + i / 4);
    const beyond = [1, ...edges.map(normalTail), 0];
    const expected = beyond.slice(1).map((share, i) => draws * ((beyond[i] as number) - share));
    const seen = expected.map(() => 0);
    for (const x of drawn()) count(seen, Math.min(33, Math.max(0, Math.floor(4 * x) + 17)));
    // Chi-square of 33 degrees of freedom: 1 in 1000 lies above 63.9 (from memory, tables).
    expect(chiSquare(seen, expected)).toBeLessThan(63.9);
  });
});

describe('the tail of a normal distribution', () => {
  it.each([
    // Abramowitz and Stegun, tables 26.1 and 26.2; the last two are from memory.
    [0, 0.5],
    [1, 0.158655253931457],
    [1.96, 0.02499789514822],
    // The density there, 0.0044318484, takes a millionth of itself from the share past 3.
    [2.999999, 0.00134990246347848],
    [3, 0.00134989803163],
    [6, 9.86587645037698e-10],
    [10, 7.61985302416053e-24],
  ])('past %d is %d', (deviations, share) => {
    expect(normalTail(deviations) / share).toBeCloseTo(1, 9);
    expect(normalTail(-deviations)).toBeCloseTo(1 - share, 12);
  });
});
