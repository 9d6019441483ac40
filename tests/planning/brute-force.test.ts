import { type PlanOptions, planBuilds } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { needing } from '../support/needing.js';
import { type BruteAnswer, bruteForce } from './brute-force.js';
import { reached } from './reached.js';
import {
  block,
  crankshaft,
  eur,
  journal,
  length,
  oversize,
  pistons,
  rings,
  rod,
  shells,
  single,
  span,
  TENTH,
  two,
  withEngine,
} from './single-shed.js';

// Sizes are tenths of a thou. Every answer is worked out by hand beside it.

/** What brute force makes of the shed with changes; the planner must make the same of it. */
async function best(changes: Partial<Shed>, options: PlanOptions = {}): Promise<BruteAnswer> {
  const shed = { ...single, ...changes };
  const answer = bruteForce(shed, options);
  const plan = await planBuilds(shed, options);
  expect(plan.proof).toEqual({ outcome: 'optimal' });
  expect(reached(plan)).toEqual(answer);
  return answer;
}

const nothing = { engines: 0, cost: 0, margin: undefined };

describe('sheds worked by hand, by brute force and by the planner', () => {
  it('builds one engine as it is', async () => {
    // Oil: 17505 - 2 * 619 - 16248 = 19, 9 above 10. Piston: 30003 - 29970 = 33, 12 below 45.
    expect(await best({})).toEqual({ engines: 1, cost: 0, margin: 9 * TENTH });
    expect(await best({}, { atMost: 0 })).toEqual(nothing);
    expect(await best({}, { reserved: ['rod A'] })).toEqual(nothing);
    expect(await best({ shells: [] })).toEqual(nothing);
  });

  describe('where a scored journal is ground to 10 under, 16145 … 16150', () => {
    const scored = { ...journal(16248), faults: ['scored'] as const };
    const shed: Partial<Shed> = {
      crankshafts: [{ name: 'crankshaft A', rodJournals: [scored] }],
      shells: [
        shells('standard', 0, 619, 1),
        shells('thin', 100, 668, 1),
        shells('thick', 100, 670, 1),
      ],
      machining: [
        { work: 'grind rod journals', shop: 'the dear one', price: eur(20) },
        { work: 'grind rod journals', shop: 'the other', price: eur(18) },
      ],
      toBuy: { shells: [{ ...shells('right', 100, 669, 1), price: eur(5) }] },
    };

    it('takes the cheapest shop, and shells of its own before better ones to buy', async () => {
      // Thin: 17505 - 1336 - 16150 … - 16145 = 19 … 24, 6 below 30. Thick: 15 … 20, 5 above 10.
      expect(await best(shed)).toEqual({ engines: 1, cost: 18_000, margin: 6 * TENTH });
    });

    it('buys where it must', async () => {
      // Right: 17505 - 1338 - 16150 … - 16145 = 17 … 22, 7 above 10.
      const without = { ...shed, shells: [shells('standard', 0, 619, 1)] };
      expect(await best(without)).toEqual({ engines: 1, cost: 23_000, margin: 7 * TENTH });
      expect(await best(without, { buying: false })).toEqual(nothing);
      expect(await best(without, { mostPerEngine: eur(22.999) })).toEqual(nothing);
      expect((await best(without, { mostPerEngine: eur(23) })).engines).toBe(1);
    });

    it('leaves it where nobody grinds', async () => {
      expect(await best({ ...shed, machining: [] })).toEqual(nothing);
    });
  });

  it('shares out pistons between two blocks so that the tightest has most room', async () => {
    // A 30000, B 30008; P 29970, Q 29975, within 20 … 45. A with Q 25 and B with P 38: 5 and 7.
    // A with P 30 and B with Q 33: 10 and 12. Oil: 17505 - 2 * 618.5 - 16248 = 20, 10 either way.
    const two: Partial<Shed> = {
      blocks: [block('block A', 30000), block('block B', 30008)],
      crankshafts: [crankshaft('crankshaft A', 16248), crankshaft('crankshaft B', 16248)],
      rods: [rod('rod A', 17505), rod('rod B', 17505)],
      pistonSets: [pistons('Q', 29975), pistons('P', 29970)],
      ringSets: [rings(2)],
      shells: [shells('shells', 0, 618.5, 2)],
    };
    expect(await best(two)).toEqual({ engines: 2, cost: 0, margin: 10 * TENTH });
    // One engine: the best is A with P or B with Q, held by the oil.
    expect(await best(two, { atMost: 1 })).toEqual({ engines: 1, cost: 0, margin: 10 * TENTH });
    // Without P only Q is left: 25 in A, 33 in B, of which B has more than the oil.
    expect(await best(two, { reserved: ['P'] })).toEqual({
      engines: 1,
      cost: 0,
      margin: 10 * TENTH,
    });
    // Without B and P: A with Q, 25 - 20.
    expect((await best(two, { reserved: ['P', 'block B'] })).margin).toBe(5 * TENTH);
  });

  it('puts the pistons of one set into the bores that they suit', async () => {
    // 30000 - 29968 = 32 and 30008 - 29976 = 32: 12 above 20. The other way 24 and 40: 4.
    const twin: Partial<Shed> = {
      ...withEngine({ cylinders: 2, rodsPerJournal: 2 }),
      blocks: [block('block A', 30000, 30008)],
      pistonSets: [pistons('pistons', 29976, 29968)],
      // Oil on one journal: 17503 - 1236 - 16248 = 19 and 17507 - 1240 - 16248 = 19, 9 above 10.
      // The other way 15 and 23: 5.
      rods: [rod('rod A', 17507), rod('rod B', 17503)],
      shells: [shells('thin', 0, 618, 1), shells('thick', 0, 620, 1)],
    };
    expect(await best(twin)).toEqual({ engines: 1, cost: 0, margin: 9 * TENTH });
    // A set and a single are not mixed, and one single is not enough.
    const [first, second] = twin.rods ?? [];
    const set = { name: 'set', rods: [...(first?.rods ?? []), ...(second?.rods ?? [])] };
    expect((await best({ ...twin, rods: [set] })).engines).toBe(1);
    expect(await best({ ...twin, rods: [rod('rod A', 17507)] })).toEqual(nothing);
  });

  it('keeps to interchange groups', async () => {
    const early = { ...block('block A', 30003), interchange: ['early'] };
    const crank = (...interchange: readonly string[]) => [
      { ...crankshaft('crankshaft A', 16248), interchange },
    ];
    expect(await best({ blocks: [early], crankshafts: crank('late') })).toEqual(nothing);
    expect((await best({ blocks: [early], crankshafts: crank('late', 'early') })).engines).toBe(1);
    // Each goes with each other, but no group is common to all three.
    const rods = [{ ...rod('rod A', 17505), interchange: ['late', 'middle'] }];
    const blocks = [{ ...early, interchange: ['early', 'middle'] }];
    expect(await best({ blocks, crankshafts: crank('late', 'early'), rods })).toEqual(nothing);
  });

  it('stacks up to three thrust washers', async () => {
    // 25000 - 23000 less three of 640 leaves 80; less two 720, less four nothing.
    const packed = (thickness: number, count: number): Partial<Shed> => ({
      ...withEngine({ endPlay: span(50, 120) }),
      blocks: [{ ...block('block A', 30003), thrustWidth: length(23000) }],
      crankshafts: [{ ...crankshaft('crankshaft A', 16248), thrustWidth: length(25000) }],
      thrustWashers: [{ name: 'washers', thickness: length(thickness), count }],
    });
    expect((await best(packed(640, 3))).engines).toBe(1);
    expect(await best(packed(640, 2))).toEqual(nothing);
    // Four of 480 would leave 80 as well, but no more than three are stacked.
    expect(await best(packed(480, 4))).toEqual(nothing);
    // The last of three can be bought.
    const washers = { name: 'new', thickness: length(640), price: eur(4) };
    expect((await best({ ...packed(640, 2), toBuy: { thrustWashers: [washers] } })).cost).toBe(
      4000,
    );
  });

  describe('where no engine may cost more than so much', () => {
    const upTo = (amount: number) => ({ mostPerEngine: eur(amount) });

    it('shares out what is dear, so that none costs too much', async () => {
      // One rod and one head are to be bought, for 30 each: both in one engine are 60.
      const shed: Partial<Shed> = {
        ...two,
        ...withEngine({ alsoNeeds: needing('head') }),
        rods: [rod('rod A', 17505)],
        heads: [{ name: 'head A' }],
        toBuy: {
          rods: [{ ...rod('rod N', 17505), price: eur(30) }],
          heads: [{ name: 'head N', price: eur(30) }],
        },
      };
      expect(await best(shed, upTo(30))).toEqual({ engines: 2, cost: 60_000, margin: 10 * TENTH });
      expect(await best(shed, upTo(29.999))).toEqual({ engines: 1, cost: 0, margin: 10 * TENTH });
    });

    it('drops an engine that costs too much', async () => {
      const both = { engines: 2, cost: 35_000, margin: 10 * TENTH };
      expect(await best(oversize, upTo(35))).toEqual(both);
      // Both engines together cost no more than twice 34.999, but the one costs it all.
      const one = { engines: 1, cost: 0, margin: 10 * TENTH };
      expect(await best(oversize, upTo(34.999))).toEqual(one);
      expect(await best(oversize, upTo(14.999))).toEqual(one);
    });

    it('takes what is dearer together, where that can be shared out', async () => {
      // Block C is as block A. Standard pistons and rings are 21 and 15: one for each of A and C.
      const { pistonSets = [], ringSets = [] } = oversize.toBuy ?? {};
      const shed: Partial<Shed> = {
        ...oversize,
        blocks: [...(oversize.blocks ?? []), block('block C', 30003)],
        toBuy: {
          pistonSets: [...pistonSets, { ...pistons('piston S', 29970), price: eur(21) }],
          ringSets: [...ringSets, { name: 'rings S', oversize: length(0), price: eur(15) }],
        },
      };
      const dearer = { engines: 2, cost: 36_000, margin: 10 * TENTH };
      expect((await best(shed, upTo(35))).cost).toBe(35_000);
      expect(await best(shed, upTo(34.999))).toEqual(dearer);
      expect(await best(shed, upTo(21))).toEqual(dearer);
      expect((await best(shed, upTo(20.999))).engines).toBe(1);
    });

    it('says what one more engine needs to keep within it', async () => {
      const needs = async (amount: number) =>
        (await planBuilds({ ...single, ...oversize }, { ...upTo(amount), atMost: 2 })).nextEngine;
      // With rings of its own block B costs 20, and without anything 35: that is not lacking.
      expect(await needs(34.999)).toEqual({
        lacks: [{ section: 'ringSets', step: length(100), count: 1 }],
        alternatives: [],
      });
      // At less than 20 it needs the dear pistons; at less than 15 both.
      const lacks = async (amount: number) =>
        (await needs(amount))?.lacks.map((part) => part.section);
      expect(await lacks(19.999)).toEqual(['pistonSets']);
      expect(await lacks(14.999)).toEqual(['pistonSets', 'ringSets']);
    });

    it('builds what must be built if it does not cost too much, and else as many as there can be', async () => {
      const must = { mustBuild: ['block A', 'block B'] };
      expect((await best(oversize, { mustBuild: ['block B'], atMost: 1 })).cost).toBe(35_000);
      expect((await best(oversize, { mustBuild: ['block B'], atMost: 1, ...upTo(34) })).cost).toBe(
        0,
      );
      // Not more are built than are wanted because more must be.
      expect(await best(oversize, { ...must, atMost: 1 })).toMatchObject({ engines: 1, cost: 0 });
      // Of three washers block B needs all, block A none, and C and D one each, as above.
      const wide = (name: string, size: number, width: number) => ({
        ...block(name, size),
        thrustWidth: length(width),
      });
      const many = <T>(part: (name: string) => T) => ['1', '2', '3', '4'].map(part);
      const shed: Partial<Shed> = {
        ...oversize,
        ...withEngine({ endPlay: span(50, 120) }),
        blocks: [
          wide('block A', 30003, 24920),
          wide('block B', 30103, 23000),
          wide('block C', 30003, 24280),
          wide('block D', 30003, 24280),
        ],
        crankshafts: many((name) => ({ ...crankshaft(name, 16248), thrustWidth: length(25000) })),
        rods: many((name) => rod(`rod ${name}`, 17505)),
        pistonSets: many((name) => pistons(`piston ${name}`, 29970)),
        ringSets: [rings(4)],
        shells: [shells('shells', 0, 618.5, 4)],
        thrustWashers: [{ name: 'washers', thickness: length(640), count: 3 }],
      };
      // Both of them leave no washer for a third; without block B there are three.
      expect(await best(shed, must)).toMatchObject({ engines: 2, cost: 35_000 });
      expect(await best(shed, { ...must, ...upTo(34) })).toMatchObject({ engines: 3, cost: 0 });
    });
  });

  it('mends housings and heads, or buys another where that is cheaper', async () => {
    // Resized to 17500 … 17510: 17500 - 1238 - 16248 = 14 and 24, 4 above 10 and 6 below 30.
    const bored = {
      ...withEngine({ rodHousing: span(17500, 17510) }),
      rods: [rod('rod A', 17512)],
      machining: [{ work: 'resize housings', shop: 'the borer', price: eur(12) } as const],
    };
    expect(await best(bored)).toEqual({ engines: 1, cost: 12_000, margin: 4 * TENTH });
    const rods = [{ ...rod('rod B', 17505), price: eur(11.5) }];
    expect(await best({ ...bored, toBuy: { rods } })).toMatchObject({
      cost: 11_500,
      margin: 9 * TENTH,
    });
    // A head 45 out of flat against 40 is skimmed for 30. Guides 3138 - 3126 … 3139 - 3125 = 12 … 14:
    // no room below, and none above.
    const topped: Partial<Shed> = {
      ...withEngine({
        alsoNeeds: needing('head', 'valve set'),
        headFlatness: { max: length(40) },
        guideClearance: span(12, 14),
      }),
      heads: [{ name: 'head A', flatness: length(45), guideBore: span(3138, 3139) }],
      valveSets: [{ name: 'valves A', stem: span(3125, 3126) }],
      machining: [{ work: 'skim head', shop: 'the borer', price: eur(30) }],
    };
    expect(await best(topped)).toEqual({ engines: 1, cost: 30_000, margin: 0 });
    expect(await best({ ...topped, machining: [] })).toEqual(nothing);
    expect(await best({ ...topped, valveSets: [] })).toEqual(nothing);
    for (const stem of [span(3125, 3127), span(3124, 3126)]) {
      expect(await best({ ...topped, valveSets: [{ name: 'valves A', stem }] })).toEqual(nothing);
    }
  });
});
