import { RebuildInputError } from 'crankwright';
import { readSheet, readShelf } from 'crankwright/shelf';
import { describe, expect, it } from 'vitest';
import { changed, exampleText, type Json } from './sheets.js';
import { plainShelf, shelfProblems } from './shelves.js';

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

describe('a file nested deep', () => {
  const csv = 'part,feature,station,angle,reading\nblock A,cylinder 1,1 in,0 deg,3 in';

  it('is refused at its place, wherever that is in a shelf', () => {
    for (const path of [...places(plainShelf()), 'strange', 'rods[0].strange']) {
      const problems = shelfProblems(changed(plainShelf(), { [path]: bottomless }), csv);
      expect(problems.length, path).toBeGreaterThan(0);
    }
  });

  it('is refused at its place, wherever that is in a sheet', () => {
    const plain = (): Json => JSON.parse(exampleText('inch'));
    for (const path of [...places(plain()), 'strange', 'rods[0].strange']) {
      expect(() => readSheet(changed(plain(), { [path]: bottomless })), path).toThrow(
        RebuildInputError,
      );
    }
  });

  it('is refused as text', () => {
    const nested = `${'['.repeat(DEPTH)}${']'.repeat(DEPTH)}`;
    const text = JSON.stringify(plainShelf());
    for (const deep of [
      nested,
      ...['"the shed"', '"scored"'].map((at) => text.replace(at, nested)),
    ]) {
      expect(shelfProblems(deep)).toEqual([
        { path: 'shelf, line 1', message: expect.stringMatching(/inside too many others$/) },
      ]);
    }
  });

  it('is refused if it holds itself', () => {
    const shelf = plainShelf();
    const round: { [key: string]: Json } = { ...shelf, rods: [shelf], engine: shelf };
    round['toBuy'] = round;
    expect(shelfProblems(round, csv).length).toBeGreaterThan(0);
  });
});

describe('a file of 2 MB', () => {
  const many = (count: number, part: (i: number) => Json): { [key: string]: Json } => ({
    ...plainShelf(),
    crankshafts: Array.from({ length: count }, (_, i) => part(i)),
  });
  const [crankshaft] = plainShelf()['crankshafts'] as { [key: string]: Json }[];
  const sound = (i: number): Json => ({ ...crankshaft, name: `crankshaft ${i}` });

  it('reads', () => {
    const text = JSON.stringify(many(1600, sound));
    expect(text.length).toBeGreaterThan(1_600_000);
    expect(readShelf(text).crankshafts).toHaveLength(1600);
  });

  it('reads as a value with twenty thousand housings and as many shells', () => {
    const shelf = {
      ...plainShelf(),
      rods: Array.from({ length: 20_000 }, (_, i) => ({
        name: `rod ${i}`,
        rods: [{ name: 'big end', housingBore: `1.${7400 + (i % 200)} in` }],
      })),
      shells: Array.from({ length: 20_000 }, (_, i) => ({
        name: `shells ${i}`,
        fits: 'rods',
        undersize: '10 under',
        wall: '0.0670 in',
        pairs: 1,
      })),
    };
    expect(readShelf(shelf).shells).toHaveLength(20_000);
  });

  it('is told all its mistakes', () => {
    const text = JSON.stringify(
      many(1600, (i) => ({
        ...crankshaft,
        name: 'the same',
        thrustWidth: '2.5 inn',
        colour: 'red',
        [`field ${i}`]: 1,
      })),
    );
    expect(shelfProblems(text)).toHaveLength(4 * 1600 - 1);
  });

  it('is told all mistakes of as many readings as are taken', () => {
    const rows = Array.from({ length: 19_999 }, (_, i) => `crankshaft ${i},rod 9,,,1 in`);
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    expect(shelfProblems(many(4000, sound), csv)).toHaveLength(19_999);
  });

  it('is told all mistakes of the readings of one part with as many places', () => {
    const rods = Array.from({ length: 20_000 }, (_, i) => ({ name: `rod ${i}` }));
    const rows = Array.from({ length: 19_999 }, () => 'rods A,rod X,,,1 in');
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    const problems = shelfProblems(changed(plainShelf(), { 'rods[0].rods': rods }), csv);
    // Its rods have no readings, and are more than the engine has.
    expect(problems).toHaveLength(20_000 + 1 + 19_999);
    expect(problems.at(-1)?.message.length).toBeLessThan(400);
  });

  it('is refused if one place has more readings than anybody takes', () => {
    const rows = Array.from({ length: 19_999 }, (_, i) => `rods A,rod A1,,,1.${7507 + (i % 2)} in`);
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    const shelf = changed(plainShelf(), { 'rods[0].rods[0].housingBore': undefined });
    expect(shelfProblems(shelf, csv)).toEqual([
      { path: 'readings, line 2: reading', message: 'must have at most 1000 entries' },
    ]);
  });
});

describe('a field __proto__', () => {
  it.each(['"name":"block A"', '"name":"cylinder 1"', '"version":1', '"cylinders":2'])(
    'beside %s is a strange field and nothing else',
    (field) => {
      const text = JSON.stringify(plainShelf()).replace(
        field,
        `"__proto__":{"faults":[]},${field}`,
      );
      const problems = shelfProblems(text, 'part,feature,station,angle,reading\nhead A,x,,,1 in');
      expect(problems.map(({ path }) => path)).toEqual([
        expect.stringMatching(/__proto__$/),
        'readings, line 2: feature',
      ]);
      expect(({} as { faults?: unknown }).faults).toBeUndefined();
    },
  );

  it('is a name like any other', () => {
    const shelf = changed(plainShelf(), {
      'blocks[0].name': '__proto__',
      'blocks[0].bores[0].name': 'constructor',
      'blocks[0].bores[0].readings': undefined,
    });
    const rows = ['0.5 in', '3.5 in'].flatMap((station) =>
      ['0 deg', '90 deg'].map((angle) => `__proto__,constructor,${station},${angle},3.0003 in`),
    );
    const csv = ['part,feature,station,angle,reading', ...rows].join('\n');
    expect(readShelf(shelf, csv).blocks?.[0]?.bores[0]?.readings).toHaveLength(4);
  });
});
