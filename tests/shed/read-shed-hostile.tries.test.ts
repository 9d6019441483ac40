import { RebuildInputError } from 'crankwright';
import { readShed } from 'crankwright/shed';
import { readSheet } from 'crankwright/sheet';
import { closest } from 'fastest-levenshtein';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { changed, exampleText, type Json } from '../sheet/sheets.js';
import { tries } from '../support/tries.js';
import { plainShed, shedProblems } from './sheds.js';

const DEPTH = 100_000;

/** A value nested too deep for anything that calls itself. */
const bottomless = Array.from({ length: DEPTH }).reduce<Json>(
  (value, _, i) => (i % 2 === 0 ? [value] : { deeper: value }),
  'the bottom',
);

const places = (value: Json, at = ''): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) => {
        const path = Array.isArray(value) ? `${at}[${key}]` : at === '' ? key : `${at}.${key}`;
        return [path, ...places(inner, path)];
      })
    : [];

/** Every so-manieth place in `npm test`, every place in `npm run test:deep`. */
const some = (all: readonly string[]) => all.filter((_, i) => i % tries(7, 1) === 0);

describe('a file nested deep', () => {
  const csv = 'part,feature,station,angle,reading\nblock A,cylinder 1,1 in,0 deg,3 in';

  it('is refused at its place, wherever that is in a shed', () => {
    for (const path of [...some(places(plainShed())), 'strange', 'rods[0].strange']) {
      const problems = shedProblems(changed(plainShed(), { [path]: bottomless }), csv);
      expect(problems.length, path).toBeGreaterThan(0);
    }
  });

  it('is refused at its place, wherever that is in a sheet', () => {
    const plain = (): Json => JSON.parse(exampleText('inch'));
    for (const path of [...some(places(plain())), 'strange', 'rods[0].strange']) {
      expect(() => readSheet(changed(plain(), { [path]: bottomless })), path).toThrow(
        RebuildInputError,
      );
    }
  });

  it('is refused as text', () => {
    const nested = `${'['.repeat(DEPTH)}${']'.repeat(DEPTH)}`;
    const text = JSON.stringify(plainShed());
    for (const deep of [
      nested,
      ...['"the shed"', '"scored"'].map((at) => text.replace(at, nested)),
    ]) {
      expect(shedProblems(deep)).toEqual([
        { path: 'shed, line 1', message: expect.stringMatching(/nested too deeply$/) },
      ]);
    }
  });

  it('is refused if it holds itself', () => {
    const shed = plainShed();
    const round: { [key: string]: Json } = { ...shed, rods: [shed], engine: shed };
    round['toBuy'] = round;
    expect(shedProblems(round, csv).length).toBeGreaterThan(0);
  });
});

vi.mock('fastest-levenshtein', { spy: true });

/** How many lines or parts: as many as are taken, in `npm run test:deep`. */
const MANY = tries(2_000, 20_000);
/** Crankshafts that fill 2 MB, or fewer. */
const CRANKSHAFTS = tries(200, 1_600);

