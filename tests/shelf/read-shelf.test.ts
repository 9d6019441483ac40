import { readFileSync } from 'node:fs';
import { format, inch, mm, RebuildInputError, thou } from 'crankwright';
import { readShelf, SheetError } from 'crankwright/shelf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Json } from './sheets.js';
import { plainShelf, shelfProblems, spoiltShelf } from './shelves.js';

const example = (name: string) =>
  readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8');

describe('readShelf', () => {
  it('reads every quantity into SI, and every price', () => {
    const shelf = readShelf(plainShelf());
    const bore = shelf.blocks?.[0]?.bores[1];
    expect(shelf.shelf).toBe('the shed');
    expect(format(shelf.engine.rodJournals.standard.min, inch)).toBe('1.6245 in');
    expect(shelf.engine.bores.steps?.map((step) => format(step, thou))).toEqual([
      '0.0 thou',
      '10.0 thou',
      '20.0 thou',
      '30.0 thou',
    ]);
    expect(bore?.readings.map(({ diameter }) => format(diameter, inch))).toEqual([
      '3.0004 in',
      '3.0002 in',
      '3.0004 in',
      '3.0002 in',
      '3.0004 in',
      '3.0002 in',
    ]);
    expect(bore?.wall && format(bore.wall, mm)).toBe('5.080 mm');
    expect(shelf.blocks?.[1]?.faults).toEqual(['scored']);
    expect(format(shelf.pistonSets?.[1]?.oversize as never, thou)).toBe('20.0 thou');
    expect(shelf.machining?.map(({ price }) => price)).toEqual([
      { amount: 18, currency: 'EUR' },
      { amount: 35, currency: 'EUR' },
      { amount: 25, currency: 'EUR' },
      { amount: 30, currency: 'EUR' },
    ]);
    expect(shelf.toBuy?.shells?.[0]?.price).toEqual({ amount: 14.5, currency: 'EUR' });
  });

  it('reads JSON text as the value it holds, and the example', () => {
    expect(readShelf(JSON.stringify(plainShelf()))).toEqual(readShelf(plainShelf()));
    const shed = readShelf(example('pump-set-shed.json'), example('pump-set-shed-readings.csv'));
    expect(shed.blocks?.length).toBeGreaterThan(1);
  });

  it('takes a shelf without parts, and empty sections', () => {
    const { version, shelf, units, engine } = plainShelf();
    const empty = { version, shelf, units, engine };
    expect(shelfProblems(empty)).toEqual([]);
    expect(Object.keys(readShelf(empty))).toEqual(['version', 'shelf', 'units', 'engine']);
    expect(
      readShelf({ ...empty, blocks: [], toBuy: { shells: [] }, machining: [] }).blocks,
    ).toEqual([]);
  });

  it.each<[Json, readonly string[]]>([
    ['early', ['early']],
    [
      ['early', 'late'],
      ['early', 'late'],
    ],
  ])('takes the interchange groups %j', (given, groups) => {
    const shelf = readShelf(spoiltShelf({ 'heads[0].interchange': given }));
    expect(shelf.heads?.[0]?.interchange).toEqual(groups);
  });

  it('takes several readings of a size for the span they make', () => {
    const readings = ['1.7508 in', '1.7506 in', '1.7507 in'];
    const shelf = readShelf(
      spoiltShelf({
        'rods[0].rods[0].housingBore': readings,
        'rods[0].rods[1].housingBore': ['1.7507 in', '1.7507 in'],
      }),
    );
    expect(shelf.rods?.[0]?.rods.map(({ housingBore }) => housingBore)).toEqual([
      { min: inch(1.7506), max: inch(1.7508) },
      inch(1.7507),
    ]);
  });

  it.each<[string, number]>([
    ['standard', 0],
    ['Standard', 0],
    ['20 over', 20],
    ['20 oversize', 20],
    ['20 thou over', 20],
    ['0.020 in over', 20],
    ['0.508 mm over', 20],
    ['0.020 in', 20],
  ])('takes the oversize %s', (text, thous) => {
    const { pistonSets } = readShelf(
      spoiltShelf({ 'pistonSets[1].oversize': text, 'toBuy.ringSets[0].oversize': text }),
    );
    expect(format(pistonSets?.[1]?.oversize as never, thou)).toBe(`${thous}.0 thou`);
  });

  it('takes two rods on each journal, and a crankshaft in rolling bearings', () => {
    const shelf = plainShelf();
    const engine = shelf['engine'] as { [key: string]: Json };
    engine['rodsPerJournal'] = 2;
    engine['mains'] = 0;
    delete engine['mainJournals'];
    delete engine['mainHousing'];
    const block = (shelf['blocks'] as { [key: string]: Json }[])[0] ?? {};
    const crankshaft = (shelf['crankshafts'] as { [key: string]: Json }[])[0] ?? {};
    delete block['mainHousings'];
    delete crankshaft['mainJournals'];
    crankshaft['rodJournals'] = (crankshaft['rodJournals'] as Json[]).slice(0, 1);
    shelf['blocks'] = [block];
    shelf['crankshafts'] = [crankshaft];
    shelf['shells'] = (shelf['shells'] as Json[]).slice(0, 2);
    expect(shelfProblems(shelf)).toEqual([]);
  });

  it('lists the first fifty problems and counts the rest', () => {
    const spoilt = { ...plainShelf(), ...Object.fromEntries([...Array(60)].map((_, i) => [i, 1])) };
    try {
      readShelf(spoilt);
      expect.fail('reads');
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      expect(error.problems).toHaveLength(60);
      expect(error.message.split('\n')).toHaveLength(52);
      expect(error.message).toMatch(/^shelf: 60 problems found/);
      expect(error.message).toMatch(/\n {2}and 10 more$/);
    }
  });

  it.each([
    ['{ "version": 1, ', /^shelf: .*is not JSON/s],
    ['[]', /must be an object with version, shelf, units, engine/],
    [null, /must be an object/],
    [7, /must be an object/],
    [undefined, /must be an object/],
  ])('refuses %j whole', (input, message) => {
    expect(() => readShelf(input)).toThrow(message);
    expect(() => readShelf(input)).toThrow(RebuildInputError);
  });

  it('meets any JSON with a shelf or a SheetError', () => {
    const section = fc.constantFrom(...Object.keys(plainShelf()));
    fc.assert(
      fc.property(section, fc.jsonValue(), (key, value) => {
        expect(shelfProblems({ ...plainShelf(), [key]: value })).toBeInstanceOf(Array);
        expect(shelfProblems({ [key]: value }).length).toBeGreaterThan(0);
      }),
    );
  });
});
