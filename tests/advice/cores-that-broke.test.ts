import { planBuilds, planReport } from 'crankwright/planning';
import { readShed, triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';

// TM 55-1930-209-14&P-21: a crankshaft is inspected for cracks after a piston or connecting rod failure, and at every
// overhaul. TM 9-2815-202-34, section 6-34: a rod that had a bearing failure is scrap; the others are tested.

const shedWith = (happened?: readonly string[]) =>
  readShed({
    version: 1,
    shed: 'the barn',
    units: 'inch',
    engine: {
      name: 'pump set',
      cylinders: 1,
      mains: 2,
      rodJournals: { standard: { min: '2.1245 in', max: '2.1250 in' } },
      mainJournals: { standard: { min: '2.1245 in', max: '2.1250 in' } },
      bores: { standard: { min: '3.250 in', max: '3.251 in' } },
    },
    cores: [{ name: 'barn one', condition: 'seized', ...(happened && { happened }) }],
  });
const triaged = (happened?: readonly string[]) => flowing(triageReport(triage(shedWith(happened))));
const measureFirst = async (happened?: readonly string[]) => {
  const [, section = ''] = planReport(await planBuilds(shedWith(happened))).split(
    /^MEASURE FIRST\n-+\n/m,
  );
  return flowing(section.split(/^LEFT OVER|^THE NEXT ENGINE/m)[0] as string);
};

describe('what happened to an engine that is not taken apart', () => {
  it('is told of its crankshaft and rods in the triage, with the test that comes first', () => {
    const text = triaged(['seized bearing']);
    expect(text).toContain('TEST FIRST');
    expect(text).toMatch(/\[ \] crankshaft of barn one: barn one seized a bearing/);
    expect(text).toMatch(
      /\[ \] rods of barn one: barn one seized a bearing .*scrap unless tested for cracks and softening/,
    );
    expect(text).toContain('have crack-tested first: crankshaft, rods');
    expect(text).toContain('tested for softening: the journal of the bearing that seized');
  });

  it('is told of its block too after a thrown rod', () => {
    const text = triaged(['thrown rod']);
    expect(text).toContain('have crack-tested first: block, crankshaft, rods');
    expect(text).not.toContain('softening');
  });

  it('stands beside the instrument of each part to measure first', async () => {
    const thrown = await measureFirst(['thrown rod']);
    expect(thrown).toContain(
      'rods of barn one: take barn one apart; have them crack-tested first (barn one threw a rod): scrap unless tested; big ends (rod 1), with the bore gauge',
    );
    expect(thrown).toContain(
      'block of barn one: take barn one apart; have it crack-tested first (barn one threw a rod); bores',
    );
    const seized = await measureFirst(['seized bearing']);
    expect(seized).toMatch(
      /crankshaft of barn one: take barn one apart; have it crack-tested first \(barn one seized a bearing\), and the journal of the bearing that seized tested for softening; main journals/,
    );
    expect(seized).toContain(
      'scrap unless tested for cracks and softening, or until it is known that their bearing did not seize',
    );
  });

  it('is not made up: a core without an accident has only its crankshaft tested', async () => {
    expect(triaged()).not.toContain('TEST FIRST');
    expect(triaged()).toContain('have crack-tested first: crankshaft');
    const text = await measureFirst();
    expect(text).toContain('have it crack-tested first; main journals');
    expect(text.split('crack-tested')).toHaveLength(2);
  });
});
