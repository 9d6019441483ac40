import {
  borePlan,
  describe as describeFinding,
  endPlay,
  grindPlan,
  inch,
  judge,
  oversizeSteps,
  thou,
  undersizeSteps,
} from 'crankwright';
import { readShed } from 'crankwright/shed';
import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { triage } from '../../src/shed/index.js';
import { type Json, spoilt } from '../sheet/sheets.js';

const inspected = (changes: Readonly<Record<string, Json | undefined>>) =>
  inspect(readSheet(spoilt(changes)));
const advice = (changes: Readonly<Record<string, Json | undefined>>) =>
  actionsFrom(inspected(changes)).flatMap((action) => describeAction(action, { units: 'inch' }));

describe('a service limit is not a new fit', () => {
  const turns = (float: number) => [{ pushed: thou(0), pulled: thou(float) }];
  // TM 5-3895-346-14: crankshaft end play new 0.004 to 0.011 in, limit 0.018 in.
  const manual = {
    limits: { min: thou(4), max: thou(11) },
    service: { limits: { max: thou(18) } },
  };

  it('end play past the new fit stays in service up to the service limit', () => {
    expect(endPlay(turns(11), manual).finding.grade).toBe('as new');
    expect(endPlay(turns(11.5), manual).finding.grade).toBe('serviceable');
    expect(endPlay(turns(18), manual).finding.grade).toBe('serviceable');
    expect(endPlay(turns(18.5), manual).finding.grade).toBe('worn out');
    // Wear does not make it less.
    expect(endPlay(turns(3), manual).finding.grade).toBe('out of limits');
    expect(describeFinding(endPlay(turns(12), manual).finding, { units: 'inch' })[0]).toBe(
      'end play 0.0120 in: 0.0010 in above the limit of 0.0110 in (specified), of new parts; serviceable, within the service limit of 0.0180 in (specified)',
    );
  });

  it('the sheet leaves such an end play alone', () => {
    const limits = { min: '0.004 in', max: '0.011 in', service: { max: '0.018 in' } };
    const kinds = actionsFrom(inspected({ 'crankshaft.endPlay.limits': limits })).map(
      ({ kind }) => kind,
    );
    expect(kinds).not.toContain('set the end play');
  });

  it('the worse end of a span is the one with the worse grade, not the one further out', () => {
    const both = [...turns(3), ...turns(17)];
    expect(endPlay(both, manual).finding.grade).toBe('out of limits');
  });

  it('a rule of thumb for new parts never condemns a used one', () => {
    const { finding } = endPlay(turns(14));
    expect(finding.verdict).toBe('above');
    expect(finding.grade).toBe('undecided');
    const said = advice({ 'crankshaft.endPlay.limits': undefined });
    expect(said.find((text) => text.startsWith('end play'))).toMatch(
      /^end play in doubt: find the maker's limits before you change it/,
    );
  });

  it("another engine's limit never condemns a part", () => {
    const finding = (forAnotherEngine: boolean) =>
      judge({
        feature: 'taper',
        dimension: 'length',
        value: thou(2),
        limits: { max: thou(1) },
        limitsOf: 'service',
        basis: { kind: 'published', source: 'a manual', forAnotherEngine },
      });
    expect(finding(true).grade).toBe('undecided');
    expect(finding(false).grade).toBe('worn out');
  });
});

