import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { BARE_TWIN, spoiltShed } from '../shed/sheds.js';
import type { Json } from '../sheet/sheets.js';

const partOf = (name: string, changes: Readonly<Record<string, Json | undefined>>) => {
  const part = triage(readShed(spoiltShed(changes))).parts.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no ${name}`);
  return part;
};
const told = (name: string, changes: Readonly<Record<string, Json | undefined>>) =>
  describePart(partOf(name, changes), { units: 'inch' });

describe('a housing whose readings lie further apart than any housing is out of round', () => {
  const bore = (min: string, max: string) => ({
    'rods[0].rods[0].housingBore': { min, max },
    instruments: { boreGauge: '±0.0001 in' },
  });

  it('is read again before it is resized', () => {
    const part = partOf('rods A', bore('1.7508 in', '1.7606 in'));
    expect([part.disposition, part.jobs, part.findings]).toEqual(['undecided', [], []]);
    const [headline, why] = told('rods A', bore('1.7508 in', '1.7606 in'));
    expect(headline).toBe('rods A, from donor A: undecided until the odd reading is taken again');
    expect(why).toContain('rod A1: read it again first: it reads 1.7508 to 1.7606 in');
  });

  it('is resized where it may be out of round so far', () => {
    // 0.0050 in is 0.003 of the bore.
    const part = partOf('rods A', bore('1.7508 in', '1.7558 in'));
    expect(part.jobs.map(({ work }) => work)).toEqual(['resize housings']);
  });

  it('is read again in a block too', () => {
    const part = partOf('block A', {
      'blocks[0].mainHousings[0].housingBore': { min: '2.1262 in', max: '2.1462 in' },
    });
    expect([part.disposition, part.jobs]).toEqual(['undecided', []]);
  });
});

describe('a journal that reads round and straight at no step', () => {
  // Standard 1.6245 to 1.6250 in, steps 10 and 20 under; a turn of the thimble is 0.025 in.
  const reads = (...sizes: readonly string[]) =>
    Object.fromEntries(
      sizes.map((size, i) => [`crankshafts[0].rodJournals[0].readings[${i}].diameter`, size]),
    );
  const aTurnOff = reads('1.5999 in', '1.5998 in', '1.5999 in', '1.5998 in');

  it('is read again before the crankshaft is scrap', () => {
    const part = partOf('crankshaft A', aTurnOff);
    expect([part.disposition, part.jobs]).toEqual(['undecided', []]);
    expect(told('crankshaft A', aTurnOff).join('\n')).toContain(
      'rod 1: read it again: round, yet 0.0247 in below standard, which is no step',
    );
  });

  it('stands once a place was read twice, and alike', () => {
    const places = [0.25, 1.25].flatMap((station) => [0, 90].map((angle) => [station, angle]));
    const journal = [...places, ...places.slice(0, 1)].map(([station, angle]) => ({
      station: `${station} in`,
      angle: `${angle} deg`,
      diameter: '1.5999 in',
    }));
    const part = partOf('crankshaft A', { 'crankshafts[0].rodJournals[0].readings': journal });
    expect(part.disposition).toBe('scrap');
  });

  it('is no such journal if it wore out of round, or lies near a step', () => {
    const kinds = (changes: Readonly<Record<string, Json>>) =>
      partOf('crankshaft A', changes).because.map(({ kind }) => kind);
    // 0.0008 in out of round.
    expect(kinds(reads('1.6206 in', '1.6198 in', '1.6206 in', '1.6198 in'))).not.toContain(
      'at no step',
    );
    // 2.4 and 2.6 thou below the least of standard.
    const at = (size: string) => kinds(reads(size, size, size, size));
    expect(at('1.6221 in')).not.toContain('at no step');
    expect(at('1.6219 in')).toContain('at no step');
    expect(at('1.6148 in')).not.toContain('at no step');
  });
});

describe('a piston that reads as large as the bore its set is made for', () => {
  // The standard bore of these sheds is 3.0000 to 3.0005 in.
  const reads = (size: string) => ({ 'pistonSets[0].pistons[0].diameter': size });
  const name = 'pistons A';

  it('is read again before the set is called spare', () => {
    const part = partOf(name, reads('3.0010 in'));
    expect(part.disposition).toBe('undecided');
    const text = told(name, reads('3.0010 in')).join('\n');
    expect(text).toContain('undecided until the odd reading is taken again');
    expect(text).toContain(
      'read it again: it reads 3.0010 in, and a bore of standard size is 3.0000 to 3.0005 in; every piston is smaller than its bore',
    );
    expect(text).not.toContain('no block here takes this set');
  });

  it('is named just as one that is as large as the smallest bore, and not below that', () => {
    const kinds = (size: string) => partOf(name, reads(size)).because.map(({ kind }) => kind);
    expect(kinds('3.0000 in')).toContain('as large as its bore');
    expect(kinds('2.9999 in')).not.toContain('as large as its bore');
  });

  it('is compared with the bore of the oversize of its set', () => {
    const over = { ...reads('3.0010 in'), 'pistonSets[0].oversize': '10 over' };
    expect(partOf(name, over).because.map(({ kind }) => kind)).not.toContain(
      'as large as its bore',
    );
  });

  it('is among what to measure first, and no engine counts on it', async () => {
    const page = flowing(planReport(await planBuilds(readShed(spoiltShed(reads('3.0010 in'))))));
    expect(page).not.toContain('Spare: pistons A');
    expect(page).toContain('Undecided until the odd reading is taken again: pistons A (piston set');
  });
});

describe('a piston that differs from the others of its set', () => {
  // The steps are 10 thou apart: half of that is 0.0050 in. The pistons read 2.9968 and 2.9967 in.
  const slipped = { 'pistonSets[0].pistons[1].diameter': '2.9767 in' };
  const again = (changes: Readonly<Record<string, Json>>) =>
    partOf('pistons A', changes).because.flatMap((reason) =>
      reason.kind === 'apart from its set' ? [reason.place] : [],
    );

  it('is read again before the set is called spare', () => {
    expect(partOf('pistons A', slipped).disposition).toBe('undecided');
    const text = told('pistons A', slipped).join('\n');
    expect(text).toContain(
      'piston 2: read it again: it reads 2.9767 in, and piston 1 of the same set 2.9968 in',
    );
    expect(text).not.toContain('no block here takes this set');
  });

  it('differs by more than half the smallest step', () => {
    const second = (size: string) => again({ 'pistonSets[0].pistons[1].diameter': size });
    expect(second('2.9918 in')).toEqual([]);
    expect(second('2.9917 in')).toEqual(['piston 2']);
  });

  it('is the odd one of three, whether it reads small or large', () => {
    const odd = (...sizes: readonly string[]) =>
      triage(
        readShed({
          version: 1,
          shed: 'the barn',
          units: 'inch',
          engine: { ...BARE_TWIN, cylinders: 3 },
          pistonSets: [
            {
              name: 'pistons 20 over',
              oversize: '20 over',
              pistons: sizes.map((diameter, i) => ({ name: `piston ${i + 1}`, diameter })),
            },
          ],
        }),
      ).parts.flatMap(({ because }) =>
        because.flatMap((reason) => (reason.kind === 'apart from its set' ? [reason.place] : [])),
      );
    expect(odd('3.0168 in', '3.0068 in', '3.0167 in')).toEqual(['piston 2']);
    expect(odd('3.0066 in', '3.0068 in', '3.0168 in')).toEqual(['piston 3']);
  });

  it('keeps the work in doubt that its set may do without', async () => {
    const plan = await planBuilds(readShed(spoiltShed(slipped)));
    const jobs = plan.builds.flatMap((build) => build.jobs);
    expect(jobs.map(({ part, work, readFirst }) => [part, work, readFirst])).toEqual([
      ['block A', 'bore', ['pistons A']],
    ]);
    expect(
      plan.measureFirst.map(({ mayBring, parts }) => [mayBring.kind, parts[0]?.name]),
    ).toContainEqual(['lower cost', 'pistons A']);
  });
});

describe('a set of pistons that read far under the bore they are made for', () => {
  // Bore 3.0000 in, clearance 0.0055 in at most, half a step 0.0050 in: 2.9895 in.
  const both = (size: string) => ({
    'pistonSets[0].pistons[0].diameter': size,
    'pistonSets[0].pistons[1].diameter': size,
  });

  it('is read again', () => {
    const part = partOf('pistons A', both('2.9894 in'));
    expect(part.disposition).toBe('undecided');
    expect(told('pistons A', both('2.9894 in')).join('\n')).toContain(
      'piston 1: read it again: it reads 2.9894 in, and a bore of standard size is 3.0000 to 3.0005 in; no piston for that bore is so small',
    );
  });

  it('is not where they may have worn so far', () => {
    const part = partOf('pistons A', both('2.9895 in'));
    expect(part.because.map(({ kind }) => kind)).not.toContain('far under its bore');
  });
});

describe('a rod whose big end was misread', () => {
  const misread = { 'rods[0].rods[1].housingBore': { min: '1.7508 in', max: '1.7707 in' } };

  it('keeps the work in doubt that its set may do without', async () => {
    const plan = await planBuilds(readShed(spoiltShed(misread)));
    const jobs = plan.builds.flatMap((build) => build.jobs);
    expect(jobs.map(({ part, work, readFirst }) => [part, work, readFirst])).toEqual([
      ['rod B2', 'straighten', ['rods A']],
    ]);
    expect(plan.measureFirst.map(({ mayBring }) => mayBring.kind)).toEqual([
      'one more engine',
      'lower cost',
    ]);
  });
});
