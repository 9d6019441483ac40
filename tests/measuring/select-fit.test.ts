import { type FitRequest, type Length, micrometre, mm, selectFit } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

/** Sizes in micrometres; limits from 20 to 60 µm. */
const fitOf = (
  rooms: readonly number[],
  sizes: readonly number[],
  current: readonly (number | undefined)[] = [],
): FitRequest => ({
  places: rooms.map((room, i) => ({
    name: `place ${i}`,
    room: micrometre(80_000 + room),
    ...(current[i] !== undefined && { current: `part ${current[i]}` }),
  })),
  parts: sizes.map((size, i) => ({ name: `part ${i}`, size: micrometre(80_000 + size) })),
  limits: { min: micrometre(20), max: micrometre(60) },
});

/** The parts that were chosen, by their places in the list. */
const chosen = (request: FitRequest) =>
  selectFit(request).pairs.map(({ part }) => Number(part.replace('part ', '')));

/** Every way to give each place a part of its own. */
function choices(
  places: number,
  parts: number,
  so: readonly number[] = [],
): readonly (readonly number[])[] {
  if (so.length === places) return [so];
  return Array.from({ length: parts }, (_, i) => i)
    .filter((i) => !so.includes(i))
    .flatMap((i) => choices(places, parts, [...so, i]));
}

/** The best by trying everything: margins from the worst on, then parts that stay, then the order given. */
function byTrying(
  rooms: readonly number[],
  sizes: readonly number[],
  current: readonly (number | undefined)[],
) {
  const keyOf = (choice: readonly number[]) => [
    ...choice
      .map((part, i) => {
        const clearance = (rooms[i] as number) - (sizes[part] as number);
        return -Math.min(clearance - 20, 60 - clearance);
      })
      .sort((a, b) => b - a),
    choice.filter((part, i) => part !== current[i]).length,
    ...choice,
  ];
  const compare = (a: readonly number[], b: readonly number[]) => {
    const at = a.findIndex((x, i) => x !== b[i]);
    return at < 0 ? 0 : (a[at] as number) - (b[at] as number);
  };
  return choices(rooms.length, sizes.length)
    .map((choice) => ({ choice, key: keyOf(choice) }))
    .reduce((a, b) => (compare(b.key, a.key) < 0 ? b : a)).choice;
}

describe('selectFit', () => {
  it('is what trying every choice gives', () => {
    // Few sizes, so that many choices are equal.
    const size = fc.integer({ min: 0, max: 12 }).map((n) => 5 * n);
    const request = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.nat(2)).chain(([places, more]) =>
      fc.record({
        rooms: fc.array(
          size.map((n) => n + 40),
          { minLength: places, maxLength: places },
        ),
        sizes: fc.array(size, { minLength: places + more, maxLength: places + more }),
        held: fc.shuffledSubarray([...Array(places + more).keys()]),
      }),
    );
    fc.assert(
      fc.property(request, ({ rooms, sizes, held }) => {
        const current = rooms.map((_, i) => held[i]);
        expect(chosen(fitOf(rooms, sizes, current))).toEqual(byTrying(rooms, sizes, current));
      }),
      { numRuns: 60 },
    );
  });

  it('is what trying every choice of seven parts for six places gives', () => {
    const [rooms, sizes] = [
      [71, 48, 90, 66, 55, 83],
      [30, 12, 41, 26, 8, 19, 37],
    ];
    expect(chosen(fitOf(rooms, sizes))).toEqual(byTrying(rooms, sizes, []));
  });

  it('betters the next worst once the worst is as good as it can be', () => {
    // The third place and its part have a margin of 0 whatever is done; the other two are put right all the same.
    const request = fitOf([40, 60, 500], [0, 20, 440]);
    expect(chosen(request)).toEqual([0, 1, 2]);
    expect(chosen(fitOf([60, 40, 500], [0, 20, 440]))).toEqual([1, 0, 2]);
  });

  it('leaves parts that are alike where they are, and moves none for nothing', () => {
    expect(chosen(fitOf([40, 40, 40], [0, 0, 0], [2, 0, 1]))).toEqual([2, 0, 1]);
    expect(chosen(fitOf([40, 40], [0, 0, 0]))).toEqual([0, 1]);
    const { pairs } = selectFit(fitOf([40, 40], [0, 0], [1, undefined]));
    expect(pairs.map(({ isMoved }) => isMoved)).toEqual([false, true]);
  });

  it('takes the wall of shells twice from what housing and journal leave', () => {
    // Housing 2.2510 in less journal 2.1250 in leaves 0.1260 in; walls of 0.0620 in leave 0.0020 in of oil.
    const inch = (x: number) => mm(25.4 * x);
    const { pairs } = selectFit({
      places: [{ name: 'main 1', room: inch(0.126) }],
      parts: [
        { name: 'thick', size: inch(0.0625) },
        { name: 'standard', size: inch(0.062) },
      ],
      times: 2,
      limits: { min: inch(0.0015), max: inch(0.0025) },
    });
    expect(pairs[0]?.part).toBe('standard');
    expect(pairs[0]?.clearance.min).toBeCloseTo(inch(0.002), 12);
    expect(pairs[0]?.finding).toMatchObject({ verdict: 'within', basis: { kind: 'specified' } });
  });

  it('judges the worse end of spans, and says where no choice is within', () => {
    const { outcome, leastMargin, spare } = selectFit({
      ...fitOf([40], [0, 900]),
      parts: [
        { name: 'A', size: { min: micrometre(79_970), max: micrometre(80_030) } },
        { name: 'B', size: micrometre(80_900) },
      ],
    });
    expect(outcome).toBe('some outside');
    expect(leastMargin).toBeCloseTo(micrometre(-10), 12);
    expect(spare).toEqual(['B']);
  });

  it('chooses for 32 places among 64 parts', () => {
    const rooms = Array.from({ length: 32 }, (_, i) => 40 + ((i * 7919) % 61));
    const sizes = Array.from({ length: 64 }, (_, i) => (i * 104_729) % 67);
    // Enough parts of every size are there: each clearance can be within 2 µm of the middle, as trying one by one shows.
    const { pairs, outcome } = selectFit(fitOf(rooms, sizes));
    expect(outcome).toBe('all within');
    expect(new Set(pairs.map(({ part }) => part)).size).toBe(32);
  });

  it.each<[string, string, Partial<FitRequest>]>([
    ['no place', 'places', { places: [] }],
    ['fewer parts than places', 'parts', { parts: [] }],
    ['limits reversed', 'limits', { limits: { min: mm(2), max: mm(1) } }],
    ['a bare number', 'parts[0].size', { parts: [{ name: 'a', size: 80 as Length }] }],
  ])('refuses %s', (_, parameter, wrong) => {
    expect(refusal(() => selectFit({ ...fitOf([40], [0]), ...wrong })).parameter).toBe(parameter);
  });
});
