import { planBuilds } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import {
  block,
  eur,
  journal,
  length,
  pistons,
  rings,
  rod,
  shells,
  single,
  withEngine,
} from './single-shed.js';

// Sizes are tenths of a thou. Every answer is worked out by hand beside it.

const crankshaft = (name: string, ...sizes: readonly number[]) => ({
  name,
  rodJournals: sizes.map((size, i) => ({ ...journal(size), name: `rod journal ${i + 1}` })),
});

/** Two twins but for shells: one crankshaft stands at standard, the other at 10 under. */
const twins: Shed = {
  ...single,
  ...withEngine({ cylinders: 2 }),
  blocks: ['block A', 'block B'].map((name) => block(name, 30003, 30003)),
  crankshafts: [crankshaft('crankshaft A', 16248, 16248), crankshaft('crankshaft B', 16148, 16148)],
  rods: ['rod 1', 'rod 2', 'rod 3', 'rod 4'].map((name) => rod(name, 17505)),
  pistonSets: ['pistons A', 'pistons B'].map((name) => pistons(name, 29970, 29970)),
  ringSets: [rings(2)],
  // Enough for two crankshafts of standard size, and for none at 10 under.
  shells: [shells('shells', 0, 618.5, 4)],
};

const nextOf = async (changes: object) => {
  const plan = await planBuilds({ ...twins, ...changes } as Shed);
  expect(plan.builds).toHaveLength(1);
  expect(plan.proof).toEqual({ outcome: 'optimal' });
  return plan.nextEngine;
};
const pairs = (count: number, step: number) => ({
  section: 'shells',
  fits: 'rods',
  step: length(step),
  count,
});

describe('what the next engine lacks', () => {
  it('is two pairs of shells rather than one crankshaft, which is far harder to get', async () => {
    expect(await nextOf({})).toEqual({ lacks: [pairs(2, 100)], alternatives: [] });
  });

  it('goes by what the owner says is hard to get', async () => {
    // Two pairs of shells weigh 2, a crankshaft 1.9.
    const easy = await nextOf({ hardToGet: { crankshafts: 1.9 } });
    expect(easy).toEqual({ lacks: [{ section: 'crankshafts', count: 1 }], alternatives: [] });
    const hard = await nextOf({ hardToGet: { crankshafts: 2.1 } });
    expect(hard).toEqual({ lacks: [pairs(2, 100)], alternatives: [] });
  });

  it('comes with all that is as easy to get', async () => {
    // Both weigh 2; with the crankshaft, which is as good as new, there is no step up.
    expect(await nextOf({ hardToGet: { crankshafts: 2 } })).toEqual({
      lacks: [{ section: 'crankshafts', count: 1 }],
      alternatives: [[pairs(2, 100)]],
    });
    // Two pairs of standard for a third crankshaft B would do as well, were it at standard.
    const either = await nextOf({
      crankshafts: [...(twins.crankshafts ?? []), crankshaft('crankshaft C', 16048, 16048)],
    });
    expect(either).toEqual({ lacks: [pairs(2, 100)], alternatives: [[pairs(2, 200)]] });
  });

  it('tells nothing twice that differs only in a size that is open', async () => {
    // One crankshaft there is, and shells for it: the next may be of any size, and its shells of that size.
    const open = await nextOf({
      crankshafts: twins.crankshafts?.slice(0, 1),
      shells: [shells('shells', 0, 618.5, 2)],
    });
    expect(open).toEqual({
      lacks: [
        { section: 'crankshafts', count: 1 },
        { section: 'shells', fits: 'rods', count: 2 },
      ],
      alternatives: [],
    });
  });

  it('takes nothing for as cheap that costs more work', async () => {
    // A block at standard and pistons for it, or pistons of 20 over for a block that would be bored.
    const machining = [{ work: 'bore', shop: 'the borer', price: eur(35) }] as const;
    const next = await nextOf({
      ...{
        machining,
        pistonSets: twins.pistonSets?.slice(0, 1),
        shells: [shells('shells', 0, 618.5, 4)],
      },
      crankshafts: [
        crankshaft('crankshaft A', 16248, 16248),
        crankshaft('crankshaft B', 16248, 16248),
      ],
    });
    expect(next).toEqual({
      lacks: [{ section: 'pistonSets', step: length(0), count: 1 }],
      alternatives: [],
    });
  });

  it('stops at eight alternatives, and says that there may be more', async () => {
    const steps = Array.from({ length: 10 }, (_, i) => 50 * (i + 1));
    const many = await nextOf({
      ...withEngine({
        cylinders: 2,
        rodJournals: { ...single.engine.rodJournals, steps: steps.map(length) },
      }),
      crankshafts: [
        crankshaft('crankshaft A', 16248, 16248),
        ...steps.map((step) => crankshaft(`crankshaft ${step}`, 16248 - step, 16248 - step)),
      ],
    });
    expect(many?.alternatives).toHaveLength(8);
    expect(many?.mayBeMore).toBe(true);
    expect(many?.alternatives[0]).toEqual([pairs(2, 100)]);
  });
});
