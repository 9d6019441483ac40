import { type Given, isObject, rawItems } from '../../reading/index.js';
import { nameOf } from '../checks/names.js';
import { SECTIONS, type Section } from '../sections.js';
import { notThere, type Refuse } from './change-part.js';
import type { BuiltPart, WorkFile } from './work-file.js';

/** Whether the parts that an engine takes went into it, or were brought together for it and do not fit. */
export type Fate = 'in' | 'for';

/** The name of parts that were taken out of several alike. */
const nameApart = (name: string, fate: Fate, { builtInto = '' }: WorkFile): string =>
  `${name} ${fate} ${builtInto}`;

/** The names that a part of an engine may have in the shed: those that were taken out of several alike come first. */
export const namesInShed = (name: string, file: WorkFile): readonly string[] => [
  nameApart(name, 'in', file),
  nameApart(name, 'for', file),
  name,
];

/**
 * Takes the parts of an engine: marks them as built into it, or only lays them aside for it. Of several alike, those it
 * takes become an entry of their own.
 */
export function takenFor(shed: Given, file: WorkFile, fate: Fate, refuse: Refuse): Given {
  return file.takes.reduce<Given>((now, taken, i) => {
    const at = `takes[${i}]`;
    const aside = nameApart(taken.name, 'for', file);
    const found = placeOf(now, aside) ?? placeOf(now, taken.name);
    if (found === undefined) {
      const made = withMade(now, taken, file, fate);
      if (made) return made;
      const names = SECTIONS.flatMap((section) => rawItems(now[section]).map(nameOf));
      refuse(`${at}.name`, notThere(taken.name, names, 'a part of the shed'));
      return now;
    }
    return withTaken(now, found, taken, file, fate, (message) => refuse(`${at}.count`, message));
  }, shed);
}

interface Found {
  readonly section: Section;
  readonly bought: boolean;
  readonly part: Given;
}

function placeOf(shed: Given, name: string): Found | undefined {
  const toBuy = isObject(shed['toBuy']) ? shed['toBuy'] : {};
  const among = (from: Given, bought: boolean) =>
    SECTIONS.flatMap((section) =>
      rawItems(from[section]).flatMap((part) =>
        nameOf(part) === name ? [{ section, bought, part }] : [],
      ),
    );
  return [...among(shed, false), ...among(toBuy, true)][0];
}

function withTaken(
  shed: Given,
  { section, bought, part }: Found,
  { name, count = 1 }: BuiltPart,
  file: WorkFile,
  fate: Fate,
  refuse: (message: string) => void,
): Given {
  const field = section === 'shells' ? 'pairs' : 'count';
  const there = part[field] === undefined && bought ? Infinity : Number(part[field] ?? 1);
  if (count > there) {
    refuse(`takes ${count} of "${name}", but there are ${there}`);
    return shed;
  }
  const marks = marksOf(part, file, fate);
  if (!bought && count === there) {
    return replaced(shed, section, part, [{ ...part, ...marks }]);
  }
  const { price, ...own } = part;
  const apart = {
    ...own,
    name: nameApart(name, fate, file),
    ...((there !== 1 || section === 'shells') && { [field]: count }),
    ...marks,
  };
  if (!bought) return replaced(shed, section, part, [{ ...part, [field]: there - count }, apart]);
  const toBuy = isObject(shed['toBuy']) ? shed['toBuy'] : {};
  const left = there - count;
  const offer = left === Infinity ? [part] : left === 0 ? [] : [{ ...part, [field]: left }];
  return {
    ...shed,
    [section]: [...rawItems(shed[section]), apart],
    toBuy: replaced(toBuy, section, part, offer),
  };
}

/** A part that was made to suit: it is in the shed only now. */
function withMade(
  shed: Given,
  { name, count = 1 }: BuiltPart,
  file: WorkFile,
  fate: Fate,
): Given | undefined {
  const toMake = isObject(shed['toMake']) ? shed['toMake'] : {};
  for (const section of ['shells', 'thrustWashers'] as const) {
    const made = rawItems(toMake[section]).find((each) => nameOf(each) === name);
    if (made === undefined) continue;
    const part = {
      name: nameApart(name, fate, file),
      ...(section === 'shells' ? { fits: made['fits'], pairs: count } : { count }),
      homeMade: true,
      ...marksOf({}, file, fate),
    };
    return { ...shed, [section]: [...rawItems(shed[section]), part] };
  }
  return undefined;
}

/** The engine that a part was built into, and that in its history. One that only lies ready has no such mark. */
function marksOf(part: Given, { builtInto: engine = '', on, by }: WorkFile, fate: Fate): Given {
  if (fate === 'for') return {};
  const built = { on, what: `built into ${engine}`, by };
  return {
    history: [
      ...(Array.isArray(part['history']) ? part['history'] : []),
      Object.fromEntries(Object.entries(built).filter(([, value]) => value !== undefined)),
    ],
    builtInto: engine,
  };
}

function replaced(of: Given, section: Section, part: Given, by: readonly Given[]): Given {
  return {
    ...of,
    [section]: rawItems(of[section]).flatMap((each) => (each === part ? by : [each])),
  };
}
