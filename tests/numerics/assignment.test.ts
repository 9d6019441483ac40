import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastAssignment } from '../../src/numerics/assignment.js';

/** The least cost, by trying everything. */
function leastCost(costs: readonly (readonly bigint[])[], taken: readonly number[] = []): bigint {
  const row = costs[taken.length];
  if (row === undefined) return 0n;
  const each = row.flatMap((cost, column) =>
    taken.includes(column) ? [] : [cost + leastCost(costs, [...taken, column])],
  );
  return each.sort((a, b) => (a < b ? -1 : 1))[0] as bigint;
}

describe('leastAssignment', () => {
  it('costs no more than any other, in squares and oblongs, with costs of any sign and length', () => {
    const cost = fc.oneof(fc.bigInt({ min: -9n, max: 9n }), fc.bigInt({ min: 0n, max: 2n ** 90n }));
    const table = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.nat(2)).chain(([rows, more]) =>
      fc.array(fc.array(cost, { minLength: rows + more, maxLength: rows + more }), {
        minLength: rows,
        maxLength: rows,
      }),
    );
    fc.assert(
      fc.property(table, (costs) => {
        const columns = leastAssignment(costs);
        expect(new Set(columns).size).toBe(costs.length);
        const total = columns.reduce((sum, j, i) => sum + (costs[i]?.[j] as bigint), 0n);
        expect(total).toBe(leastCost(costs));
      }),
      { numRuns: 200 },
    );
  });

  it('has nothing to assign', () => {
    expect(leastAssignment([])).toEqual([]);
  });
});
