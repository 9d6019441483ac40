import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { spoiltShed } from '../shed/sheds.js';

// Straightening moves every journal, and the press marks what it bears on: what was read before it tells nothing after it.
const AGAIN =
  'measure the runout and the diameters of every journal again once it is straight, before its mains are called good';
const straightened = {
  'crankshafts[1].faults': ['bent'],
  'crankshafts[1].runoutOnceStraight': '0.0010 in',
};

describe('a crankshaft that is straightened', () => {
  it('is measured again, whatever the shop promises', () => {
    const part = triage(readShed(spoiltShed(straightened))).parts.find(
      ({ name }) => name === 'crankshaft B',
    );
    if (!part) expect.fail('crankshaft B is not in the triage');
    expect(part.tests).toContainEqual({ test: 'measure its journals', when: 'again', because: [] });
    const text = describePart(part, { units: 'inch' }).join('\n');
    expect(text).toContain(AGAIN);
    // Its journals are not judged good; a promise is.
    expect(text).toContain(
      'main journals, with the runout of 0.0010 in that the shop promises: no grinding needed',
    );
  });

  it('is measured again by the plan and on the build sheet, before it is built', async () => {
    const plan = await planBuilds(readShed(spoiltShed(straightened)));
    expect(plan.builds.some(({ jobs }) => jobs.some(({ work }) => work === 'straighten'))).toBe(
      true,
    );
    const report = flowing(planReport(plan));
    expect(report).toContain(
      `After the work, before it is built: crankshaft B: crack-test it again`,
    );
    expect(report).toContain(`crankshaft B: ${AGAIN}`);
    expect(flowing(buildSheet(plan, { format: 'text' }))).toContain(`crankshaft B: ${AGAIN}`);
  });
});
