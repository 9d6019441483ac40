import { readingsToFill, readShed, writeShed } from 'crankwright/shed';
import { FileError } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { spoiltShed } from './sheds.js';

const one = { station: '0.5 in', angle: '0 deg', diameter: '3.0003 in' };
const bore = 'blocks[0].bores[0].readings';
const file = spoiltShed({ [bore]: [one] });
const heading = 'part, feature, station, angle, reading\n';
const across = `${heading}block A, cylinder 1, 0.5 in, 90 deg, 3.0005 in\n`;

describe('a bore of which the shed file has one reading', () => {
  it('has rows to fill', () => {
    const rows = readingsToFill(file).split('\n');
    expect(rows.filter((row) => row.startsWith('block A,cylinder 1,'))).not.toEqual([]);
    expect(rows.filter((row) => row.startsWith('block A,cylinder 2,'))).toEqual([]);
  });

  it('takes the others from a CSV', () => {
    const readings = readShed(file, across).blocks?.[0]?.bores?.[0]?.readings;
    expect(readings).toHaveLength(2);
  });

  it('names the line of the CSV where one of those is wrong', () => {
    const wrong = across.replace('3.0005 in', '3.0005');
    expect(() => readShed(file, wrong)).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ path: 'readings, line 2: reading' })],
      }),
    );
  });

  it.each([
    [
      'which reads the same place',
      file,
      `${heading}block A, cylinder 1, 0.5 in, 0 deg, 3.0004 in\n`,
    ],
    [
      'once it was written with those of the CSV',
      writeShed({ ...readShed(file, across), shed: 'the barn' }),
      across,
    ],
  ])('refuses a CSV %s', (_, shed, csv) => {
    const run = () => readShed(shed, csv);
    expect(run).toThrow(FileError);
    expect(run).toThrow(`is also given in the shed file, at ${bore}; keep one of the two`);
  });
});
