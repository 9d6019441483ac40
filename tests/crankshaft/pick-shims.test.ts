import { micrometre, pickShims, type Shim, thou } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { diceOf } from '../support/dice.js';

const shelfOf = (micrometres: readonly number[]): Shim[] =>
  micrometres.map((size, i) => ({ name: `shim ${i}`, thickness: micrometre(size) }));

/** The choice by trying every stack: fewest within, else nearest, then thinner, then first on the shelf. */
function byTrying(sizes: readonly number[], min: number, max: number): readonly number[] {
  const stackOf = (mask: number) => {
    let [count, total] = [0, 0];
    for (let i = 0; i < sizes.length; i++) {
      if (!((mask >> i) & 1)) continue;
      count += 1;
      total += sizes[i] as number;
    }
    const outside = total < min || total > max ? 1 : 0;
    return { mask, count, total, outside, away: Math.abs(2 * total - min - max) };
  };
  let best = stackOf(0);
  for (let mask = 1; mask < 2 ** sizes.length; mask++) {
    const next = stackOf(mask);
    const order =
      next.outside - best.outside ||
      (next.outside ? 0 : next.count - best.count) ||
      next.away - best.away ||
      next.count - best.count ||
      next.total - best.total;
    if (order < 0 || (order === 0 && holdsFirstDifference(mask, best.mask))) best = next;
  }
  return sizes.flatMap((_, i) => ((best.mask >> i) & 1 ? [i] : []));
}

/** Whether `a` holds the first shim that only one of the two holds. */
function holdsFirstDifference(a: number, b: number): boolean {
  let place = 0;
  while (((a >> place) & 1) === ((b >> place) & 1)) place += 1;
  return ((a >> place) & 1) === 1;
}

describe('pickShims', () => {
  it('takes the fewest shims that lie within, nearest the middle', () => {
    const stack = pickShims(shelfOf([100, 200, 300, 150, 250]), {
      min: micrometre(390),
      max: micrometre(420),
    });
    // 150 + 250 = 400 and 100 + 300 = 400 are equally near 405: the first on the shelf wins.
    expect(stack.shims.map(({ name }) => name)).toEqual(['shim 0', 'shim 2']);
    expect(stack.finding.verdict).toBe('within');
  });

  it('takes none where nothing is to be packed', () => {
    const stack = pickShims(shelfOf([100]), { min: thou(0), max: thou(1) });
    expect(stack).toMatchObject({ shims: [], total: 0 });
  });

  it('gives the nearest where nothing lies within, and says so', () => {
    const low = pickShims(shelfOf([100, 100]), { min: micrometre(250), max: micrometre(260) });
    expect(low.shims).toHaveLength(2);
    expect(low.finding.verdict).toBe('below');
    expect(pickShims([], { min: thou(3), max: thou(4) }).finding.verdict).toBe('below');
  });

  it('is what trying every stack gives', () => {
    const sizes = fc.array(fc.integer({ min: 20, max: 60 }), { maxLength: 9 });
    const span = fc.tuple(fc.nat(300), fc.nat(30));
    fc.assert(
      fc.property(sizes, span, (shelf, [min, width]) => {
        const wanted = { min: micrometre(min), max: micrometre(min + width) };
        const places = byTrying(shelf, min, min + width);
        const names = pickShims(shelfOf(shelf), wanted).shims.map(({ name }) => name);
        expect(names).toEqual(places.map((i) => `shim ${i}`));
      }),
      { numRuns: 500 },
    );
  });

  it.each([1, 1000, 25_400])(
    'is what trying every stack of 17 gives, in steps of %i nm',
    (step) => {
      const dice = diceOf(step);
      // In nanometres, from 20 to 300 µm.
      const sizes = Array.from(
        { length: 17 },
        () => step * Math.ceil(dice.from(20_000, 300_000) / step),
      );
      for (const min of [0, 30_000, 500_000, 1_200_000, 2_000_000, 9_000_000]) {
        const span = { min: micrometre(min / 1000), max: micrometre((min + 3) / 1000) };
        const { shims } = pickShims(shelfOf(sizes.map((size) => size / 1000)), span);
        const places = byTrying(sizes, min, min + 3);
        expect(shims.map(({ name }) => name)).toEqual(places.map((i) => `shim ${i}`));
      }
    },
  );

  it('takes the fewest of 40 too', () => {
    const sizes = Array.from({ length: 40 }, (_, i) => 100 + ((i * 7919) % 997));
    // The fewest shims to every total in whole micrometres, one shim after another.
    const fewest: number[] = [0];
    for (const size of sizes) {
      for (let total = 7001; total >= size; total--) {
        const so = (fewest[total - size] ?? Infinity) + 1;
        fewest[total] = Math.min(fewest[total] ?? Infinity, so);
      }
    }
    const wanted = { min: micrometre(7000), max: micrometre(7001) };
    const { shims, total, finding } = pickShims(shelfOf(sizes), wanted);
    expect(finding.verdict).toBe('within');
    expect(shims.length).toBe(Math.min(fewest[7000] ?? Infinity, fewest[7001] ?? Infinity));
    expect(shims.reduce((sum, { thickness }) => sum + thickness, 0)).toBe(total);
  });

  it.each<[string, unknown, unknown, RegExp]>([
    ['more than 40', shelfOf(Array.from({ length: 41 }, () => 100)), undefined, /at most 40/],
    ['a bare number', [{ name: 'a', thickness: 0.05 }], undefined, /outside/],
    ['no name', [{ thickness: thou(5) }], undefined, /name/],
    ['a span reversed', [], { min: thou(2), max: thou(1) }, /wrong way round/],
    ['no list', {}, undefined, /list/],
  ])('refuses %s', (_, shelf, wanted, message) => {
    const span = wanted ?? { min: thou(1), max: thou(2) };
    expect(refusal(() => pickShims(shelf as Shim[], span as never)).message).toMatch(message);
  });
});
