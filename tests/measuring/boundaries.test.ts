import { degree, inch, journalShape } from 'crankwright';
import { describe, expect, it } from 'vitest';

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
