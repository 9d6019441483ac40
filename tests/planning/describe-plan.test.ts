import { inch, type Length } from 'crankwright';
import { buildSheet } from 'crankwright/build-sheet';
import { type Plan, planBuilds, planReport, type Unproven } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { sayCost } from '../../src/planning/say-cost.js';
import { expectNotesListed, expectPage, flowing, HOSTILE_NAMES } from '../pages/pages.js';
import { refusal } from '../quantities/refusal.js';
import { plainShed } from '../shed/sheds.js';
import { inches, machined, noEngine, renamed, twoEngines } from './plans.js';

const headings = (text: string) =>
  text.split('\n').filter((_, i, lines) => /^-+$/.test(lines[i + 1] ?? ''));

describe('planReport', () => {
  const text = planReport(twoEngines);

  it('goes from the whole to each engine, the orders, the shopping and the rest', () => {
    expect(headings(text)).toEqual([
      'PLAN: the shed',
      'WHAT TO DO',
      'HOW SURE IT IS',
      'TEST FIRST',
      'ENGINE 1: block A',
      'ENGINE 2: block C',
      'TO BUY',
      'MACHINING ORDERS',
      'LEFT OVER',
      'THE NEXT ENGINE',
      'WHO SET THE LIMITS',
      'BEFORE YOU ACT',
    ]);
    expectPage(text);
    expectNotesListed(text, 'WHO SET');
  });

  it('says how many engines, what they cost, how tight they are and what is proven', () => {
    expect(flowing(text)).toContain(
      'HOW SURE IT IS -------------- The clearance nearest a limit stays 0.0003 in inside its limits. Proven: no plan is better, compared by engines, cost and tightest margin, in this order.',
    );
    expect(text).toContain(
      '\n2 complete engines can be built; shop work and purchases cost 205.50 EUR.\n',
    );
    // A limit is met to the last bit of a double and no closer.
    const tight = planReport({ ...twoEngines, smallestMargin: -7e-18 as Length });
    expect(flowing(tight)).toContain(
      'The clearance nearest a limit is exactly at its limit. Proven:',
    );
    const one = planReport({ ...twoEngines, builds: [machined] });
    expect(flowing(one)).toContain('1 complete engine can be built;');
  });

  it('lists the parts of an engine, and what is done to them by whom', () => {
    expect(text).toContain('\nFrom donor B: crankshaft B\n');
    expect(text).toContain('\nTo be bought: pistons 20 over; 2 × rod shells 20 under\n');
    const full = planReport(twoEngines, { units: 'inch', why: true });
    expect(full).toContain('\n  crankshaft: crankshaft B, from donor B\n');
    expect(full).toContain('\n  pairs of shells: 2 × rod shells 20 under, to be bought\n');
    expectPage(full);
    expect(flowing(text)).toContain(
      'crankshaft B: grind rod journals rod 1, rod 2 to 0.0200 in under, 1.6045 to 1.6050 in, by the grinder',
    );
    expect(text).toContain('Interchange: before serial 4000.');
    expect(text).toContain('No machining.');
  });

  it('shows every bearing and cylinder with its clearance beside the limits and their note', () => {
    expect(text).toMatch(
      /^rod 2 +rods A, rod A2 +rod shells 20 under +0\.0019 to 0\.0025 +0\.0012 to 0\.0028 \[3\]$/m,
    );
    expect(text).toContain('Rod journals and their shells, 0.0200 in under:');
    expect(text).toMatch(
      /^cylinder 2 +piston 2 +3\.0200 to 3\.0205 +0\.0033 to 0\.0038 +0\.0025 to 0\.0055 \[3\]$/m,
    );
    expect(text).toMatch(/^the bore +.* none stated$/m);
    expect(text).toContain(
      'With 2 × washers 0.096: end play 0.0080 in: within 0.0050 to 0.0120 in [3]',
    );
    expect(text).toContain('End play: not planned, as no limit is stated.');
    expect(flowing(text)).toContain(
      "Guide clearance 0.0019 to 0.0020 in: no limit is stated: compare with the maker's manual",
    );
  });

  it('says what of its parts was not measured, and of guides without a limit only their clearance', () => {
    const { guides, ...unmeasured } = machined;
    const head = { section: 'heads', name: 'head A', count: 1, bought: false } as const;
    const page = (build: Plan['builds'][number]) =>
      flowing(planReport({ ...twoEngines, builds: [build] }));
    const open = { ...head, notJudged: [{ why: 'not measured', what: 'guides' } as const] };
    const read = inches(0.3145);
    const unlimited = { ...head, notJudged: [{ why: 'no limit', what: 'guides', read } as const] };
    expect(page({ ...unmeasured, parts: [open] })).toContain(
      'Not measured, so not judged: head A (guides).',
    );
    // Without the stems there is no clearance, and the reading stands alone.
    expect(page({ ...unmeasured, parts: [unlimited] })).toContain('head A (guides 0.3145 in).');
    expect(page({ ...machined, parts: [unlimited] })).not.toContain('head A (guides');
    expect(page({ ...unmeasured, parts: [head] })).not.toMatch(/Guide clearance|so not judged/);
  });

  it('says what stands with one limit only, and an end play without washers', () => {
    const [first] = machined.bearings;
    if (!first || !machined.endPlay) throw new Error('the fixture has no bearing');
    const upTo = { ...first, finding: { ...first.finding, limits: { max: inch(0.003) } } };
    const from = { ...first, finding: { ...first.finding, limits: { min: inch(0.001) } } };
    const endPlay = { ...machined.endPlay, washers: [] };
    const build = { ...machined, bearings: [upTo, from], endPlay };
    const page = planReport({ ...twoEngines, builds: [build] });
    expect(page).toMatch(/at most 0\.0030 \[2\]$/m);
    expect(page).toMatch(/at least 0\.0010 \[2\]$/m);
    expect(page).toContain('With no washers: end play 0.0080 in');
    expectPage(page);
  });

  it('sums the orders of each shop, and what is to be bought', () => {
    expect(text).toContain('\nthe grinder: 61.00 EUR\n  crankshaft B: straighten; 25.00 EUR\n');
    expect(text).toContain('\n2 × rod shells 20 under (pairs of shells): 29.00 EUR\n');
  });

  it('says what is left and why, and what one more engine would need', () => {
    expect(text).toContain(
      'Kept back: head B (head)\nSpare: 2 × rod shells standard (pairs of shells)\nScrap, to keep until the engines run: block D (block)\n',
    );
    expect(flowing(text)).toContain('The parts for it that are left over may need work and tests');
    expect(flowing(text)).toContain(
      'One more engine needs: 1 piston set 0.0200 in over; 1 pair of rod shells 0.0300 in under.',
    );
    const nextEngine = {
      lacks: [
        { section: 'shells', fits: 'mains', step: inch(0), count: 2 },
        { section: 'crankshafts', count: 1 },
      ],
      alternatives: [],
    } as const;
    expect(flowing(planReport({ ...twoEngines, nextEngine }))).toContain(
      'One more engine needs: 2 pairs of main shells of standard size; 1 crankshaft.',
    );
    const alternatives = [
      [{ section: 'blocks', count: 1 }],
      [
        { section: 'rods', count: 2 },
        { section: 'heads', count: 1 },
      ],
    ] as const;
    const either = { ...nextEngine, alternatives, mayBeMore: true } as const;
    expect(flowing(planReport({ ...twoEngines, nextEngine: either }))).toContain(
      'One more engine needs: 2 pairs of main shells of standard size; 1 crankshaft. As easy to get, and enough instead: 1 block; or 2 rods and 1 head. There may be more that would do.',
    );
  });

  it('prints in the units of the shed, or in others when asked', () => {
    const metric = planReport(twoEngines, { units: 'metric' });
    expectPage(metric);
    expect(metric).toContain('1 piston set 0.508 mm over');
    expect(metric.slice(0, metric.indexOf('WHO SET'))).not.toMatch(/\d in\b/);
    expect(planReport({ ...twoEngines, units: 'metric' })).toBe(metric);
  });

  it('does not say that nothing can be built where no engine was asked for', async () => {
    const none = await planBuilds(readShed(plainShed()), { atMost: 0 });
    expect(flowing(planReport(none))).toContain('You asked for no engine.');
    expect(planReport(none)).not.toMatch(/can be built|no choice of parts/);
    expect(buildSheet(none)).toMatch(/You asked for no /);
    expect(buildSheet(none)).not.toContain('can be built');
  });

  it('is a page where nothing can be built', () => {
    const none = planReport(noEngine);
    expect(headings(none)).toEqual([
      'PLAN: the shed',
      'WHAT TO DO',
      'HOW SURE IT IS',
      'THE NEXT ENGINE',
      'BEFORE YOU ACT',
    ]);
    expect(none).toContain('No complete engine can be built.');
    expect(none).toContain('Proven: no choice of parts makes a complete engine.');
    expect(none).toContain('You asked for block D, but it cannot be built: it is scrap (cracked).');
    expect(none).toContain('One more engine needs: 2 rods; 1 head.');
    expectPage(none);
  });

  const stopped = (stage: Unproven['stage'], found: number, bound: number): Unproven => ({
    outcome: 'time limit',
    stage,
    found,
    bound,
  });
  const BEST =
    'Proven: no plan is better, compared by engines, cost and tightest margin, in this order.';

  it.each<[Unproven, string]>([
    [
      stopped('most engines', 2, 3),
      'NOT PROVEN: found 2 complete engines before the time was up; at most 3 are possible. Allow more time to be sure.',
    ],
    [
      stopped('most engines', 0, 1),
      'NOT PROVEN: found no complete engine before the time was up; at most 1 is possible.',
    ],
    [
      stopped('least cost', 205.5, 180),
      'NOT PROVEN to cost the least: the time was up. This plan costs 205.50 EUR; no plan for as many engines costs less than 180.00 EUR. Proven: no plan makes more engines. Allow more time to be sure.',
    ],
    [
      stopped('least cost', 205.5, 0),
      'This plan costs 205.50 EUR; how much less as many engines can cost is not known.',
    ],
    [
      stopped('widest margin', inch(0.0003), inch(0.0005)),
      'NOT PROVEN to have the widest margin: the time was up. Its smallest margin is 0.0003 in; no plan at this cost has more than 0.0005 in. Proven: no plan makes more engines, or as many for less. Allow more time to be sure.',
    ],
    [
      stopped('equal plans', 2, 2),
      `NOT PROVEN to be the best of equal plans: the time was up. ${BEST} Allow more time to be sure.`,
    ],
    [
      stopped('next engine', 4, 4),
      `${BEST} What one more engine needs is not known, because the time was up.`,
    ],
  ])('says how far the proof came: %j', (proof, sentence) => {
    const page = planReport({ ...twoEngines, proof });
    expect(flowing(page)).toContain(sentence);
    expectPage(page);
    const failed = planReport({ ...twoEngines, proof: { ...proof, outcome: 'solver failure' } });
    expectPage(failed);
    expect(flowing(failed)).toContain(
      sentence
        .replace('the time was up', 'the solver failed')
        .replace(
          'Allow more time to be sure.',
          'A smaller question may help: allow fewer engines, or drop the cost limit for each engine. Please report the shed: this should not happen.',
        ),
    );
  });

  it('never says that what was not proven cannot be', () => {
    const proof = stopped('most engines', 0, 4);
    const cannotBuild = [{ name: 'block D', because: { kind: 'not known' } }] as const;
    const page = flowing(planReport({ ...noEngine, cannotBuild, proof }));
    expect(page).toContain('No complete engine was found. NOT PROVEN to be the best: see HOW SURE');
    expect(page).toContain(
      'You asked for block D, but it is not in this plan. Whether it can be built is not known.',
    );
    expect(page).not.toMatch(/engine can be built|cannot/);
    const sure = flowing(planReport({ ...noEngine, proof: stopped('next engine', 0, 0) }));
    expect(sure).toContain('No complete engine can be built.');
    expect(sure).toContain('Proven: no choice of parts makes');
    expect(sure).toContain('What one more engine needs is not known, because the time was up.');
  });

  it.each(HOSTILE_NAMES)('bears the name %j', (name) => {
    const page = planReport(renamed(twoEngines, name));
    expectPage(page);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
    expect(page).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });

  it('refuses what is no plan, and other units', () => {
    expect(refusal(() => planReport(undefined as unknown as Plan)).parameter).toBe('plan');
    expect(refusal(() => planReport({} as Plan, { units: 'inch' })).parameter).toBe('plan.shed');
    expect(refusal(() => planReport(twoEngines, { units: 'si' as 'inch' })).value).toBe('si');
  });
});

describe('sayCost', () => {
  // source: ISO 4217 gives currencies none, two or three decimals
  it.each([
    [{ amount: 0, currency: 'EUR' }, 'nothing'],
    [{ amount: 0 }, 'nothing'],
    [{ amount: 60, currency: 'EUR' }, '60.00 EUR'],
    [{ amount: 14.5, currency: 'EUR' }, '14.50 EUR'],
    [{ amount: 1.125, currency: 'KWD' }, '1.125 KWD'],
    [{ amount: 0.001, currency: 'KWD' }, '0.001 KWD'],
    [{ amount: 0.1 + 0.2, currency: 'EUR' }, '0.30 EUR'],
    [{ amount: 12 }, '12.00'],
  ])('says %j', (cost, text) => {
    expect(sayCost(cost)).toBe(text);
  });
});
