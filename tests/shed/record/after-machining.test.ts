import { readFileSync } from 'node:fs';
import { inch } from 'crankwright';
import {
  afterMachining,
  FileError,
  readShed,
  type Shed,
  triage,
  writeShed,
} from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { frozen } from '../../fuzz/hostile.js';
import { dataOf, plainShed } from '../sheds.js';

const file = JSON.stringify(plainShed(), null, 2);
const shed = frozen(readShed(file));

const readings = (size: string) =>
  ['0.25 in', '1.25 in'].flatMap((station) =>
    ['0 deg', '90 deg'].map((angle) => ({ station, angle, diameter: size })),
  );
/** Crankshaft B back from the grinder. */
const ground = frozen({
  version: 1,
  on: '2026-05-01',
  by: 'the grinder',
  parts: [
    {
      name: 'crankshaft B',
      done: [{ work: 'grind rod journals', step: '20 under' }],
      rodJournals: [
        { name: 'rod 1', readings: readings('1.6048 in'), repaired: ['scored'] },
        { name: 'rod 2', readings: readings('1-756/1250 in') },
      ],
    },
  ],
});

/** The problems with a record of work. */
function problems(
  work: unknown,
  options: { readonly today?: string } = {},
): readonly (readonly [string, string])[] {
  try {
    afterMachining(shed, work, options);
  } catch (error) {
    if (error instanceof FileError) return error.problems.map((each) => [each.path, each.message]);
    throw error;
  }
  return [];
}
const oneOf = (part: object) => ({ version: 1, parts: [part] });

describe('a crankshaft that came back ground', () => {
  const after = afterMachining(shed, ground);
  const [, shaft] = after.crankshafts ?? [];

  it('has its new readings, and its old ones in its history as they were written', () => {
    expect(shaft?.rodJournals?.[0]?.readings?.[0]?.diameter).toBe(inch(1.6048));
    expect(shaft?.rodJournals?.[0]?.faults).toBeUndefined();
    expect(shaft?.history).toEqual([
      {
        on: '2026-05-01',
        what: 'grind rod journals to 20 under',
        by: 'the grinder',
        done: [{ work: 'grind rod journals', step: '20 under' }],
        before: {
          rodJournals: [
            {
              name: 'rod 1',
              readings: expect.arrayContaining([
                { station: '0.25 in', angle: '0 deg', diameter: '1.6221 in' },
              ]),
              faults: ['scored'],
            },
            { name: 'rod 2', readings: expect.any(Array), runout: '0.0005 in' },
          ],
        },
      },
    ]);
  });

  it('has no runout any more: that was read before it was ground', () => {
    expect(shaft?.rodJournals?.[1]?.runout).toBeUndefined();
  });

  it('is written so that only its own lines change, and the size as it was given', () => {
    const text = writeShed(after);
    const start = file.indexOf('    {\n      "name": "crankshaft B"');
    const end = file.indexOf('\n  ],\n  "rods"');
    expect(text.startsWith(file.slice(0, start))).toBe(true);
    expect(text.endsWith(file.slice(end))).toBe(true);
    expect(text).toContain('"1-756/1250 in"');
    expect(dataOf(readShed(text))).toEqual(dataOf(after));
  });

  it('is used as it is by the triage then', () => {
    const of = (each: Shed) => triage(each).parts.find(({ name }) => name === 'crankshaft B');
    expect(of(shed)?.disposition).toBe('machine');
    expect(of(after)?.jobs.filter(({ work }) => work === 'grind rod journals')).toEqual([]);
  });

  it('can come back again: its history goes on', () => {
    const again = afterMachining(after, {
      version: 1,
      parts: [{ name: 'crankshaft B', what: 'polished' }],
    });
    expect(again.crankshafts?.[1]?.history?.map(({ what }) => what)).toEqual([
      'grind rod journals to 20 under',
      'polished',
    ]);
  });
});

describe('what was ground and not measured yet', () => {
  it('is not known', () => {
    const after = afterMachining(
      shed,
      oneOf({ name: 'crankshaft B', done: [{ work: 'grind rod journals', places: ['rod 1'] }] }),
    );
    const [first, second] = after.crankshafts?.[1]?.rodJournals ?? [];
    expect(first?.readings).toBeUndefined();
    expect(second?.readings).toHaveLength(4);
  });
});

