import { readShed } from 'crankwright/shed';
import { FileError, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { dataOf, plainShed, shedProblems } from '../shed/sheds.js';
import { exampleText } from '../sheet/sheets.js';

function sheetProblems(input: unknown) {
  try {
    readSheet(input);
  } catch (error) {
    if (error instanceof FileError) return error.problems;
    throw error;
  }
  return [];
}

const HEADER = 'part, feature, station, angle, reading';

describe('the text of a file', () => {
  it('may begin with a byte order mark', () => {
    const sheet = exampleText('inch');
    expect(readSheet(`\ufeff${sheet}`)).toEqual(readSheet(sheet));
    const shed = JSON.stringify(plainShed());
    expect(dataOf(readShed(`\ufeff${shed}`, `\ufeff${HEADER}`))).toEqual(dataOf(readShed(shed)));
    // Two of them are no mark.
    expect(sheetProblems(`\ufeff\ufeff${sheet}`)).toEqual([
      { path: 'sheet, line 1', message: expect.stringMatching(/^is not JSON/) },
    ]);
  });

  it.each<[string, string, string]>([
    ['', 'sheet, line 1', 'is not JSON: the text ends, but a value should follow'],
    [
      '{ "version": 1,\n  engine: "pump set" }',
      'sheet, line 2',
      'is not JSON: "engine: \\"pump set\\" }" at character 3, but another name in double quotes should be there',
    ],
    [
      '{ "version": 1,\n  "engine": "pump set",\n}',
      'sheet, line 3',
      'is not JSON: "}" at character 1, but another name in double quotes should be there; remove the comma before it',
    ],
    [
      '{ "version": 1\n  "engine": "pump set" }',
      'sheet, line 2',
      'is not JSON: a comma is missing at character 3, before the name "engine"',
    ],
    [
      '{ "rods": [{}\n  {}] }',
      'sheet, line 2',
      'is not JSON: a comma is missing at character 3, before {',
    ],
    [
      '{ "engine": "pump\nset" }',
      'sheet, line 1',
      'is not JSON: the text that begins at character 13 has no closing quotation mark on its line, or an extra backslash',
    ],
    [
      '{ "engine": "2 1/8" in" }',
      'sheet, line 1',
      'is not JSON: "in\\" }" at character 21, but a comma or } should be there',
    ],
    [
      '{ "engine": "2 1/8""\n}',
      'sheet, line 1',
      'is not JSON: the quotation mark at character 20 is not expected there; inside text write \\"',
    ],
    [
      '{ "engine": "pump set",\n  "rods": [\n    { "name": "A" },\n    { "name": "B" }\n',
      'sheet, line 5',
      'is not JSON: the text ends, but a comma or ] should follow; the [ at line 2, character 11 is still open',
    ],
    [
      '{ "rods": [\n  { "name": "A" ],\n',
      'sheet, line 2',
      'is not JSON: "]," at character 17, but a comma or } should be there; the { at line 2, character 3 is still open',
    ],
    [
      '{ "version": 1, // first',
      'sheet, line 1',
      'is not JSON: "// first" at character 17, but another name in double quotes should be there; JSON has no comments: write it in a field "x-note"',
    ],
    [
      "{ 'version': 1",
      'sheet, line 1',
      'is not JSON: "\'version\': 1" at character 3, but a name in double quotes or } should be there; JSON has double quotes only',
    ],
    [
      '['.repeat(60),
      'sheet, line 1',
      'is not JSON: the bracket at character 51 is nested too deeply',
    ],
  ])('that is not JSON is refused at its line: %j', (text, path, message) => {
    expect(sheetProblems(text)).toEqual([{ path, message }]);
    const shed = shedProblems(text);
    expect(shed).toEqual([{ path: path.replace('sheet', 'shed'), message }]);
  });

  it('is refused for a key that stands twice, at both its lines, beside every other mistake', () => {
    const text = [
      '{ "version": 1, "engine": "pump set", "units": "inch", "colour": "red",',
      '  "crankshaft": { "endPlay": { "readings": [',
      '    { "pushed": "0 thou",',
      '      "pulled": "7 thou",',
      '      "pu\\u0073hed": "1 thou" } ] } },',
      '  "units": "metric" }',
    ].join('\n');
    expect(sheetProblems(text)).toEqual([
      {
        path: 'crankshaft.endPlay.readings[0].pushed',
        message:
          'is given twice, at line 3, character 7 and line 5, character 7; keep one of the two',
      },
      {
        path: 'units',
        message:
          'is given twice, at line 1, character 39 and line 6, character 3; keep one of the two',
      },
      { path: 'colour', message: expect.stringMatching(/^is not a known field/) },
    ]);
  });

  it('is refused for faults that stand twice: those of the first would be forgotten', () => {
    const text = JSON.stringify({ ...plainShed(), blocks: [] }).replace(
      '"blocks":[]',
      '"blocks":[{"name":"block A","bores":[],"faults":["cracked"],"faults":[]}]',
    );
    expect(shedProblems(text)).toContainEqual({
      path: 'blocks[0].faults',
      message: expect.stringMatching(
        /^is given twice, both times on line 1, at characters \d+ and \d+; keep one of the two$/,
      ),
    });
  });

  it('is refused unread where it is longer than any shed’s', () => {
    const long = ' '.repeat(20_000_001);
    const message = 'has 20000001 characters, but the limit is 20000000; is it the right file?';
    expect(sheetProblems(long)).toEqual([{ path: 'sheet', message }]);
    expect(shedProblems(long)).toEqual([{ path: 'shed', message }]);
    expect(shedProblems(plainShed(), `${HEADER}${long}`)).toEqual([
      { path: 'readings', message: message.replace('20000001', '20000039') },
    ]);
    const rest = '{ "version": 1, "engine": "e", "units": "inch" }';
    expect(readSheet(rest.padEnd(20_000_000)).engine).toBe('e');
  });

  it('of readings has at most 200000 lines', () => {
    const lines = (rows: number) => `${HEADER}${'\nhead B,guideBore,,,0.3145 in'.repeat(rows)}`;
    expect(shedProblems(plainShed(), lines(200_000))).toEqual([
      {
        path: 'readings',
        message: 'has 200001 lines, but the limit is 200000; is it the right file?',
      },
    ]);
  });
});
