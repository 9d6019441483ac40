import { describe, expect, it } from 'vitest';
import { inThousandths } from '../../src/planning/money.js';

describe('money', () => {
  // By hand: in doubles 1.005 * 1000 is 1004.9999999999999, and 1.001 * 1000 is 1000.9999999999999.
  it.each([
    [1.005, 1005],
    [1.001, 1001],
    [0.29, 290],
    [4.35, 4350],
    [1.1, 1100],
    [999_999_999.999, 999_999_999_999],
  ])('counts %d in whole thousandths', (amount, whole) => {
    expect(inThousandths({ amount, currency: 'EUR' })).toBe(whole);
  });
});
