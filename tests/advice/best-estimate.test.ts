import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { spoiltShed } from '../shed/sheds.js';
import { exampleShed } from '../support/example-shed.js';

const micrometer = (size: string) => exampleShed({ instruments: { micrometer: size } });

describe('a shed that describes its instruments', () => {
  it('makes as many engines as one that does not, with the same work', async () => {
    const asRead = await planBuilds(exampleShed());
    for (const size of ['±0.0005 in', '±0.0010 in']) {
      const plan = await planBuilds(micrometer(size));
      const of = ({ builds, orders, cost }: typeof plan) => [
        builds.map(({ name, parts, jobs }) => [name, parts, jobs]),
        orders,
        cost,
      ];
      expect(of(plan)).toEqual(of(asRead));
    }
  });

  it('grinds no journal that reads round to a tenth, and asks to measure it again', () => {
    const shaft = triage(micrometer('±0.0005 in')).parts.find(
      ({ name }) => name === 'crankshaft A',
    );
    if (shaft === undefined) expect.unreachable();
    expect([shaft.disposition, shaft.jobs]).toEqual(['use as it is', []]);
    // A difference of two readings is known to √2 × 0.0005 = 0.0007 in, and the rule allows 0.0005 in.
    const again = shaft.because.flatMap((why) =>
      why.kind === 'measure again' ? [why.finding.feature] : [],
    );
    expect(again).toContain('rod 1: out-of-round');
    const [headline, ...others] = describePart(shaft, { units: 'inch' });
    expect(headline).toContain('if it measures up again');
    expect(others.join('\n')).toContain('measure it again before anything is spent on it: rod 1');
    expect(flowing(triageReport(triage(micrometer('±0.0005 in'))))).toMatch(
      /"again" counts those .* to be measured again first/,
    );
  });

  it('names in the plan what to measure again of the parts that it takes', async () => {
    const plan = await planBuilds(micrometer('±0.0005 in'));
    expect(plan.measureAgain.map(({ name }) => name)).toContain('crankshaft A');
    const text = flowing(planReport(plan));
    expect(text).toContain('MEASURE ONCE MORE');
    expect(text).toContain('crankshaft A: measure it again before anything is spent on it: rod 1');
  });

  it('asks nothing to be measured again where its instruments leave no doubt', () => {
    const { parts } = triage(micrometer('±0.00001 in'));
    const kinds = parts.flatMap(({ because }) => because.map(({ kind }) => kind));
    expect(kinds).not.toContain('measure again');
    expect(kinds).not.toContain('measure sizes again');
    expect(triageReport({ ...triage(exampleShed()) })).not.toContain('"again" counts');
  });

  it('says how well it was measured, in the triage and in the plan', async () => {
    const pages = [
      triageReport(triage(micrometer('±0.0005 in'))),
      planReport(await planBuilds(micrometer('±0.0005 in'))),
    ].map(flowing);
    for (const page of pages) {
      expect(page).toContain('HOW WELL IT WAS MEASURED');
      expect(page).toContain('About 95 readings in 100 are right to within: micrometer 0.0005 in');
      expect(page).toContain('so their readings count as exact, which none is: bore gauge, wall');
      // Read at 0 and 90 degrees.
      expect(page).toContain('may hide all of an oval');
    }
    expect(pages[1]).toMatch(
      /The clearance nearest a limit stays [^.]+\.\d+ in inside its limits, and is known to ±0\.000\d/,
    );
  });

  it('says so of a size that lies too near its bound', () => {
    // 1.6245 - 0.0005 = 1.6240 is the least that the allowance leaves at standard; it reads 1.6241.
    const readings = [0, 1, 2, 3].map((i) => [
      `crankshafts[0].rodJournals[0].readings[${i}].diameter`,
      '1.6241 in',
    ]);
    const part = triage(
      readShed(
        spoiltShed({ ...Object.fromEntries(readings), instruments: { micrometer: '±0.0002 in' } }),
      ),
    ).parts.find(({ name }) => name === 'crankshaft A');
    expect(part?.disposition).toBe('use as it is');
    expect(part?.because).toContainEqual({
      kind: 'measure sizes again',
      of: 'rods',
      places: ['rod 1'],
      step: 0,
    });
  });

  it('says it in the headline of rods with a housing too near its limit', () => {
    // 1.7507 in is 0.0001 in inside 1.7506 to 1.7510 in.
    const part = triage(
      readShed(spoiltShed({ instruments: { boreGauge: '±0.0002 in' } })),
    ).parts.find(({ name }) => name === 'rods A');
    expect(part && describePart(part, { units: 'inch' })[0]).toBe(
      'rods A, from donor A: use as it is, if it measures up again',
    );
    // Limits 0.0004 in apart, and 2 × 0.0003 in.
    const coarse = triage(
      readShed(spoiltShed({ instruments: { boreGauge: '±0.0003 in' } })),
    ).parts.find(({ name }) => name === 'rods A');
    expect(coarse && describePart(coarse, { units: 'inch' }).join(' ')).toContain(
      'readings to ±0.0003 in cannot judge limits 0.0004 in apart: measure it better',
    );
  });
});
