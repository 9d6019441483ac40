import { inch } from 'crankwright';
import { readShed } from 'crankwright/shed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, type Json } from '../sheet/sheets.js';
import { dataOf, plainShed, shedProblems } from './sheds.js';

const HEADER = 'part, feature, station, angle, reading';
const csv = (...lines: readonly string[]) => [HEADER, ...lines].join('\n');

/** The plain shed without what the rows below give. */
const lacking = (...paths: readonly string[]): Json =>
  changed(plainShed(), Object.fromEntries(paths.map((path) => [path, undefined])));

const journal = [
  'crankshaft A, rod 1, 0.25 in, 0 deg, 1.6249 in',
  'crankshaft A, rod 1, 0.25 in, 90 deg, 1.6248 in',
  'crankshaft A, rod 1, 1.25 in, 0 deg, 1.6249 in',
  'crankshaft A, rod 1, 1.25 in, 90 deg, 1.6248 in',
];
const withoutJournal = () => lacking('crankshafts[0].rodJournals[0].readings');

describe('a CSV of readings', () => {
  it('gives a journal or a bore its readings', () => {
    expect(dataOf(readShed(withoutJournal(), csv(...journal)))).toEqual(
      dataOf(readShed(plainShed())),
    );
    const shed = readShed(
      lacking('blocks[0].bores[1].readings'),
      csv(
        ...[0.5, 2, 3.5].flatMap((station) => [
          `block A, cylinder 2, ${station} in, 0 deg, 3.0004 in`,
          `block A, cylinder 2, ${station} in, 90 deg, 3.0002 in`,
        ]),
      ),
    );
    expect(dataOf(shed)).toEqual(dataOf(readShed(plainShed())));
  });

  it('gives other places and parts one size, or the span of several', () => {
    const shed = readShed(
      lacking(
        'blocks[0].mainHousings[0].housingBore',
        'blocks[0].thrustWidth',
        'rods[0].rods[0].housingBore',
        'pistonSets[0].pistons[1].diameter',
        'ringSets[0].rings[0].gap',
        'shells[0].wall',
        'thrustWashers[0].thickness',
        'heads[0].flatness',
        'heads[0].guideBore',
        'valveSets[1].stem',
        'toBuy.shells[0].wall',
      ),
      csv(
        'block A, pulley main, , , 2.1262 in',
        'block A, thrustWidth, , , 2.3 in',
        'rods A, rod A1, , , 1.7508 in',
        'rods A, rod A1, , , 1.7506 in',
        'rods A, rod A1, , , 1.7507 in',
        'pistons A, piston 2, , , 2.9967 in',
        'rings standard, top ring, , , 10 thou',
        'rod shells standard, wall, , , 0.0620 in',
        'washers 0.096, thickness, , , 0.0960 in',
        'head A, flatness, , , 2 thou',
        'head A, guideBore, , , 0.3145 in',
        'valves new, stem, , , 0.3126 in',
        'new rod shells 20 under, wall, , , 0.0720 in',
        'new rod shells 20 under, wall, , , 0.0719 in',
      ),
    );
    const { blocks, rods, pistonSets, ringSets, shells, thrustWashers, heads, valveSets, toBuy } =
      shed;
    expect(blocks?.[0]?.mainHousings?.[0]?.housingBore).toBe(inch(2.1262));
    expect(blocks?.[0]?.thrustWidth).toBe(inch(2.3));
    expect(rods?.[0]?.rods?.[0]?.housingBore).toEqual({ min: inch(1.7506), max: inch(1.7508) });
    expect(pistonSets?.[0]?.pistons?.[1]?.diameter).toBe(inch(2.9967));
    expect(ringSets?.[0]?.rings?.[0]?.gap).toBe(inch(0.01));
    expect(shells?.[0]?.wall).toBe(inch(0.062));
    expect(thrustWashers?.[0]?.thickness).toBe(inch(0.096));
    expect(heads?.[0]?.flatness).toBe(inch(0.002));
    expect(heads?.[0]?.guideBore).toBe(inch(0.3145));
    expect(valveSets?.[1]?.stem).toBe(inch(0.3126));
    expect(toBuy?.shells?.[0]?.wall).toEqual({ min: inch(0.0719), max: inch(0.072) });
  });

  it.each<[string, string]>([
    ['columns in another order', 'reading,angle,station,feature,part\n1 in,,,flatness,head B'],
    ['headings in capitals', 'PART,Feature,STATION,Angle,ReaDing\nhead B,flatness,,,1 in'],
    [
      'space about its headings',
      '\ufeff" Part "\t, feature ,\u00a0station, angle,reading \nhead B,flatness,,,1 in',
    ],
    ['CRLF', 'part,feature,station,angle,reading\r\nhead B,flatness,,,1 in\r\n'],
    ['a byte order mark', '\ufeffpart,feature,station,angle,reading\nhead B,flatness,,,1 in'],
    ['blank lines and blank rows', `\n\n${csv('', ' , , , , ', 'head B,flatness,,,1 in', '')}\n\n`],
    ['quoted cells', csv('"head B","flatness","","","1 in"')],
    ['inch marks', csv('head B,flatness,,,1"')],
    ['quoted inch marks', csv('head B,flatness,,,"1"""')],
    ['much space', csv('  head B  ,  flatness\t,  ,  ,  1 in  ')],
  ])('may have %s', (_, text) => {
    const shed = lacking('heads[1].flatness');
    // An inch is too much for a head's flatness: the row was read.
    expect(shedProblems(shed, text)).toEqual([
      { path: expect.stringMatching(/^readings, line \d+: reading$/), message: expect.any(String) },
    ]);
  });

  it('may hold nothing but its header', () => {
    expect(shedProblems(plainShed(), HEADER)).toEqual([]);
  });

  it('leaves its arguments as they were', () => {
    const shed = withoutJournal();
    readShed(shed, csv(...journal));
    expect(shed).toEqual(withoutJournal());
  });

  it('executes nothing: a formula is text that is no quantity', () => {
    expect(shedProblems(lacking('heads[1].flatness'), csv('head B, flatness, , , =1+1'))).toEqual([
      {
        path: 'readings, line 2: reading',
        message: expect.stringMatching(/^"=1\+1" has no number that can be read/),
      },
    ]);
  });
});

