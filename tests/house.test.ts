import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const src = new URL('../src/', import.meta.url).pathname;
const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);

/** The floors, lowest first. Rooms on the engine floor may use each other, but not in a circle. */
const floors = [
  ['quantities'],
  ['numerics'],
  ['judging'],
  ['measuring'],
  ['crankshaft', 'bearings', 'cylinders', 'oil', 'motion'],
  ['shelf'],
  ['teaching'],
  ['command'],
];
const floorOf = (room: string) => floors.findIndex((rooms) => rooms.includes(room));

/** Which room of the house uses which other, and in which file. */
const uses = files.flatMap((file) => {
  const [room = ''] = file.split('/');
  const text = readFileSync(src + file, 'utf8');
  const rooms = [...text.matchAll(/from '(?:\.\.\/)+(\w+)\//g)].map(([, used = '']) => used);
  return rooms
    .filter((used) => floorOf(used) >= 0 && used !== room)
    .map((used) => ({ file, room, used }));
});

describe('the house', () => {
  it('has every room on a floor', () => {
    const rooms = new Set(files.flatMap((file) => /^(\w+)\//.exec(file)?.[1] ?? []));
    expect([...rooms].sort()).toEqual(floors.flat().sort());
  });

  it('carries nothing from a floor above', () => {
    expect(uses.length).toBeGreaterThan(20);
    expect(uses.filter(({ room, used }) => floorOf(used) > floorOf(room))).toEqual([]);
  });

  it('has no circle of rooms', () => {
    const next = (room: string) => uses.filter((use) => use.room === room).map(({ used }) => used);
    const reaches = (from: string, to: string, seen = new Set<string>()): boolean =>
      next(from).some(
        (room) => room === to || (!seen.has(room) && reaches(room, to, seen.add(room))),
      );
    expect(floors.flat().filter((room) => reaches(room, room))).toEqual([]);
  });

  it('keeps its files short', () => {
    const lines = (file: string) => readFileSync(src + file, 'utf8').split('\n').length;
    // The table of units is a list, and the map is made by a script; they read no easier in pieces.
    const long = files.filter((file) => lines(file) > 260).sort();
    expect(long).toEqual(['bearings/film/film-map-data.ts', 'quantities/units.ts']);
  });
});
