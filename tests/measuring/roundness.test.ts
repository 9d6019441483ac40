import {
  type Angle,
  degree,
  type Length,
  metre,
  mm,
  type PlanePoint,
  pointsFromDial,
  roundness,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const size = (value: number) => value as Length;
/** A part of 25 mm radius with lobes of up to some microns, seen at equal steps of an arc. */
const part = (steps: number, law: (angle: number) => number, arc = 2 * Math.PI) =>
  Array.from({ length: steps }, (_, i): PlanePoint => {
    const angle = (arc * i) / steps;
    const radius = 0.025 + law(angle);
    return { x: size(radius * Math.cos(angle)), y: size(radius * Math.sin(angle)) };
  });
const microns = fc.double({ min: -1e-5, max: 1e-5, noNaN: true });
const lobed = fc.tuple(fc.integer({ min: 2, max: 6 }), microns, fc.integer({ min: 12, max: 40 }));
const rounds = (points: readonly PlanePoint[]) => {
  const { leastSquares, minimumZone } = roundness(points);
  return [leastSquares, minimumZone ?? expect.fail('no zone')] as const;
};

describe('roundness', () => {
  it('stays what it is as the part is turned, moved and seen in a mirror', () => {
    const angles = fc.double({ min: 0, max: 6, noNaN: true });
    const moves = fc.double({ min: -0.1, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(lobed, microns, angles, moves, moves, ([lobes, high, steps], b, turn, dx, dy) => {
        const before = part(steps, (angle) => high * Math.cos(lobes * angle) + b * Math.sin(angle));
        const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
        const after = before.map(({ x, y }) => ({
          x: size(cos * x + sin * y + dx),
          y: size(sin * x - cos * y + dy),
        }));
        const [old, now] = [rounds(before), rounds(after)];
        for (const k of [0, 1]) {
          expect(now[k]?.radius).toBeCloseTo(old[k]?.radius as number, 13);
          expect(now[k]?.radialOutOfRound).toBeCloseTo(old[k]?.radialOutOfRound as number, 13);
        }
      }),
      { numRuns: 50 },
    );
  });

  it('grows with the part, and the zone is never wider than what stands about the least-squares centre', () => {
    fc.assert(
      fc.property(lobed, microns, ([lobes, high, steps], b) => {
        const points = part(steps, (at) => high * Math.cos(lobes * at) + b * Math.sin(5 * at + 1));
        const larger = points.map(({ x, y }) => ({ x: size(3 * x), y: size(3 * y) }));
        const [[circle, zone], [bigCircle, bigZone]] = [rounds(points), rounds(larger)];
        expect(bigCircle.radialOutOfRound).toBeCloseTo(3 * circle.radialOutOfRound, 13);
        expect(bigZone.radialOutOfRound).toBeCloseTo(3 * zone.radialOutOfRound, 13);
        expect(zone.radialOutOfRound).toBeLessThanOrEqual(circle.radialOutOfRound + 1e-15);
      }),
      { numRuns: 50 },
    );
  });

  it('loses no digits of a part that lies a kilometre away', () => {
    // A double at 1000 m is a multiple of 2^-43 m, 0.11 pm. So that the points themselves are not rounded, theirs are too.
    const grid = 2 ** -43;
    const near = part(24, (angle) => 2e-6 * Math.cos(3 * angle)).map(({ x, y }) => ({
      x: size(Math.round(x / grid) * grid),
      y: size(Math.round(y / grid) * grid),
    }));
    const far = near.map(({ x, y }) => ({ x: size(x + 1000), y: size(y - 1000) }));
    const [here, there] = [rounds(near), rounds(far)];
    for (const k of [0, 1] as const) {
      expect(there[k].radius).toBeCloseTo(here[k].radius, 16);
      expect(there[k].radialOutOfRound).toBeCloseTo(here[k].radialOutOfRound, 16);
      expect(Math.abs(there[k].centre.x - 1000 - here[k].centre.x)).toBeLessThanOrEqual(grid);
    }
  });

  it('knows a full turn well, a short arc less, and says when the arc is too short for its scatter', () => {
    const rough = (arc: number) => {
      let i = 0;
      return roundness(part(40, () => 1e-6 * Math.cos(2.4 * i * i++), arc));
    };
    const turns = [2 * Math.PI, 2, 0.5].map(rough);
    const [whole, third, short] = turns.map(({ leastSquares }) => leastSquares.radiusUncertainty);
    expect(whole).toBeLessThan(third as number);
    expect(third).toBeLessThan(short as number);
    expect(turns.map(({ outcome }) => outcome)).toEqual(['determined', 'determined', 'determined']);
    expect(rough(0.05).outcome).toBe('undecided');
    expect(turns[1]?.arc).toBeCloseTo((2 * 39) / 40, 3);
  });

  it('takes the uncertainty of its points for true where they lie better than that by luck', () => {
    const exact = part(12, () => 0, 0.3);
    expect(roundness(exact).outcome).toBe('determined');
    const doubted = roundness(exact, { pointUncertainty: mm(0.02) });
    expect(doubted.outcome).toBe('undecided');
    // By hand, for a short arc: the square of the angle, up to h either side, varies by 2 h² / √45, and the error of the
    // radius is twice that of its coefficient: √45 u / (√n h²), with 12 points and h = 0.3 · 11 / 24.
    const half = (0.3 * 11) / 24;
    const byHand = (Math.sqrt(45) * 2e-5) / (Math.sqrt(12) * half * half);
    expect(doubted.leastSquares.radiusUncertainty / byHand).toBeGreaterThan(0.8);
    expect(doubted.leastSquares.radiusUncertainty / byHand).toBeLessThan(1.2);
  });

  it('does not trust four points that lie on a circle by luck', () => {
    // Off the circle by a micron at most: over a third of a radian, sixteen such points tell the radius, four do not.
    const bumps = [0.6, -0.9, 0.8, -0.5];
    const found = (steps: number) => {
      let i = 0;
      return roundness(part(steps, () => 1e-6 * (bumps[i++ % 4] as number), 0.32));
    };
    expect(found(16).outcome).toBe('determined');
    expect(found(4).outcome).toBe('undecided');
  });

  it('is undecided from points that lie on a circle because their lobes are hidden', () => {
    const oval = part(4, (angle) => 1e-5 * Math.cos(2 * angle - Math.PI / 2));
    const five = part(5, (angle) => 1e-5 * Math.cos(5 * angle));
    for (const [points, lobesSeen] of [
      [oval, 1],
      [five, 2],
    ] as const) {
      const found = roundness(points);
      expect(found.leastSquares.radialOutOfRound).toBeLessThan(1e-12);
      expect(found).toMatchObject({ outcome: 'undecided', lobesSeen });
      expect(roundness(points, { pointUncertainty: mm(0.001) })).toMatchObject({
        outcome: 'determined',
        lobesSeen,
      });
    }
    const [six, seven] = [6, 7].map((steps) => roundness(part(steps, () => 0)));
    expect([six?.outcome, seven?.outcome]).toEqual(['undecided', 'determined']);
    // Half a wave must be wider than the gap: 36 points 10 degrees apart show 17 lobes.
    expect(roundness(part(36, () => 0)).lobesSeen).toBe(17);
    expect(roundness(part(12, () => 0, 0.3)).lobesSeen).toBe(0);
  });

  it('has the uncertainty that repeated measurements show', () => {
    // The radius of 300 noisy copies of one arc scatters by what one copy says of itself.
    let state = 1;
    const noise = () => {
      let sum = 0;
      for (let k = 0; k < 12; k++) {
        state = (state * 48271) % 2147483647;
        sum += state / 2147483647 - 0.5;
      }
      return 1e-6 * sum;
    };
    const found = Array.from({ length: 300 }, () => roundness(part(16, noise, 2)).leastSquares);
    const mean = found.reduce((sum, { radius }) => sum + radius, 0) / 300;
    const spread = Math.sqrt(
      found.reduce((sum, { radius }) => sum + (radius - mean) ** 2, 0) / 299,
    );
    const told = Math.sqrt(
      found.reduce((sum, { radiusUncertainty }) => sum + radiusUncertainty ** 2, 0) / 300,
    );
    expect(spread / told).toBeGreaterThan(0.85);
    expect(spread / told).toBeLessThan(1.15);
  });

  it('refuses what is no circle, and says what to do', () => {
    const on = (xs: readonly number[], rise: (i: number) => number) =>
      xs.map((x, i) => ({ x: mm(x), y: mm(rise(i)) }));
    const line = refusal(() => roundness(on([0, 10, 20, 30], (i) => 5 * i)));
    expect(line.parameter).toBe('points');
    expect(line.message).toContain('lie on one line');
    const flat = refusal(() => roundness(on([0, 10, 20, 30, 40], (i) => 0.001 * (i % 2))));
    expect(flat.message).toContain('lie as well on a line as on any circle');
    expect(flat.message).toContain('farther round the part');
    // The same line, a kilometre away.
    const far = [0, 1, 2, 3].map((i) => ({ x: metre(1000 + 0.01 * i), y: metre(-500 + 0.02 * i) }));
    expect(refusal(() => roundness(far)).message).toContain('on one line');
    expect(refusal(() => roundness(part(3, () => 0))).parameter).toBe('points');
    const twice = part(8, () => 0);
    expect(refusal(() => roundness([...twice, twice[2] as PlanePoint])).parameter).toBe(
      'points[8]',
    );
    expect(
      refusal(() => roundness([...twice, { x: size(Number.NaN), y: size(0) }])).parameter,
    ).toBe('points[8].x');
  });

  it('takes points from a dial about the axis that the part was turned on', () => {
    const readings = [0, 120, 240].map((at, i) => ({ angle: degree(at) as Angle, reading: mm(i) }));
    const points = pointsFromDial({ radius: mm(25), readings });
    expect(points.map(({ x, y }) => Math.hypot(x, y))).toEqual(
      [25, 26, 27].map((radius) => expect.closeTo(mm(radius), 15) as number),
    );
  });
});
