import { type Length, type Limits, type Span, thou } from 'crankwright';
import type { MadeSleeves, Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { thicknessToMake, wallToMake, withSleeves } from '../../src/planning/made-stock.js';
import { single } from './single-shed.js';

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