describe('a file of up to 2 MB', () => {
  // The one work that could grow with lines times names: a few dozen words for each mistake are enough.
  const wordsCompared = () =>
    vi.mocked(closest).mock.calls.reduce((sum, [, known]) => sum + known.length, 0);
  beforeEach(() => {
    vi.mocked(closest).mockClear();
  });
  const many = (count: number, part: (i: number) => Json): { [key: string]: Json } => ({
    ...plainShed(),
    crankshafts: Array.from({ length: count }, (_, i) => part(i)),
  });
  const [crankshaft] = plainShed()['crankshafts'] as { [key: string]: Json }[];
  const sound = (i: number): Json => ({ ...crankshaft, name: `crankshaft ${i}` });

  it('reads', () => {
    const text = JSON.stringify(many(CRANKSHAFTS, sound));
    expect(text.length).toBeGreaterThan(1_000 * CRANKSHAFTS);
    expect(readShed(text).crankshafts).toHaveLength(CRANKSHAFTS);
  });

  it('reads as a value with as many housings and shells as are taken', () => {
    const shed = {
      ...plainShed(),
      rods: Array.from({ length: MANY }, (_, i) => ({
        name: `rod ${i}`,
        rods: [{ name: 'big end', housingBore: `1.${7400 + (i % 200)} in` }],
      })),
      shells: Array.from({ length: MANY }, (_, i) => ({
        name: `shells ${i}`,
        fits: 'rods',
        undersize: '10 under',
        wall: '0.0670 in',
        pairs: 1,
      })),
    };
    expect(readShed(shed).shells).toHaveLength(MANY);
  });

  it('is told all its mistakes', () => {
    const text = JSON.stringify(
      many(CRANKSHAFTS, (i) => ({
        ...crankshaft,
        name: 'the same',
        thrustWidth: '2.5 inn',
        colour: 'red',
        [`field ${i}`]: 1,
      })),
    );
    expect(shedProblems(text)).toHaveLength(4 * CRANKSHAFTS - 1);
    expect(wordsCompared()).toBeLessThan(50 * 4 * CRANKSHAFTS);
  });

  it('is told all mistakes of as many readings as are taken', () => {
    const rows = Array.from({ length: MANY - 1 }, (_, i) => `crankshaft ${i},rod 9,,,1 in`);
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    expect(shedProblems(many(MANY / 5, sound), csv)).toHaveLength(MANY - 1);
    expect(wordsCompared()).toBeLessThan(60 * (MANY - 1));
  });

  it('is told all mistakes of the readings of one part with as many places', () => {
    const rods = Array.from({ length: MANY }, (_, i) => ({ name: `rod ${i}` }));
    const rows = Array.from({ length: MANY - 1 }, () => 'rods A,rod X,,,1 in');
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    const problems = shedProblems(changed(plainShed(), { 'rods[0].rods': rods }), csv);
    expect(wordsCompared()).toBeLessThan(60 * (MANY - 1));
    // Its rods are more than the engine has.
    expect(problems).toHaveLength(1 + MANY - 1);
    expect(problems.at(-1)?.message.length).toBeLessThan(400);
  });

  it('is refused if one place has more readings than anybody takes', () => {
    const rows = Array.from(
      { length: MANY - 1 },
      (_, i) => `rods A,rod A1,,,1.${7507 + (i % 2)} in`,
    );
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    const shed = changed(plainShed(), { 'rods[0].rods[0].housingBore': undefined });
    expect(shedProblems(shed, csv)).toEqual([
      { path: 'readings, line 2: reading', message: 'must have at most 1000 entries' },
    ]);
  });
});

describe('a field __proto__', () => {
  it.each(['"name":"block A"', '"name":"cylinder 1"', '"version":1', '"cylinders":2'])(
    'beside %s is a strange field and nothing else',
    (field) => {
      const text = JSON.stringify(plainShed()).replace(field, `"__proto__":{"faults":[]},${field}`);
      const problems = shedProblems(text, 'part,feature,station,angle,reading\nhead A,x,,,1 in');
      expect(problems.map(({ path }) => path)).toEqual([
        expect.stringMatching(/__proto__$/),
        'readings, line 2: feature',
      ]);
      expect(({} as { faults?: unknown }).faults).toBeUndefined();
    },
  );

  it('is a name like any other', () => {
    const shed = changed(plainShed(), {
      'blocks[0].name': '__proto__',
      'blocks[0].bores[0].name': 'constructor',
      'blocks[0].bores[0].readings': undefined,
    });
    const rows = ['0.5 in', '3.5 in'].flatMap((station) =>
      ['0 deg', '90 deg'].map((angle) => `__proto__,constructor,${station},${angle},3.0003 in`),
    );
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    expect(readShed(shed, csv).blocks?.[0]?.bores?.[0]?.readings).toHaveLength(4);
  });
});
