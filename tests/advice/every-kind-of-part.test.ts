import { type Plan, planBuilds, planReport } from 'crankwright/planning';
import { readShed, type Shed, triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import {
  block,
  crankshaft,
  eur,
  length,
  rod,
  single,
  span,
  TENTH,
  two,
  withEngine,
} from '../planning/single-shed.js';
import { needing } from '../support/needing.js';

// Sizes are tenths of a thou. Two engines can be built of `two`, which is as good as new.

const plan = (changes: Partial<Shed>): Promise<Plan> =>
  planBuilds({ ...single, ...two, ...changes });
const other = (name: string, kind: string, count = 1) => ({ name, kind, count });
const partsOf = ({ builds }: Plan) => builds.map(({ parts }) => parts.map(({ name }) => name));

describe('an engine is complete only with every part it needs', () => {
  const magnetos = {
    ...withEngine({ alsoNeeds: needing('magneto') }),
    otherParts: [other('M', 'magneto')],
  };

  it('two sets of everything and one magneto make one engine, and the next lacks a magneto', async () => {
    const made = await plan(magnetos);
    expect(made.builds).toHaveLength(1);
    expect(made.nextEngine?.lacks).toEqual([{ section: 'otherParts', kind: 'magneto', count: 1 }]);
    expect(planReport(made)).toContain('One more engine needs: 1 magneto');
  });

  it('counts as many of a kind as one engine takes', async () => {
    const springs = { alsoNeeds: [{ part: 'valve spring', count: 4 }] };
    const seven = await plan({
      ...withEngine(springs),
      otherParts: [other('S', 'valve spring', 7)],
    });
    expect(seven.builds).toHaveLength(1);
    expect(seven.builds[0]?.parts.at(-1)).toMatchObject({
      name: 'S',
      kind: 'valve spring',
      count: 4,
    });
    expect(seven.nextEngine?.lacks).toEqual([
      { section: 'otherParts', kind: 'valve spring', count: 1 },
    ]);
  });

  it('leaves out what is broken, kept back or built in, and buys what there is to buy', async () => {
    for (const kept of [
      { faults: ['cracked' as const] },
      { reserved: 'for Anna' },
      { builtInto: 'the boat' },
    ]) {
      const lost = await plan({ ...magnetos, otherParts: [{ ...other('M', 'magneto'), ...kept }] });
      expect(lost.builds).toHaveLength(0);
      const left = lost.leftOver.find(({ name }) => name === 'M');
      expect(left).toMatchObject({ kind: 'magneto', why: 'faults' in kept ? 'scrap' : 'reserved' });
    }
    const bought = await plan({
      ...magnetos,
      toBuy: { otherParts: [{ name: 'new M', kind: 'magneto', price: eur(90) }] },
    });
    expect(bought.builds).toHaveLength(2);
    expect(bought.shopping).toEqual([
      { section: 'otherParts', kind: 'magneto', name: 'new M', count: 1, cost: eur(90) },
    ]);
  });

  it('says of a kind in the shed that it is not counted, where the engine is not said to need it', async () => {
    const made = await plan({ otherParts: [other('M', 'magneto')] });
    expect(made.builds).toHaveLength(2);
    expect(made.complete.notNeeded).toEqual(['magneto']);
    expect(planReport(made).replace(/\s+/g, ' ')).toContain(
      'Not counted, as the engine is not said to need it: magneto',
    );
  });
});

describe('a block that must be built', () => {
  it.each([
    [{ reserved: 'for Anna' }, 'reserved in the shed (for Anna)'],
    [{ builtInto: 'the boat' }, 'built into the boat'],
  ])('is refused with %o', async (kept, why) => {
    const blocks = [{ ...block('block A', 30003), ...kept }];
    await expect(
      planBuilds({ ...single, blocks }, { mustBuild: ['block A'] }),
    ).rejects.toMatchObject({
      parameter: 'options.mustBuild[0]',
      message: expect.stringContaining(why),
    });
  });
});

describe('a later part fits the earlier engines, and not the other way round', () => {
  const lateBlock = { ...block('late block', 30003), interchange: ['late'], supersedes: ['early'] };
  const shaft = (group: string) => ({ ...crankshaft('crankshaft', 16248), interchange: [group] });
  const engines = async (changes: Partial<Shed>) => (await plan(changes)).builds.length;

  it('builds a later block with an earlier crankshaft', async () => {
    expect(await engines({ blocks: [lateBlock], crankshafts: [shaft('early')] })).toBe(1);
  });

  it('does not build an earlier block with a later crankshaft', async () => {
    const early = { ...block('early block', 30003), interchange: ['early'] };
    expect(await engines({ blocks: [early], crankshafts: [shaft('late')] })).toBe(0);
    // That a later block replaces an earlier one does not say that a later crankshaft does.
    expect(
      await engines({
        blocks: [early, { ...lateBlock, reserved: 'x' }],
        crankshafts: [shaft('late')],
      }),
    ).toBe(0);
  });

  it('goes over any number of steps, told from either end', async () => {
    const middle = {
      ...block('middle', 30003),
      interchange: ['middle'],
      supersededBy: ['late'],
      supersedes: ['early'],
    };
    const late = { ...block('late', 30003), interchange: ['late'] };
    const one = { crankshafts: [shaft('early')] };
    expect(await engines({ ...one, blocks: [late] })).toBe(0);
    expect(await engines({ ...one, blocks: [late, { ...middle, reserved: 'x' }] })).toBe(1);
  });
});

describe('a part that fits only with another', () => {
  const heads = [{ name: 'head of B', onlyWith: ['block B'] }, { name: 'any head' }];
  const withHeads = withEngine({ alsoNeeds: needing('head') });

  it('goes into the engine that has the other', async () => {
    const both = partsOf(await plan({ ...withHeads, heads }));
    expect(both).toHaveLength(2);
    expect(both.find((parts) => parts.includes('head of B'))).toContain('block B');
  });

  it('builds nothing without it, and the triage says so', async () => {
    const shed: Shed = {
      ...{ ...single, ...two, ...withHeads },
      blocks: [block('block A', 30003), { ...block('block B', 30003), builtInto: 'the boat' }],
      heads: heads.slice(0, 1),
    };
    expect((await planBuilds(shed)).builds).toHaveLength(0);
    const sorted = triage(shed).parts.find(({ name }) => name === 'head of B');
    expect(sorted?.disposition).toBe('spare');
    expect(sorted?.because).toContainEqual({ kind: 'fits nothing', section: 'blocks' });
    expect(triageReport(triage(shed))).toContain('head of B: spare');
  });

  it('gives up the wider margin for it', async () => {
    // Piston 29970 leaves 33 in 30003 and 36 in 30006; rods of B alone may go with block B.
    const crossed = await plan({
      blocks: [block('block A', 30003), block('block B', 30006)],
      rods: [
        { ...rod('rod of B', 17505), onlyWith: ['block B'] },
        { ...rod('rod of A', 17505), onlyWith: ['block A'] },
      ],
      crankshafts: [
        { ...crankshaft('crankshaft A', 16248), onlyWith: ['rod of A'] },
        { ...crankshaft('crankshaft B', 16249), onlyWith: ['rod of B'] },
      ],
    });
    expect(crossed.proof).toEqual({ outcome: 'optimal' });
    for (const [letter, other] of ['AB', 'BA']) {
      const its = partsOf(crossed).find((parts) => parts.includes(`block ${letter}`));
      expect(its).toContain(`rod of ${letter}`);
      expect(its).toContain(`crankshaft ${letter}`);
      expect(its).not.toContain(`rod of ${other}`);
    }
  });
});

describe('parts made to suit', () => {
  const toMake = {
    shells: [
      {
        name: 'bronze',
        fits: 'rods' as const,
        material: 'bronze',
        price: eur(30),
        wall: span(600, 660),
      },
    ],
  };
  const worn: Partial<Shed> = {
    blocks: [block('block A', 30003)],
    crankshafts: [crankshaft('crankshaft A', 16248)],
    rods: [rod('rod A', 17535)],
  };

  it('saves a rod whose housing is too large for the shells there are', async () => {
    // 17535 - 2 * 618.5 - 16248 = 50, above 30. Made: (17535 - 16248 - 20) / 2 = 633.5.
    expect((await plan(worn)).builds).toHaveLength(0);
    const made = await plan({ ...worn, toMake });
    expect(made.builds).toHaveLength(1);
    expect(made.cost).toEqual(eur(30));
    const [bearing] = made.builds[0]?.bearings ?? [];
    expect(bearing?.madeTo).toBeCloseTo(length(633.5), 9);
    expect(bearing?.clearance.min).toBeCloseTo(length(20), 9);
    expect(made.toMake).toMatchObject([
      {
        section: 'shells',
        name: 'bronze',
        material: 'bronze',
        engine: 'block A',
        fits: 'rods',
        cost: eur(30),
      },
    ]);
    // Half of the 10 that are left either way.
    expect(made.toMake[0]?.tolerance).toBeCloseTo(5 * TENTH * 1e-9, 9);
    expect(planReport(made).replace(/\s+/g, ' ')).toContain(
      'bronze is run with more of it than white metal',
    );
  });

  it('is made no thicker and no thinner than it can be', async () => {
    // At 632 the clearance is 17535 - 1264 - 16248 = 23; at 625 it is 37, above 30.
    const most = (wall: number) =>
      ({ shells: [{ ...toMake.shells[0], wall: span(600, wall) }] }) as never;
    const thin = await plan({ ...worn, toMake: most(632) });
    expect(thin.builds[0]?.bearings[0]?.clearance.min).toBeCloseTo(length(23), 9);
    expect((await plan({ ...worn, toMake: most(625) })).builds).toHaveLength(0);
  });

  it('leaves proper shells where they are as good', async () => {
    const free = { shells: [{ ...toMake.shells[0], price: eur(0) }] } as never;
    const { toMake: none, builds } = await plan({ toMake: free });
    expect(builds).toHaveLength(2);
    expect(none).toEqual([]);
  });

  it('makes a thrust washer for the middle of the end play', async () => {
    // 1000 between the faces, 40 to 80 of play: 1000 - 60.
    const made = await plan({
      ...withEngine({ endPlay: span(40, 80) }),
      blocks: [{ ...block('block A', 30003), thrustWidth: length(9000) }],
      crankshafts: [{ ...crankshaft('crankshaft A', 16248), thrustWidth: length(10000) }],
      toMake: {
        thrustWashers: [{ name: 'brass washer', price: eur(8), thickness: span(500, 1500) }],
      },
    });
    expect(made.builds[0]?.endPlay?.madeTo).toBeCloseTo(length(940), 9);
    expect(made.builds[0]?.endPlay?.play).toBeCloseTo(length(60), 9);
    expect(made.toMake).toMatchObject([{ section: 'thrustWashers', cost: eur(8) }]);
  });
});

describe('a shed that contradicts itself is refused at its place', () => {
  const base = {
    version: 1,
    shed: 'the shed',
    units: 'inch',
    engine: {
      name: 'pump set',
      cylinders: 1,
      mains: 0,
      rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
      bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
    },
  };
  const problems = (changes: object, today?: string) => {
    try {
      readShed({ ...base, ...changes }, undefined, today === undefined ? {} : { today });
      return [];
    } catch (error) {
      return (
        (error as { problems?: { path: string }[] }).problems?.map(({ path }) => path) ?? [
          String(error),
        ]
      );
    }
  };
  const late = { name: 'A', interchange: 'late', supersedes: 'early' };

  it.each([
    [
      'a circle',
      { blocks: [late, { name: 'B', interchange: 'early', supersedes: 'late' }] },
      'blocks[1].supersedes',
    ],
    [
      'a circle of three',
      {
        blocks: [
          late,
          { name: 'B', interchange: 'early', supersedes: 'old' },
          { name: 'C', interchange: 'old', supersedes: 'late' },
        ],
      },
      'blocks[2].supersedes',
    ],
    [
      'no group of its own',
      { blocks: [{ name: 'A', supersedes: 'early' }] },
      'blocks[0].supersedes',
    ],
    [
      'a mate that is not there',
      { blocks: [{ name: 'block A' }], heads: [{ name: 'H', onlyWith: 'blok A' }] },
      'heads[0].onlyWith[0]',
    ],
    [
      'a mate in its own place',
      { heads: [{ name: 'G' }, { name: 'H', onlyWith: 'G' }] },
      'heads[1].onlyWith[0]',
    ],
    [
      'two that shut each other out',
      {
        blocks: [{ name: 'B', onlyWith: 'G' }],
        heads: [{ name: 'G' }, { name: 'H', onlyWith: 'B' }],
      },
      'heads[1].onlyWith',
    ],
    [
      'in two engines',
      {
        blocks: [{ name: 'A' }, { name: 'B' }],
        heads: [{ name: 'H', onlyWith: 'A', belongsTo: 'B' }],
      },
      'heads[0].belongsTo',
    ],
    [
      'built into another',
      {
        blocks: [{ name: 'A' }, { name: 'B' }],
        heads: [{ name: 'H', builtInto: 'A', belongsTo: 'B' }],
      },
      'heads[0].builtInto',
    ],
    [
      'two blocks in one engine',
      {
        blocks: [
          { name: 'A', builtInto: 'X' },
          { name: 'B', builtInto: 'X' },
        ],
      },
      'blocks[1].builtInto',
    ],
    [
      'a kind with its own section',
      { otherParts: [{ name: 'H', kind: 'head' }] },
      'otherParts[0].kind',
    ],
    [
      'a misspelt kind',
      {
        engine: { ...base.engine, alsoNeeds: ['magnetto'] },
        otherParts: [{ name: 'M', kind: 'magneto' }],
      },
      'engine.alsoNeeds[0]',
    ],
    ['a weight of nothing', { hardToGet: { magneto: 3 } }, 'hardToGet.magneto'],
    [
      'a name twice',
      {
        heads: [{ name: 'H' }],
        toMake: {
          sleeves: [{ name: 'H', price: '8 EUR', wall: { min: '0.1 in', max: '0.2 in' } }],
        },
      },
      'toMake.sleeves[0].name',
    ],
    [
      'a length for a count',
      { otherParts: [{ name: 'M', kind: 'magneto', count: '2 in' }] },
      'otherParts[0].count',
    ],
    [
      'a count for a length',
      { thrustWashers: [{ name: 'W', thickness: 3 }] },
      'thrustWashers[0].thickness',
    ],
  ])('%s', (_, changes, path) => {
    expect(problems(changes)).toContain(path);
  });

  it('allows a kind of its owner that is unlike any other', () => {
    const engine = { ...base.engine, alsoNeeds: ['camshaft', 'magneto'] };
    expect(problems({ engine, otherParts: [{ name: 'M', kind: 'magneto' }] })).toEqual([]);
  });

  it('refuses a date after today, and only then', () => {
    const blocks = [
      {
        name: 'A',
        condition: { is: 'turns', on: '2026-12' },
        dates: { bought: '2027' },
        history: [{ on: '2026-11-27', what: 'bored' }],
      },
    ];
    expect(problems({ blocks }, '2026-11-26')).toEqual([
      'blocks[0].condition.on',
      'blocks[0].dates.bought',
      'blocks[0].history[0].on',
    ]);
    expect(problems({ blocks })).toEqual([]);
    expect(problems({ blocks }, '2027-01-01')).toEqual([]);
    expect(problems({}, '26.11.2026')[0]).toContain('options.today');
  });
});
