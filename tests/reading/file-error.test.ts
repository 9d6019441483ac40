import { RebuildInputError } from 'crankwright';
import { planBuilds } from 'crankwright/planning';
import { FileError, readShed, type Shed, triage } from 'crankwright/shed';
import { inspect, readSheet, type Sheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { inInches } from '../../src/reading/in-inches.js';
import { plainShed, shedProblems } from '../shed/sheds.js';
import { changed, exampleText, type Json, spoilt } from '../sheet/sheets.js';

/** The lines of the error that the reader of a file throws, without the first. */
function linesOf(read: () => unknown): readonly string[] {
  try {
    read();
  } catch (error) {
    if (error instanceof FileError) return error.message.split('\n  ').slice(1);
    throw error;
  }
  return [];
}
const shedLines = (changes: Readonly<Record<string, Json | undefined>>) =>
  linesOf(() => readShed(changed(plainShed(), changes)));

describe('the place of a problem', () => {
  it('says whose it is, in a shed', () => {
    const lines = shedLines({
      'rods[0].rods[0].housingBore': 'wide',
      'toBuy.shells[0].wall': 'thin',
      'heads[1].flatness': 'flat',
      'engine.cylinders': 'two',
    });
    expect(lines.map((line) => line.replace(/: .*/, ''))).toEqual([
      'engine.cylinders',
      'rods[0].rods[0].housingBore (rod A1 of rods A)',
      'heads[1].flatness (head B)',
      'toBuy.shells[0].wall (new rod shells 20 under)',
    ]);
  });

  it('says whose it is, in a sheet, as text or as an object', () => {
    const sheet = spoilt({
      'rods[1].journal.readings[3].diameter': 'wide',
      'cylinders[0].rings[1].gap': 'wide',
    });
    const told = [
      expect.stringMatching(
        /^rods\[1\]\.journal\.readings\[3\]\.diameter \(rod 2\): "wide" has no/,
      ),
      expect.stringMatching(/^cylinders\[0\]\.rings\[1\]\.gap \(.+ of cylinder 1\): "wide" has no/),
    ];
    expect(linesOf(() => readSheet(sheet))).toEqual(told);
    expect(linesOf(() => readSheet(JSON.stringify(sheet)))).toEqual(told);
  });

  it('says nobody’s name that is none, or could do harm where it is printed', () => {
    for (const name of ['', ' ', 7, 'x'.repeat(61), 'head\u001b[2J']) {
      const lines = shedLines({ 'heads[1].name': name, 'heads[1].flatness': 'flat' });
      expect(lines.at(-1)).toMatch(/^heads\[1\]\.flatness: "flat"/);
    }
  });

  it('is nowhere in a list that is none', () => {
    expect(shedLines({ heads: { 0: { name: 'head' } } })).toEqual([
      'heads: must be a list, in square brackets',
    ]);
  });
});

describe('a message', () => {
  it('tells lengths in the units of the file', () => {
    const changes = { 'shells[0].wall': '0.2 in', 'rods[1].rods[0].housingBore': '2.9 in' };
    const inches = shedProblems(changed(plainShed(), changes)).map(({ message }) => message);
    expect(inches).toEqual([
      expect.stringMatching(/^2\.9 in is not within 1\.\d+ in … 2\.\d+ in for that journal/),
      expect.stringMatching(/^0\.2 in is not near 0\.06\d* in/),
    ]);
    const metric = JSON.parse(exampleText('metric'));
    metric.shells[0].wall = '19 mm';
    expect(linesOf(() => readSheet(metric)).join()).toMatch(/19 mm is not .* mm/);
  });

  it.each([
    ['25.4 mm is outside 0 m … 3 mm', '1 in is outside 0 in … 0.1181 in'],
    ['16 is outside 3 mm … 1 m.', '16 is outside 0.1181 in … 39.3701 in.'],
    ['-0.01 mm too wide', '-0.000394 in too wide'],
    ['0.001 mm', '0.0000394 in'],
    ['"2 mm" is not a length; at 2 mm', '"2 mm" is not a length; at 0.0787 in'],
    ['"a \\" 2 mm" and 2 mm', '"a \\" 2 mm" and 0.0787 in'],
    ['Write 0.50 mm under', 'Write 0.50 mm under'],
    ['885 kg/m³, 5 m², 3 mmol, x2 mm, 2 mL', '885 kg/m³, 5 m², 3 mmol, x2 mm, 2 mL'],
    ['Units of length: m, mm, µm', 'Units of length: m, mm, µm'],
  ])('that says %j says %j in inches', (message, inches) => {
    expect(inInches(message)).toBe(inches);
  });
});

describe('a mistake made again and again', () => {
  it('is one line for the sizes and one for the angles of a file of numbers without units, though all are found', () => {
    const shed = readShed(plainShed());
    const lines = linesOf(() => readShed(shed));
    const again = lines.filter((line) => /is not text; write number and unit/.test(line));
    expect(again).toEqual([
      expect.stringMatching(
        /^engine\.rodJournals\.standard\.min: 0\.0412623 is not text; .* \(the same at engine\.rodJournals\.standard\.max, .* and \d+ more\)$/,
      ),
      expect.stringMatching(
        /^blocks\[0\]\.bores\[0\]\.readings\[0\]\.angle .* e\.g\. "90 deg" \(the same at .* and \d+ more\)$/,
      ),
    ]);
    expect(shedProblems(shed).length).toBeGreaterThan(100);
  });

  it('is a line each while there are few', () => {
    const lines = shedLines({
      'heads[0].flatness': 1,
      'heads[0].guideBore': 2,
      'heads[1].flatness': 3,
    });
    expect(lines).toHaveLength(3);
  });
});

describe('the wrong kind of file', () => {
  const shed = readShed(plainShed());
  const sheet = readSheet(exampleText('inch'));
  const isShed = 'is a shed: read it with readShed, or run crankwright plan on it';
  const isSheet = 'is an inspection sheet: read it with readSheet, or run crankwright report on it';

  it('is said in one line by what reads a file', () => {
    for (const file of [plainShed(), JSON.stringify(plainShed()), shed]) {
      expect(linesOf(() => readSheet(file))).toEqual([`sheet: ${isShed}`]);
    }
    for (const file of [exampleText('inch'), JSON.parse(exampleText('inch')), sheet]) {
      expect(linesOf(() => readShed(file))).toEqual([`shed: ${isSheet}`]);
    }
  });

  it('is said where the name of the shed is misspelt, and not of a file that may be either', () => {
    const { shed: name, ...rest } = plainShed();
    expect(linesOf(() => readSheet({ ...rest, shedd: name }))).toEqual([`sheet: ${isShed}`]);
    expect(linesOf(() => readSheet({ version: 1 })).length).toBe(2);
    expect(linesOf(() => readShed({ version: 1, engine: {} })).join()).toMatch(/shed: is missing/);
  });

  it('is said in one line by what takes a file that was read', async () => {
    const error = (run: () => unknown): unknown => {
      try {
        return run();
      } catch (thrown) {
        return thrown;
      }
    };
    const given = (message: string, parameter: string) => ({ message, parameter });
    const wantsSheet = given(
      'sheet: this is a shed; an inspection sheet belongs here. Give it to triage or planBuilds.',
      'sheet',
    );
    const wantsShed = given(
      'shed: this is an inspection sheet; a shed belongs here. Give it to inspect.',
      'shed',
    );
    expect(error(() => inspect(shed as unknown as Sheet))).toMatchObject(wantsSheet);
    expect(error(() => triage(sheet as unknown as Shed))).toMatchObject(wantsShed);
    await expect(planBuilds(sheet as unknown as Shed)).rejects.toMatchObject(wantsShed);
    await expect(planBuilds(sheet as unknown as Shed)).rejects.toBeInstanceOf(RebuildInputError);
  });
});