describe('a part that was only measured', () => {
  it('gets no history where nothing was known', () => {
    const after = afterMachining(shed, oneOf({ name: 'head B', guideBore: '0.3146 in' }));
    expect(after.heads?.[1]).toEqual({ ...shed.heads?.[1], guideBore: inch(0.3146) });
  });

  it('keeps what it read before', () => {
    const after = afterMachining(shed, oneOf({ name: 'head B', flatness: '0.001 in' }));
    expect(after.heads?.[1]?.history).toEqual([
      { what: 'measured again', before: { flatness: '0.006 in' } },
    ]);
  });
});

describe('a shed whose readings came from a CSV', () => {
  const text = readFileSync('examples/pump-set-shed.json', 'utf8');
  const csv = readFileSync('examples/pump-set-shed-readings.csv', 'utf8');

  it('is one file afterwards, and no reading is lost or there twice', () => {
    const read = readShed(text, csv);
    const after = afterMachining(read, oneOf({ name: 'block A', thrustWidth: '2.3390 in' }));
    const again = readShed(writeShed(after));
    expect(dataOf(again)).toEqual(dataOf(after));
    expect(again.blocks?.[0]?.bores).toEqual(read.blocks?.[0]?.bores);
    expect(again.crankshafts).toEqual(read.crankshafts);
  });
});

describe('boxes of a build sheet', () => {
  const box = { part: 'rods A', feature: 'rod A1' };

  it('are readings where they are filled in', () => {
    const after = afterMachining(shed, {
      version: 1,
      boxes: [
        { ...box, reading: '1.7507 in' },
        { ...box, reading: '1.7509 in', mayBe: '1.7506 to 1.7510 in' },
        { ...box, reading: '' },
      ],
    });
    expect(after.rods?.[0]?.rods?.[0]?.housingBore).toEqual({
      min: inch(1.7507),
      max: inch(1.7509),
    });
    expect(after.rods?.[0]?.rods?.[1]).toEqual(shed.rods?.[0]?.rods?.[1]);
  });

  it('mark the parts as built in; of several alike those it takes are set apart', () => {
    const after = afterMachining(shed, {
      version: 1,
      on: '2026-06-01',
      builtInto: 'engine 1',
      takes: [
        { name: 'block A', count: 1 },
        { name: 'main shells standard', count: 2 },
        { name: 'new rod shells 20 under', count: 2 },
      ],
      boxes: [{ part: 'main shells standard', feature: 'wall', reading: '0.0623 in' }],
      checks: [{ what: 'end play', limits: '0.0050 to 0.0120 in', reading: '0.008 in' }],
    });
    expect(after.blocks?.[0]?.builtInto).toBe('engine 1');
    expect(after.shells?.map(({ name, pairs, builtInto }) => [name, pairs, builtInto])).toEqual([
      ['rod shells standard', 2, undefined],
      ['rod shells 10 under', 2, undefined],
      ['main shells standard', 2, undefined],
      ['main shells standard in engine 1', 2, 'engine 1'],
      ['new rod shells 20 under in engine 1', 2, 'engine 1'],
    ]);
    expect(after.toBuy?.shells?.[0]?.pairs).toBe(4);
    // What was measured of the shells in the engine says nothing of those on the shelf.
    expect(after.shells?.map(({ wall }) => wall).slice(2, 4)).toEqual([inch(0.0622), inch(0.0623)]);
    expect(after.blocks?.[0]?.history).toEqual([
      { on: '2026-06-01', what: 'built into engine 1' },
      { on: '2026-06-01', what: 'checked: end play 0.008 in' },
    ]);
  });
});

