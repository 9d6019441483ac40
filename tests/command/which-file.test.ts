import { afterMachining, FileError, readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { plainShed } from '../shed/sheds.js';
import { exampleText } from '../sheet/sheets.js';
import { captured } from './captured.js';

const work = { version: 1, shed: 'the shed', engine: 'block A', boxes: [] };
const files = {
  'shed.json': JSON.stringify(plainShed()),
  'sheet.json': exampleText('inch'),
  'work.json': JSON.stringify(work),
};

describe('a file of another kind, on the command line', () => {
  it.each([
    [
      'done shed.json shed.json',
      'shed.json is a shed, not a record of work: run crankwright plan shed.json, or crankwright report shed.json',
    ],
    [
      'done work.json shed.json',
      'work.json is a record of work, not a shed: run crankwright done SHED work.json',
    ],
    [
      'done shed.json sheet.json',
      'sheet.json is an inspection sheet, not a record of work: run crankwright report sheet.json',
    ],
    [
      'plan sheet.json',
      'sheet.json is an inspection sheet, not a shed: run crankwright report sheet.json',
    ],
    [
      'plan work.json',
      'work.json is a record of work, not a shed: run crankwright done SHED work.json',
    ],
    [
      'report work.json',
      'work.json is a record of work, not a shed: run crankwright done SHED work.json',
    ],
    [
      'diff shed.json sheet.json',
      'sheet.json is an inspection sheet, not a shed: run crankwright report sheet.json',
    ],
    [
      'new readings sheet.json',
      'sheet.json is an inspection sheet, not a shed: run crankwright report sheet.json',
    ],
  ])('is named as it was typed, in one line: %s', async (line, message) => {
    expect(await captured(line.split(' '), { files })).toEqual({
      code: 1,
      out: '',
      err: `crankwright: ${message}\n`,
    });
  });

  it('is told apart though it is not JSON', async () => {
    const broken = '{\n  "version": 1,\n  "shed": "mine"\n  "units": "inch"\n}';
    const { err } = await captured(['report', 'shed.json'], { files: { 'shed.json': broken } });
    expect(err).toMatch(
      /shed, line 4: is not JSON: a comma is missing at character 3, before the name "units"\n$/,
    );
    expect(err).not.toContain('sheet');
  });
});

it('a record of work in the place of a shed is told to a program, and the other way round', () => {
  const problemsOf = (run: () => unknown) => {
    try {
      run();
    } catch (error) {
      if (error instanceof FileError) return error.problems;
    }
    return [];
  };
  expect(problemsOf(() => afterMachining(readShed(plainShed()), plainShed()))).toEqual([
    {
      path: 'work',
      message:
        'is a shed, not a record of work: read it with readShed, or run crankwright plan on it',
    },
  ]);
  expect(problemsOf(() => readShed({ version: 1, parts: [] }))).toEqual([
    {
      path: 'shed',
      message: expect.stringMatching(/^is a record of work: give it to afterMachining/),
    },
  ]);
});
