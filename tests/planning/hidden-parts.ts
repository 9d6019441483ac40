import type { Section } from '../../src/shed/sections.js';
import type { Shed as AnyShed } from '../../src/shed/shed.js';
import { diceOf } from '../support/dice.js';
import type { Shed } from './full.js';

/** Which fields are left out of a part that nobody has measured. */
const HIDDEN = {
  blocks: ['bores', 'mainHousings'],
  crankshafts: ['rodJournals', 'mainJournals'],
  rods: ['rods'],
  shells: ['wall'],
} as const satisfies { readonly [S in Section]?: readonly string[] };

/** A shed of which some parts were not measured, and the names of those. */
export interface HiddenShed {
  readonly shed: AnyShed;
  readonly hidden: readonly string[];
}

/** Forgets what was measured of up to so many sound parts of a shed. */
export function withHidden(shed: Shed, seed: number, most: number): HiddenShed {
  const dice = diceOf(seed + 7001);
  const sections = Object.keys(HIDDEN) as (keyof typeof HIDDEN)[];
  const all = sections.flatMap((section) =>
    (shed[section] ?? [])
      // A single rod that was not measured is not known to be single.
      .filter((part) => section !== 'rods' || part.name === '' || isSet(shed, part.name))
      .filter(({ faults, happened }) => !faults && !happened)
      .map(({ name }) => name),
  );
  const hidden = new Set<string>();
  while (hidden.size < Math.min(most, all.length)) hidden.add(dice.oneOf(all));
  return { shed: withoutSizes(shed, hidden), hidden: [...hidden] };
}

const isSet = (shed: Shed, name: string): boolean =>
  shed.rods?.find((each) => each.name === name)?.rods.length === shed.engine.cylinders;

/** A shed in which nothing was measured of the named parts. */
export function withoutSizes(shed: Shed, names: ReadonlySet<string>): AnyShed {
  const sections = Object.entries(HIDDEN).map(([section, fields]) => {
    const parts = (shed[section as Section] ?? []) as readonly { readonly name: string }[];
    const left = parts.map((part) => {
      if (!names.has(part.name)) return part;
      const kept = Object.entries(part).filter(([field]) => !fields.some((each) => each === field));
      return Object.fromEntries(kept);
    });
    return [section, left];
  });
  return { ...shed, ...Object.fromEntries(sections) };
}

/** A shed without the named parts. */
export function without(shed: AnyShed, names: readonly string[]): AnyShed {
  const sections = Object.keys(HIDDEN).map((section) => {
    const parts = (shed[section as Section] ?? []) as readonly { readonly name: string }[];
    return [section, parts.filter(({ name }) => !names.includes(name))];
  });
  return { ...shed, ...Object.fromEntries(sections) };
}

/** A shed whose owner gives odds of some parts. */
export function withOdds(shed: AnyShed, odds: ReadonlyMap<string, number>): AnyShed {
  const sections = Object.keys(HIDDEN).map((section) => {
    const parts = (shed[section as Section] ?? []) as readonly { readonly name: string }[];
    const all = parts.map((part) =>
      odds.has(part.name) ? { ...part, odds: odds.get(part.name) } : part,
    );
    return [section, all];
  });
  return { ...shed, ...Object.fromEntries(sections) };
}

/** A shed with each of its hidden parts twice. */
export function withTwins({ shed, hidden }: HiddenShed): HiddenShed {
  const sections = Object.keys(HIDDEN).map((section) => {
    const parts = (shed[section as Section] ?? []) as readonly { readonly name: string }[];
    const twins = parts.filter(({ name }) => hidden.includes(name));
    return [section, [...parts, ...twins.map((part) => ({ ...part, name: twinOf(part.name) }))]];
  });
  const all = [...hidden, ...hidden.map(twinOf)];
  return { shed: { ...shed, ...Object.fromEntries(sections) }, hidden: all };
}

const twinOf = (name: string): string => `${name}, twin`;
