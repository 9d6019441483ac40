import configureMeasurements from 'convert-units';
import force from 'convert-units/definitions/force';
import length from 'convert-units/definitions/length';
import pressure from 'convert-units/definitions/pressure';
import torque from 'convert-units/definitions/torque';
import volume from 'convert-units/definitions/volume';
import { describe, expect, it } from 'vitest';
import { engine } from './engine.js';
import { fractionOf, minus, ratioOf, shareOf } from './exactly.js';

// What a tool gives up: the same engine with the tables that come with it. Their metric and
// imperial sides are joined by a rounded factor.
const theirs = configureMeasurements<string, string, string>({
  length,
  volume,
  force,
  pressure,
  torque,
});

describe('one unit by the tables that come with convert-units', () => {
  it('is 25.399999… mm for an inch, and 25.4 mm by ours', () => {
    expect(theirs(1).from('in').to('mm')).toBeCloseTo(25.4 - 8.13e-7, 9);
    expect(engine(1, 'in', 'mm')).toBe(25.4);
  });

  it.each([
    { old: ['in', 'mm'], ours: ['in', 'mm'] },
    { old: ['gal', 'l'], ours: ['US gal', 'L'] },
    { old: ['psi', 'kPa'], ours: ['psi', 'kPa'] },
    { old: ['lbf-ft', 'Nm'], ours: ['lbf·ft', 'N·m'] },
    { old: ['lbf', 'N'], ours: ['lbf', 'N'] },
  ] as const)(
    'is off in the ninth digit or before for $ours, and by ours after the fifteenth',
    ({ old, ours }) => {
      const exact = ratioOf(ours[0], ours[1]);
      const off = (got: number) => shareOf(minus(fractionOf(got), exact), exact);
      expect(off(theirs(1).from(old[0]).to(old[1]))).toBeGreaterThan(1e-9);
      expect(off(engine(1, ours[0], ours[1]))).toBeLessThan(5e-16);
    },
  );
});
