import { readFileSync } from 'node:fs';
import { RebuildInputError, second, thou } from 'crankwright';
import { type PlanOptions, planBuilds } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { generatedShed } from '../../bench/shed.js';
import { spoiltShed } from '../shed/sheds.js';
import { root } from '../support/repo.js';

const readText = (name: string) => readFileSync(`${root}/${name}`, 'utf8');

const shed = readShed(
  readText('examples/pump-set-shed.json'),
  readText('examples/pump-set-shed-readings.csv'),
);
const blocks = async (options: PlanOptions) =>
  (await planBuilds(shed, options)).builds.map(({ name }) => name).sort();

describe('planBuilds, of the example shed', () => {
  it('builds two engines of three donors, and says what a third lacks', async () => {
    const plan = await planBuilds(shed);
    expect(plan.builds.map(({ name }) => name).sort()).toEqual(['block A', 'block B']);
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    // Bore two cylinders, skim a head, buy pistons and rings for the bored block; test two
    // crankshafts, the block and the head for cracks.
    expect(plan.cost).toEqual({ amount: 2 * 45 + 38 + 118 + 42.5 + 4 * 18, currency: 'EUR' });
    expect(plan.shopping.map(({ name, count }) => [name, count])).toEqual([
      ['pistons 20 over, new', 1],
      ['rings 20 over, new', 1],
    ]);
    expect(plan.orders.map(({ shop, cost }) => [shop, cost.amount])).toEqual([
      ['crankshaft grinder', 72],
      ['cylinder shop', 128],
    ]);
    // Block C can be stitched and the spare rod straightened; both heads are on the others.
    const lacks = plan.nextEngine?.lacks.map(({ section, count }) => [section, count]);
    expect(lacks).toEqual([
      ['shells', 2],
      ['thrustWashers', 1],
      ['heads', 1],
    ]);
    // Both pairs of main shells 10 under are in use; no crankshaft is ground further for want of them.
    const shells = plan.nextEngine?.lacks.find(({ section }) => section === 'shells');
    expect(shells).toMatchObject({ fits: 'mains', count: 2 });
    expect(shells?.step).toBeCloseTo(thou(10), 9);
    expect(plan.leftOver.filter(({ why }) => why === 'scrap').map(({ name }) => name)).toEqual([
      'spare crankshaft 2',
      'pistons C',
    ]);
  });

  it('heeds what may not be bought, how many are wanted, and what is kept back', async () => {
    expect(await blocks({ buying: false })).toEqual(['block A']);
    expect(await blocks({ atMost: 1 })).toEqual(['block A']);
    expect(await blocks({ atMost: 0 })).toEqual([]);
    expect(await blocks({ reserved: ['block A'] })).toEqual(['block B', 'block C']);
    expect(await blocks({ reserved: ['block A', 'block C'] })).toEqual(['block B']);
    const kept = await planBuilds(shed, { reserved: ['head A', 'rod C1'] });
    expect(kept.builds).toHaveLength(1);
    const reserved = kept.leftOver.filter(({ why }) => why === 'reserved');
    expect(reserved.map(({ name }) => name)).toEqual(['rod C1', 'head A']);
  });

  it('says nothing of a next engine where no more are wanted', async () => {
    expect((await planBuilds(shed, { atMost: 2 })).nextEngine).toBeUndefined();
    expect((await planBuilds(shed, { atMost: 3 })).nextEngine).toBeDefined();
  });

  it('builds what must be built though it is dearer, and says what cannot be', async () => {
    expect(await blocks({ atMost: 1, mustBuild: ['block B'] })).toEqual(['block B']);
    // Two heads: not all three of them.
    const plan = await planBuilds(shed, { mustBuild: ['block A', 'block B', 'block C'] });
    expect(plan.cannotBuild).toHaveLength(1);
    expect(plan.builds).toHaveLength(2);
  });

  it('holds the cost of every engine, not of all together', async () => {
    const cap = (amount: number) => blocks({ mostPerEngine: { amount, currency: 'EUR' } });
    // Block B costs 90 for boring, 160.50 for parts and 36 for the tests of it and its crankshaft;
    // block A goes with head A for the test of its crankshaft.
    expect(await cap(286)).toEqual(['block A']);
    expect(await cap(286.5)).toEqual(['block A', 'block B']);
    expect(await cap(18)).toEqual(['block A']);
    expect(await cap(17)).toEqual([]);
  });

  it('gives the same plan each time, to the bit', async () => {
    const [one, other] = [await planBuilds(shed), await planBuilds(shed)];
    expect(JSON.stringify(one)).toBe(JSON.stringify(other));
  });
});

