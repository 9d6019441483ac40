import { describe, expect, it } from 'vitest';
import { changed, type Json } from '../sheet/sheets.js';
import { plainShed, shedProblems } from './sheds.js';

const one = (path: string, value: Json, message: RegExp) =>
  expect(shedProblems(changed(plainShed(), { [path]: value }))).toEqual([
    { path, message: expect.stringMatching(message) },
  ]);

describe('a size in a shed file', () => {
  it.each(['', ' ', '?', '??', '-', 'unknown', 'not known', 'n/a', null])(
    'is left out where it is not known: %j',
    (value) => {
      for (const path of ['shells[0].undersize', 'shells[0].wall', 'heads[0].flatness']) {
        one(path, value, /leave the field out if it is not known/i);
      }
    },
  );

  it('that is a step says whether it is thou', () => {
    one('shells[0].undersize', '20', /"20" .*Write "20 under" if it is in thou, or name the unit/);
    one('pistonSets[0].oversize', '20', /Write "20 over" if it is in thou/);
    one('shells[0].undersize', '0.020', /Name the unit: "0\.020 in under" or "0\.020 mm under"/);
  });
});

describe('the readings of a journal or a bore', () => {
  it.each([
    '3.2530 in',
    3.253,
    null,
    ['3.2530 in'],
    { station: '0.5 in', angle: '0 deg', diameter: '3.2530 in' },
    {},
  ] as readonly Json[])('that are no list of readings show one: %j', (readings) => {
    const example = /\[\{ "station": "0\.5 in", "angle": "0 deg", "diameter": "3\.2530 in" \}\]/;
    one('blocks[0].bores[0].readings', readings, example);
    one('crankshafts[0].rodJournals[0].readings', readings, example);
  });

  it('may be one', () => {
    const readings = [{ station: '0.5 in', angle: '0 deg', diameter: '3.0004 in' }];
    const shed = changed(plainShed(), { 'blocks[0].bores[0].readings': readings });
    expect(shedProblems(shed)).toEqual([]);
  });
});
