import { readFileSync } from 'node:fs';
import { inch } from 'crankwright';
import { FileError, readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { readingRows } from '../../src/reading/readings-csv.js';
import { changed, type Json } from '../sheet/sheets.js';
import { dataOf, plainShed, shedProblems } from './sheds.js';

const lacking = (...paths: readonly string[]): Json =>
  changed(plainShed(), Object.fromEntries(paths.map((path) => [path, undefined])));
const withoutJournal = () => lacking('crankshafts[0].rodJournals[0].readings');
const rows = (...lines: readonly string[]) => lines.join('\n');

/** The readings of rod 1 of crankshaft A, in long form and in wide form. */
const LONG = ['0.25,0,1.6249', '0.25,90,1.6248', '1.25,0,1.6249', '1.25,90,1.6248'].map(
  (row) => `crankshaft A,rod 1,${row}`,
);
const WIDE = ['0.25,1.6249,1.6248', '1.25,1.6249,1.6248'].map((row) => `crankshaft A,rod 1,${row}`);

describe('a CSV as spreadsheets write it', () => {
  it.each<[string, string]>([
    ['units in its heading', rows('part,feature,station [in],angle [deg],reading [in]', ...LONG)],
    ['units in parentheses', rows('part,feature,station (in),angle (°),Reading (inch)', ...LONG)],
    [
      'diameter as its heading',
      rows('part,feature,station [in],angle [deg],Diameter [in]', ...LONG),
    ],
    [
      'semicolons and decimal commas',
      rows(
        'part;feature;station [in];angle [deg];reading [in]',
        ...LONG.map((row) => row.replaceAll(',', ';').replaceAll('.', ',')),
      ),
    ],
    [
      'semicolons and decimal points',
      rows(
        'part;feature;station [in];angle [deg];reading [in]',
        ...LONG.map((row) => row.replaceAll(',', ';')),
      ),
    ],
    [
      'decimal commas before units in its cells',
      rows(
        'sep=;',
        'part;feature;station;angle;reading',
        ...LONG.map((row) => {
          const [part, feature, ...numbers] = row.replaceAll('.', '*').split(',');
          const units = ['in', 'deg', 'in'];
          const cells = numbers.map((number, i) => `${number.replace('*', ',')} ${units[i]}`);
          return [part, feature, ...cells].join(';');
        }),
      ),
    ],
    [
      'tabs',
      rows(
        'part\tfeature\tstation [in]\tangle [deg]\treading [in]',
        ...LONG.map((row) => row.replaceAll(',', '\t')),
      ),
    ],
    [
      'columns of its own',
      rows(
        'date,part,feature,station [in],angle [deg],reading [in],read by,note,,',
        ...LONG.map((row) => `2026-05-01,${row},me,"scored, a little",,`),
      ),
    ],
    ['angles for columns', rows('part,feature,station [in],0 deg [in],90 deg [in]', ...WIDE)],
    ['angles with their sign', rows('part,feature,station [in],0° [in],90° (in)', ...WIDE)],
    [
      'angles for columns and units in cells',
      rows(
        'part,feature,station,0 deg,90 deg',
        ...WIDE.map((row) => row.replace(/(\d\.\d+)/g, '$1 in')),
      ),
    ],
    [
      'angles for columns, and a cell where nothing was read',
      rows(
        'part,feature,station [in],0 deg [in],45 deg [in],90 deg [in],note',
        ...WIDE.map((row) => row.replace(/,([\d.]+)$/, ',,$1')),
        'crankshaft A,rod 1,0.75,,,,not reached',
      ),
    ],
    [
      'an own unit in a cell, which counts',
      rows(
        'part,feature,station [mm],angle [deg],reading [mm]',
        ...LONG.map((row) => row.replace(/(\d\.\d+)/g, '$1 in')),
      ),
    ],
    [
      'rows not filled in',
      rows(
        'part,feature,station [in],angle [deg],reading [in]',
        ...LONG,
        'crankshaft A,rod 2,0.75,45,',
        'head B,guideBore,,,',
      ),
    ],
  ])('may have %s', (_, text) => {
    expect(dataOf(readShed(withoutJournal(), text))).toEqual(dataOf(readShed(plainShed())));
  });

  it('may have sizes beside angles for columns', () => {
    const shed = readShed(
      lacking('crankshafts[0].rodJournals[0].readings', 'rods[0].rods[0].housingBore'),
      rows(
        'part;feature;station [in];0 deg [in];90 deg [in];reading [in]',
        ...WIDE.map((row) => `${row.replaceAll(',', ';').replaceAll('.', ',')};`),
        'rods A;rod A1;;;;1,7507',
      ),
    );
    expect(shed.rods?.[0]?.rods?.[0]?.housingBore).toBe(inch(1.7507));
    expect(shed.crankshafts).toEqual(readShed(plainShed()).crankshafts);
  });

  it('keeps the cells of the columns of its own', () => {
    const [first] = readingRows(
      'part,feature,station,angle,reading,Date\nhead B,flatness,,,2 thou,2026-05-01',
    ).rows;
    expect(first?.others).toEqual({ date: '2026-05-01' });
  });

  it('fits a dealer’s shed, tens of thousands of lines', () => {
    const many = Array.from({ length: 60_000 }, () => 'head B,guideBore,,,0.3145').join('\n');
    const { rows: read, problems } = readingRows(
      `part,feature,station,angle,reading [in]\n${many}`,
    );
    expect([read.length, problems]).toEqual([60_000, []]);
  });
});

describe('a mistake in such a CSV', () => {
  const told = (text: string, shed = withoutJournal()) =>
    shedProblems(shed, text)
      .filter(({ path }) => path.startsWith('readings'))
      .map(({ path, message }) => `${path}: ${message}`);

  it.each<[string, RegExp]>([
    [
      'part,feature,station,angle,reading [miles]',
      /"reading \[miles\]" names no unit of length; write e\.g\. "reading \[in\]"/,
    ],
    [
      'part,feature,station,angle [in],reading',
      /"angle \[in\]" names no unit of angle; write e\.g\. "angle \[deg\]"/,
    ],
    [
      'part,feature,station [20 under],angle,reading',
      /"station \[20 under\]" names no unit of length/,
    ],
    ['part,feature,station,angle,reading [under]', /"reading \[under\]" names no unit/],
    ['part,feature,station,0 deg [furlong]', /"0 deg \[furlong\]" names no unit of length/],
    ['part,feature,station,0 deg,0°', /has columns "0 deg" and "0°", which are one/],
    ['part,feature,station,0 deg,0 deg', /has column "0 deg" twice/],
    ['part,feature,station,0 deg,60', /"60" is no angle that can be read; write it with its unit/],
    ['part,feature,station,angle,reading,reading 2', /"reading 2" is a second column of readings/],
    [
      'part,feature,station,angle,diametre',
      /"diametre" is not a column; did you mean "diameter"\?/,
    ],
    ['part,feature,statoin,0 deg', /"statoin" is not a column; did you mean "station"\?/],
    ['part,feature,station,angle,0 deg', /has no column "reading"/],
  ])('is in its header: %s', (header, message) => {
    expect(told(`${header}\n`).join('\n')).toMatch(message);
    expect(told(`${header}\n`).every((line) => line.startsWith('readings, line 1: '))).toBe(true);
  });

  it('is decimal commas beside decimal points', () => {
    const header = 'part;feature;station [in];angle [deg];reading [in]';
    expect(told(rows(header, 'crankshaft A;rod 1;0.5;0;1,6220'))).toEqual([
      expect.stringMatching(/^readings, line 2: reading: "1,6220" has no number .* point for dec/),
    ]);
  });

  it('is told at the heading it stands under', () => {
    const header = 'part,feature,station [in],0 deg [in],90 deg [in]';
    expect(
      told(rows(header, 'crankshaft A,rod 1,0.5,1.6221,thin', 'crankshaft A,rod 1,?,,1.6221')),
    ).toEqual([
      expect.stringMatching(/^readings, line 2: 90 deg: "thin" has no number/),
      expect.stringMatching(/^readings, line 3: station: "\?" has no number/),
    ]);
    expect(told(rows(header, 'rods A,rod A1,,1.7507,'))).toEqual([
      'readings, line 2: 0 deg: "1.7507 in" stands under an angle, but "rod A1" is one size; give it in a column "reading"',
    ]);
    expect(told(rows('part,feature,station,angle,diameter', 'head B,guideBore,,,wide'))).toEqual([
      expect.stringMatching(/^readings, line 2: diameter: "wide"/),
    ]);
  });

  it('is a cell too few, unless it is of a column of its own', () => {
    const header = 'part,feature,station,angle,reading,note,date';
    const shed = lacking('heads[1].flatness');
    expect(told(rows(header, 'head B,flatness,,,2 thou'), shed)).toEqual([]);
    expect(told(rows(header, 'head B,flatness,,2 thou'), shed)).toEqual([
      'readings, line 2: has 4 cells, but the header has 7',
    ]);
  });

  it('is in a row, though it has no reading', () => {
    const header = 'part,feature,station,angle,reading';
    expect(
      told(rows(header, 'nobody,flatness,,,', 'head B,flatnes,,,', 'head B,flatness,1 in,,')),
    ).toEqual([
      expect.stringMatching(/^readings, line 2: part: "nobody" is not in the shed/),
      expect.stringMatching(/^readings, line 3: feature: "flatnes" is not a feature/),
      expect.stringMatching(/^readings, line 4: station: "1 in" must be empty/),
    ]);
  });

  /** The lines of the error, without the first. */
  const linesOf = (text: string): readonly string[] => {
    try {
      readShed(withoutJournal(), text);
    } catch (error) {
      if (error instanceof FileError) return error.message.split('\n  ').slice(1);
      throw error;
    }
    return [];
  };

  it('is one line if no reading has a unit', () => {
    expect(linesOf(rows('part,feature,station [in],angle [deg],Reading', ...LONG))).toEqual([
      'readings: 4 cells in the column "reading" have no unit; write it in the heading, "reading [in]"',
    ]);
    expect(linesOf(rows('part,feature,station,angle,reading', ...LONG))).toEqual([
      'readings: 4 cells in the column "station" have no unit; write it in the heading, "station [in]"',
      'readings: 4 cells in the column "angle" have no unit; write it in the heading, "angle [deg]"',
      'readings: 4 cells in the column "reading" have no unit; write it in the heading, "reading [in]"',
    ]);
  });

  it('is one line if it is the same in row after row', () => {
    const header = 'part,feature,station [in],angle [deg],reading [in]';
    const strange = LONG.map((row) => row.replace('crankshaft A', 'shaft Z'));
    expect(linesOf(rows(header, ...strange, ...LONG))).toEqual([
      expect.stringMatching(
        /^readings, line 2: part: "shaft Z" is not in the shed; it has "block A", .* and \d+ more \(the same on lines 3, 4, 5\)$/,
      ),
    ]);
  });
});

describe('a CSV for parts whose places are not listed', () => {
  const bare = () =>
    lacking(
      'crankshafts[0].rodJournals',
      'crankshafts[0].mainJournals',
      'blocks[0].bores',
      'rods[0].rods',
      'pistonSets[0].pistons',
    );
  const HEADER = 'part,feature,station [in],angle [deg],reading [in]';

  it('names them by their numbers, and lists as many as the engine has', () => {
    const shed = readShed(
      bare(),
      rows(
        HEADER,
        'crankshaft A,rod journal 2,0.25,0,1.6248',
        'block A,cylinder 1,0.5,0,3.0004',
        'rods A,rod 1,,,1.7507',
        'crankshaft A,main journal 1,0.25,0,',
      ),
    );
    const [shaft] = shed.crankshafts ?? [];
    expect(shaft?.rodJournals?.map(({ name, readings }) => [name, readings?.length])).toEqual([
      ['rod journal 1', undefined],
      ['rod journal 2', 1],
    ]);
    // Nothing was read there.
    expect(shaft?.mainJournals).toBeUndefined();
    expect(shed.blocks?.[0]?.bores?.map(({ name }) => name)).toEqual(['cylinder 1', 'cylinder 2']);
    expect(shed.rods?.[0]?.rods).toEqual([
      { name: 'rod 1', housingBore: inch(1.7507) },
      { name: 'rod 2' },
    ]);
    expect(shed.pistonSets?.[0]?.pistons).toBeUndefined();
  });

  it('is told of a place that the engine does not have', () => {
    const told = shedProblems(bare(), rows(HEADER, 'crankshaft A,rod journal 3,0.25,0,1.6248'));
    expect(told).toEqual([
      {
        path: 'readings, line 2: feature',
        message: expect.stringMatching(
          /did you mean "rod journal 1"\? it has thrustWidth, rod journal 1, rod journal 2, main journal 1/,
        ),
      },
    ]);
  });

  it.each([
    ['two', 2, 1],
    [1e9, 2, 1],
    [-1, 2, 1],
    [2, Number.NaN, 1],
    [2, 2, 'both'],
  ])('has no places for an engine of %j cylinders, %j mains, %j rods a journal', (...counts) => {
    const [cylinders, mains, rodsPerJournal] = counts as Json[];
    const shed = changed(bare(), {
      'engine.cylinders': cylinders,
      'engine.mains': mains,
      'engine.rodsPerJournal': rodsPerJournal,
    });
    const text = rows(HEADER, 'crankshaft A,rod journal 1,0.25,0,1.6248');
    expect(shedProblems(shed, text).at(-1)?.message).toMatch(/; it has thrustWidth$/);
  });
});

describe('the guide', () => {
  const guide = readFileSync(new URL('../../docs/shed-file.md', import.meta.url), 'utf8');
  const block = (begins: string) =>
    guide.split('```').find((text) => text.replace(/^\w+\n/, '').startsWith(begins)) ?? '';

  it('shows a CSV and a table that can be read', () => {
    const text = block('part;feature').replace(/^csv\n/, '');
    const shed = readShed(
      lacking('crankshafts[0].rodJournals[0].readings', 'rods[0].rods[0].housingBore'),
      text,
    );
    expect(shed.crankshafts?.[0]?.rodJournals?.[0]?.readings).toHaveLength(5);
    const journal = JSON.parse(block('{\n  "name": "rod 1"').replace(/^json\n/, '')) as Json;
    const table = readShed(changed(plainShed(), { 'crankshafts[0].rodJournals[0]': journal }));
    expect(table.crankshafts?.[0]?.rodJournals?.[0]?.readings).toHaveLength(6);
  });
});
