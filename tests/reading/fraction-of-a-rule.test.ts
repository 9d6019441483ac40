import { readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { shedProblems, spoiltShed } from '../shed/sheds.js';
import { type Json, spoilt } from '../sheet/sheets.js';

const COARSE = /is a fraction, as a rule shows it.*Read it with a micrometer or a gauge/;

describe('a size that was measured, given as a fraction of an inch', () => {
  it.each<[string, Json, string]>([
    ['cylinders[0].piston', '2 63/64 in', 'cylinders[0].piston'],
    ['cylinders[0].piston', '2-63/64"', 'cylinders[0].piston'],
    ['rods[0].housingBore', '1 3/4 in', 'rods[0].housingBore'],
    ['rods[0].housingBore', ['1.7506 in', '1 3/4 in'], 'rods[0].housingBore[1]'],
    ['rods[0].housingBore', { min: '1 3/4 in', max: '1.7506 in' }, 'rods[0].housingBore.min'],
    ['rods[0].journal.readings[0].diameter', '1-5/8 in', 'rods[0].journal.readings[0].diameter'],
    ['shells[0].wall', '1/16 in', 'shells[0].wall'],
    ['cylinders[0].rings[0].gap', '1/64 in', 'cylinders[0].rings[0].gap'],
  ])('%s of %j is refused', (path, value, place) => {
    expect(refusal(() => readSheet(spoilt({ [path]: value })))).toMatchObject({
      problems: [{ path: place, message: expect.stringMatching(COARSE) }],
    });
  });

  it('is refused in a CSV, at its line, where the unit stands in the heading', () => {
    const csv = 'part,feature,station,angle,reading [in]\nrods A,rod A1,,,1 3/4';
    const [name, at] = ['rods[0].rods[0].name', 'rods[0].rods[0].housingBore'];
    expect(shedProblems(spoiltShed({ [name]: 'rod A1', [at]: undefined }), csv)).toMatchObject([
      { path: 'readings, line 2: reading', message: expect.stringMatching(COARSE) },
    ]);
  });

  it('is taken where it says where a reading was, or what the maker made', () => {
    const taken = {
      'rods[0].journal.readings[0].station': '1/4 in',
      'crankshaft.rodJournals.standard.max': '1-5/8 in',
    };
    expect(() => readSheet(spoilt(taken))).not.toThrow();
  });

  it('is taken where no rule shows it: an exact number', () => {
    // 1.7508 is 1-1877/2500.
    const exact = { 'rods[0].housingBore': '1-1877/2500 in' };
    expect(() => readSheet(spoilt(exact))).not.toThrow();
  });
});
