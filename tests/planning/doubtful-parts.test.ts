import { planBuilds } from 'crankwright/planning';
import type { PartTest, Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { bruteForce } from './brute-force.js';
import { reached } from './reached.js';
import { crankshaft, journal, length, rod, single } from './single-shed.js';

// Sizes are tenths of a thou. Every answer is worked out by hand beside it.

/** How many engines brute force makes of the shed with changes; the planner must make the same of it. */
async function engines(changes: Partial<Shed>): Promise<number> {
  const shed = { ...single, ...changes };
  const answer = bruteForce(shed);
  const plan = await planBuilds(shed);
  expect(plan.proof).toEqual({ outcome: 'optimal' });
  expect(reached(plan)).toEqual(answer);
  return answer.engines;
}

const clear = (of: PartTest['for']): PartTest => ({ for: of, how: 'by the shop', found: 'none' });

describe('what a plan does not count on', () => {
  it('is a crankshaft that reads more than 2 thou out of true', async () => {
    const reading = (tenths: number): Partial<Shed> => ({
      crankshafts: [
        { name: 'crankshaft A', rodJournals: [{ ...journal(16248), runout: length(tenths) }] },
      ],
    });
    expect(await engines(reading(20))).toBe(1);
    expect(await engines(reading(21))).toBe(0);
  });

  it('is a rod of a donor whose bearing seized, until it is told which or both tests are listed', async () => {
    const from = 'donor A';
    const seized: Partial<Shed> = {
      crankshafts: [{ ...crankshaft('crankshaft A', 16248), from, happened: ['seized bearing'] }],
    };
    const its = { ...rod('rod A', 17505), from };
    const other = { ...rod('rod B', 17505), from };
    expect(await engines({ ...seized, rods: [rod('rod A', 17505)] })).toBe(1);
    expect(await engines({ ...seized, rods: [its] })).toBe(0);
    expect(await engines({ ...seized, rods: [{ ...its, tested: [clear('cracks')] }] })).toBe(0);
    const both = [clear('cracks'), clear('softening')];
    expect(await engines({ ...seized, rods: [{ ...its, tested: both }] })).toBe(1);
    const told = { ...other, happened: ['seized bearing'] as const };
    expect(await engines({ ...seized, rods: [told] })).toBe(0);
    expect(await engines({ ...seized, rods: [its, told] })).toBe(1);
  });
});