describe('a record of work of a day after today', () => {
  const options = { today: '2026-04-30' };

  it.each<[string, object, string]>([
    ['its day', ground, 'on'],
    // Nothing was known of it, so that no history is kept: the day is wrong all the same.
    [
      'its day, where it is kept nowhere',
      { ...oneOf({ name: 'head B', guideBore: '0.3146 in' }), on: '2027' },
      'on',
    ],
    [
      'the day of a condition',
      oneOf({ name: 'head B', condition: { is: 'turns', on: '2026-05' } }),
      'parts[0].condition.on',
    ],
    [
      'another date',
      oneOf({ name: 'head B', dates: { skimmed: '2026-05-01' } }),
      'parts[0].dates.skimmed',
    ],
  ])('is refused: %s', (_, work, path) => {
    expect(problems(work)).toEqual([]);
    expect(problems(work, options)).toEqual([
      [
        path,
        expect.stringMatching(
          /^is 202\S+, which is after today, 2026-04-30 \(put a plan or a guess in notes\)$/,
        ),
      ],
    ]);
  });

  it('is taken on the day itself, and in its month and year', () => {
    for (const on of ['2026-04-30', '2026-04', '2026']) {
      expect(problems({ ...ground, on }, options)).toEqual([]);
    }
  });

  it('needs a day that is one', () => {
    const refused = () => afterMachining(shed, ground, { today: 'tomorrow' });
    expect(refused).toThrow(expect.objectContaining({ parameter: 'options.today' }));
  });
});

describe('a record of work with a mistake', () => {
  it.each<[string, unknown, string, RegExp]>([
    [
      'an unknown part',
      oneOf({ name: 'crankshaft C' }),
      'parts[0].name',
      /did you mean "crankshaft/,
    ],
    [
      'an unknown place',
      oneOf({ name: 'crankshaft B', rodJournals: [{ name: 'rod 3', runout: '0 in' }] }),
      'parts[0].rodJournals[0].name',
      /"rod 3" is not a place of "crankshaft B"; did you mean "rod/,
    ],
    [
      'a fault that it has not',
      oneOf({ name: 'rod B2', repaired: ['scored'] }),
      'parts[0].repaired[0]',
      /not one of its faults; listed are bent/,
    ],
    [
      'work that is not done on such a part',
      oneOf({ name: 'head A', done: [{ work: 'bore' }] }),
      'parts[0].done[0].work',
      /"bore" is not done on "head A"/,
    ],
    [
      'work that there is not',
      oneOf({ name: 'block A', done: [{ work: 'boring' }] }),
      'parts[0].done[0].work',
      /did you mean "bore"/,
    ],
    [
      'a reading without a unit',
      oneOf({
        name: 'crankshaft A',
        rodJournals: [{ name: 'rod 2', readings: readings('1.62') }],
      }),
      'parts[0].rodJournals[0].readings[0].diameter',
      /no unit/,
    ],
    [
      'a field that no part has',
      oneOf({ name: 'head A', flatnes: '0.001 in' }),
      'parts[0].flatnes',
      /did you mean "flatness"/,
    ],
    ['a date that is none', { ...ground, on: 'May' }, 'on', /is not a year|a year/],
    [
      'a date that is none, where it is kept nowhere',
      { ...oneOf({ name: 'head B', guideBore: '0.3146 in' }), on: 'May' },
      'on',
      /is not a year|a year/,
    ],
    [
      'a box of a part that is not there',
      { version: 1, boxes: [{ part: 'rods Z', feature: 'rod A1', reading: '1 in' }] },
      'boxes[0].part',
      /did you mean "rods A"/,
    ],
    [
      'a box of a feature that is not there',
      { version: 1, boxes: [{ part: 'rods A', feature: 'rod A9', reading: '1 in' }] },
      'boxes[0].feature',
      /did you mean "rod A1"/,
    ],
    [
      'a box with a size of another part',
      { version: 1, boxes: [{ part: 'head A', feature: 'flatness', reading: '1 m' }] },
      'boxes[0].reading',
      /Check the digits/,
    ],
    [
      'more than there are',
      { version: 1, builtInto: 'E', takes: [{ name: 'main shells standard', count: 9 }] },
      'takes[0].count',
      /takes 9 of "main shells standard", but there are 4/,
    ],
    ['text that is no JSON', '{', 'work, line 1', /is not JSON/],
    ['another thing', [], 'work', /must be an object/],
  ])('%s is refused at its place', (_, work, path, message) => {
    expect(problems(work)[0]).toEqual([path, expect.stringMatching(message)]);
  });
});
