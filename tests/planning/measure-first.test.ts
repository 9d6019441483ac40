import { planBuilds } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { Clock } from '../../src/planning/clock.js';
import { searched, untidy } from './searched.js';

describe('the search for what to measure first', () => {
  it('ends where the time is up, before it began or on the way', () => {
    expect(searched(untidy, { clock: new Clock(1e-9) })).toEqual({
      measureFirst: [],
      ended: 'time limit',
    });
    const noTime = { status: 'time limit', values: [], bound: 0 } as const;
    expect(searched(untidy, { solve: () => noTime })).toEqual({
      measureFirst: [],
      ended: 'time limit',
    });
  });

  it('has nothing to say of a shed in which every part is known, or no plan is possible', async () => {
    const { cores: _, ...shed } = untidy;
    const isKnown = ({ name }: { readonly name: string }) =>
      !['block G', 'crankshaft 2', 'crankshaft 3', 'rod shells 20'].includes(name);
    const known: Shed = {
      ...shed,
      blocks: shed.blocks?.filter(isKnown) ?? [],
      crankshafts: shed.crankshafts?.filter(isKnown) ?? [],
      shells: shed.shells?.filter(isKnown) ?? [],
    };
    expect(searched(known, {})).toEqual({ measureFirst: [] });
    const impossible = { status: 'infeasible', values: [], bound: 0 } as const;
    expect(searched(untidy, { solve: () => impossible })).toEqual({ measureFirst: [] });
  });

  it('keeps to a cost limit for each engine, and to a block that must be built', async () => {
    const price = { amount: 90, currency: 'EUR' };
    const shed: Shed = {
      ...untidy,
      machining: [{ work: 'crack test', shop: 'the grinder', price }],
    };
    const named = async (amount: number) => {
      const plan = await planBuilds(shed, { mostPerEngine: { ...price, amount }, atMost: 2 });
      return [plan.builds.length, plan.mayBe?.engines];
    };
    // A crankshaft is tested for 90: with 100 for each engine a second one may be built, with 80 there is not even one.
    expect(await named(100)).toEqual([1, 2]);
    expect(await named(80)).toEqual([0, undefined]);
    const must = await planBuilds(untidy, { mustBuild: ['block G'], atMost: 1 });
    expect(must.cannotBuild.map(({ name }) => name)).toEqual(['block G']);
  });
});
