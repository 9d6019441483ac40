import { micrometre, pickShims, type Shim, thou } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const shelfOf = (micrometres: readonly number[]): Shim[] =>
  micrometres.map((size, i) => ({ name: `shim ${i}`, thickness: micrometre(size) }));

/** The choice by trying every stack: fewest within, else nearest, then thinner, then first on the shelf. */
function byTrying(sizes: readonly number[], min: number, max: number): readonly number[] {
  const middle = (min + max) / 2;
  const stacks = Array.from({ length: 2 ** sizes.length }, (_, mask) => {
    const places = sizes.flatMap((__, i) => ((mask >> i) & 1 ? [i] : []));
    return { places, total: places.reduce((sum, i) => sum + (sizes[i] ?? 0), 0) };
  });
  const within = stacks.filter(({ total }) => total >= min && total <= max);
  const away = (total: number) => Math.abs(total - middle);
  const order = (within.length > 0 ? within : stacks).sort(
    (a, b) =>
      (within.length > 0 ? a.places.length - b.places.length : 0) ||
      away(a.total) - away(b.total) ||
      (within.length > 0 ? 0 : a.places.length - b.places.length) ||
      a.total - b.total ||
      firstDifference(a.places, b.places),
  );
  return order[0]?.places ?? [];
}

/** Before the other if it holds the first shim that only one of the two holds. */
function firstDifference(a: readonly number[], b: readonly number[]): number {
  const place = [...a, ...b]
    .filter((i) => a.includes(i) !== b.includes(i))
    .sort((x, y) => x - y)[0];
  return place === undefined ? 0 : a.includes(place) ? -1 : 1;
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
