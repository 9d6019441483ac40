import { type Length, thou } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packsFor } from '../../src/planning/thrust.js';

const limits = { min: thou(5), max: thou(12) };

describe('packsFor', () => {
  it('needs no washer where the end play is right without', () => {
    expect(packsFor(thou(8), [thou(2)], [9], limits)).toEqual([[]]);
  });

  it('finds none where there is too little play already, or three washers are too few', () => {
    expect(packsFor(thou(4), [thou(2)], [9], limits)).toEqual([]);
    expect(packsFor(thou(19), [thou(2)], [9], limits)).toEqual([]);
    expect(packsFor(thou(18), [thou(2)], [9], limits)).toEqual([[0, 0, 0]]);
  });

  it('takes no more of a washer than there are', () => {
    expect(packsFor(thou(16), [thou(2), thou(3)], [1, 1], limits)).toEqual([[0, 1]]);
    expect(packsFor(thou(16), [thou(2)], [1], limits)).toEqual([]);
  });

  it('finds just the packs within the limits of which no part would do, by trying all', () => {
    const washers = fc.array(fc.tuple(fc.integer({ min: 1, max: 12 }), fc.nat(3)), {
      maxLength: 4,
    });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), washers, (without, kinds) => {
        const thicknesses = kinds.map(([thickness]) => thickness);
        const counts = kinds.map(([, count]) => count);
        const packs = packsFor(thou(without), thicknesses.map(thou), counts, limits);
        const total = (pack: readonly number[]) =>
          pack.reduce((sum, i) => sum + (thicknesses[i] ?? 0), 0);
        const within = (pack: readonly number[]) =>
          without - total(pack) >= 5 && without - total(pack) <= 12;
        const every: number[][] = [[]];
        for (const pack of every) {
          if (pack.length === 3) continue;
          for (let i = pack.at(-1) ?? 0; i < kinds.length; i++) {
            const used = pack.filter((each) => each === i).length;
            if (used < (counts[i] ?? 0)) every.push([...pack, i]);
          }
        }
        const least = every.filter(
          (pack) => within(pack) && pack.every((_, i) => !within(pack.filter((_, j) => j !== i))),
        );
        const sorted = (all: readonly (readonly number[])[]) => all.map(String).sort();
        expect(sorted(packs)).toEqual(sorted(least));
      }),
    );
  });

  it('holds to one limit where only one is given', () => {
    expect(packsFor(thou(30), [thou(2)], [9], { min: thou(5) })).toEqual([[]]);
    expect(packsFor(thou(3), [thou(2)], [9], { max: thou(2) as Length })).toEqual([[0]]);
  });
});