describe('planBuilds', () => {
  it('plans an empty shed: nothing is built, and one of everything is lacking', async () => {
    const empty = readShed(
      spoiltShed(
        Object.fromEntries(
          ['blocks', 'crankshafts', 'rods', 'pistonSets', 'ringSets', 'shells', 'heads']
            .concat(['thrustWashers', 'valveSets', 'toBuy', 'machining'])
            .map((section) => [section, undefined]),
        ),
      ),
    );
    const plan = await planBuilds(empty);
    expect(plan).toMatchObject({ builds: [], cost: { amount: 0 }, leftOver: [], shopping: [] });
    expect(plan.smallestMargin).toBeUndefined();
    expect(plan.nextEngine?.lacks.map(({ section, count }) => [section, count])).toEqual([
      ['blocks', 1],
      ['crankshafts', 1],
      ['rods', 2],
      ['pistonSets', 1],
      ['ringSets', 1],
      ['shells', 2],
      ['shells', 2],
      ['heads', 1],
      ['valveSets', 1],
    ]);
  });

  it('says how far it came when the time was up', async () => {
    const plan = await planBuilds(generatedShed(60, 3), { timeLimit: second(0.001) });
    if (plan.proof.outcome !== 'time limit') throw new Error('it was proven in no time');
    const { stage, found, bound } = plan.proof;
    expect(stage).toBe('most engines');
    expect(found).toBe(plan.builds.length);
    expect(bound).toBeGreaterThanOrEqual(found);
    expect(bound).toBeLessThanOrEqual(60);
    expect(plan.nextEngine).toBeUndefined();
  });

  it('tells how a long search stands', async () => {
    const told: string[] = [];
    let last = 0;
    await planBuilds(generatedShed(20, 3), {
      onProgress: ({ stage, elapsed }) => {
        told.push(stage);
        expect(elapsed).toBeGreaterThanOrEqual(last);
        last = elapsed;
      },
    });
    expect(told.length).toBeGreaterThan(0);
  });

  it.each<[string, unknown, string]>([
    ['options.atMost', { atMost: 1.5 }, 'whole number of engines'],
    ['options.atMost', { atMost: -1 }, 'whole number of engines'],
    ['options.buying', { buying: 'no' }, 'true or false'],
    ['options.reserved[0]', { reserved: ['a part nobody has'] }, 'name of a part'],
    ['options.mustBuild[0]', { mustBuild: ['rods A'] }, 'name of one of the blocks'],
    ['options.mustBuild[0]', { mustBuild: ['block A'], reserved: ['block A'] }, 'not reserved'],
    ['options.mostPerEngine.amount', { mostPerEngine: { amount: -1, currency: 'EUR' } }, 'money'],
    ['options.mostPerEngine.currency', { mostPerEngine: { amount: 1, currency: 'USD' } }, 'EUR'],
    ['options.timeLimit', { timeLimit: 0 }, 'time above 0'],
    ['options.onProgress', { onProgress: 'me' }, 'function'],
    ['options.mostEngines', { mostEngines: 2 }, 'known field'],
  ])('refuses %s as in %o', async (parameter, options, expected) => {
    const refused = await planBuilds(shed, options as PlanOptions).catch((error) => error);
    expect(refused).toBeInstanceOf(RebuildInputError);
    expect(refused).toMatchObject({ parameter, expected: expect.stringContaining(expected) });
  });

  it('refuses what is no shed', async () => {
    for (const none of [undefined, null, 'shed', {}, { shed: 'the shed' }, []]) {
      const refused = await planBuilds(none as never).catch((error) => error);
      expect(refused).toBeInstanceOf(RebuildInputError);
    }
  });
});