describe('the worn bore', () => {
  const cylinder = (taper: number) => ({
    name: 'cylinder 1',
    smallest: inch(3),
    largest: inch(3.001),
    outOfRound: thou(0.2),
    taper: thou(taper),
  });
  const request = {
    standard: { min: inch(3), max: inch(3.0005) },
    steps: oversizeSteps('inch'),
    sizeAllowance: thou(2),
  };

  it('keeps its taper by the travel of the piston, not by the spacing of the stations', () => {
    const at = (stations: readonly [string, string]) => {
      const readings = stations.flatMap((station, i) =>
        ['0 deg', '90 deg'].map((angle) => ({
          station,
          angle,
          diameter: i === 0 ? '3.0012 in' : '3.0000 in',
        })),
      );
      const [first] = inspected({
        'cylinders[0].bore': { readings: readings as unknown as Json },
        'bores.stroke': '4 in',
      }).cylinders;
      return first?.findings.find(({ feature }) => feature === 'taper');
    };
    const [near, far] = [at(['1 in', '2 in']), at(['0.5 in', '3.5 in'])];
    expect(near?.service?.limits.max).toBeCloseTo(inch(0.002), 12);
    expect(far?.service).toEqual(near?.service);
    expect(near?.grade).toBe('serviceable');
  });

  it('is judged by one rule in a sheet and in a shed', () => {
    const bore = {
      readings: [
        { station: '0.5 in', angle: '0 deg', diameter: '3.0010 in' },
        { station: '0.5 in', angle: '90 deg', diameter: '2.9998 in' },
        { station: '3.5 in', angle: '0 deg', diameter: '3.0001 in' },
        { station: '3.5 in', angle: '90 deg', diameter: '3.0000 in' },
      ],
    };
    const standard = { min: '3.0000 in', max: '3.0005 in' };
    const sheet = inspect(
      readSheet({
        version: 1,
        engine: 'e',
        units: 'inch',
        bores: { standard, stroke: '3.25 in' },
        cylinders: [{ name: 'cylinder 1', bore }],
      }),
    );
    const shed = readShed({
      version: 1,
      shed: 's',
      units: 'inch',
      engine: {
        name: 'e',
        cylinders: 1,
        mains: 0,
        rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
        bores: { standard, stroke: '3.25 in' },
      },
      blocks: [{ name: 'block', bores: [{ name: 'cylinder 1', ...bore }] }],
    });
    const [block] = triage(shed).parts;
    const bores = block?.because.find(({ kind }) => kind === 'bores');
    expect(bores?.kind === 'bores' && bores.plan).toEqual(sheet.boring);
    expect(sheet.boring?.outcome).toBe('use as it is');
  });

  it('is not bored for a little taper before the service limit was looked for', () => {
    const plan = borePlan({ ...request, cylinders: [cylinder(1)].map((one) => ({ ...one })) });
    expect(plan.outcome).toBe('use as it is');
    const doubtful = borePlan({
      ...request,
      cylinders: [{ ...cylinder(1), largest: inch(3.0015), taper: thou(1.4) }],
    });
    expect(doubtful).toMatchObject({
      outcome: 'bore',
      inDoubt: { oversize: 0, cylinders: [{ name: 'cylinder 1' }] },
    });
    // Of the owner's own limit there is no doubt.
    const sure = borePlan({
      ...request,
      shape: { limits: { max: thou(1) } },
      cylinders: [{ ...cylinder(1), largest: inch(3.0015), taper: thou(1.4) }],
    });
    expect(sure).not.toHaveProperty('inDoubt');
  });

  it('is told what to bore to, after the pistons were measured', () => {
    const said = advice({});
    expect(said.find((text) => text.includes('bore to'))).toBe(
      'get the pistons and measure them first, and the walls of cylinder 1 and cylinder 2 at their thinnest, then bore to 3.0170 to 3.0175 in and hone to 0.0200 in over, 3.0200 to 3.0205 in; 1 more oversize is left after it; cylinder 1 is within every limit: ask what a sleeve in the others would cost',
    );
    // 6.9 thou of taper are more than the 3 thou that the piston clearance of this engine lets be; without it, only
    // rules of thumb are left.
    const bare = advice({ 'cylinderLimits.pistonClearance': undefined });
    expect(bare.find((text) => text.includes('bore to'))).toContain(
      "in doubt: only rules of thumb ask for it; find the maker's service limit before you bore",
    );
  });
});

