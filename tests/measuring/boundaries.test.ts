import { degree, inch, journalShape } from 'crankwright';
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
