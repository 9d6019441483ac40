import { describe, expect, it } from 'vitest';
import { onceAround } from '../../src/bearings/orbit/once-around.js';
import { settle } from '../../src/bearings/orbit/settle.js';
import type { VectorField } from '../../src/numerics/dormand-prince.js';

type Place = { readonly x: number; readonly y: number };

/** A cycle that turns a place about another and draws it in. */
const spiral =
  (around: Place, shrink: number, turn: number) =>
  ({ x, y }: Place) => {
    const [dx, dy] = [x - around.x, y - around.y];
    const [c, s] = [shrink * Math.cos(turn), shrink * Math.sin(turn)];
    return { x: around.x + c * dx - s * dy, y: around.y + s * dx + c * dy, steps: 10 };
  };

describe('settle', () => {
  it.each([
    [0, 0, 2],
    [0.01, 0.3, 4],
    [0.9, 0.5, 8],
    [0.999, 0.01, 12],
    [0.999, 0, 12],
  ])(
    'finds the place that a cycle shrinking by %d and turning by %d leads to',
    (shrink, turn, most) => {
      const starts: Place[] = [];
      const ends: Place[] = [];
      const found = settle(1e-6, (start) => {
        starts.push(start);
        const end = spiral({ x: 0.3, y: -0.4 }, shrink, turn)(start);
        ends.push(end);
        return end;
      });
      expect(found.outcome).toBe('settled');
      expect(found.cycles).toBeLessThanOrEqual(most);
      expect(found.steps).toBe(10 * found.cycles);
      // The whole of the last cycle is the orbit: it begins there too.
      expect(starts.at(-1)?.x).toBeCloseTo(0.3, 5);
      expect(starts.at(-1)?.y).toBeCloseTo(-0.4, 5);
      expect(ends.at(-1)?.x).toBeCloseTo(0.3, 6);
      expect(ends.at(-1)?.y).toBeCloseTo(-0.4, 6);
    },
  );

  it('does not take a slow drift for an arrival', () => {
    // Every cycle goes a millionth of the way: near its start long before it is near the end.
    let last: Place = { x: 0, y: 0 };
    const found = settle(1e-4, (start) => {
      last = start;
      return spiral({ x: 0.5, y: 0 }, 1 - 1e-6, 0)(start);
    });
    expect(found.outcome === 'settled' && Math.abs(last.x - 0.5) > 1e-3).toBe(false);
  });

  it('says so where there is nothing to be found, or no way on', () => {
    let side = 0.5;
    const restless = settle(1e-4, () => {
      side = -side * 0.999;
      return { x: side, y: side * side, steps: 1 };
    });
    expect(restless).toEqual({ outcome: 'too many cycles', cycles: 60, steps: 60 });
    expect(settle(1e-4, () => undefined)).toEqual({
      outcome: 'too many steps',
      cycles: 1,
      steps: 0,
    });
  });
});

describe('onceAround', () => {
  /** A drift by a formula. */
  const drifting = (
    formula: (angle: number, x: number, y: number) => readonly [number, number],
  ) => {
    const drift: VectorField = {
      dx: 0,
      dy: 0,
      set(angle, x, y) {
        [drift.dx, drift.dy] = formula(angle, x, y);
      },
    };
    return drift;
  };
  const how = { even: 72, tolerance: 1e-8 };

  it('follows a circle', () => {
    const circle = drifting((_, x, y) => [-y / 3, x / 3]);
    const ended = onceAround(circle, { x: 0.5, y: 0 }, how, () => {});
    expect(ended?.x).toBeCloseTo(0.5 * Math.cos((4 * Math.PI) / 3), 6);
    expect(ended?.y).toBeCloseTo(0.5 * Math.sin((4 * Math.PI) / 3), 6);
  });

  it('keeps the digits of a film that is squeezed thin', () => {
    // The gap closes as its own power of 2.5, as under a load: 1.5 t = gap^-1.5 - 1.
    const squeezed = drifting((_, x) => [1000 * (1 - x) ** 2.5, 0]);
    const ended = onceAround(squeezed, { x: 0, y: 0 }, how, () => {});
    const gap = (1 + 1.5 * 1000 * 4 * Math.PI) ** (-1 / 1.5);
    expect((1 - (ended?.x ?? 0)) / gap).toBeCloseTo(1, 6);
  });

  it('tells of every even angle and every step in order, with place and drift', () => {
    const marks: number[] = [];
    let before = 0;
    let between = 0;
    const swing = drifting((angle) => [Math.sin(angle) / 9, Math.cos(angle) / 9]);
    const taken = onceAround(swing, { x: 0, y: 0 }, how, (place, even) => {
      const { t: angle, x, y, dx, dy } = place;
      expect(angle).toBeGreaterThan(before);
      before = angle;
      if (even) marks.push(angle);
      else between++;
      expect(x).toBeCloseTo((1 - Math.cos(angle)) / 9, 6);
      expect(y).toBeCloseTo(Math.sin(angle) / 9, 6);
      expect(dx).toBeCloseTo(Math.sin(angle) / 9, 5);
      expect(dy).toBeCloseTo(Math.cos(angle) / 9, 5);
    });
    expect(marks).toHaveLength(72);
    marks.forEach((angle, i) => {
      expect(angle).toBeCloseTo(((i + 1) * Math.PI) / 18, 12);
    });
    // All but the first and the last end where they like.
    expect(between).toBe((taken?.steps ?? 0) - 2);
    expect(taken?.steps).toBeGreaterThan(10);
  });

  it('gives up where a step of any length leads out of the clearance', () => {
    const out = drifting((_, x) => [x > 0.9 ? Number.NaN : 1, 0]);
    expect(onceAround(out, { x: 0, y: 0 }, how, () => {})).toBeUndefined();
  });
});
