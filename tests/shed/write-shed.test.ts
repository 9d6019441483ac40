import { readFileSync } from 'node:fs';
import { inch, type Length, mm } from 'crankwright';
import { readShed, type Shed, writeShed } from 'crankwright/shed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frozen } from '../fuzz/hostile.js';
import { oddFile, readableShed } from './odd-files.js';
import { dataOf, plainShed } from './sheds.js';

const example = readFileSync('examples/pump-set-shed.json', 'utf8');
const csv = readFileSync('examples/pump-set-shed-readings.csv', 'utf8');
const seeds = fc.integer({ min: 0, max: 1e6 });
/** The lines of one text that are not in another. */
const linesBeyond = (text: string, other: string) => {
  const known = new Set(other.split('\n'));
  return text.split('\n').filter((line) => !known.has(line));
};
const file = JSON.stringify(plainShed(), null, 2);

describe('a shed that was not changed', () => {
  it('is written as it was read, with its CSV or without', () => {
    expect(writeShed(readShed(example, csv))).toBe(example);
    expect(writeShed(readShed(file))).toBe(file);
    expect(writeShed(JSON.parse(JSON.stringify(readShed(file))))).toBe(file);
  });

  it('is written as it was read, however it was typed', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const typed = oddFile(seed);
        fc.pre(typed !== undefined);
        expect(writeShed(readShed(typed))).toBe(typed);
      }),
      { numRuns: 10 },
    );
  });

  it('keeps its value if it was read from one', () => {
    expect(JSON.parse(writeShed(readShed(plainShed())))).toEqual(plainShed());
  });
});

describe('a shed that was made in code', () => {
  it('is written so that it reads as the same, in inches or millimetres', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const shed = frozen(readableShed(seed));
        fc.pre(shed !== undefined);
        expect(dataOf(readShed(writeShed(shed)))).toEqual(shed);
      }),
      { numRuns: 10 },
    );
  });

  it.each<[number, string]>([
    // 3-1/8 in is 3.125 in, exactly.
    [inch(3.125), '"3.1250 in"'],
    [inch(3.12501), '"3.12501 in"'],
    // What was read in millimetres in an inch shop stays in millimetres.
    [mm(76.21), '"76.210 mm"'],
    // A third of an inch ends in no unit, and is given to the last digit.
    [inch(28 / 9), '"3.111111111111111 in"'],
  ])('gives a size of %d m the digits it needs', (size, text) => {
    const shed = dataOf(readShed(plainShed())) as Shed;
    const made = {
      ...shed,
      ringSets: [
        {
          name: 'rings',
          oversize: inch(0),
          rings: [{ name: 'top', gap: inch(0.01), measuredIn: size as Length }],
        },
      ],
    };
    expect(writeShed(made)).toContain(`"measuredIn": ${text}`);
    expect(readShed(writeShed(made)).ringSets?.[0]?.rings?.[0]?.measuredIn).toBe(size);
  });
});

