import type { Price } from '../../src/reading/price.js';
import { SECTIONS, type Section } from '../../src/shed/sections.js';
import type { MachiningOffer } from '../../src/shed/shed.js';
import { WORKS } from '../../src/shed/works.js';
import { type Dice, diceOf } from '../support/dice.js';
import type { FullOffers, Parts, Shed } from './full.js';
import type { Draw } from './random-draw.js';
import { randomEngine } from './random-engine.js';
import { rulerOf, STEP } from './random-measured.js';
import { randomPart } from './random-parts.js';

/** What a part of each section is called. */
const CALLED: { readonly [S in Section]: string } = {
  blocks: 'block',
  crankshafts: 'crankshaft',
  rods: 'rods',
  pistonSets: 'pistons',
  ringSets: 'rings',
  shells: 'shells',
  thrustWashers: 'washers',
  heads: 'head',
  valveSets: 'valves',
  otherParts: 'part',
};

/** Of a hundred lists of what can be bought, how many have something of a section. */
const BOUGHT: { readonly [S in Section]: number } = {
  blocks: 8,
  crankshafts: 12,
  rods: 30,
  pistonSets: 50,
  ringSets: 60,
  shells: 80,
  thrustWashers: 30,
  heads: 30,
  valveSets: 50,
  otherParts: 0,
};

/** A small shed with parts for about up to three engines, the same one for the same seed. */
export function randomShed(seed: number): Shed {
  const dice = diceOf(seed);
  const ruler = rulerOf(dice.percent(20) ? 'metric' : 'inch');
  const step = () => STEP * dice.oneOf([0, 0, 1]);
  const draw: Draw = {
    dice,
    ruler,
    engine: randomEngine(dice, ruler),
    usual: { rods: step(), mains: step(), bores: step() },
    strays: dice.oneOf([0, 10, 30]),
    worn: dice.oneOf([0, 20, 50]),
    grouped: dice.percent(20),
  };
  const donors = dice.oneOf([1, 2, 3, 3, 3]);
  const parts = SECTIONS.map((section) => [
    section,
    Array.from({ length: howMany(draw, section, donors) }, (_, i) =>
      randomPart[section](draw, `${CALLED[section]} ${i + 1}`),
    ),
  ]);
  return {
    version: 1,
    shed: `shed ${seed}`,
    units: ruler.units,
    engine: draw.engine,
    ...(Object.fromEntries(parts) as Parts),
    ...(dice.percent(90) && { machining: randomMachining(dice) }),
    ...(dice.percent(75) && { toBuy: randomOffers(draw, donors) }),
  };
}

function howMany({ dice, engine }: Draw, section: Section, donors: number): number {
  const isNeeded = (what: string) => engine.alsoNeeds?.some(({ part }) => part === what) ?? true;
  const some = () => Math.max(1, donors + dice.oneOf([-1, 0, 0, 1, 1]));
  switch (section) {
    case 'blocks':
    case 'crankshafts':
      return Math.max(1, donors - (dice.percent(10) ? 1 : 0));
    case 'rods':
      return Math.min(6, donors * engine.cylinders);
    case 'shells':
      return dice.from(donors + 1, 2 * donors + 4);
    case 'thrustWashers':
      return engine.endPlay ? dice.from(1, 3) : 0;
    case 'heads':
      return !isNeeded('head') ? dice.from(0, 1) : some();
    case 'valveSets':
      return !isNeeded('valve set') ? dice.from(0, 1) : some();
    case 'otherParts':
      return 0;
    default:
      return some();
  }
}

/** Round prices, so that sums are often alike; now and then one in thousandths. */
function randomPrice(dice: Dice, least = 1): Price {
  const steps = dice.from(least, least + 11);
  const amount = dice.percent(5) ? 5 * steps + dice.from(1, 4999) / 1000 : 5 * steps;
  return { amount, currency: 'EUR' };
}

function randomMachining(dice: Dice): readonly MachiningOffer[] {
  return WORKS.flatMap((work) =>
    ['the grinder', 'the borer']
      .filter((_, i) => dice.percent(i === 1 ? 20 : work === 'sleeve' ? 40 : 85))
      .map((shop) => ({ work, shop, price: randomPrice(dice, work === 'sleeve' ? 12 : 1) })),
  );
}

function randomOffers(draw: Draw, donors: number): FullOffers {
  const { dice } = draw;
  const howManyOf = (section: Section) => {
    if (!dice.percent(BOUGHT[section])) return 0;
    // Never more than three engines: trying everything takes too long.
    if (section === 'blocks' || section === 'crankshafts') return donors < 3 ? 1 : 0;
    return section === 'shells' ? dice.from(2, 5) : dice.from(1, 2);
  };
  const offers = SECTIONS.map((section) => [
    section,
    Array.from({ length: howManyOf(section) }, (_, i) => ({
      ...randomPart[section](draw, `new ${CALLED[section]} ${i + 1}`),
      price: randomPrice(dice),
    })),
  ]);
  return Object.fromEntries(offers);
}
