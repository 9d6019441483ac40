import { readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { type Json, spoilt } from './sheets.js';

type Problem = { readonly path: string; readonly message: string };

function refused(changes: Readonly<Record<string, Json>>) {
  const { problems, message } = refusal(() => readSheet(spoilt(changes))) as unknown as {
    problems: readonly Problem[];
    message: string;
  };
  return { problems, message };
}

const rod = (diameter: number, unit: string): Json => ({
  unit,
  angles: ['0 deg', '60 deg', '120 deg'],
  stations: ['0.25 in', '1 in'],
  diameters: [
    [diameter, diameter, diameter],
    [diameter, diameter, diameter],
  ],
});

describe('a refusal says what to type', () => {
  it('names the fields of an object that was written as one size', () => {
    expect(refused({ 'crankshaft.endPlay': '9 thou' }).problems).toEqual([
      {
        path: 'crankshaft.endPlay',
        message:
          'must be an object with named fields: readings, limits, e.g. { "readings": [{ "pushed": "0 thou", "pulled": "9 thou" }] }',
      },
    ]);
  });

  it('its example of end play is taken as it stands', () => {
    const [{ message } = { message: '' }] = refused({ 'crankshaft.endPlay': '9 thou' }).problems;
    const example = JSON.parse(message.slice(message.indexOf('e.g. ') + 5)) as Json;
    expect(() => readSheet(spoilt({ 'crankshaft.endPlay': example }))).not.toThrow();
  });

  it('asks for one wall where that of the pair was given, and says it once', () => {
    // The housing holds (1.7508 - 1.6250 + 0.0200) / 2 = 0.0729 in of wall with the shells 20 under; a pair has twice that.
    expect(refused({ 'shells[1].wall': '0.1438 in' }).problems).toEqual([
      {
        path: 'shells[1].wall',
        message: expect.stringMatching(
          /^0.1438 in is not near .* That is two walls: give one, half of 0.1438 in.$/,
        ),
      },
    ]);
  });

  it('asks for the other unit where the same number is a size in it, in one line', () => {
    const { problems, message } = refused({ 'rods[0].journal.readings': rod(1.6246, 'mm') });
    expect(problems).toHaveLength(6);
    // 3 mm and 1 m, to three digits: 0.118 and 39.4 in.
    expect(problems[0]?.message).toBe(
      '"1.6246 mm" is not a length of 0.118 in … 39.4 in. Did you mean "1.6246 in"?',
    );
    expect(message.split('\n')).toHaveLength(2);
    expect(refused({ 'rods[0].housingBore': '44.47 in' }).problems).toMatchObject([
      { message: expect.stringMatching(/Did you mean "44.47 mm"\?$/) },
    ]);
  });

  it('asks for the digits where no unit helps', () => {
    expect(refused({ 'rods[0].housingBore': '4447 in' }).problems).toMatchObject([
      { message: expect.stringMatching(/Check the digits and the unit\.$/) },
    ]);
  });

  it('says that a journal and its housing look swapped, and nothing else of the two', () => {
    const swapped = {
      'rods[0].journal.readings': rod(1.7506, 'in'),
      'rods[0].housingBore': '1.6246 in',
    };
    expect(refused(swapped).problems).toEqual([
      {
        path: 'rods[0]',
        message:
          'journal 1.7506 in, housing 1.6246 in: these look swapped. A housing is larger than its journal by two walls; change the two over.',
      },
    ]);
  });

  it('does not say so of a housing that is too small for a sound journal', () => {
    expect(refused({ 'rods[0].housingBore': '1.5 in' }).problems).toMatchObject([
      {
        path: 'rods[0].housingBore',
        message: expect.stringMatching(/were the journal and the housing swapped\?$/),
      },
    ]);
    expect(refused({ 'rods[0].housingBore': '2.9 in' }).problems[0]?.message).toMatch(
      /Check the digits and the unit\.$/,
    );
  });
});