describe('a mistake in a CSV of readings', () => {
  it.each<[string, string, RegExp]>([
    [
      '1,2,3,4,5',
      'readings, line 1',
      /must name the columns, separated by commas, semicolons or tabs: part, feature, station, angle, reading$/,
    ],
    ['part|feature|station|angle|reading', 'readings, line 1', /separated by commas/],
    [
      'part,feature,station,angle,diameter,reading',
      'readings, line 1',
      /^has columns "diameter" and "reading", which are one; the columns are/,
    ],
    ['part,feature,station,reading', 'readings, line 1', /^has no column "angle"/],
    ['part,feature,station,angle,reading,Part', 'readings, line 1', /^has column "Part" twice/],
  ])('in its header %j is told once', (text, path, message) => {
    // The rows cannot be read, and so no reading is missed.
    const shed = lacking('crankshafts[0].rodJournals[0].readings', 'shells[0].wall');
    expect(shedProblems(shed, `${text}\nhead B,flatness,1 in,2,3`)).toEqual([
      { path, message: expect.stringMatching(message) },
    ]);
  });

  it.each(['', '\n\n', '\ufeff'])('is to have no header: %j', (text) => {
    expect(shedProblems(plainShed(), text)).toEqual([
      { path: 'readings, line 1', message: expect.stringMatching(/must name the columns/) },
    ]);
  });

  it('in a column suggests the nearest', () => {
    const problems = shedProblems(plainShed(), 'Prat,FEATURE,station,angel,reading');
    expect(problems.map(({ message }) => message)).toEqual([
      expect.stringMatching(/"Prat" is not a column; did you mean "part"\?/),
      expect.stringMatching(/"angel" is not a column; did you mean "angle"\?/),
      expect.stringMatching(/has no column "part"/),
      expect.stringMatching(/has no column "angle"/),
    ]);
  });

  it.each<[string, string, RegExp]>([
    ['head B, flatness, , 2 thou', '', /^has 4 cells, but the header has 5/],
    ['head B, flatness, , , 2 thou, 3 thou', '', /^has 6 cells/],
    ['head B, flatness, , , "2" thou', ': reading', /no number that can be read/],
    ['head B,flatness,,,"2" thou', '', /^has an unmatched quotation mark: /],
    ['"head B, flatness, , , 2 thou', '', /^has an unmatched quotation mark: /],
    ['head C, flatness, , , 2 thou', ': part', /^"head C" is not in the shed; did you mean "head/],
    [', flatness, , , 2 thou', ': part', /^"" is not in the shed; it has "/],
    ['constructor, flatness, , , 2 thou', ': part', /^"constructor" is not in the shed; it has "/],
    [
      'crank B, rod 1, 1 in, 0 deg, 1.6246 in',
      ': part',
      /^"crank B" is not in the shed; did you mean "crankshaft B"\?$/,
    ],
    [
      'head B, flatnes, , , 2 thou',
      ': feature',
      /^"flatnes" is not a feature of "head B"; did you mean "flatness"\? it has flatness, guideBore/,
    ],
    ['block A, wall, , , 2 thou', ': feature', /it has thrustWidth, cylinder 1, cylinder 2/],
    [
      'head A, flatness, , , 2 thou',
      ': reading',
      /is also given in the shed file, at heads\[0\].flatness/,
    ],
    [
      'crankshaft A, rod 2, 0.75 in, 0 deg, 1.6248 in',
      ': reading',
      /is also given in the shed file, at crankshafts\[0\].rodJournals\[1\].readings/,
    ],
    ['head B, flatness, 1 in, , 2 thou', ': station', /must be empty: "flatness" has no stations/],
    ['head B, flatness, , 90 deg, 2 thou', ': angle', /must be empty/],
    ['head B, flatness, , , 2', ': reading', /no unit/],
    ['crankshaft A, rod 1, 0.5, 0 deg, 1.62 in', ': station', /no unit/],
    ['crankshaft A, rod 1, 0.5 in, , 1.62 in', ': angle', /no number that can be read/],
    ['crankshaft B, rod 1, 0.5 in, 0 deg, 1,62 in', '', /has 6 cells/],
    ['crankshaft A, rod 1, 0.5 in, 0 deg, wide', ': reading', /no number/],
  ])('%j is told at its line', (line, column, message) => {
    const shed = changed(plainShed(), {
      'heads[1].flatness': undefined,
      'valveSets[1].stem': undefined,
      ...(line.startsWith('crankshaft A, rod 1') && {
        'crankshafts[0].rodJournals[0].readings': undefined,
      }),
    });
    const problems = shedProblems(shed, csv('', 'valves new, stem, , , 0.3126 in', line));
    expect(problems).toEqual([
      { path: `readings, line 4${column}`, message: expect.stringMatching(message) },
    ]);
  });

  it('is told at its line, though quoted cells go on over several', () => {
    const text = [
      '\ufeff"part",feature,"station",angle,reading',
      '',
      '"no',
      'such part",flatness,,,1 thou',
      'head B,flatness,,,2 miles',
      'nobody,,,,',
    ].join('\r\n');
    expect(shedProblems(lacking('heads[1].flatness'), text)).toEqual([
      { path: 'readings, line 5: reading', message: expect.stringMatching(/miles/) },
      { path: 'readings, line 3: part', message: expect.stringMatching(/^"no\\nsuch part"/) },
      { path: 'readings, line 6: part', message: expect.stringMatching(/^"nobody"/) },
    ]);
  });

  it('hides no other, nor one in the shed', () => {
    const problems = shedProblems(
      changed(withoutJournal(), { shed: '', 'shells[0].wall': undefined }),
      csv(
        ...journal.slice(0, 3),
        'crankshaft A, rod 1, 1.25 in, 90 deg, 1.62x in',
        'rod shells standard, wall, , , thin',
        'rod shells standard, wall, , , 0.062 in',
        'rod shells standard, wall, , , thick',
        'washers 0.096, thickness, , , 0.096 in',
      ),
    );
    expect(problems.map(({ path }) => path)).toEqual([
      'shed',
      'readings, line 5: reading',
      'readings, line 6: reading',
      'readings, line 8: reading',
      'readings, line 9: reading',
    ]);
  });

  it('is a second reading of what has one size, wherever the first is', () => {
    expect(
      shedProblems(
        lacking('heads[1].flatness'),
        csv('head B, flatness, , , 2 thou', 'head B, flatness, , , 3 thou'),
      ),
    ).toEqual([
      {
        path: 'readings, line 3: reading',
        message: expect.stringMatching(/second reading of "flatness", after readings, line 2/),
      },
    ]);
  });

  it('is no reading that nobody gave: rows and file together may lack it', () => {
    const [first] = readShed(withoutJournal(), csv(...journal.slice(0, 3))).crankshafts ?? [];
    expect(first?.rodJournals?.[0]?.readings).toHaveLength(3);
    const [none] = readShed(withoutJournal(), HEADER).crankshafts ?? [];
    expect(none?.rodJournals?.[0]).toEqual({ name: 'rod 1' });
  });

  it.each([7, null, {}, ['part']])('is %j, which is no text', (readings) => {
    expect(shedProblems(plainShed(), readings as never)).toEqual([
      { path: 'readings', message: 'must be CSV text' },
    ]);
  });

  it('stays where it is in a shed that holds something else than lists', () => {
    const shed = changed(plainShed(), {
      'heads[1]': 'head B',
      'blocks[0].bores': { name: 'cylinder 1' },
      'crankshafts[0].rodJournals[0].readings': 'none',
      toBuy: 'nothing',
    });
    const rows = ['head B, flatness, , , 2 thou', 'block A, cylinder 1, 1 in, 0 deg, 3 in'];
    expect(shedProblems(shed, csv(...rows, ...journal)).map(({ path }) => path)).toEqual([
      'blocks[0].bores',
      'crankshafts[0].rodJournals[0].readings',
      'heads[1]',
      'toBuy',
      'readings, line 2: part',
      'readings, line 3: feature',
    ]);
  });

  it('is met in any text', () => {
    const cell = fc.constantFrom('head B', 'flatness', '2 thou', '"', ',', '\n', '\r', 'x', '=1+1');
    const text = fc.oneof(
      fc.string(),
      fc.array(cell).map((cells) => csv(cells.join(''))),
    );
    fc.assert(
      fc.property(text, (any) => {
        expect(shedProblems(plainShed(), any)).toBeInstanceOf(Array);
      }),
    );
  });
});
