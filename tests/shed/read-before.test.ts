import { inch } from 'crankwright';
import { afterMachining, readingsToFill, readShed, writeShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { changed, type Json } from '../sheet/sheets.js';
import { plainShed, shedProblems } from './sheds.js';

const HEADER = 'part, feature, station, angle, reading, date';
const rows = (size: string, date: string, journal = 'rod 1') =>
  [HEADER]
    .concat(
      ['0.25 in', '1.25 in'].flatMap((station) =>
        ['0 deg', '90 deg'].map(
          (angle) => `crankshaft A, ${journal}, ${station}, ${angle}, ${size}, ${date}`,
        ),
      ),
    )
    .join('\n');

/** The plain shed, whose readings of the journals of crankshaft A are in a CSV. */
const without = () =>
  changed(plainShed(), {
    'crankshafts[0].rodJournals[0].readings': undefined,
    'crankshafts[0].rodJournals[1].readings': undefined,
  });
const done = (shed: Json, ...parts: readonly Json[]) =>
  writeShed(afterMachining(readShed(shed), { version: 1, on: '2026-05-01', parts }));
const ground = done(without(), {
  name: 'crankshaft A',
  done: [{ work: 'grind rod journals', step: '20 under', places: ['rod 1'] }],
});
const refused = [
  'readings, line 2: reading',
  'readings, line 3: reading',
  'readings, line 4: reading',
  'readings, line 5: reading',
];
const pathsIn = (file: unknown, csv: string) => shedProblems(file, csv).map(({ path }) => path);

describe('readings of before a regrind, in a CSV that was not given to afterMachining', () => {
  it('do not bring the old size back', () => {
    const csv = rows('1.6249 in', '');
    expect(pathsIn(without(), csv)).toEqual([]);
    expect(shedProblems(ground, csv)).toEqual(
      refused.map((path) => ({
        path,
        message: expect.stringMatching(
          /counts as read before "grind rod journals rod 1 to 20 under" of 2026-05-01 .*take the row out/,
        ),
      })),
    );
  });

  it('are still those of a journal that was not ground', () => {
    const shed = readShed(ground, rows('1.6249 in', '', 'rod 2'));
    expect(shed.crankshafts?.[0]?.rodJournals?.[1]?.readings?.[0]?.diameter).toBe(inch(1.6249));
  });

  it('are of after it where the row has a later date, and not on the day itself', () => {
    const after = readShed(ground, rows('1.6048 in', '2026-05-02'));
    expect(after.crankshafts?.[0]?.rodJournals?.[0]?.readings?.[0]?.diameter).toBe(inch(1.6048));
    expect(pathsIn(ground, rows('1.6048 in', '2027'))).toEqual([]);
    for (const date of ['2026-05-01', '2026-05', '2026', '2026-04-30', '3/5/2026']) {
      expect(pathsIn(ground, rows('1.6048 in', date))).toEqual(refused);
    }
    const inMay = ground.replace('"on": "2026-05-01"', '"on": "2026-05"');
    expect(pathsIn(inMay, rows('1.6048 in', '2026-05-30'))).toEqual(refused);
    const someDay = ground.replace('"on": "2026-05-01",', '');
    expect(pathsIn(someDay, rows('1.6048 in', '2026-05-30'))).toEqual(refused);
  });

  it('are refused of a shaft whose journals the shed file does not list', () => {
    const bare = changed(without(), { 'crankshafts[0].rodJournals': undefined });
    const file = done(bare, { name: 'crankshaft A', done: [{ work: 'grind rod journals' }] });
    expect(pathsIn(bare, rows('1.6249 in', '', 'rod journal 1'))).toEqual([]);
    expect(pathsIn(file, rows('1.6249 in', '', 'rod journal 1'))).toEqual(refused);
  });

  it('are refused of a part as a whole, and of a place that the history says was another size', () => {
    const head = changed(plainShed(), { 'heads[1].flatness': undefined });
    const csv = `${HEADER}\nhead B, flatness, , , 0.006 in,`;
    expect(pathsIn(head, csv)).toEqual([]);
    const skimmed = done(head, { name: 'head B', done: [{ work: 'skim head' }] });
    expect(pathsIn(skimmed, csv)).toEqual(['readings, line 2: reading']);
    const history = [
      { what: 'polished', before: { rodJournals: [{ name: 'rod 1', readings: [] }] } },
    ];
    const polished = changed(without(), { 'crankshafts[0].history': history });
    expect(pathsIn(polished, rows('1.6249 in', ''))).toEqual(refused);
    expect(pathsIn(polished, rows('1.6249 in', '', 'rod 2'))).toEqual([]);
  });

  it('may stand empty in the rows to fill', () => {
    const [header, ...others] = readingsToFill(ground).split('\n');
    expect(others.some((row) => row.startsWith('crankshaft A,rod 1,'))).toBe(true);
    const read = readShed(ground, [header, ...others].join('\n'));
    expect(read.crankshafts?.[0]?.rodJournals?.[0]?.readings).toBeUndefined();
  });
});
