import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { spoiltShed } from '../shed/sheds.js';

const withFaults = (...faults: readonly string[]) =>
  readShed(spoiltShed({ 'pistonSets[0].faults': [...faults] }));
const pistonsOf = (...faults: readonly string[]) => {
  const part = triage(withFaults(...faults)).parts.find(({ name }) => name === 'pistons A');
  if (!part) throw new Error('no pistons A');
  return part;
};

describe('a scored piston', () => {
  it('is undecided until somebody has looked where it is scored', () => {
    const [headline, why] = describePart(pistonsOf('scored'), { units: 'inch' });
    expect(headline).toBe('pistons A, from donor A: undecided until it is looked over');
    expect(why).toMatch(/^seen: scored; look where: light scores on a skirt are dressed/);
    expect(why).toContain('it is scrap if a score catches a fingernail');
  });

  it('is scrap where another fault makes it so', () => {
    expect(pistonsOf('scored', 'cracked').disposition).toBe('scrap');
  });

  it('is counted on by no plan, and named among what to look over', async () => {
    const plan = await planBuilds(withFaults('scored'));
    const taken = plan.builds.flatMap(({ parts }) => parts.map(({ name }) => name));
    expect(taken).not.toContain('pistons A');
    expect(flowing(planReport(plan))).toContain(
      'Undecided until it is looked over: pistons A (piston set; scored)',
    );
  });
});
