import fc from 'fast-check';
import { expect, it } from 'vitest';
import { quantilesOf } from '../../src/numerics/order-statistics.js';

it('gives the quantiles that sorting gives', () => {
  const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 5 });
  const numbers = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(numbers, shares, (list, unsorted) => {
      const ascending = [...unsorted].sort((a, b) => a - b);
      const sorted = [...list].sort((a, b) => a - b);
      const expected = ascending.map((share) => {
        const place = share * (sorted.length - 1);
        const below = sorted[Math.floor(place)] as number;
        return below + (place % 1) * ((sorted[Math.ceil(place)] as number) - below);
      });
      const found = quantilesOf(Float64Array.from(list), ascending);
      found.forEach((quantile, i) => {
        expect(quantile).toBeCloseTo(expected[i] as number, 12);
      });
    }),
  );
});
