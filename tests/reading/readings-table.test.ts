import { Ajv2020 } from 'ajv/dist/2020.js';
import { inch } from 'crankwright';
import { readShed, shedSchema } from 'crankwright/shed';
import { readSheet, sheetSchema } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { dataOf, plainShed, shedProblems } from '../shed/sheds.js';
import { changed, exampleText, type Json, spoilt } from '../sheet/sheets.js';

/** The readings of rod 1 of crankshaft A in the plain shed. */
const TABLE = {
  angles: ['0 deg', '90 deg'],
  stations: ['0.25 in', '1.25 in'],
  diameters: [
    ['1.6249 in', '1.6248 in'],
    ['1.6249 in', '1.6248 in'],
  ],
};
const isShed = new Ajv2020().compile(shedSchema());
const isSheet = new Ajv2020().compile(sheetSchema());
const AT = 'crankshafts[0].rodJournals[0].readings';
const withTable = (table: Json) => changed(plainShed(), { [AT]: table });
/** What is said of a table in a shed, without the part of the paths that leads to it. */
const problemsOf = (table: Json) =>
  shedProblems(withTable(table)).map(({ path, message }) => [path.replace(`${AT}.`, ''), message]);

describe('a table of readings', () => {
  it.each<[string, Json]>([
    ['text with units', TABLE],
    [
      'numbers and a unit',
      {
        ...TABLE,
        unit: 'in',
        stations: [0.25, 1.25],
        diameters: [
          [1.6249, 1.6248],
          [1.6249, 1.6248],
        ],
      },
    ],
    [
      'text without units and a unit',
      {
        ...TABLE,
        unit: 'inch',
        stations: ['1/4', '1-1/4'],
        diameters: [
          ['1.6249', ' 1.6248 '],
          ['1.6249', '1.6248'],
        ],
      },
    ],
    [
      'a unit, and others in its cells',
      {
        ...TABLE,
        unit: 'mm',
        diameters: [
          ['1.6249 in', '1.6248 in'],
          ['1.6249 in', '1.6248 in'],
        ],
      },
    ],
    [
      'cells where nothing was read',
      {
        angles: ['0 deg', '45 deg', '90 deg'],
        stations: ['0.25 in', '0.75 in', '1.25 in'],
        diameters: [
          ['1.6249 in', null, '1.6248 in'],
          ['', null, []],
          ['1.6249 in', ' ', '1.6248 in'],
        ],
      },
    ],
  ])('may hold %s, in a shed and in a sheet', (_, table) => {
    expect(dataOf(readShed(withTable(table)))).toEqual(dataOf(readShed(plainShed())));
    expect(isShed(withTable(table))).toBe(true);
    const plain = plainShed() as { crankshafts: { rodJournals: { readings: Json }[] }[] };
    const same = {
      'rods[0].journal.readings': plain.crankshafts[0]?.rodJournals[0]?.readings as Json,
    };
    const sheet = spoilt({ 'rods[0].journal.readings': table });
    const standard = { 'crankshaft.rodJournals.standard': { min: '1.6245 in', max: '1.6250 in' } };
    expect(readSheet(changed(sheet, standard))).toEqual(
      readSheet(spoilt({ ...same, ...standard })),
    );
    expect(isSheet(sheet)).toBe(true);
  });

  it('may hold what was read again, as a list in its cell', () => {
    const diameters = [
      [['1.6249 in', null, '1.6248 in'], '1.6248 in'],
      ['1.6249 in', ['1.6248 in']],
    ];
    const shed = readShed(withTable({ ...TABLE, diameters }));
    const read = shed.crankshafts?.[0]?.rodJournals?.[0]?.readings;
    expect(read?.map(({ diameter }) => diameter)).toEqual(
      [1.6249, 1.6248, 1.6248, 1.6249, 1.6248].map((size) => inch(size)),
    );
    expect(read?.[1]?.station).toBe(inch(0.25));
  });

  it.each<[string, Json, readonly (readonly [string, RegExp])[]]>([
    [
      'a row too short',
      { ...TABLE, diameters: [['1.6249 in'], ['1.6249 in', '1.6248 in']] },
      [
        [
          'diameters[0]',
          /^row 1, the row of station "0.25 in", has 1 entries, but there are 2 angles; write null where nothing was read$/,
        ],
      ],
    ],
    [
      'a row too long',
      {
        ...TABLE,
        diameters: [
          ['1.6249 in', '1.6248 in'],
          ['1.6249 in', '1.6248 in', null],
        ],
      },
      [['diameters[1]', /^row 2, .* has 3 entries, but there are 2 angles/]],
    ],
    [
      'a row too few',
      { ...TABLE, diameters: [['1.6249 in', '1.6248 in']] },
      [['diameters', /^has 1 rows, but there are 2 stations; give each station its row/]],
    ],
    [
      'a diameter that is none',
      {
        ...TABLE,
        diameters: [
          ['1.6249 in', 'wide'],
          ['1.6249 in', ['1.6248 in', '53 in']],
        ],
      },
      [
        ['diameters[0][1]', /^"wide" has no number/],
        ['diameters[1][1][1]', /^"53 in" is not a length of/],
      ],
    ],
    [
      'a diameter that does not fit the others',
      {
        ...TABLE,
        diameters: [
          ['1.6249 in', null],
          ['1.6249 in', '16.248 in'],
        ],
      },
      [['diameters[1][1]', /A digit has slipped/]],
    ],
    [
      'numbers without a unit',
      { ...TABLE, stations: [0.25, '1-1/4'] },
      [['unit', /^is missing, and 2 numbers have none of their own; write "in" or "mm"$/]],
    ],
    [
      'a number without a unit',
      {
        ...TABLE,
        diameters: [
          ['1.6249 in', ['1.6248']],
          [null, null],
        ],
      },
      [['unit', /^is missing, and a number has none of its own/]],
    ],
    [
      'a unit that is none',
      { ...TABLE, unit: 'miles' },
      [['unit', /^"miles" is no unit of length/]],
    ],
    ['a unit that is no text', { ...TABLE, unit: 25.4 }, [['unit', /must be text/]]],
    [
      'an angle twice',
      { ...TABLE, angles: ['90 deg', '90 °'] },
      [['angles[1]', /^is listed twice; write a list in its cell/]],
    ],
    [
      'a station twice',
      { ...TABLE, stations: ['1/4 in', '0.25 in'] },
      [['stations[1]', /^is listed twice/]],
    ],
    [
      'nothing',
      {
        ...TABLE,
        diameters: [
          [null, ''],
          [[], null],
        ],
      },
      [['diameters', /^holds no reading; leave the readings out until there is one$/]],
    ],
    ['no rows', { ...TABLE, diameters: 'none' }, [['diameters', /must be a list/]]],
    ['no angles', { ...TABLE, angles: [] }, [['angles', /at least 1 entry/]]],
    ['a strange field', { ...TABLE, diametres: [] }, [['diametres', /did you mean "diameters"/]]],
    [
      'lists in lists',
      {
        ...TABLE,
        diameters: [
          ['1.6249 in', [['1.6248 in']]],
          ['1.6249 in', true],
        ],
      },
      [
        ['diameters[0][1][0]', /^an array is not text/],
        ['diameters[1][1]', /^true is not text/],
      ],
    ],
    [
      'more than a place has',
      {
        angles: ['0 deg', '90 deg'],
        stations: Array.from({ length: 501 }, (_, i) => `${i} thou`),
        diameters: Array.from({ length: 501 }, () => ['1.6249 in', '1.6248 in']),
      },
      [['diameters', /^must have at most 1000 readings$/]],
    ],
  ])('that holds %s is told at its place', (_, table, told) => {
    expect(problemsOf(table)).toEqual(
      told.map(([path, message]) => [path, expect.stringMatching(message)]),
    );
  });

  it('that lacks a second angle at one station is told as a list is', () => {
    const table = {
      angles: ['0 deg', '60 deg'],
      stations: ['0.25 in', '1.25 in'],
      diameters: [
        ['1.6249 in', '1.6249 in'],
        ['1.6249 in', null],
      ],
    };
    const listed = table.stations.flatMap((station, i) =>
      table.angles.flatMap((angle, j) => {
        const diameter = table.diameters[i]?.[j];
        return diameter ? [{ station, angle, diameter }] : [];
      }),
    );
    for (const readings of [table, listed]) {
      const { notFilledIn } = readSheet(spoilt({ 'rods[0].journal.readings': readings }));
      expect(notFilledIn?.rods).toEqual([
        { name: 'rod 1', lacks: 'a second angle at station 1.2500 in' },
      ]);
    }
  });

  it('does not take rows of a CSV beside it', () => {
    const csv = 'part,feature,station,angle,reading\ncrankshaft A,rod 1,0.75 in,0 deg,1.6249 in';
    expect(shedProblems(withTable(TABLE), csv)).toEqual([
      {
        path: 'readings, line 2: reading',
        message: `"1.6249 in" is also given in the shed file, at ${AT}; keep one of the two`,
      },
    ]);
  });

  it('leaves the example sheet as it is', () => {
    expect(readSheet(exampleText('inch')).rods?.[0]?.journal.readings).toHaveLength(4);
  });
});
