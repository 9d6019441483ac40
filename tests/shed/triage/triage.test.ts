import { format, inch } from 'crankwright';
import { readShed, type TriagedPart, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import type { Json } from '../../sheet/sheets.js';
import { spoiltShed } from '../sheds.js';

/** One part of the plain shed with some values changed, as it is sorted. */
function part(name: string, changes: Readonly<Record<string, Json | undefined>> = {}): TriagedPart {
  const found = triage(readShed(spoiltShed(changes))).parts.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
}

const clear = { for: 'cracks', how: 'magnetic particles', found: 'none' };
const works = ({ jobs }: TriagedPart) => jobs.map(({ work, places }) => [work, ...places]);

describe('triage', () => {
  it('sorts every part, and only those of the shed', () => {
    const sorted = triage(readShed(spoiltShed({})));
    expect([sorted.shed, sorted.units]).toEqual(['the shed', 'inch']);
    expect(sorted.parts.map(({ name, disposition }) => `${name}: ${disposition}`)).toEqual([
      'block A: use as it is',
      'block B: machine',
      'crankshaft A: use as it is',
      'crankshaft B: machine',
      'rods A: use as it is',
      'rod B1: use as it is',
      'rod B2: use after',
      'pistons A: use as it is',
      'pistons 20 over: use as it is',
      'rings standard: use as it is',
      'rings 20 over: use as it is',
      'rod shells standard: use as it is',
      'rod shells 10 under: use as it is',
      'main shells standard: use as it is',
      'washers 0.096: use as it is',
      'head A: use as it is',
      'head B: use after',
      'valves A: use as it is',
      'valves new: use as it is',
    ]);
  });

  it('says to what size what is worn is machined', () => {
    const block = part('block B');
    // Cylinder 2: 3.0081 across the stations at most, 0.0019 out of round, 0.0030 for the hone.
    expect(works(block)).toEqual([['bore', 'cylinder 1', 'cylinder 2']]);
    const [bore] = block.jobs;
    expect(bore?.to && [format(bore.to.min, inch), format(bore.to.max, inch)]).toEqual([
      '3.0200 in',
      '3.0205 in',
    ]);
    expect(block.because[0]).toEqual({
      kind: 'fault',
      fault: 'scored',
      consequence: { kind: 'machine' },
    });
    expect(works(part('crankshaft B'))).toEqual([['grind rod journals', 'rod 1', 'rod 2']]);
  });

  it('condemns what is past use, whatever it measures', () => {
    for (const fault of ['cracked', 'overheated']) {
      expect(part('crankshaft A', { 'crankshafts[0].faults': [fault] })).toMatchObject({
        disposition: 'scrap',
        jobs: [],
        tests: [],
      });
    }
    // Beyond every step: 0.040 in below standard, and the last step is 0.020 in under.
    const worn = spoiltShed({});
    const readings = ((worn as { crankshafts: { rodJournals: { readings: Json }[] }[] })
      .crankshafts[0]?.rodJournals[0]?.readings ?? []) as { diameter: string }[];
    for (const reading of readings) reading.diameter = '1.5950 in';
    // Read twice at one place, so that no turn of the thimble was miscounted.
    readings.push({ ...(readings[0] as (typeof readings)[number]) });
    const [, , shaft] = triage(readShed(worn)).parts;
    expect(shaft).toMatchObject({ name: 'crankshaft A', disposition: 'scrap' });
    expect(shaft?.because[1]).toMatchObject({ journals: 'rods', plan: { outcome: 'none' } });
  });

  it('machines what has surface faults though its size is good', () => {
    expect(works(part('crankshaft A', { 'crankshafts[0].faults': ['pitted'] }))).toEqual([
      ['grind main journals', 'pulley main', 'flywheel main'],
      ['grind rod journals', 'rod 1', 'rod 2'],
    ]);
    const faulty = part('crankshaft A', { 'crankshafts[0].rodJournals[1].faults': ['scored'] });
    expect(works(faulty)).toEqual([['grind rod journals', 'rod 1', 'rod 2']]);
    expect(part('block A', { 'blocks[0].bores[0].faults': ['scored'] }).because).toContainEqual({
      kind: 'fault',
      fault: 'scored',
      place: 'cylinder 1',
      consequence: { kind: 'machine' },
    });
  });

  it('straightens what is bent, and says the largest runout that was read while it was', () => {
    const runout = {
      'crankshafts[0].rodJournals[0].runout': '0.0080 in',
      'crankshafts[0].mainJournals[0].runout': '0.0060 in',
    };
    const bent = { ...runout, 'crankshafts[0].faults': ['bent'] };
    const shaft = part('crankshaft A', bent);
    expect(shaft).toMatchObject({
      disposition: 'undecided',
      jobs: [{ work: 'straighten', places: [] }],
    });
    expect(shaft.because.at(-1)).toEqual({
      kind: 'runout not known',
      place: 'rod 1',
      runout: inch(0.008),
    });
    expect(part('crankshaft A', { 'crankshafts[0].faults': ['bent'] }).because.at(-1)).toEqual({
      kind: 'runout not known',
    });
  });

  it('resizes housings that are outside their limits, and all of those that shells spun in', () => {
    const wide = part('rods A', { 'rods[0].rods[1].housingBore': '1.7515 in' });
    expect(wide.disposition).toBe('use after');
    expect(works(wide)).toEqual([['resize housings', 'rod A2']]);
    expect(wide.findings.map(({ verdict }) => verdict)).toEqual(['within', 'above']);
    const spun = { 'rods[0].faults': ['spun'], 'rods[0].tested': clear };
    expect(works(part('rods A', spun))).toEqual([['resize housings', 'rod A1', 'rod A2']]);
    const nothingToGoBy = { ...spun, 'engine.rodHousing': undefined };
    expect(part('rods A', nothingToGoBy)).toMatchObject({
      disposition: 'not as it is',
      jobs: [],
    });
  });

  it('says that no shop does what a part needs', () => {
    const wide = { 'rods[0].rods[1].housingBore': '1.7515 in' };
    expect(part('rods A', wide).because).toContainEqual({
      kind: 'no shop',
      work: 'resize housings',
    });
    expect(part('block B').because.map(({ kind }) => kind)).not.toContain('no shop');
  });

  it('keeps as a spare what nothing here goes with, and says what is missing', () => {
    const unmatched = (name: string, changes: Readonly<Record<string, Json | undefined>>) => {
      const { disposition, because } = part(name, changes);
      return [disposition, because.at(-1)];
    };
    const fitsNothing = (section: string) => ['spare', { kind: 'fits nothing', section }];
    // No crankshaft takes shells so thick: 0.0630 in leaves 2.1262 - 0.126 - 1.9999 = 0.0003 in.
    expect(unmatched('main shells standard', { 'shells[2].wall': '0.0630 in' })).toEqual(
      fitsNothing('crankshafts'),
    );
    expect(unmatched('pistons A', { 'pistonSets[0].pistons[0].diameter': '2.9930 in' })).toEqual(
      fitsNothing('blocks'),
    );
    expect(unmatched('rings standard', { 'ringSets[0].rings[0].gap': '0.025 in' })).toEqual(
      fitsNothing('blocks'),
    );
    expect(
      unmatched('valves new', {
        'valveSets[1].stem': '0.3150 in',
        'heads[1].guideBore': '0.3145 in',
      }),
    ).toEqual(fitsNothing('heads'));
    expect(
      unmatched('rod B1', {
        'rods[1].rods[0].housingBore': '1.7480 in',
        'engine.rodHousing': undefined,
      }),
    ).toEqual(fitsNothing('shells'));
    const blocks = { 'blocks[1].interchange': 'early', 'blocks[0].interchange': 'early' };
    expect(unmatched('head A', { ...blocks, 'heads[0].interchange': 'late' })).toEqual(
      fitsNothing('blocks'),
    );
  });
});
