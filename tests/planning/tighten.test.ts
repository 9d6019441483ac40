import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Allowed, type Row, sumOfTerms } from '../../src/planning/model.js';
import { lowestTerms, tightened } from '../../src/planning/tighten.js';

const row = (terms: Row['terms'], min: number, max: number): Row => ({ terms, min, max });

/** All that a small model allows, by trying everything. */
function allowed({ bounds, rows }: Allowed): readonly string[] {
  const all = bounds.reduce<number[][]>(
    (some, bound) =>
      some.flatMap((values) => Array.from({ length: bound + 1 }, (_, value) => [...values, value])),
    [[]],
  );
  const holds = (values: readonly number[]) =>
    rows.every(
      ({ terms, min, max }) => sumOfTerms(terms, values) >= min && sumOfTerms(terms, values) <= max,
    );
  return all.filter(holds).map(String);
}

describe('tightened', () => {
  it('leaves out what no row has room for, however dear it is', () => {
    // An engine costs at most 400: 999 999 999 is out, and of 150 there can be 2.
    const cost = row(
      [
        [0, 999_999_999_999],
        [1, 150_000],
        [2, 20_000],
      ],
      -Infinity,
      400_000,
    );
    expect(tightened({ bounds: [5, 5, 5], rows: [cost] })).toEqual({
      bounds: [0, 2, 5],
      rows: [
        row(
          [
            [1, 15],
            [2, 2],
          ],
          -Infinity,
          40,
        ),
      ],
    });
  });

  it('counts what makes room', () => {
    // No more shells than twice the crankshafts.
    const shells = row(
      [
        [0, 1],
        [1, -2],
      ],
      -Infinity,
      0,
    );
    expect(tightened({ bounds: [10_000, 3], rows: [shells] }).bounds).toEqual([6, 3]);
  });

  it('rounds a limit to what whole numbers can reach, and adds up what stands twice', () => {
    const twice = row(
      [
        [0, 3],
        [1, 6],
        [0, 3],
      ],
      5,
      17,
    );
    expect(tightened({ bounds: [1, 2], rows: [twice] }).rows).toEqual([
      row(
        [
          [0, 1],
          [1, 1],
        ],
        1,
        2,
      ),
    ]);
  });

  it('allows what was allowed, and nothing else', () => {
    const small = fc.integer({ min: -4, max: 4 });
    const model = fc.record({
      bounds: fc.tuple(fc.nat(3), fc.nat(3), fc.nat(3)),
      rows: fc.array(
        fc.record({
          terms: fc.array(fc.tuple(fc.nat(2), small), { maxLength: 4 }),
          min: fc.oneof(fc.constant(-Infinity), small),
          max: fc.oneof(fc.constant(Infinity), fc.integer({ min: -4, max: 9 })),
        }),
        { maxLength: 3 },
      ),
    });
    fc.assert(
      fc.property(model, (given) => {
        expect(allowed(tightened(given))).toEqual(allowed(given));
      }),
    );
  });
});

describe('lowestTerms', () => {
  it('gives the common factor', () => {
    expect(
      lowestTerms(
        [
          [0, 14_920],
          [1, 0],
          [2, 9980],
        ],
        [1, 1, 1],
      ),
    ).toEqual([
      [
        [0, 746],
        [2, 499],
      ],
      20,
    ]);
    expect(lowestTerms([], [])).toEqual([[], 1]);
  });
});
