import { readFileSync } from 'node:fs';
import { format, inch, mm, RebuildInputError, thou } from 'crankwright';
import { FileError, readShed } from 'crankwright/shed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Json } from '../sheet/sheets.js';
import { dataOf, plainShed, shedProblems, spoiltShed } from './sheds.js';

const example = (name: string) =>
  readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8');

describe('readShed', () => {
  it('reads every quantity into SI, and every price', () => {
    const shed = readShed(plainShed());
    const bore = shed.blocks?.[0]?.bores?.[1];
    expect(shed.shed).toBe('the shed');
    expect(format(shed.engine.rodJournals.standard.min, inch)).toBe('1.6245 in');
    expect(shed.engine.bores.steps?.map((step) => format(step, thou))).toEqual([
      '0.0 thou',
      '10.0 thou',
      '20.0 thou',
      '30.0 thou',
    ]);
    expect(bore?.readings?.map(({ diameter }) => format(diameter, inch))).toEqual([
      '3.0004 in',
      '3.0002 in',
      '3.0004 in',
      '3.0002 in',
      '3.0004 in',
      '3.0002 in',
    ]);
    expect(bore?.wall && format(bore.wall, mm)).toBe('5.080 mm');
    expect(shed.blocks?.[1]?.faults).toEqual(['scored']);
    expect(format(shed.pistonSets?.[1]?.oversize as never, thou)).toBe('20.0 thou');
    expect(shed.machining?.map(({ price }) => price)).toEqual([
      { amount: 18, currency: 'EUR' },
      { amount: 35, currency: 'EUR' },
      { amount: 25, currency: 'EUR' },
      { amount: 30, currency: 'EUR' },
    ]);
    expect(shed.toBuy?.shells?.[0]?.price).toEqual({ amount: 14.5, currency: 'EUR' });
  });

  it('reads JSON text as the value it holds, and the example', () => {
    expect(dataOf(readShed(JSON.stringify(plainShed())))).toEqual(dataOf(readShed(plainShed())));
    const shed = readShed(example('pump-set-shed.json'), example('pump-set-shed-readings.csv'));
    expect(shed.blocks?.length).toBeGreaterThan(1);
  });

  it('takes a shed without parts, and empty sections', () => {
    const { version, shed, units, engine } = plainShed();
    const empty = { version, shed, units, engine };
    expect(shedProblems(empty)).toEqual([]);
    expect(Object.keys(dataOf(readShed(empty)))).toEqual(['version', 'shed', 'units', 'engine']);
    expect(readShed({ ...empty, blocks: [], toBuy: { shells: [] }, machining: [] }).blocks).toEqual(
      [],
    );
  });

  it.each<[Json, readonly string[]]>([
    ['early', ['early']],
    [
      ['early', 'late'],
      ['early', 'late'],
    ],
  ])('takes the interchange groups %j', (given, groups) => {
    const shed = readShed(spoiltShed({ 'heads[0].interchange': given }));
    expect(shed.heads?.[0]?.interchange).toEqual(groups);
  });

  it('takes several readings of a size for the span they make', () => {
    const readings = ['1.7508 in', '1.7506 in', '1.7507 in'];
    const shed = readShed(
      spoiltShed({
        'rods[0].rods[0].housingBore': readings,
        'rods[0].rods[1].housingBore': ['1.7507 in', '1.7507 in'],
      }),
    );
    expect(shed.rods?.[0]?.rods?.map(({ housingBore }) => housingBore)).toEqual([
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
    const { pistonSets } = readShed(
      spoiltShed({ 'pistonSets[1].oversize': text, 'toBuy.ringSets[0].oversize': text }),
    );
    expect(format(pistonSets?.[1]?.oversize as never, thou)).toBe(`${thous}.0 thou`);
  });

  it('takes two rods on each journal, and a crankshaft in rolling bearings', () => {
    const shed = plainShed();
    const engine = shed['engine'] as { [key: string]: Json };
    engine['rodsPerJournal'] = 2;
    engine['mains'] = 0;
    delete engine['mainJournals'];
    delete engine['mainHousing'];
    const block = (shed['blocks'] as { [key: string]: Json }[])[0] ?? {};
    const crankshaft = (shed['crankshafts'] as { [key: string]: Json }[])[0] ?? {};
    delete block['mainHousings'];
    delete crankshaft['mainJournals'];
    crankshaft['rodJournals'] = (crankshaft['rodJournals'] as Json[]).slice(0, 1);
    shed['blocks'] = [block];
    shed['crankshafts'] = [crankshaft];
    shed['shells'] = (shed['shells'] as Json[]).slice(0, 2);
    expect(shedProblems(shed)).toEqual([]);
  });

  it('lists the first fifty problems and counts the rest', () => {
    const spoilt = { ...plainShed(), ...Object.fromEntries([...Array(60)].map((_, i) => [i, 1])) };
    try {
      readShed(spoilt);
      expect.fail('reads');
    } catch (error) {
      if (!(error instanceof FileError)) throw error;
      expect(error.problems).toHaveLength(60);
      expect(error.message.split('\n')).toHaveLength(52);
      expect(error.message).toMatch(/^shed: 60 problems found/);
      expect(error.message).toMatch(/\n {2}and 10 more$/);
    }
  });

  it.each([
    ['{ "version": 1, ', /^shed: .*is not JSON/s],
    ['[]', /must be an object with version, shed, units, engine/],
    [null, /must be an object/],
    [7, /must be an object/],
    [undefined, /must be an object/],
  ])('refuses %j whole', (input, message) => {
    expect(() => readShed(input)).toThrow(message);
    expect(() => readShed(input)).toThrow(RebuildInputError);
  });

  it('meets any JSON with a shed or a FileError', () => {
    const section = fc.constantFrom(...Object.keys(plainShed()));
    fc.assert(
      fc.property(section, fc.jsonValue(), (key, value) => {
        expect(shedProblems({ ...plainShed(), [key]: value })).toBeInstanceOf(Array);
        expect(shedProblems({ [key]: value }).length).toBeGreaterThan(0);
      }),
    );
  });
});
