import type { Length, Span } from 'crankwright';
import type { Part } from '../../src/shed/part.js';
import { SECTIONS, type Section } from '../../src/shed/sections.js';
import { type Dice, diceOf } from '../support/dice.js';
import type { Shed } from './full.js';
import { SIZES } from './random-engine.js';
import { rulerOf, STEP } from './random-measured.js';
import { randomShed } from './random-sheds.js';

/** Draws of their own, so that the sheds of old seeds stay what they are. */
const OWN = 500_000;

/** A random shed with other parts, groups that supersede others, a part that fits only with another, and parts to make. */
export function variedShed(seed: number): Shed {
  const dice = diceOf(seed + OWN);
  const shed = randomShed(seed);
  const { length, units } = rulerOf(shed.units);
  const span = (min: number, max: number): Span<Length> => ({ min: length(min), max: length(max) });
  const price = (least: number) => ({ amount: 5 * dice.from(least, least + 8), currency: 'EUR' });
  const kinds = ['magneto', 'valve spring'].slice(0, dice.oneOf([0, 1, 2]));
  const others = kinds.flatMap((kind) =>
    Array.from({ length: dice.from(1, 3) }, (_, i) => ({
      name: `${kind} ${i + 1}`,
      kind,
      count: kind === 'magneto' ? 1 : dice.from(1, 5),
      ...(dice.percent(15) && { faults: ['cracked' as const] }),
      ...(dice.percent(10) && { reserved: 'for a friend' }),
      ...(dice.percent(30) && { interchange: [dice.oneOf(['early', 'late'])] }),
    })),
  );
  const { alsoNeeds = ['head', 'valve set'].map((part) => ({ part, count: 1 })) } = shed.engine;
  const needed = kinds.map((part) => ({ part, count: part === 'magneto' ? 1 : dice.from(1, 3) }));
  const made = {
    shells: dice.percent(50)
      ? (['rods', 'mains'] as const)
          .filter((fits) => fits === 'rods' || shed.engine.mains > 0)
          .map((fits) => ({
            name: `bronze for ${fits}`,
            fits,
            price: price(2),
            wall: span(SIZES[fits].wall - dice.from(0, 8), SIZES[fits].wall + dice.from(0, STEP)),
          }))
      : [],
    thrustWashers: dice.percent(50)
      ? [
          {
            name: 'brass washer',
            price: price(1),
            thickness: span(SIZES.thrust.washer - 20, SIZES.thrust.washer + dice.from(-10, 30)),
          },
        ]
      : [],
    sleeves: dice.percent(50)
      ? [1, 2].map((i) => ({ name: `sleeve ${i}`, price: price(1), wall: span(600, 1200) }))
      : [],
  };
  return withMate(
    dice,
    withSupersession(dice, {
      ...shed,
      units,
      engine: { ...shed.engine, alsoNeeds: [...alsoNeeds, ...needed] },
      otherParts: others,
      toBuy: {
        ...shed.toBuy,
        ...(kinds.length > 0 &&
          dice.percent(40) && {
            otherParts: [{ name: 'new magneto', kind: 'magneto', price: price(2) }],
          }),
      },
      toMake: made,
    }),
  );
}

/** Lets one part of some sections say that late supersedes early. */
function withSupersession(dice: Dice, shed: Shed): Shed {
  const sections = (['blocks', 'crankshafts', 'rods', 'shells', 'otherParts'] as const).filter(() =>
    dice.percent(50),
  );
  const says = (part: Part): Part => {
    const [group] = part.interchange ?? [];
    if (part.interchange?.length !== 1) return part;
    return group === 'late'
      ? { ...part, supersedes: ['early'] }
      : { ...part, supersededBy: ['late'] };
  };
  const changed = sections.map((section) => {
    const at = shed[section]?.findIndex(({ interchange }) => interchange?.length === 1);
    return [section, shed[section]?.map((part, i) => (i === at ? says(part) : part))];
  });
  return { ...shed, ...Object.fromEntries(changed) };
}

/** Sections whose parts may fit only with a block or a crankshaft. */
const FUSSY: readonly Section[] = [
  'heads',
  'pistonSets',
  'rods',
  'ringSets',
  'shells',
  'otherParts',
];

/** Lets some parts fit only with some blocks or crankshafts. */
function withMate(dice: Dice, shed: Shed): Shed {
  if (dice.percent(40)) return shed;
  const mates = SECTIONS.filter((section) => section === 'blocks' || section === 'crankshafts')
    .flatMap((section) => shed[section]?.map(({ name }) => name) ?? [])
    .filter(() => dice.percent(40));
  if (mates.length === 0) return shed;
  const changed = FUSSY.map((section) => [
    section,
    shed[section]?.map((part: Part) => (dice.percent(20) ? { ...part, onlyWith: mates } : part)),
  ]);
  return { ...shed, ...Object.fromEntries(changed) };
}
