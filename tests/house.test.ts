import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = new URL('../src/', import.meta.url).pathname;
const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);

/** The floors, lowest first. Rooms on the engine floor may use each other, but not in a circle. */
const floors = [
  ['quantities'],
  ['numerics'],
  ['judging', 'convert-units'],
  ['measuring', 'pages'],
  ['crankshaft', 'bearings', 'cylinders', 'valves', 'timing', 'fits', 'fasteners', 'oil', 'motion'],
  ['reading'],
  ['assembly'],
  ['sheet'],
  ['shed'],
  ['planning'],
  ['build-sheet'],
  ['teaching', 'mathjs', 'plots'],
  ['command'],
];
const floorOf = (room: string) => floors.findIndex((rooms) => rooms.includes(room));
const roomOf = (file: string) => /^([\w-]+)\//.exec(file)?.[1];

/** Which file uses which other, be it for a type alone. */
const imports = files.flatMap((file) => {
  const text = readFileSync(src + file, 'utf8');
  const paths = [...text.matchAll(/(?:from|import\() ?'(\.[^']+)\.js'/g)];
  return paths.map(([, path = '']) => ({
    file,
    used: `${posix.join(posix.dirname(file), path)}.ts`,
  }));
});

/** Which room of the house uses which other, and in which file. */
const uses = imports.flatMap(({ file, used }) => {
  const [room, other] = [roomOf(file), roomOf(used)];
  return room && other && room !== other ? [{ file, room, used: other }] : [];
});

/** The names that an import or export lists. */
const namesIn = (list: string): readonly string[] =>
  list.split(',').flatMap((name) => /^(?:type )?(\w+)/.exec(name.trim())?.[1] ?? []);

/** Those that lead back to themselves. */
function circles(edges: readonly (readonly [from: string, to: string])[]): readonly string[] {
  const next = new Map<string, string[]>();
  for (const [from, to] of edges) next.set(from, [...(next.get(from) ?? []), to]);
  const reaches = (from: string, to: string, seen: Set<string>): boolean =>
    (next.get(from) ?? []).some(
      (place) => place === to || (!seen.has(place) && reaches(place, to, seen.add(place))),
    );
  return [...next.keys()].filter((place) => reaches(place, place, new Set())).sort();
}

describe('the house', () => {
  it('has every room on a floor', () => {
    const rooms = new Set(files.flatMap((file) => roomOf(file) ?? []));
    expect([...rooms].sort()).toEqual(floors.flat().sort());
  });

  it('carries nothing from a floor above', () => {
    expect(uses.length).toBeGreaterThan(20);
    expect(uses.filter(({ room, used }) => floorOf(used) > floorOf(room))).toEqual([]);
  });

  it('lets the measures for convert-units use quantities alone, and nobody use them', () => {
    const touching = uses.filter(({ room, used }) => [room, used].includes('convert-units'));
    const ways = touching.map(({ room, used }) => `${room} < ${used}`);
    expect([...new Set(ways)]).toEqual(['convert-units < quantities']);
  });

  it('uses a neighbour through its index, or through what it lends the house alone', () => {
    const past = imports.filter(
      ({ file, used }) =>
        roomOf(file) !== undefined &&
        roomOf(file) !== roomOf(used) &&
        !/^[\w-]+\/(index|internal|layouts)\.ts$/.test(used) &&
        !used.endsWith('.cards.ts'),
    );
    expect(past).toEqual([]);
  });

  it('collects the cards in one place, and has nothing else know of them', () => {
    const collecting = imports.filter(({ used }) => used.endsWith('.cards.ts'));
    expect(new Set(collecting.map(({ file }) => file))).toEqual(new Set(['teaching/cards.ts']));
    const collected = collecting.map(({ used }) => used);
    expect(collected.sort()).toEqual(files.filter((file) => file.endsWith('.cards.ts')).sort());
  });

  it('lends the house nothing that no neighbour takes', () => {
    const idle = files
      .filter((file) => file.endsWith('/internal.ts'))
      .flatMap((lender) => {
        const takers = imports.filter(({ used }) => used === lender).map(({ file }) => file);
        const taken = takers.flatMap((file) =>
          [
            ...readFileSync(src + file, 'utf8').matchAll(
              /(?:im|ex)port (?:type )?\{([^}]*)\} from '([^']+)'/g,
            ),
          ]
            .filter(([, , path = '']) => path.endsWith(`/${lender.replace('.ts', '.js')}`))
            .flatMap(([, names = '']) => namesIn(names)),
        );
        const lent = [...readFileSync(src + lender, 'utf8').matchAll(/\{([^}]*)\}/g)];
        return lent
          .flatMap(([, names = '']) => namesIn(names))
          .filter((name) => !taken.includes(name))
          .map((name) => `${lender}: ${name}`);
      });
    expect(idle).toEqual([]);
  });

  it('has no circle of rooms', () => {
    expect(circles([['a', 'b'] as const, ['b', 'c'] as const, ['c', 'b'] as const])).toEqual([
      'b',
      'c',
    ]);
    expect(circles(uses.map(({ room, used }) => [room, used] as const))).toEqual([]);
  });

  it('has no circle of files', () => {
    expect(imports.filter(({ used }) => !files.includes(used))).toEqual([]);
    expect(circles(imports.map(({ file, used }) => [file, used] as const))).toEqual([]);
  });

  it('hands no list over item by item, which overflows the stack where it is long', () => {
    const spread = /(?:Math\.(?:max|min|hypot)|\.push|\.unshift)\([^)]*\.\.\.[a-z]+[).]/;
    const spreading = files.filter((file) => spread.test(readFileSync(src + file, 'utf8')));
    // The comment there says why.
    expect(spreading).toEqual(['quantities/extremes.ts']);
  });

  it('gives no two things one name', () => {
    const declared = files.flatMap((file) => {
      const exported = /^export (?:async )?(?:function|const|class|interface|type) (\w+)/gm;
      const names = [...readFileSync(src + file, 'utf8').matchAll(exported)].map(
        ([, name]) => name,
      );
      return [...new Set(names)].map((name = '') => ({ name, file }));
    });
    const twice = declared.filter(({ name, file }) =>
      declared.some((other) => other.name === name && other.file !== file),
    );
    expect(twice).toEqual([]);
  });

  it('keeps its files short', () => {
    const lines = (file: string) => readFileSync(src + file, 'utf8').split('\n').length;
    // The table of units is a list; the map and the signatures are made by scripts. They read no easier in pieces.
    const long = files.filter((file) => lines(file) > 260).sort();
    expect(long).toEqual([
      'bearings/film/film-map-data.ts',
      'mathjs/signatures.ts',
      'quantities/units.ts',
    ]);
  });
});
