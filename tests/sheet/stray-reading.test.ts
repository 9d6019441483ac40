import { readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { shedProblems, spoiltShed } from '../shed/sheds.js';
import { type Json, spoilt } from './sheets.js';

const problemsOf = (sheet: Json) => {
  const { problems } = refusal(() => readSheet(sheet)) as unknown as { problems: unknown };
  return problems;
};

const table = (...diameters: Json[][]): Json => ({
  unit: 'in',
  angles: ['0 deg', '60 deg', '120 deg'],
  stations: [0.25, 1],
  diameters,
});

// The standard journal is 1.6245 to 1.6250 in, and 1.6426 is 1.6246 with two digits changed.
const SWAPPED = table([1.6246, 1.6246, 1.6245], [1.6246, 1.6426, 1.6245]);

describe('one reading that no journal of the kind has, among others that agree', () => {
  it('is named by its station, angle and size, where it stands in the table', () => {
    expect(problemsOf(spoilt({ 'rods[0].journal.readings': SWAPPED }))).toEqual([
      {
        path: 'rods[0].journal.readings.diameters[1][1]',
        message:
          'rod 1 at station 1 in, angle 60 deg: 1.6426 in is not near its other readings, 1.6245 in … 1.6246 in. Read it again; two digits may have changed places.',
      },
    ]);
  });

  it('is named in a list of readings, too', () => {
    const listed = [0.25, 1].flatMap((station, i) =>
      [0, 90].map((angle, j) => ({
        station: `${station} in`,
        angle: `${angle} deg`,
        diameter: i + j === 2 ? '1.6426 in' : '1.6246 in',
      })),
    );
    expect(problemsOf(spoilt({ 'rods[0].journal.readings': listed }))).toEqual([
      {
        path: 'rods[0].journal.readings[3].diameter',
        message: expect.stringMatching(/station 1 in, angle 90 deg: 1.6426 in is not near/),
      },
    ]);
  });

  it('is named in a shed, at its line of the CSV', () => {
    const at = 'crankshafts[1].rodJournals[1].readings';
    expect(shedProblems(spoiltShed({ [at]: SWAPPED }))).toMatchObject([
      { path: `${at}.diameters[1][1]`, message: expect.stringMatching(/^rod 2 at station 1 in/) },
    ]);
    const csv = [
      'part,feature,station [in],0 deg [in],60 deg [in]',
      'crankshaft B,rod 2,0.25,1.6246,1.6245',
      'crankshaft B,rod 2,1,1.6246,1.6426',
    ].join('\n');
    expect(shedProblems(spoiltShed({ [at]: undefined }), csv)).toMatchObject([
      { path: 'readings, line 3: 60 deg', message: expect.stringMatching(/Read it again/) },
    ]);
  });

  it('is not named where the others agree no better with each other, or most are off', () => {
    // 1.6426 is 0.0080 in from the nearest, and the others are 0.0100 in apart.
    const apart = table([1.6346, 1.6246, 1.6346], [1.6246, 1.6426, 1.6246]);
    const most = table([1.6426, 1.6426, 1.6425], [1.6426, 1.6246, 1.6425]);
    for (const readings of [apart, most]) {
      expect(problemsOf(spoilt({ 'rods[0].journal.readings': readings }))).toMatchObject([
        { path: 'rods[0].journal', message: expect.stringMatching(/Journals only wear smaller/) },
      ]);
    }
  });
});
