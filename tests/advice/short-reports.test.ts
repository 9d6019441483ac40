import { readFileSync } from 'node:fs';
import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, triage, triageReport } from 'crankwright/shed';
import { inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { expectNotesListed, expectPage, flowing } from '../pages/pages.js';
import { exampleShed } from '../support/example-shed.js';

const sheet = (name: string) =>
  inspect(readSheet(readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8')));

const sorted = triage(exampleShed());
const plan = await planBuilds(exampleShed());
/** Each page in short and in full. */
const pages = [
  ...['pump-set-inch.json', 'pump-set-metric.json'].map((name) => {
    const inspection = sheet(name);
    const { units } = inspection;
    return [name, report(inspection), report(inspection, { units, why: true })] as const;
  }),
  [
    'the shed',
    triageReport(sorted),
    triageReport(sorted, { units: sorted.units, why: true }),
  ] as const,
  ['the plan', planReport(plan), planReport(plan, { units: plan.units, why: true })] as const,
];

const lengthOf = (text: string) => text.split('\n').length;
const UNDONE = /^ *not (standard|[\d.]+ (in|mm) (under|over)): .*does not clean up/m;

describe.each(pages)('a report on %s', (_, short, full) => {
  it('is shorter without the reasons why steps were passed over, and tells them where asked', () => {
    expect(lengthOf(short)).toBeLessThan(lengthOf(full));
    expect(short).not.toMatch(UNDONE);
    expectPage(short);
    expectPage(full);
    expectNotesListed(short, 'WHO SET THE LIMITS');
    expectNotesListed(full, 'WHO SET THE LIMITS');
  });

  // Each of these keeps somebody or an engine from harm.
  it.each([
    /DO NOT RUN/g,
    /IT WILL NOT TURN/g,
    /a crack in a main web or into a bore is no job for stitching/g,
    /a broken rod goes through the block/g,
    /can hide a crack and break/g,
    /not measured: runout \(bend\)/g,
    /crack-test it again once it is straight/g,
    /pressure-test it after the repair/g,
    /no depth limit of the skim is known/g,
    /Fuel vapour in a crankcase can ignite/g,
    /no shell makes up for a bad housing/g,
    /Buy and measure pistons and shells before anything is cut/g,
    /what was not measured was not judged/g,
    /scrap/gi,
    /undecided/gi,
    /Not measured, so not judged/g,
    /may hide all of an oval/g,
    /Nobody said how well/g,
  ])('says %s in short as in full', (caution) => {
    const times = (text: string) => flowing(text).match(caution)?.length ?? 0;
    expect(times(short)).toBe(times(full));
  });

  it('says how to leave the fillets wherever journals are ground', () => {
    expect(short.includes('keep the fillets')).toBe(full.includes('keep the fillets'));
  });
});

describe('a part that fits as it is', () => {
  const short = { units: 'inch', why: false } as const;

  it('takes one sentence, with its sizes, what was not read, and how much is within limits', () => {
    const fits = sorted.parts.filter(({ disposition }) => disposition === 'use as it is');
    expect(fits.length).toBeGreaterThan(10);
    for (const part of fits) expect(describePart(part, short)).toHaveLength(1);
    const said = (name: string) =>
      describePart(fits.find((part) => part.name === name) as never, short)[0];
    expect(said('crankshaft A')).toBe(
      'crankshaft A, from donor A: use as it is, once it is crack-tested; main journals standard; rod journals 0.0200 in under; not measured: runout (bend)',
    );
    expect(said('block A')).toBe(
      'block A, from donor A: use as it is; bores standard; 2 sizes within limits (specified by pump set manual, sheet 3)',
    );
    expect(said('rings standard')).toBe(
      'rings standard: no fault is listed; not measured: ring gaps, ring side clearance',
    );
  });
});
