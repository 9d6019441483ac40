import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { type Json, spoilt } from './sheets.js';

/** Rod 2 by a thimble that was read a turn off, 0.025 in: 1.6245 less that, round and straight, at no step. */
const turnedOff = (readAgain: readonly string[] = []): Json => {
  const read = (station: string, angle: string, diameter = '1.5995 in') => ({
    station,
    angle,
    diameter,
  });
  return spoilt({
    oil: undefined,
    'rods[1].journal.readings': [
      read('1/4 in', '0 deg'),
      read('1/4 in', '90 deg'),
      read('1-1/4 in', '0 deg'),
      read('1-1/4 in', '90 deg'),
      ...readAgain.map((diameter) => read('1/4 in', '0 deg', diameter)),
    ],
  });
};
const inspected = (sheet: Json) => inspect(readSheet(sheet));

describe('a journal that reads round and straight at no step', () => {
  it('is read again before anything is ground or bought', () => {
    const inspection = inspected(turnedOff());
    const actions = actionsFrom(inspection);
    expect(actions.map(({ kind }) => kind)).toContain('odd size');
    for (const spending of ['grind', 'buy shells', 'no step serves', 'fit shells']) {
      expect(actions.map(({ kind }) => kind)).not.toContain(spending);
    }
    const [said] = actions
      .filter(({ kind }) => kind === 'odd size')
      .flatMap((action) => describeAction(action, { units: 'inch' }));
    // By hand: 1.6245 - 1.5995 = 0.0250 in.
    expect(said).toMatch(/^rod 2: read the thimble again.* 0\.0250 in below standard/);
    expect(report(inspection)).toContain(
      'Decision: none, as one reads where no step and no wear takes it.',
    );
  });

  it('stands once a place was read again, and alike', () => {
    const kinds = actionsFrom(inspected(turnedOff(['1.5995 in']))).map(({ kind }) => kind);
    expect(kinds).not.toContain('odd size');
    expect(kinds).toContain('grind');
  });
});
