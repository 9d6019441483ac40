import {
  borePlan,
  grindPlan,
  inch,
  judge,
  type Length,
  type Limits,
  oversizeSteps,
  type Span,
  undersizeSteps,
} from 'crankwright';
import {
  describePart,
  readShed,
  type Triage,
  type TriagedPart,
  triage,
  triageReport,
} from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { consequenceOf, faultsOf } from '../../../src/shed/faults.js';
import { SECTIONS } from '../../../src/shed/sections.js';
import {
  expectNoHole,
  expectNotesListed,
  expectPage,
  flowing,
  HOSTILE_NAMES,
} from '../../pages/pages.js';
import { refusal } from '../../quantities/refusal.js';
import { plainShed, spoiltShed } from '../sheds.js';

const inches = { units: 'inch' } as const;
const span = (min: number, max: number): Span<ReturnType<typeof inch>> => ({
  min: inch(min),
  max: inch(max),
});

const part = (changes: Partial<TriagedPart>): TriagedPart => ({
  section: 'crankshafts',
  name: 'crank A',
  count: 1,
  disposition: 'use as it is',
  jobs: [],
  tests: [],
  findings: [],
  because: [],
  notJudged: [],
  ...changes,
});

/** Two rod journals worn below 10 under, so that they are ground to 20 under. */
const ground = grindPlan({
  journals: ['rod 1', 'rod 2'].map((name) => ({
    name,
    smallest: inch(1.612),
    largest: inch(1.6135),
    outOfRound: inch(0.0002),
    taper: inch(0.0002),
  })),
  standard: span(1.6245, 1.625),
  steps: undersizeSteps('inch'),
});
const grinding = {
  work: 'grind rod journals',
  places: ['rod 1', 'rod 2'],
  step: inch(0.02),
  to: span(1.6045, 1.605),
} as const;

describe('describePart says first', () => {
  const first = (changes: Partial<TriagedPart>, units: 'inch' | 'metric' = 'inch') =>
    describePart(part(changes), { units })[0];

  it('that a part is used as it is, how many there are and where from', () => {
    expect(first({})).toBe('crank A: use as it is');
    expect(first({ count: 3, from: 'donor B' })).toBe('3 × crank A, from donor B: use as it is');
  });

  it('what is machined, to what size', () => {
    const machine = { disposition: 'machine', jobs: [grinding] } as const;
    expect(first(machine)).toBe(
      'crank A: machine: grind rod journals rod 1, rod 2 to 0.0200 in under, 1.6045 to 1.6050 in',
    );
    expect(first(machine, 'metric')).toBe(
      'crank A: machine: grind rod journals rod 1, rod 2 to 0.508 mm under, 40.754 to 40.767 mm',
    );
    const to = span(3.02, 3.0205);
    const jobs = [
      { work: 'bore', places: ['cylinder 1'], step: inch(0.02), to },
      { work: 'sleeve', places: ['cylinder 2'], step: inch(0.02), to },
    ] as const;
    expect(first({ section: 'blocks', name: 'block A', disposition: 'machine', jobs })).toBe(
      'block A: machine: bore and hone cylinder 1 to 0.0200 in over, 3.0200 to 3.0205 in; sleeve cylinder 2 to 0.0200 in over, 3.0200 to 3.0205 in',
    );
  });

  it('after what repairs it is used', () => {
    const bent = { work: 'straighten', places: [] } as const;
    expect(first({ section: 'rods', name: 'rods B', disposition: 'use after', jobs: [bent] })).toBe(
      'rods B: use after straightening',
    );
    expect(first({ disposition: 'use after', jobs: [bent, grinding] })).toBe(
      'crank A: use after straightening; then grinding rod journals rod 1, rod 2 to 0.0200 in under, 1.6045 to 1.6050 in',
    );
    const housings = {
      work: 'resize housings',
      places: ['rod B1'],
      to: span(1.7506, 1.751),
    } as const;
    expect(first({ disposition: 'use after', jobs: [housings] })).toBe(
      'crank A: use after resizing housings rod B1 to measure 1.7506 to 1.7510 in',
    );
  });

  it.each([
    ['pistonSets', 'blocks', 'no block here takes this set at any oversize'],
    ['ringSets', 'blocks', 'no block here takes this set at any oversize'],
    ['shells', 'crankshafts', 'no crankshaft here takes these shells at any undersize'],
    ['rods', 'shells', 'no shells here give it a clearance within limits'],
    ['valveSets', 'heads', 'no head here fits it'],
    ['blocks', 'crankshafts', 'no crankshaft here fits it'],
  ] as const)('why %s are spare for want of %s', (section, missing, why) => {
    const said = describePart(
      part({
        section,
        name: 'these',
        disposition: 'spare',
        because: [{ kind: 'fits nothing', section: missing }],
      }),
      inches,
    );
    expect(said).toEqual([`these: spare: ${why}`]);
  });

  it('why a part is scrap', () => {
    const scrap = { disposition: 'scrap', because: [] as TriagedPart['because'] } as const;
    expect(first(scrap)).toBe('crank A: scrap');
    const faults = (['cracked', 'overheated'] as const).map((fault) => ({
      kind: 'fault' as const,
      fault,
      consequence: { kind: 'scrap' as const },
    }));
    expect(first({ ...scrap, because: faults })).toBe('crank A: scrap: cracked; overheated');
    const lost = grindPlan({
      journals: [
        {
          name: 'rod 2',
          smallest: inch(1.59),
          largest: inch(1.59),
          outOfRound: inch(0),
          taper: inch(0),
        },
      ],
      standard: span(1.6245, 1.625),
      steps: undersizeSteps('inch'),
    });
    expect(first({ ...scrap, because: [{ kind: 'journals', journals: 'rods', plan: lost }] })).toBe(
      'crank A: scrap: no undersize saves the rod journals (rod 2)',
    );
    const unserved = borePlan({
      cylinders: [
        {
          name: 'cylinder 1',
          smallest: inch(3),
          largest: inch(3),
          outOfRound: inch(0),
          taper: inch(0),
        },
      ],
      standard: span(3, 3.0005),
      steps: oversizeSteps('inch'),
      pistonsAtHand: [],
    });
    expect(first({ ...scrap, because: [{ kind: 'bores', plan: unserved }] })).toBe(
      'crank A: scrap: no pistons are at hand for its bores',
    );
    expect(first({ ...scrap, because: [{ kind: 'housing', place: 'rod 1' }] })).toBe(
      'crank A: scrap: housing rod 1 must be resized, but to what size is not known',
    );
  });
});

