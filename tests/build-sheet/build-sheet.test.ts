import { type Basis, inch, recommendedRingGap } from 'crankwright';
import { type BuildSheetOptions, buildSheet } from 'crankwright/build-sheet';
import { type Plan, type PlanStage, planBuilds, planReport } from 'crankwright/planning';
import { triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { escaped } from '../../src/pages/markdown.js';
import { expectNoHole, expectPage, flowing, HOSTILE_NAMES } from '../pages/pages.js';
import { inches, machined, noEngine, plain, renamed, twoEngines } from '../planning/plans.js';
import { randomShed } from '../planning/random-sheds.js';
import { refusal } from '../quantities/refusal.js';

const markdown = buildSheet(twoEngines);
const text = buildSheet(twoEngines, { format: 'text' });
const PAGE_BREAK = '<div style="break-before: page"></div>';

/** The pages of one engine, as text and as Markdown. */
const pageOf = (number: number) => text.split('\f')[number] ?? '';
const markdownPageOf = (number: number) => markdown.split(PAGE_BREAK)[number] ?? '';

/** The cells of a row of a Markdown table: what stands between bars that are not escaped. */
const cells = (row: string) => row.split(/(?<!\\)(?:\\\\)*\|/).slice(1, -1);

/** The tables of Markdown, row by row. */
const tables = (page: string) =>
  page
    .split('\n\n')
    .filter((block) => block.startsWith('|'))
    .map((block) => block.trimEnd().split('\n'));

describe('buildSheet', () => {
  it('gives every engine pages of its own, that break where they are printed', () => {
    expect(text.split('\f')).toHaveLength(3);
    expect(markdown.split(PAGE_BREAK)).toHaveLength(3);
    expect(pageOf(1).split('\n')[0]).toBe('Engine 1 of 2: block A');
    expect(markdownPageOf(2).trim().split('\n')[0]).toBe('# Engine 2 of 2: block C');
  });

  it('goes in the order of the work', () => {
    const steps = markdownPageOf(1).match(/(?<=^## ).*$/gm);
    expect(steps).toEqual([
      '1. Lay out the parts',
      '2. Test before anything is bought or cut',
      '3. Measure pistons and shells before anything is cut',
      '4. Send out',
      '5. Clean and measure every part',
      '6. Assemble dry',
      '7. Check the clearances',
      '8. Set the ring gaps',
      '9. Set the end play',
      '10. Oil, assemble and torque',
      '11. Set the valves and the timing',
      '12. Fill, and turn over by hand',
      '13. First start',
      '14. Test the compression',
      'Who set the limits',
      'Done',
    ]);
  });

  it('has boxes to tick for the parts and the work of every shop', () => {
    expect(markdownPageOf(1)).toContain('\n- [ ] crankshaft: crankshaft B, from donor B\n');
    expect(pageOf(1)).toContain('\n[ ] pairs of shells: 2 × rod shells 20 under, to be bought\n');
    expect(markdownPageOf(1)).toContain(
      'To the grinder:\n\n- [ ] crankshaft B: straighten\n- [ ] crankshaft B: grind rod journals rod 1, rod 2 to 0.0200 in under, 1.6045 to 1.6050 in\n',
    );
    expect(pageOf(2)).toContain('No part of this engine needs a shop.');
    expect(markdown.split(PAGE_BREAK)[0]).toContain(
      '- [ ] 2 × rod shells 20 under (pairs of shells): 29.00 EUR',
    );
  });

  it('leaves room to write beside the size, the limits and who set them', () => {
    // The shed's own step is closer than the clearance: 1.6245 - 0.02 to 1.6250 - 0.02.
    expect(markdownPageOf(1)).toContain(
      '| crankshaft B, rod 1 | 1.6045 to 1.6050 | ________ | 1.6045 to 1.6050 | specified \\[3\\] |',
    );
    // A clearance within limits says nothing of the crush of the shells.
    expect(pageOf(1)).toMatch(
      /^rods A, rod A1 +1\.7507 to 1\.7508 +________ +not judged +no limits known$/m,
    );
    // The step again: 3.0000 + 0.02 to 3.0005 + 0.02.
    expect(pageOf(1)).toMatch(
      /^cylinder 1 +3\.0200 to 3\.0205 +________ +3\.0200 to 3\.0205 +specified \[3\]$/m,
    );
    expect(pageOf(1)).toMatch(
      /^oil, pulley main +0\.0020 to 0\.0021 +________ +0\.0015 to 0\.0030 +common practice \[4\]$/m,
    );
    expect(pageOf(1)).toMatch(
      /^end play +0\.0080 +________ +0\.0050 to 0\.0120 +specified \[2\]$/m,
    );
    expect(pageOf(2)).toMatch(/^piston, the bore +.*________ +not judged +no limits known$/m);
  });

  it('gives one bound where there is one', () => {
    const [first] = plain.bearings;
    const [bore] = machined.cylinders;
    if (!first || !bore?.finding) throw new Error('the fixture has no bearing');
    const manual: Basis = { kind: 'specified' };
    const only = (limits: { min?: typeof size; max?: typeof size }) => ({
      ...plain,
      bearings: [{ ...first, finding: { ...first.finding, limits, basis: manual } }],
      cylinders: [{ ...bore, finding: { ...first.finding, limits, basis: manual } }],
    });
    const size = inch(0.002);
    const pageWith = (rodHousing: Plan['engine']['rodHousing']) =>
      buildSheet(
        {
          ...twoEngines,
          engine: { ...twoEngines.engine, ...(rodHousing && { rodHousing }) },
          builds: [only({ min: size }), only({ max: size })],
        },
        { format: 'text' },
      );
    const page = pageWith(undefined);
    expect(page).toMatch(/rods C, rod C1 .* not judged +no limits known/);
    // The clearance is closer than what the shed states of the housing. Hand-computed: 1.6248 + 2 * 0.0620 + 0.002.
    expect(pageWith({ min: inch(1.75) })).toContain('at least 1.7508');
    expect(pageWith({ max: inch(1.752) })).toContain('at most 1.7508');
    // It sets no end that the shed does not state.
    expect(pageWith({ max: inch(1.752) })).not.toContain('at least 1.7508');
    expect(pageWith({ max: inch(1.752) })).toContain('at most 1.7520');
    // Of the journal and the bore the shed gives the rest. Hand-computed: 1.7507 - 2 * 0.0620 - 0.002;
    // 1.7508 - 2 * 0.0620 - 0.002; 3.0167 + 0.002, which leaves no bore of 3.0200 or more.
    expect(page).toContain('1.6245 to 1.6247   specified [1], [2]');
    expect(page).toContain('1.6248 to 1.6250   specified [1], [2]');
    expect(page).toContain('no size');
  });

  it('asks once for a journal that two rods run on', () => {
    const [rod] = plain.bearings;
    if (!rod) throw new Error('the fixture has no bearing');
    const pair = { ...rod, housing: { part: 'rods C', place: 'rod C2' } };
    const page = buildSheet({ ...twoEngines, builds: [{ ...plain, bearings: [rod, pair] }] });
    expect(page.match(/^\| crankshaft C, rod 1 \|/gm)).toHaveLength(1);
    expect(page.match(/^\| rods C, rod C\d \|/gm)).toHaveLength(2);
  });

  it('sets ring gaps by the rule of thumb, marked as one', () => {
    const { limits } = recommendedRingGap(inches(3.02).min);
    expect(pageOf(1)).toMatch(/^cylinder 1 +0\.0091 to 0\.0121 +common practice \[5\] /m);
    expect(limits.min).toBeCloseTo(inch(0.00906), 9);
    expect(pageOf(1)).toContain('[5] common practice: a new ring has 0.003 to 0.004 of the bore');
  });

  it('numbers who set the limits on the pages of each engine', () => {
    for (const page of [pageOf(1), pageOf(2)]) {
      const at = page.indexOf('Who set the limits');
      const used = new Set(page.slice(0, at).match(/\[\d\]/g));
      expect([...used].sort()).toEqual(page.slice(at).match(/^\[\d\]/gm));
    }
  });

  it('says the cautions where they apply', () => {
    const page = flowing(pageOf(1));
    const at = (words: string) => {
      expect(page).toContain(words);
      return page.indexOf(words);
    };
    expect(at('If a crack shows, stop, list the part as cracked and plan again.')).toBeLessThan(
      at('[ ] crankshaft B: crack-test it first: donor B threw a rod (rods B)'),
    );
    expect(at('crack-test it first')).toBeLessThan(at('crankshaft B: grind rod journals'));
    expect(at('crankshaft B: grind rod journals')).toBeLessThan(
      at('When it comes back: [ ] crankshaft B: crack-test it again once it is straight'),
    );
    expect(at('plugs of drilled oilways')).toBeLessThan(at('Journals, at both ends'));
    expect(at("torqued to the maker's figure")).toBeLessThan(at('rods A, rod A1 1.7507'));
    expect(at('A spark lights fuel vapour. Ventilate, keep flames and switches away')).toBeLessThan(
      at('Fuel turned on'),
    );
    expect(at('Stand clear of flywheel, pulley and belt')).toBeLessThan(at('No knock'));
    expect(at('hot after a run')).toBeLessThan(at('Oil level after the first run'));
    expect(pageOf(2)).not.toContain('crack-test');
  });

  it('asks for torque by the manual only, and for nothing that is not there', () => {
    expect(pageOf(1)).toContain("[ ] Main bearing caps torqued, by the maker's manual: ________");
    expect(pageOf(1)).toContain("[ ] Cylinder head torqued, by the maker's manual: ________");
    expect(pageOf(2)).not.toMatch(/Main bearing caps|Cylinder head/);
    expect(pageOf(2)).toContain("[ ] End play, by the maker's manual: ________");
    expect(pageOf(1)).toContain('[ ] crankshaft B, straightened: runout at the middle');
    const repaired = {
      ...plain,
      parts: [
        ...plain.parts,
        { section: 'heads' as const, name: 'head C', count: 1, bought: false },
      ],
      jobs: (['rods C', 'head C'] as const).map((part, i) => ({
        part,
        work: i === 0 ? ('straighten' as const) : ('skim head' as const),
        places: [],
        shop: 'the shop',
        cost: { amount: 1 },
      })),
    };
    const page = buildSheet({ ...twoEngines, builds: [repaired] });
    expect(page).toContain('- [ ] rods C, rod C1, straightened: bend and twist: ________');
    expect(page).toContain(
      '| head C, largest gap under a straight edge | ________ | not judged | no limit stated |',
    );
    expect(page).toContain('Rods C: a broken rod goes through the block');
  });

  it('prints in the units asked for', () => {
    const metric = buildSheet(twoEngines, { units: 'metric' });
    expect(metric).toContain('Sizes are diameters in millimetres');
    expect(metric).toContain('| crankshaft B, rod 1 | 40.754 to 40.767 | ________ |');
    expect(metric.replaceAll(/^- \\\[\d.*$/gm, '')).not.toMatch(/\d in\b/);
    expect(buildSheet({ ...twoEngines, units: 'metric' })).toBe(metric);
  });

  it('prints a page if nothing can be built, or nothing is proven', () => {
    const none = buildSheet(noEngine, { format: 'text' });
    expect(none).toContain('No complete pump set, vertical twin can be built from this shed.');
    expect(none).toContain('For now: one more engine needs: 2 rods; 1 head.');
    expect(none).not.toContain('\f');
    expectPage(none);
    const stopped = (stage: PlanStage) =>
      ({ outcome: 'time limit', stage, found: 2, bound: 1 }) as const;
    const caution = '> **Caution:** This plan is not proven to be the best.';
    expect(buildSheet({ ...twoEngines, proof: stopped('least cost') })).toContain(caution);
    // Only what one more engine needs is not known.
    expect(buildSheet({ ...twoEngines, proof: stopped('next engine') })).not.toContain(caution);
    expect(buildSheet({ ...noEngine, proof: stopped('most engines') })).toContain(
      'No complete pump set, vertical twin was found for this shed.',
    );
  });

  it('refuses what is no plan and what is no option', () => {
    const given = (options: object) => () => buildSheet(twoEngines, options as BuildSheetOptions);
    expect(refusal(() => buildSheet(undefined as unknown as Plan)).parameter).toBe('plan');
    expect(refusal(() => buildSheet({ units: 'inch' } as Plan)).parameter).toBe('plan.shed');
    expect(refusal(given({ units: 'si' })).parameter).toBe('options.units');
    expect(refusal(given({ format: 'html' })).parameter).toBe('options.format');
    expect(refusal(given({ unit: 'inch' })).parameter).toBe('options.unit');
  });
});

describe('the Markdown of a build sheet', () => {
  it('has tables whose rows all have the columns of their heading', () => {
    const all = tables(markdown);
    // Two engines with sizes of journals, housings, bores and other parts, clearances, ring gaps, side clearances and
    // the compression test;
    // one with an end play, and with pistons and shells to measure first.
    expect(all).toHaveLength(2 * 8 + 1 + 2);
    for (const [heading = '', ruler = '', ...rows] of all) {
      expect(ruler).toMatch(/^\|( -{3}:? \|)+$/);
      for (const row of [ruler, ...rows]) expect(cells(row)).toHaveLength(cells(heading).length);
    }
  });

  it.each(HOSTILE_NAMES)('bears the name %j', (name) => {
    const sheet = buildSheet(renamed(twoEngines, name));
    const [same, usual] = [tables(sheet), tables(markdown)];
    expect(same.map((rows) => rows.length)).toEqual(usual.map((rows) => rows.length));
    same.forEach((rows, i) => {
      for (const row of rows) expect(cells(row)).toHaveLength(cells(usual[i]?.[0] ?? '').length);
    });
    // No more lines, headings, boxes, pages or HTML than with plain names.
    const shape = (of: string) =>
      of.split('\n').map((line) => /^(#+|- \[ \]|>|\||-|<)?/.exec(line)?.[0]);
    expect(shape(sheet)).toEqual(shape(markdown));
    expect(sheet.match(/<[^>]*>/g)).toEqual(
      [PAGE_BREAK, PAGE_BREAK].flatMap((each) => each.match(/<[^>]*>/g)),
    );
    expectNoHole(sheet);
  });

  it.each([
    ['a|b', 'a\\|b'],
    ['\\|', '\\\\\\|'],
    ['*a* _b_ `c` ~d~', '\\*a\\* \\_b\\_ \\`c\\` \\~d\\~'],
    ['[a](b) #5 $x$', '\\[a\\](b) \\#5 \\$x\\$'],
    ['<b>&amp;', '&lt;b&gt;&amp;amp;'],
    ['a\r\n  b\fc', 'a b c'],
  ])('escapes %j', (name, shown) => {
    expect(escaped(name)).toBe(shown);
  });
});

describe('the text of a build sheet', () => {
  it('fits the page', () => {
    expectPage(text);
    expectNoHole(markdown);
  });

  it.each(HOSTILE_NAMES)('bears the name %j', (name) => {
    const sheet = buildSheet(renamed(twoEngines, name), { format: 'text' });
    expectPage(sheet);
    expect(sheet.split('\f')).toHaveLength(3);
  });
});

describe('everything said of a random shed', () => {
  it.each(Array.from({ length: 25 }, (_, seed) => seed))('%i has no hole', async (seed) => {
    const shed = randomShed(seed);
    expectPage(triageReport(triage(shed)));
    const plan = await planBuilds(shed);
    for (const units of ['inch', 'metric'] as const) {
      expectPage(planReport(plan, { units }));
      expectPage(buildSheet(plan, { units, format: 'text' }));
      expectNoHole(buildSheet(plan, { units }));
    }
  });
});
