import { describe, expect, it } from 'vitest';
import { plainShed, shedProblems } from '../shed/sheds.js';
import { changed } from '../sheet/sheets.js';

/** What is said of a part with this name. */
const problemsOf = (name: string) => shedProblems(changed(plainShed(), { 'heads[1].name': name }));

const RUN = /a spreadsheet would run it as a formula$/;

describe('a name', () => {
  it.each<[string, RegExp]>([
    ['=HYPERLINK(A1)', /^"=HYPERLINK\(A1\)" must not begin with =: a spreadsheet would run it/],
    ['  =1+1', RUN],
    ['@SUM(A1)', /^"@SUM\(A1\)" must not begin with @: /],
    [
      '+cmd',
      /^"\+cmd" must not begin with \+, unless a number follows: a spreadsheet would run it/,
    ],
    ['-cmd', RUN],
    ['+', RUN],
    ['--1', RUN],
    ['head\u0007B', /^has a character at place 5 that cannot be seen \(U\+0007\); remove it$/],
    ['head\tB', /at place 5 that cannot be seen \(U\+0009\)/],
    ['\u001bhead', /at place 1 that cannot be seen \(U\+001B\)/],
    ['head\u0085B', /at place 5 that cannot be seen \(U\+0085\)/],
    ['head\nB', /^must be on one line$/],
    ['head\u2028B', /^must be on one line$/],
  ])('cannot be %j', (name, message) => {
    expect(problemsOf(name)).toEqual([
      { path: 'heads[1].name', message: expect.stringMatching(message) },
    ]);
  });

  it.each([
    '+0.020 shells',
    '-.5 rods',
    '-10 head',
    '+10',
    'A=B',
    'a@b',
    '20-over',
    '(=1)',
    "'=1",
    'Zylinderkopf',
  ])('can be %j', (name) => {
    expect(problemsOf(name)).toEqual([]);
  });
});