describe('describePart says then', () => {
  const reasons = (changes: Partial<TriagedPart>) => describePart(part(changes), inches).slice(1);

  it('what was seen and what follows, for every fault of every section', () => {
    const said = SECTIONS.flatMap((section) =>
      faultsOf(section).map(
        (fault) =>
          reasons({
            section,
            because: [{ kind: 'fault', fault, consequence: consequenceOf(section, fault) }],
          })[0] ?? '',
      ),
    );
    for (const sentence of said) {
      expect(sentence).toMatch(
        /^seen: [\w-]+.*; (scrap it|do not use it as it is|it must be|they must be|look where|its [\w ]+ must be)/,
      );
    }
    expect(said).toContain('seen: bent; it must be straightened');
    expect(said).toContain(
      'seen: spun: shells have turned in their housing; its housings must be resized',
    );
    expect(said).toContain('seen: pitted; its valve seats must be recut');
    expect(said).toContain('seen: pitted; they must be refaced');
  });

  it('on which journal or bore', () => {
    const consequence = { kind: 'machine' } as const;
    const because = [{ kind: 'fault', fault: 'scored', place: 'rod 1', consequence }] as const;
    expect(reasons({ because })).toEqual([
      'seen: scored on rod 1; rod 1 must be ground; if a fingernail does not catch in it, polish it instead, measure it, and take the fault off the list',
    ]);
    expect(reasons({ section: 'blocks', because })).toEqual([
      'seen: scored on rod 1; rod 1 must be bored; feel how deep the score is first: if a fingernail does not catch in it, hone it lightly instead, measure it, and take the fault off the list',
    ]);
  });

  it('what the plan of its journals is, each step that was passed over, and what to test it for', () => {
    const said = reasons({
      disposition: 'machine',
      jobs: [grinding],
      tests: [{ test: 'crack test', when: 'first', because: [] }],
      because: [{ kind: 'journals', journals: 'rods', plan: ground }],
    });
    expect(said[0]).toBe('rod journals: grind to 0.0200 in under, 1.6045 to 1.6050 in');
    expect(said.filter((sentence) => sentence.startsWith('not '))).toHaveLength(2);
    expect(said.at(-2)).toMatch(/^crack-test it first: no crack test of it is listed \(published/);
    expect(said.at(-1)).toBe('crank A: a bent or ground crankshaft can hide a crack and break');
  });

  it('every accident of its donor, and who else had it', () => {
    const from = 'donor B';
    const tests = [
      {
        test: 'crack test',
        when: 'first',
        because: [
          { what: 'seized bearing', part: 'crank A', from },
          { what: 'thrown rod', part: 'rods B', from },
          { what: 'spun shells', part: 'block B', from },
          { what: 'broken piston', part: 'pistons B', from },
          { what: 'seized piston', part: 'pistons B', from },
        ],
      },
    ] as const;
    expect(reasons({ section: 'blocks', tests })).toEqual([
      'crack-test it first: its engine seized a bearing, and donor B threw a rod (rods B), and donor B spun its shells (block B), and donor B broke a piston (pistons B), and donor B seized a piston (pistons B)',
    ]);
  });

  it('to be careful with rods that were worked on, and to leave sleeves to the shop', () => {
    const jobs = [{ work: 'straighten', places: [] }] as const;
    expect(reasons({ section: 'rods', jobs })[0]).toMatch(/a broken rod goes through the block/);
    expect(reasons({ section: 'heads', jobs: [{ work: 'recut seats', places: [] }] })).toEqual([]);
    expect(
      reasons({ section: 'blocks', jobs: [{ work: 'sleeve', places: ['cylinder 1'] }] })[0],
    ).toMatch(/leave that to the shop/);
  });

  it('what else was judged, once, and what work nobody does', () => {
    const finding = judge({
      feature: 'face',
      dimension: 'length',
      value: inch(0.009),
      limits: { max: inch(0.004) },
      basis: { kind: 'specified' },
    });
    const face = 'face 0.0090 in: 0.0050 in above the limit of 0.0040 in (specified)';
    const head = { section: 'heads', findings: [finding, finding] } as const;
    expect(reasons(head)).toEqual([face]);
    expect(
      reasons({
        ...head,
        because: [
          { kind: 'face', finding },
          { kind: 'no shop', work: 'skim head' },
        ],
      }),
    ).toEqual([face, 'no shop on the list offers skimming its face']);
  });

  it('nothing but the fault of a part that it condemns', () => {
    const kept = grindPlan({
      journals: [
        {
          name: 'rod 1',
          smallest: inch(1.6246),
          largest: inch(1.6247),
          outOfRound: inch(0),
          taper: inch(0),
        },
      ],
      standard: span(1.6245, 1.625),
      steps: undersizeSteps('inch'),
    });
    const finding = judge({
      feature: 'housing bore',
      dimension: 'length',
      value: inch(1.7508),
      limits: span(1.7506, 1.751),
      basis: { kind: 'specified' },
    });
    const cracked = {
      kind: 'fault',
      fault: 'cracked',
      consequence: { kind: 'scrap' },
    } as const;
    const because = [cracked, { kind: 'journals', journals: 'rods', plan: kept }] as const;
    expect(describePart(part({ disposition: 'scrap', because }), inches)).toEqual([
      'crank A: scrap: cracked',
      'seen: cracked; scrap it',
    ]);
    expect(
      describePart(
        part({ section: 'rods', disposition: 'scrap', because: [cracked], findings: [finding] }),
        inches,
      ),
    ).toHaveLength(2);
    // Without the crack the same plan is told.
    expect(reasons({ because: because.slice(1) })).toContain('rod 1 needs no grinding at standard');
  });

  it('which housing is not right, or cannot be put right', () => {
    const finding = judge({
      feature: 'rod B1: housing bore',
      dimension: 'length',
      value: inch(1.7512),
      limits: span(1.7506, 1.751),
      basis: { kind: 'specified' },
    });
    const because = [
      { kind: 'housing', place: 'rod B1', finding },
      { kind: 'housing', place: 'rod B2' },
    ] as const;
    expect(reasons({ section: 'rods', because, findings: [finding] })).toEqual([
      'rod B1: housing bore 1.7512 in: 0.0002 in above the limit of 1.7510 in (specified); resize it or replace the rod before you choose shells; no bore gauge in a home shop is surer than that: measure it again before it is resized',
      'rod B2: resize it or replace the rod before you choose shells, but no limits are given to resize it to',
    ]);
    const half = (limits: Limits<Length>) => ({
      kind: 'housing' as const,
      place: 'pulley main',
      finding: judge({
        feature: 'pulley main: housing bore',
        dimension: 'length',
        value: finding.value,
        basis: finding.basis,
        limits,
      }),
    });
    expect(
      reasons({
        section: 'blocks',
        because: [half({ max: inch(1.751) }), half({ min: inch(1.752) })],
      }),
    ).toEqual([
      'pulley main: housing bore 1.7512 in: 0.0002 in above the limit of 1.7510 in (specified); resize it before you choose shells, but no lower limit is given to resize it to; no bore gauge in a home shop is surer than that: measure it again before it is resized',
      'pulley main: housing bore 1.7512 in: 0.0008 in below the limit of 1.7520 in (specified); resize it before you choose shells, but no upper limit is given to resize it to',
    ]);
  });

  it('nothing for what is no part or in no units', () => {
    expect(refusal(() => describePart({} as TriagedPart, inches)).parameter).toBe('part.section');
    expect(refusal(() => describePart(part({}), { units: 'si' as 'inch' })).value).toBe('si');
  });
});

describe('triageReport', () => {
  const sorted = triage(readShed(plainShed()));
  const text = triageReport(sorted);

  it('counts, then goes section by section, and names who set the limits', () => {
    const headings = text.split('\n').filter((_, i, lines) => /^-+$/.test(lines[i + 1] ?? ''));
    expect(headings).toEqual([
      'PARTS IN THE SHED: the shed',
      'HOW WELL IT WAS MEASURED',
      'TEST FIRST',
      'BLOCKS',
      'CRANKSHAFTS',
      'RODS',
      'PISTON SETS',
      'RING SETS',
      'PAIRS OF SHELLS',
      'THRUST WASHERS',
      'HEADS',
      'VALVE SETS',
      'WHO SET THE LIMITS',
      'BEFORE YOU ACT',
    ]);
    // Four washers, all of one kind.
    // No part is undecided, spare or scrap, and those columns are left out.
    expect(text).toMatch(/^ +use as it is +machine +use after +nothing judged$/m);
    expect(text).toMatch(/^thrust washers +4 +0 +0 +0$/m);
    expect(text).toMatch(/^rods +2 +0 +1 +0$/m);
    expectNotesListed(text, 'WHO SET');
    expectPage(text);
  });

  it('says of every part what describePart says', () => {
    for (const each of sorted.parts) {
      const [first = ''] = describePart(each, inches);
      expect(flowing(text)).toContain(first);
    }
    expect(flowing(text)).toContain("the maker's manual always wins");
    expect(flowing(text)).toContain('what was not measured was not judged');
  });

  it('prints in the units of the shed, or in others when asked', () => {
    const metric = triageReport(sorted, { units: 'metric' });
    expectPage(metric);
    expect(metric).toContain('76.708 to 76.721 mm');
    expect(metric.slice(0, metric.indexOf('WHO SET'))).not.toMatch(/\d in\b(?! comes)/);
    expect(triageReport({ ...sorted, units: 'metric' })).toBe(metric);
  });

  it('says that a shed is empty', () => {
    const none = triageReport({
      shed: 'bare',
      units: 'inch',
      parts: [],
      cores: [],
      howRead: sorted.howRead,
    });
    expect(none).toContain('This shed has no parts.');
    expect(none).not.toContain('WHO SET');
    expectPage(none);
  });

  it.each(HOSTILE_NAMES)('bears the name %j', (name) => {
    const parts = sorted.parts.map((each) => ({ ...each, name, from: name }));
    const page = triageReport({ ...sorted, shed: name, parts });
    expectPage(page);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
    expect(page).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });

  it('says what nothing goes with', () => {
    const unmatched = triage(
      readShed(spoiltShed({ 'crankshafts[0].interchange': ['another make'] })),
    );
    expectPage(triageReport(unmatched));
    expectNoHole(JSON.stringify(unmatched));
  });

  it('refuses what is no triage, and other units', () => {
    expect(refusal(() => triageReport(undefined as unknown as Triage)).parameter).toBe('triage');
    expect(refusal(() => triageReport(sorted, { units: 'si' as 'inch' })).value).toBe('si');
  });
});
