import { planBuilds, planReport } from 'crankwright/planning';
import { readShed, triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';

// One reading is too few to compare with others. Steps go to 0.030 in; wear takes a journal no further than 0.010 in
// and a bore no further than 0.030 in past a step (common practice).

const at = (diameter: string, angle = '0 deg') => ({ station: '1 in', angle, diameter });
const shedWith = (bore: readonly string[], journal: readonly string[]) =>
  readShed({
    version: 1,
    shed: 'the barn',
    units: 'inch',
    engine: {
      name: 'pump set',
      cylinders: 1,
      mains: 0,
      rodJournals: { standard: { min: '2.1245 in', max: '2.1250 in' } },
      bores: { standard: { min: '3.250 in', max: '3.251 in' } },
    },
    blocks: [
      { name: 'block A', bores: [{ name: 'cylinder 1', readings: bore.map((d) => at(d)) }] },
    ],
    crankshafts: [
      {
        name: 'crankshaft A',
        rodJournals: [{ name: 'rod 1', readings: journal.map((d) => at(d)) }],
      },
    ],
  });
const said = (bore: readonly string[], journal: readonly string[]) =>
  flowing(triageReport(triage(shedWith(bore, journal))));
const AGAIN = 'read this one again';

describe('a single reading that no step and no wear come to', () => {
  it('is named in the triage, with what is wrong about it', () => {
    const text = said(['3.3535 in'], ['2.0147 in']);
    expect(text).toContain(
      'cylinder 1: read this one again: 3.3535 in at station 1.0000 in is 0.1025 in above standard, and no oversize on the list and no wear comes to that',
    );
    expect(text).toContain(
      'rod 1: read this one again: 2.0147 in at station 1.0000 in is 0.1098 in below standard, and no undersize on the list and no wear comes to that',
    );
    expect(text).toContain('block A: undecided until the odd reading is taken again');
    expect(text).toContain('crankshaft A: undecided until the odd reading is taken again');
  });

  it('is named in the plan before the part is passed over', async () => {
    const text = flowing(planReport(await planBuilds(shedWith(['3.3535 in'], ['2.0147 in']))));
    const [, first = ''] = text.split('MEASURE FIRST -');
    expect(first).toContain('block A, cylinder 1: read this one again: 3.3535 in');
    expect(first).toContain('crankshaft A, rod 1: read this one again: 2.0147 in');
  });

  it.each([
    ['standard', '3.2505 in', '2.1248 in'],
    ['the last step and worn', '3.3100 in', '2.0850 in'],
  ])('is not doubted at %s', (_, bore, journal) => {
    expect(said([bore], [journal])).not.toContain(AGAIN);
  });

  it('stands once it was read twice, and alike', () => {
    expect(said(['3.3535 in', '3.3536 in'], ['2.0147 in', '2.0148 in'])).not.toContain(AGAIN);
  });
});
