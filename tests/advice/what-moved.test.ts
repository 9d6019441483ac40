import { describePlanDifference, diffPlans, planBuilds } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { plainShed, spoiltShed } from '../shed/sheds.js';

const plan = (shed: unknown) => planBuilds(readShed(shed), { mustBuild: ['block A'], atMost: 1 });

describe('an engine that is built of other parts', () => {
  it('is told with what came for what', async () => {
    const before = await plan(plainShed());
    const its = before.builds[0]?.parts.find(({ section }) => section === 'crankshafts')?.name;
    const taken = its === 'crankshaft A' ? 0 : 1;
    const other = taken === 0 ? 'crankshaft B' : 'crankshaft A';
    const after = await plan(spoiltShed({ [`crankshafts[${taken}].faults`]: ['cracked'] }));
    const difference = diffPlans(before, after);
    expect(difference.ofOtherParts).toMatchObject([
      { engine: 'block A', takes: expect.anything(), insteadOf: expect.anything() },
    ]);
    const said = describePlanDifference(difference, { units: 'inch' }).join('\n');
    expect(said).toMatch(
      new RegExp(`Built of other parts: block A \\(.*${other} instead of ${its}[;)]`),
    );
  });

  it('tells several parts that come for one, counts, and what comes and goes alone', () => {
    const part = (section: string, name: string, count = 1) => ({ section, name, count });
    const difference = {
      engines: { before: 1, after: 1 },
      cost: { before: { amount: 0 }, after: { amount: 0 } },
      smallestMargin: {},
      builtNow: [],
      builtNoMore: [],
      ofOtherParts: [
        {
          engine: 'block B',
          takes: [part('rods', 'rod A2'), part('rods', 'rod E1'), part('thrustWashers', 'shim')],
          insteadOf: [part('rods', 'rods B'), part('shells', 'rod std', 2)],
        },
      ],
    } as unknown as ReturnType<typeof diffPlans>;
    expect(describePlanDifference(difference, { units: 'inch' })).toEqual([
      'Built of other parts: block B (rod A2 and rod E1 instead of rods B; without 2 × rod std; also shim).',
    ]);
  });

  it('is not told of an engine that is built of the same', async () => {
    const same = await plan(plainShed());
    expect(diffPlans(same, same).ofOtherParts).toEqual([]);
  });
});