describe('a shed that was changed', () => {
  const shed = readShed(file);
  const [block, ...blocks] = shed.blocks ?? [];
  const [shells, ...otherShells] = shed.shells ?? [];
  if (!block || !shells) throw new Error('the plain shed has blocks and shells');

  it.each<[string, Partial<Shed>, gone: readonly string[], come: readonly string[]]>([
    ['in its name', { shed: 'the barn' }, ['  "shed": "the shed",'], ['  "shed": "the barn",']],
    ['in a count', { shells: [{ ...shells, pairs: 1 }, ...otherShells] }, [], ['      "pairs": 1']],
    [
      'in the name of a part',
      { blocks: [{ ...block, name: 'block Z' }, ...blocks] },
      ['      "name": "block A",'],
      ['      "name": "block Z",'],
    ],
    [
      'in a field that was not there',
      { blocks: [{ ...block, faults: ['pitted'] }, ...blocks] },
      [],
      ['      "faults": ["pitted"],'],
    ],
  ])('%s changes only its lines', (_, changes, gone, come) => {
    const text = writeShed({ ...shed, ...changes });
    expect(linesBeyond(file, text)).toEqual(gone);
    expect(linesBeyond(text, file)).toEqual(come);
    expect(dataOf(readShed(text))).toEqual({ ...dataOf(shed), ...changes });
  });

  it('loses the lines of a part that is gone, and no others', () => {
    const text = writeShed({ ...shed, blocks });
    const start = file.indexOf('    {\n      "name": "block A"');
    const end = file.indexOf('    {\n      "name": "block B"');
    expect(text).toBe(file.slice(0, start) + file.slice(end));
  });

  it('gains the lines of a part that came, in the style of the file', () => {
    const dense = JSON.stringify(plainShed());
    const washers = [...(shed.thrustWashers ?? []), { name: 'thin', thickness: inch(0.094) }];
    const added = { name: 'thin', thickness: '0.0940 in' };
    expect(writeShed({ ...readShed(dense), thrustWashers: washers })).toBe(
      dense.replace(
        /("thrustWashers":\[[^\]]*)\]/,
        `$1, ${`{ "name": "thin", "thickness": "${added.thickness}" }`}]`,
      ),
    );
    expect(writeShed({ ...shed, thrustWashers: washers })).toBe(
      file.replace(
        /("thrustWashers": \[[^\]]*)\n {2}\]/,
        '$1,\n    { "name": "thin", "thickness": "0.0940 in" }\n  ]',
      ),
    );
  });

  it('reads as what it was changed to, however it was typed', () => {
    fc.assert(
      fc.property(seeds, seeds, (seed, other) => {
        const [typed, another] = [oddFile(seed), readableShed(other)];
        fc.pre(typed !== undefined && another !== undefined);
        const { asWritten } = readShed(typed);
        // Nothing in common but the file.
        const next = { ...another, ...(asWritten && { asWritten }) };
        const text = writeShed(next);
        expect(dataOf(readShed(text))).toEqual(dataOf(next));
        expect(JSON.parse(text.replace(/^\ufeff/, ''))).toMatchObject({
          $schema: './shed.json',
          'x-kept': 1,
        });
      }),
      { numRuns: 10 },
    );
  });

  it('takes the readings of its CSV into the file, and none is lost', () => {
    const read = readShed(example, csv);
    const text = writeShed({ ...read, shed: 'the barn' });
    expect(dataOf(readShed(text))).toEqual({ ...dataOf(read), shed: 'the barn' });
    // As they stood there.
    expect(text).toContain('{ "station": "0.5 in", "angle": "0 deg", "diameter": "3.0003 in" }');
  });

  it('is refused where no file could give it back', () => {
    const [head] = shed.heads ?? [];
    const twice = { ...shed, heads: [head, head] } as Shed;
    expect(() => writeShed(twice)).toThrow('"head A" is also the name of heads[0]');
    expect(() => writeShed({ ...shed, shed: 'the shed ' })).toThrow(
      expect.objectContaining({ parameter: 'shed.shed' }),
    );
  });

  it('is refused at the size that no part can have', () => {
    const read = readShed(file);
    const [, thick] = read.shells ?? [];
    if (!thick) throw new Error('the plain shed has shells of a span of walls');
    const shells = [{ ...thick, wall: { min: inch(0.0669), max: inch(-1) } }];
    expect(() => writeShed({ ...read, shells })).toThrow(/^shed: .*\n {2}shells\[0\]\.wall/);
  });
});

describe('readings that both files give', () => {
  it('are refused: they may be those of before a regrind', () => {
    const text = writeShed({ ...readShed(example, csv), shed: 'the barn' });
    expect(() => readShed(text, csv)).toThrow(
      'is also given in the shed file, at blocks[0].bores[0].readings; keep one of the two',
    );
  });
});
