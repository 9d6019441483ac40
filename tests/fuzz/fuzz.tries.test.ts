import { coherentUnit, convert, parse, parseLength, unitTable, valueIn } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tries } from '../support/tries.js';
import { type Calls, calls } from './calls/calls.js';
import { holed, hostiles, type Path, pathsIn, replaced, showPath, without } from './hostile.js';
import { complaint } from './outcome.js';
import { registry } from './registry.js';

/** Of more cases than this every so-manieth is tried: a sheet has hundreds of places for wrong values. */
const MOST_CASES = tries(12, 1_000);
/** The same cases in every run. */
const SEED = 5_320_302;

const everyFunction = Object.entries(registry);

describe.each(everyFunction)('%s', (_, target) => {
  it('takes its sound calls', async () => {
    expect(target.sound.length).toBeGreaterThan(0);
    for (const args of target.sound) {
      expect(await complaint(target, args, 'sound')).toBeUndefined();
    }
  });

  it('gives a finite result or a RebuildInputError for one wrong value anywhere', async () => {
    const cases = target.sound.flatMap((args, n) => oneWrongValue(args, n));
    // Those that take long are tried in full by `npm run test:deep`.
    const most = target.cases === undefined ? MOST_CASES : tries(target.cases / 30, target.cases);
    const stride = Math.ceil(cases.length / most);
    const tried = cases.filter((__, i) => i % stride === 0);
    expect(await complaints(target, tried)).toEqual([]);
  });

  it('gives a finite result or a RebuildInputError for several wrong values', async () => {
    const [first] = target.sound;
    const paths = pathsIn(first);
    // A function without arguments cannot be given wrong ones.
    if (paths.length === 0) return;
    const changes = fc.array(change(paths), { minLength: 1, maxLength: 4 });
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...target.sound), changes, async (args, wrong) => {
        const bad = wrong.reduce<unknown>((all, { path, by }) => replaced(all, path, by), args);
        expect(await complaint(target, bad as readonly unknown[])).toBeUndefined();
      }),
      { seed: SEED, numRuns: Math.min(tries(6, 500), target.cases ?? 500) },
    );
  });
});

interface Case {
  readonly at: string;
  readonly wrong: string;
  /** Made when it is tried: a trace of hundreds of loads has hundreds of thousands of cases, of which few are. */
  readonly args: () => readonly unknown[];
}

function oneWrongValue(args: readonly unknown[], n: number): readonly Case[] {
  return pathsIn(args).flatMap((path) => {
    const at = `call ${n} args${showPath(path)}`;
    return [
      ...hostiles.map(({ name, make }) => ({
        at,
        wrong: name,
        args: () => replaced(args, path, make()) as readonly unknown[],
      })),
      { at, wrong: 'removed', args: () => without(args, path) as readonly unknown[] },
      ...(path.length > 1 && typeof path.at(-1) === 'number'
        ? [{ at, wrong: 'a hole', args: () => holed(args, path) as readonly unknown[] }]
        : []),
    ];
  });
}

/** What is wrong, each with all the values that lead to it. */
async function complaints(target: Calls, cases: readonly Case[]): Promise<readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { at, wrong, args } of cases) {
    const flaw = await complaint(target, args());
    if (flaw === undefined) continue;
    const key = `${at} ${flaw}`;
    found.set(key, [...(found.get(key) ?? []), wrong]);
  }
  return [...found].map(([key, wrong]) => `${key}: with ${wrong.join(', ')}`);
}

/** A change of one place: to something hostile, any number, or any text. */
function change(paths: readonly Path[]) {
  const by = fc.oneof(
    fc.constantFrom(...hostiles).map(({ make }) => make()),
    fc.double(),
    fc.double({ min: -1, max: 1, noNaN: true }),
    fc.string(),
  );
  return fc.record({ path: fc.constantFrom<Path>(...paths), by });
}

describe('every unit', () => {
  it.each(Object.entries(unitTable))('%s makes finite quantities only', async (symbol, unit) => {
    const make = calls(unit, { sound: [[1], [-40]], provoked: {} });
    const read = calls((value: number) => valueIn<typeof unit.dimension>(unit(value), unit), {
      sound: [[1]],
      provoked: {},
    });
    const cases = make.sound.flatMap((args, n) => oneWrongValue(args, n));
    expect(
      await complaints(make, [...cases, { at: 'args', wrong: 'none', args: () => [] }]),
    ).toEqual([]);
    expect(await complaints(read, cases)).toEqual([]);
    expect(unit.symbol).toBe(symbol);
  });
});

describe('text', () => {
  const symbols = Object.keys(unitTable);
  const pieces = ['1', '2', '/', '-', ' ', '.', ',', 'e', '+', '"', '−', 'under', ...symbols];
  const anyText = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 120 }),
    fc.string({ unit: 'binary' }),
    fc.array(fc.constantFrom(...pieces), { maxLength: 8 }).map((some) => some.join('')),
    fc.tuple(fc.double(), fc.constantFrom(...symbols)).map(([x, symbol]) => `${x} ${symbol}`),
  );
  const dimension = fc.oneof(fc.constantFrom(...Object.keys(coherentUnit)), fc.string());
  const symbol = fc.oneof(fc.constantFrom(...symbols), fc.string(), fc.constant('__proto__'));
  const take = (run: (...args: never[]) => unknown) => calls(run, { sound: [], provoked: {} });
  const options = { seed: SEED, numRuns: tries(300, 20_000) };

  it('is parsed to a finite quantity or refused', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, dimension, async (text, name) => {
        expect(await complaint(take(parse), [text, name])).toBeUndefined();
      }),
      options,
    );
  });

  it('is parsed to a finite length or refused', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, async (text) => {
        expect(await complaint(take(parseLength), [text])).toBeUndefined();
      }),
      options,
    );
  });

  it('names units that convert to a finite number, or is refused', async () => {
    const value = fc.oneof(fc.double(), fc.string());
    await fc.assert(
      fc.asyncProperty(value, symbol, symbol, async (x, from, to) => {
        expect(await complaint(take(convert), [x, from, to])).toBeUndefined();
      }),
      options,
    );
  });
});
