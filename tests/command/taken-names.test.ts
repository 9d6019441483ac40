import { beforeAll, expect, it } from 'vitest';
import { runText } from '../../src/command/prompt/run-text.js';
import { Session } from '../../src/command/prompt/session.js';

let session: Session;
beforeAll(async () => {
  session = await Session.begin('inch');
});
const wrong = (text: string) => runText(session, text).wrong?.message;

// Had `mm = 2 in` been taken, every reading in mm after it would be wrong without a word.
it.each([
  ['thou = 5 mm', 'thou is a unit; give the value another name'],
  ['mm = 2 in', 'mm is a unit; give the value another name'],
  ['g = 12 thou; 5 g', 'g is a unit; give the value another name'],
  ['C = 3 mm', 'C is a unit; give the value another name'],
  ['quart = 1 US qt', 'quart is a unit; give the value another name'],
  ['pi = 3', 'pi is a constant; give the value another name'],
  ['oilClearance = 3 thou', 'oilClearance is a function; give the value another name'],
  [
    'crownVolumeByBurette = 3 mL',
    'crownVolumeByBurette is a function; give the value another name',
  ],
  ['[mm = 2 in, 3 mm]', 'mm is a unit; give the value another name'],
  ['f(mm) = 2 * mm', 'mm is a unit; choose another name'],
  ['inch(x) = 2 * x', 'inch is a unit; choose another name'],
])('refuses %s', (text, expected) => {
  expect(wrong(text)).toBe(expected);
});

it('leaves names of the trade free, and the units as they were', () => {
  expect(
    wrong(
      'rod = 7 in; size = 3 in; max = 3 thou; c = 2 thou; x = 1; clearance = 3 thou; f(y) = y + c',
    ),
  ).toBeUndefined();
  const { done } = runText(session, '25.4 mm to in');
  expect(done.map(({ value }) => session.show(value))).toEqual(['1 in']);
});
