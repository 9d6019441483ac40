import { type Ratio, RebuildInputError } from 'crankwright';
import { type ChanceOptions, chancesReport, engineChances } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { single } from './single-shed.js';

/** The single's shed with crankshafts of which nothing was measured, and blocks that are sound. */
function shedWith(unknown: readonly { readonly odds?: number; readonly is?: 'ran' | 'seized' }[]) {
  const count = unknown.length;
  const times = <P extends { readonly name: string }>(parts: readonly P[] = []): readonly P[] =>
    parts.flatMap((part) =>
      Array.from({ length: count }, (_, i) => ({ ...part, name: `${part.name} ${i}` })),
    );
  return {
    ...single,
    blocks: times(single.blocks),
    rods: times(single.rods),
    pistonSets: times(single.pistonSets),
    ringSets: times(single.ringSets),
    shells: times(single.shells),
    crankshafts: unknown.map(({ odds, is }, i) => ({
      name: `crankshaft ${i}`,
      ...(odds !== undefined && { odds: odds as Ratio }),
      ...(is && { condition: { is } }),
    })),
  } satisfies Shed;
}

const chancesOf = async (shed: Shed, options?: ChanceOptions) =>
  (await engineChances(shed, options)).chances.map(({ engines, chance }) => [engines, chance]);

describe('engineChances', () => {
  it('is worked by hand for two crankshafts', async () => {
    // Each good on its own, 0.5 and 0.8: none 0.5 * 0.2 = 0.1; one 0.5 * 0.2 + 0.5 * 0.8 = 0.5; both 0.4.
    expect(await chancesOf(shedWith([{ odds: 0.5 }, { odds: 0.8 }]))).toEqual([
      [0, expect.closeTo(0.1, 12)],
      [1, expect.closeTo(0.5, 12)],
      [2, expect.closeTo(0.4, 12)],
    ]);
    // What there is to be built at most counts.
    expect(await chancesOf(shedWith([{ odds: 0.5 }, { odds: 0.8 }]), { atMost: 1 })).toEqual([
      [0, expect.closeTo(0.1, 12)],
      [1, expect.closeTo(0.9, 12)],
    ]);
  });

  it('is certain where every part is known, and where the owner is', async () => {
    expect(await chancesOf(single)).toEqual([[1, 1]]);
    expect(await chancesOf(shedWith([{ odds: 1 }, { odds: 0 }]))).toEqual([[1, 1]]);
  });

  it('goes by rules of thumb that say so, where the owner gives no odds', async () => {
    const { odds } = await engineChances(shedWith([{ is: 'ran' }, { is: 'seized' }, {}]));
    expect(odds.map((each) => [each.odds, each.by])).toEqual([
      [0.8, 'rule of thumb'],
      [0.3, 'rule of thumb'],
      [0.5, 'rule of thumb'],
    ]);
  });

  it('counts the odds of an owner of a part that was measured, too', async () => {
    const odds = 0.25 as Ratio;
    const rods = single.rods?.map((each) => ({ ...each, odds }));
    const chances = await engineChances({ ...single, rods: rods ?? [] });
    expect(chances.chances).toEqual([
      { engines: 0, chance: 0.75 },
      { engines: 1, chance: 0.25 },
    ]);
    expect(chances.odds).toMatchObject([{ section: 'rods', odds: 0.25, by: 'owner' }]);
    // Two that are alike, of which only one has odds: the other is good in any case.
    const two = [...(single.rods ?? []), ...(rods ?? []).map((r) => ({ ...r, name: 'others' }))];
    expect(await chancesOf({ ...single, rods: two })).toEqual([[1, 1]]);
  });

  it('tells what of the engines is in no chance: what was not judged or not crack-tested', async () => {
    const { notIn, odds } = await engineChances(single);
    expect(odds).toEqual([]);
    expect(notIn.find(({ section }) => section === 'rods')).toMatchObject({ untested: true });
    expect(notIn.find(({ section }) => section === 'ringSets')?.notJudged).toBeDefined();
    const sure = (single.rods ?? []).map((each) => ({ ...each, odds: 0.9 as Ratio }));
    const told = await engineChances({ ...single, rods: sure });
    expect(told.notIn.some(({ section }) => section === 'rods')).toBe(false);
  });

  it('draws cases where there are many: as the binomial law, and the same for the same seed', async () => {
    const shed = shedWith(Array.from({ length: 10 }, () => ({ odds: 0.5 })));
    const first = await engineChances(shed, { draws: 2000, seed: 4 });
    expect(first).toEqual(await engineChances(shed, { draws: 2000, seed: 4 }));
    expect(first).toMatchObject({ how: 'draws', draws: 2000, seed: 4 });
    // Binomial: C(10, 5) / 2^10 = 252 / 1024; of 2000 draws it is within 4 standard deviations, 0.039.
    const five = first.chances.find(({ engines }) => engines === 5)?.chance ?? 0;
    expect(Math.abs(five - 252 / 1024)).toBeLessThan(4 * Math.sqrt((0.246 * 0.754) / 2000));
  });

  it('sums to one, and the expected number grows with the odds', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 3 }),
        async (odds) => {
          const chances = await chancesOf(shedWith(odds.map((each) => ({ odds: each }))));
          const sum = chances.reduce((all, [, chance]) => all + (chance ?? 0), 0);
          expect(sum).toBeCloseTo(1, 12);
          // Each crankshaft makes one engine, so as many are expected as the odds add up to.
          const mean = chances.reduce(
            (all, [engines, chance]) => all + (engines ?? 0) * (chance ?? 0),
            0,
          );
          expect(mean).toBeCloseTo(
            odds.reduce((a, b) => a + b, 0),
            9,
          );
        },
      ),
      { numRuns: 12 },
    );
  });

  it.each<[ChanceOptions, string]>([
    [{ draws: 0 }, 'options.draws'],
    [{ draws: 2.5 }, 'options.draws'],
    [{ seed: -1 }, 'options.seed'],
    [{ mustBuild: [] } as never, 'options.mustBuild'],
    [{ atMost: -1 }, 'options.atMost'],
  ])('refuses %j', async (options, parameter) => {
    const refusal = engineChances(single, options);
    await expect(refusal).rejects.toBeInstanceOf(RebuildInputError);
    await expect(refusal).rejects.toMatchObject({ parameter });
  });
});

describe('chancesReport', () => {
  it('never calls an engine certain, and says what its chances leave out', async () => {
    const text = chancesReport(await engineChances(single)).replace(/\s+/g, ' ');
    expect(text).toContain('1 complete engine: more than 99 %');
    expect(text).not.toContain('100 %');
    expect(text).not.toContain('Every part is known');
    expect(text).toContain('Chances are of the parts not measured that a plan waits for.');
    expect(text).toMatch(/Not in them: .*not crack-tested/);
  });

  it('keeps the line of an unlikely number of engines', async () => {
    const text = chancesReport(await engineChances(shedWith([{ odds: 0.999 }])));
    expect(text).toContain('no complete engine: less than 1 %');
    expect(text).toContain('1 complete engine: more than 99 %');
  });

  it('tells the chances, and that they are no better than the odds', async () => {
    const text = chancesReport(await engineChances(shedWith([{ odds: 0.25 }, { is: 'ran' }])));
    expect(text).toContain('1 complete engine: about 65 %');
    expect(text).toContain('crankshaft 0: 25 %, as you say');
    expect(text).toContain('crankshaft 1: 80 %, our guess');
    expect(text.replace(/\s+/g, ' ')).toContain('no better than the odds, which are guesses');
  });
});
