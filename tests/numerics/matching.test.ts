import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maximumMatching } from '../../src/numerics/matching.js';

const same = (name: string) => name;

/** The most bearings that can be served, by trying everything. */
function mostServed(wanted: readonly (readonly string[])[], pairs: Map<string, number>): number {
  const [first, ...rest] = wanted;
  if (first === undefined) return 0;
  const skipped = mostServed(rest, pairs);
  const served = first
    .filter((name) => (pairs.get(name) ?? 0) > 0)
    .map((name) => 1 + mostServed(rest, new Map(pairs).set(name, (pairs.get(name) ?? 0) - 1)));
  return Math.max(skipped, ...served);
}

describe('maximumMatching', () => {
  it('gives each its best while there are enough', () => {
    expect(maximumMatching([['a', 'b'], ['a']], same, new Map([['a', 2]]))).toEqual(['a', 'a']);
  });

  it('moves one to its next best where that serves another', () => {
    const pairs = new Map([
      ['a', 1],
      ['b', 1],
    ]);
    expect(maximumMatching([['a', 'b'], ['a']], same, pairs)).toEqual(['b', 'a']);
    expect(maximumMatching([['a'], ['a']], same, pairs)).toEqual(['a', undefined]);
  });

  it('serves as many as can be served, never more of one than there are', () => {
    const names = fc.constantFrom('a', 'b', 'c');
    const bearings = fc.array(fc.uniqueArray(names), { maxLength: 5 });
    const shelf = fc.array(fc.tuple(names, fc.nat(2)), { maxLength: 3 });
    fc.assert(
      fc.property(bearings, shelf, (wanted, entries) => {
        const pairs = new Map(entries);
        const given = maximumMatching(wanted, same, pairs);
        const served = given.filter((name) => name !== undefined);
        expect(served).toHaveLength(mostServed(wanted, pairs));
        given.forEach((name, i) => {
          if (name !== undefined) expect(wanted[i]).toContain(name);
        });
        for (const name of served) {
          expect(served.filter((each) => each === name).length).toBeLessThanOrEqual(
            pairs.get(name) ?? 0,
          );
        }
      }),
    );
  });
});
