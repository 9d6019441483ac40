import { describe, expect, it } from 'vitest';
import { captured } from './captured.js';

const complaint = async (text: string, ...options: readonly string[]) => {
  const { code, out, err } = await captured(['calc', text, ...options]);
  expect([code, out]).toEqual([2, '']);
  return err.trimEnd().split('\n').at(-1)?.replace('crankwright: ', '');
};

describe('a number without a unit where a size belongs', () => {
  it.each([
    // Common fractions and mixed numbers are inches in the trade, whatever the size beside them is in.
    ['2-1/8 - 20 thou', '2-1/8 has no unit: write 2-1/8 in, if it is inches'],
    ['20 thou + 2-1/8', '2-1/8 has no unit: write 2-1/8 in, if it is inches'],
    ['1/16 - 2 thou in mm', '1/16 has no unit: write 1/16 in, if it is inches'],
    ['2 in - 1/8', '1/8 has no unit: write 1/8 in, if it is inches'],
    ['53 mm - 1 / 16', '1/16 has no unit: write 1/16 in, if it is inches'],
    ['2 1/8 - 2.105 in', '2 1/8 has no unit: write 2 1/8 in, if it is inches'],
    ['2.105 in - 2 1/8', '2 1/8 has no unit: write 2 1/8 in, if it is inches'],
    ['round(2 1/8)', '2 1/8 has no unit: write 2 1/8 in, if it is inches'],
    // 20 thou and 20 in are both sizes that a shop meets; nobody knows which is meant.
    ['2-1/8 in - 20', '20 has no unit: write 20 thou or 20 in'],
    ['14 thou + 0.1', '0.1 has no unit: write 0.1 thou or 0.1 in'],
    ['14 thou + .1', '.1 has no unit: write .1 thou or .1 in'],
    ['3.00 + 14 thou', '3.00 has no unit: write 3.00 thou or 3.00 in'],
    ['1.5 + 3/8 in', '1.5 has no unit: write 1.5 thou or 1.5 in'],
    ['2 + 3/8 in', '2 has no unit: write 2 thou or 2 in, or 2-3/8 in for both'],
    ['3 ft - 2', '2 has no unit: write 2 thou, 2 in or 2 ft'],
    // 0.0205 thou are half a micrometre, 200 in five metres: nobody reads either in a shop.
    ['2.1250 in - 0.0205', '0.0205 has no unit: write 0.0205 in, if that is meant'],
    ['2.1250 in - 200', '200 has no unit: write 200 thou, if that is meant'],
    ['2 in - 0', '0 has no unit: write 0 in, if that is meant'],
    ['53 mm - 0.5', '0.5 has no unit: write 0.5 mm, if that is meant'],
    ['53 mm - 20', '20 has no unit: write 20 µm or 20 mm'],
    ['60 psi + 5', '5 has no unit: write 5 psi, if that is meant'],
    ['85 degF + 10', '10 has no unit: write 10 fahrenheitDifference, if that is meant'],
    ['step = 20; 2 in - step', 'step is 20 and has no unit: write 20 thou or 20 in'],
    ['2 in - 2 * 10', '2 * 10 is 20 and has no unit: write 20 thou or 20 in'],
    ['x = 2-1/8; 20 thou + 2', '2 has no unit: write 2 thou or 2 in'],
    // With spaces it is a difference: 2 - 0.125.
    ['2 - 1/8 - 20 thou', '2 - 1/8 is 1.875 and has no unit: write 1.875 thou or 1.875 in'],
  ])('%s', async (typed, said) => {
    expect(await complaint(typed)).toBe(said);
  });

  it('can be typed as it is told to', async () => {
    for (const [typed, expected] of [
      // 2.125 in - 20 thou; 62.5 - 2 thou; 53 mm - 20 µm.
      ['2-1/8 in - 20 thou', '2.105 in'],
      ['1/16 in - 2 thou to thou', '60.5 thou'],
      ['53 mm - 20 µm to mm', '52.98 mm'],
      ['2-3/8 in', '2.375 in'],
    ] as const) {
      expect((await captured(['calc', typed])).out.trimEnd()).toBe(expected);
    }
  });

  it('leaves text in quotes alone', async () => {
    expect((await captured(['calc', '"2 1/8"'])).out).toBe('2 1/8\n');
  });
});
