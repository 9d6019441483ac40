import { type Given, isObject, rawItems } from '../../reading/index.js';
import { nameOf } from '../checks/names.js';
import { SECTIONS, type Section } from '../sections.js';
import { notThere, type Refuse } from './change-part.js';
import type { BuiltPart, WorkFile } from './work-file.js';

/** Marks the parts that an engine takes as built into it. Of several alike, those it takes become an entry of their own. */
export function builtIn(shed: Given, file: WorkFile, refuse: Refuse): Given {
  return file.takes.reduce<Given>((now, taken, i) => {
    const at = `takes[${i}]`;
    const found = placeOf(now, taken.name);
    if (found === undefined) {
      const made = withMade(now, taken, file);
      if (made) return made;
      const names = SECTIONS.flatMap((section) => rawItems(now[section]).map(nameOf));
      refuse(`${at}.name`, notThere(taken.name, names, 'a part of the shed'));
      return now;
    }
    return withTaken(now, found, taken, file, (message) => refuse(`${at}.count`, message));
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
  refuse: (message: string) => void,
): Given {
  const { builtInto: engine = '' } = file;
  const field = section === 'shells' ? 'pairs' : 'count';
  const there = part[field] === undefined && bought ? Infinity : Number(part[field] ?? 1);
  if (count > there) {
    refuse(`takes ${count} of "${name}", but there are ${there}`);
    return shed;
  }
  const history = historyOf(part, file);
  if (!bought && count === there) {
    return replaced(shed, section, part, [{ ...part, ...history, builtInto: engine }]);
  }
  const { price, ...own } = part;
  const apart = {
    ...own,
    name: `${name} in ${engine}`,
    ...((there !== 1 || section === 'shells') && { [field]: count }),
    ...history,
    builtInto: engine,
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
function withMade(shed: Given, { name, count = 1 }: BuiltPart, file: WorkFile): Given | undefined {
  const toMake = isObject(shed['toMake']) ? shed['toMake'] : {};
  const { builtInto: engine = '' } = file;
  for (const section of ['shells', 'thrustWashers'] as const) {
    const made = rawItems(toMake[section]).find((each) => nameOf(each) === name);
    if (made === undefined) continue;
    const part = {
      name: `${name} in ${engine}`,
      ...(section === 'shells' ? { fits: made['fits'], pairs: count } : { count }),
      homeMade: true,
      ...historyOf({}, file),
      builtInto: engine,
    };
    return { ...shed, [section]: [...rawItems(shed[section]), part] };
  }
  return undefined;
}

/** The history of a part, with the engine it was built into. */
function historyOf(part: Given, { builtInto: engine = '', on, by }: WorkFile) {
  const built = { on, what: `built into ${engine}`, by };
  return {
    history: [
      ...(Array.isArray(part['history']) ? part['history'] : []),
      Object.fromEntries(Object.entries(built).filter(([, value]) => value !== undefined)),
    ],
  };
}

function replaced(of: Given, section: Section, part: Given, by: readonly Given[]): Given {
  return {
    ...of,
    [section]: rawItems(of[section]).flatMap((each) => (each === part ? by : [each])),
  };
}
