import { type Length, type Limits, type Span, thou } from 'crankwright';
import { planBuilds, planReport } from 'crankwright/planning';
import type { MadeSleeves, Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { thicknessToMake, wallToMake, withSleeves } from '../../src/planning/made-stock.js';
import { journal, single, withEngine } from './single-shed.js';

const thous = (min: number, max = min): Span<Length> => ({ min: thou(min), max: thou(max) });
const eur = (amount: number) => ({ amount, currency: 'EUR' });

describe('sleeves that can be made', () => {
  const sleeve = (name: string, amount: number, material?: string): MadeSleeves => ({
    name,
    price: eur(amount),
    wall: thous(80, 150),
    ...(material !== undefined && { material }),
  });
  const shedWith = (...sleeves: readonly MadeSleeves[]): Shed => ({
    ...single,
    toMake: { sleeves },
  });
  const sleeved = {
    jobs: [
      { work: 'sleeve', places: ['one', 'two'], shop: 'the borer', cost: 60_000 },
      { work: 'bore', places: ['three'], shop: 'the borer', cost: 20_000 },
    ],
    cost: 80_000,
  } as const;

  it('are the cheapest on the list, one for each sleeved cylinder', () => {
    const way = withSleeves(
      sleeved,
      shedWith(sleeve('dear', 30), sleeve('cast', 12, 'iron')),
      true,
    );
    // 80 for the work and two sleeves of 12.
    expect(way?.cost).toBe(104_000);
    expect(way?.sleeves).toEqual({
      name: 'cast',
      material: 'iron',
      wall: thous(80, 150),
      price: 12_000,
    });
    expect(withSleeves(sleeved, shedWith(sleeve('cast', 12)), true)?.sleeves).not.toHaveProperty(
      'material',
    );
  });

  it('are the shop’s where none is on the list, and nothing where no cylinder takes one', () => {
    expect(withSleeves(sleeved, single, true)).toBe(sleeved);
    const bored = { jobs: sleeved.jobs.slice(1), cost: 20_000 };
    expect(withSleeves(bored, shedWith(sleeve('cast', 12)), false)).toBe(bored);
  });

  it('are not taken where nothing may be bought', () => {
    expect(withSleeves(sleeved, shedWith(sleeve('cast', 12)), false)).toBeUndefined();
  });
});

describe('the wall to make shells with', () => {
  const [housing, journal] = [thous(1750.6, 1750.8), thous(1624.7, 1624.8)];
  const wall = (limits: Limits<Length>, least = 50, most = 70) =>
    wallToMake(thous(least, most), housing, journal, limits) / thou(1);

  it('gives the middle of the limits, worked by hand', () => {
    // 1750.7 - 1624.75 is 125.95 between them; less 2.0 of oil, halved.
    expect(wall(thous(1.2, 2.8))).toBeCloseTo((125.95 - 2) / 2, 9);
  });

  it('is the nearest that can be made', () => {
    expect(wall(thous(1.2, 2.8), 50, 60)).toBeCloseTo(60, 9);
    expect(wall(thous(1.2, 2.8), 65, 70)).toBeCloseTo(65, 9);
  });

  it('takes the limit that is not given from the rule of thumb: 0.75 to 1.5 thou for each inch', () => {
    const [least, most] = [1.6248 * 0.75, 1.6248 * 1.5];
    expect(wall({ min: thou(1.5) })).toBeCloseTo((125.95 - (1.5 + most) / 2) / 2, 9);
    expect(wall({ max: thou(2) })).toBeCloseTo((125.95 - (least + 2) / 2) / 2, 9);
    // A limit past the rule leaves no other: the clearance is made to it.
    expect(wall({ min: thou(4) })).toBeCloseTo((125.95 - 4) / 2, 9);
    expect(wall({ max: thou(1) })).toBeCloseTo((125.95 - 1) / 2, 9);
  });
});

describe('the thickness to make a washer with', () => {
  const made = (without: number, limits: Limits<Length>, least = 50, most = 150) => {
    const thickness = thicknessToMake(thous(least, most), thou(without), limits);
    return thickness === undefined ? undefined : thickness / thou(1);
  };

  it('gives the middle of the end play, as near as it can be made', () => {
    expect(made(100, thous(4, 8))).toBeCloseTo(94, 9);
    expect(made(200, thous(4, 8))).toBeCloseTo(150, 9);
    expect(made(100, { min: thou(4) })).toBeCloseTo(96, 9);
    expect(made(100, { max: thou(8) })).toBeCloseTo(96, 9);
  });

  it('is none where there is no room for one', () => {
    expect(made(40, thous(4, 8))).toBeUndefined();
  });
});

describe('a crankshaft that no step serves', () => {
  // 0.0247 in below standard, read twice: the steps of this engine end at 20 under, which is 0.0200 in.
  const readAt = (size: number) => {
    const { readings } = journal(size);
    return { name: 'rod journal', readings: [...readings, ...readings.slice(0, 1)] };
  };
  const rodJournals = {
    ...single.engine.rodJournals,
    steps: [thou(10), thou(20)],
  };
  const shed: Shed = {
    ...single,
    ...withEngine({ rodJournals }),
    crankshafts: [{ name: 'crankshaft A', rodJournals: [readAt(15999)] }],
    toMake: {
      shells: [{ name: 'bronze', fits: 'rods', price: eur(20), wall: thous(60, 120) }],
    },
  };
  const leftOf = async (each: Shed) => {
    const plan = await planBuilds(each);
    const left = plan.leftOver.find(({ name }) => name === 'crankshaft A');
    return { left, page: planReport(plan).replace(/\s+/g, ' ') };
  };
  const said = 'shells made to suit its journals as they are were not considered, and may save it';

  it('is said not to have been tried with shells that can be made to suit it', async () => {
    const { left, page } = await leftOf(shed);
    expect(left).toMatchObject({ why: 'scrap', madeShellsNotTried: true });
    expect(page).toContain(said);
  });

  it('is not where no shells can be made, or it is below the least that its maker allows', async () => {
    expect((await leftOf({ ...shed, toMake: {} })).page).not.toContain(said);
    const minimum = { ...rodJournals, minimum: thou(1605) };
    const least = await leftOf({ ...shed, ...withEngine({ rodJournals: minimum }) });
    expect(least.page).not.toContain(said);
  });
});
