import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { spoiltShed } from '../shed/sheds.js';

// Standard rod journals of this shed are 1.6245 to 1.6250 in; it grinds to 10 and 20 under.

const read = (size: string, faults?: readonly string[]) => ({
  readings: {
    unit: 'in',
    angles: ['0 deg', '60 deg', '120 deg'],
    stations: [0.25, 1.25],
    diameters: [
      [size, size, size],
      [size, size, size],
    ].map((row) => row.map(Number)),
  },
  ...(faults && { faults }),
});

const shedOf = (one: object, two: object) =>
  readShed(
    spoiltShed({
      'crankshafts[0].rodJournals': [
        { name: 'rod 1', ...one },
        { name: 'rod 2', ...two },
      ] as never,
    }),
  );
const said = (one: object, two: object) => {
  const [part] = triage(shedOf(one, two)).parts.filter(({ name }) => name === 'crankshaft A');
  if (part === undefined) throw new Error('no crankshaft A');
  return describePart(part, { units: 'inch' }).join('\n');
};
const NONE = 'none needs grinding, if the manual allows two sizes on one crankshaft';
const ALONE = 'ask the grinder whether rod 2 can be ground alone, with the webs marked';

describe('a crankshaft of a shed with a journal that is sound at its own size', () => {
  it('is said to need no grinding where the others are good at their size too', () => {
    const text = said(read('1.6247'), read('1.6047'));
    expect(text).toContain(
      `rod 1 reads sound at standard, the others at 0.0200 in under: with a pair of shells of each size, and the webs marked, ${NONE}`,
    );
  });

  it('has the grinder asked where another must be ground', () => {
    const text = said(read('1.6247'), read('1.6247', ['scored']));
    expect(text).toContain(`rod 1 reads sound at standard: ${ALONE}`);
    expect(text).not.toContain(NONE);
  });

  it('says nothing of it where all must be ground, or none', () => {
    const scored = read('1.6247', ['scored']);
    expect(said(scored, scored)).not.toMatch(/reads sound/);
    expect(said(read('1.6247'), read('1.6247'))).not.toMatch(/reads sound/);
  });

  it('says nothing of it where a journal was not measured', () => {
    expect(said(read('1.6247'), {})).not.toMatch(/reads sound/);
  });

  it('is told beside the order of the plan', async () => {
    const { builds, ...plan } = await planBuilds(
      shedOf(read('1.6247'), read('1.6247', ['scored'])),
    );
    const page = flowing(planReport({ ...plan, builds }));
    const jobs = builds.flatMap((build) => build.jobs);
    const job = jobs.find(
      ({ part, work }) => part === 'crankshaft A' && work.startsWith('grind rod'),
    );
    expect(job?.sound).toMatchObject({ journals: [{ name: 'rod 1', undersize: 0 }] });
    expect(page.split('MACHINING ORDERS ---')[1]).toContain(
      `rod 1 reads sound at standard: ${ALONE}`,
    );
  });
});