describe('metal that does not come back', () => {
  const journal = (name: string, outOfRound: number) => ({
    name,
    smallest: inch(1.6245),
    largest: inch(1.6252),
    outOfRound: thou(outOfRound),
    taper: thou(0.2),
  });
  const plan = (outOfRound: number, own: object = {}) =>
    grindPlan({
      journals: [journal('rod 1', outOfRound)],
      standard: { min: inch(1.6245), max: inch(1.625) },
      steps: undersizeSteps('inch'),
      ...own,
    });

  it('a tenth past a rule of thumb orders no grinding without doubt', () => {
    expect(plan(0.6)).toMatchObject({
      outcome: 'grind',
      inDoubt: { undersize: 0, journals: [{ name: 'rod 1' }] },
    });
    expect(plan(0.5).outcome).toBe('use as it is');
  });

  it("the owner's own limit leaves no doubt", () => {
    expect(plan(0.6, { shape: { limits: { max: thou(0.5) } } })).not.toHaveProperty('inDoubt');
  });

  it('says how many steps are left after this one', () => {
    const left = (minimum: number) => plan(0.6, { minimum: inch(minimum) });
    expect(left(1.5)).toMatchObject({ outcome: 'grind', stepsLeft: 2 });
    expect(left(1.604)).toMatchObject({ outcome: 'grind', stepsLeft: 1 });
    expect(left(1.614)).toMatchObject({ outcome: 'grind', stepsLeft: 0 });
  });

  it('the grind order keeps the fillets and says the finish', () => {
    expect(report(inspected({})).replace(/\s+/g, ' ')).toContain(
      "keep the fillets at the maker's radius, as a sharp one starts a crack, and polish to 8 to 12 µin",
    );
  });
});

describe('cracks come first', () => {
  it('after a thrown rod the crack test is action 1', () => {
    const [first] = advice({ happened: ['thrown rod'] });
    expect(first).toMatch(
      /^crack-test the crankshaft, the block and every rod that is used again, first of all/,
    );
    expect(advice({ happened: ['seized bearing'] })[0]).toContain('the engine seized a bearing');
  });

  it('before money is spent on grinding the crankshaft is tested', () => {
    const kinds = actionsFrom(inspected({})).map(({ kind }) => kind);
    expect(kinds.indexOf('crack test')).toBeGreaterThanOrEqual(0);
    expect(kinds.indexOf('crack test')).toBeLessThan(kinds.indexOf('grind'));
  });
});

describe('alarms that fit', () => {
  it('a quarter inch of end play is missing metal: do not run, and no washer of that thickness', () => {
    const readings = [{ pushed: '0 thou', pulled: '250 thou' }];
    const said = advice({ 'crankshaft.endPlay.readings': readings });
    const alarm = said.find((text) => text.includes('end play'));
    // 0.250 less the 0.012 of the manual.
    expect(alarm).toMatch(/^DO NOT RUN: 0\.2380 in of end play is missing metal, not wear/);
    expect(said.some((text) => text.startsWith('set the end play'))).toBe(false);
  });

  it('a dial that did not move is doubted first', () => {
    const readings = [{ pushed: '2 thou', pulled: '2 thou' }];
    expect(advice({ 'crankshaft.endPlay.readings': readings }).join('\n')).toContain(
      'the dial did not move',
    );
  });

  it('an interference says that it will not turn', () => {
    const said = advice({
      'crankshaft.mainJournals.shape': { max: '0.002 in' },
      'crankshaft.mainJournals.sizeAllowance': '0.003 in',
      'mains[0].housingBore': '2.1215 in',
    });
    expect(said.find((text) => text.startsWith('pulley main'))).toContain('IT WILL NOT TURN');
  });

  it('a clearance that a round housing would mend is blamed on the housing', () => {
    const said = advice({ 'mains[0].housingBore': { min: '2.1245 in', max: '2.1262 in' } });
    // Loose by 1.2 thou, and the housing reads 1.7 thou out of round.
    expect(said.find((text) => text.startsWith('pulley main'))).toMatch(
      /^pulley main: torque the cap and measure the housing again: it reads 0\.0017 in out of round/,
    );
  });

  it('a clearance that nothing explains is first read again', () => {
    const said = advice({
      'crankshaft.mainJournals.shape': { max: '0.005 in' },
      'crankshaft.mainJournals.sizeAllowance': '0.005 in',
    });
    expect(said.find((text) => text.startsWith('flywheel main'))).toMatch(
      /^flywheel main: read journal, housing and shell walls again; if they stand/,
    );
  });

  it('mains come before rods', () => {
    const text = report(inspected({}));
    expect(text.indexOf('MAIN JOURNALS')).toBeLessThan(text.indexOf('ROD JOURNALS'));
  });

  it('names what was not measured', () => {
    const bare = report(
      inspected({ 'cylinders[0].piston': undefined, 'cylinders[0].rings': undefined }),
    );
    const flowing = bare.replace(/\s+/g, ' ');
    expect(flowing).toContain('cylinder 1: its piston; cylinder 1: its rings');
    expect(flowing).toContain('cracks; bend and twist of the rods');
  });
});
