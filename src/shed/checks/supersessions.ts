import type { FileProblem } from '../../reading/index.js';
import { type Grouped, type Supersession, supersessionsBy } from '../groups.js';
import { SECTIONS } from '../sections.js';
import { partsIn, type SoundShed } from './sound-shed.js';

/** Supersessions of a part that names no group of its own, and those that run in a circle. */
export function supersessionProblems(shed: SoundShed): readonly FileProblem[] {
  const all = SECTIONS.flatMap((section) =>
    partsIn(shed, section).map(({ path, part }) => ({
      path,
      name: part.name ?? 'it',
      part: listsOf(part as Lists),
    })),
  );
  const known: Supersession[] = [];
  const problems: FileProblem[] = [];
  for (const { path, name, part } of all) {
    for (const field of ['supersedes', 'supersededBy'] as const) {
      if (part[field] === undefined) continue;
      const at = `${path}.${field}`;
      if (part.interchange === undefined) {
        const message = `is given, but "${name}" is of no group, so it fits all engines already; name its own group under interchange, or leave this out`;
        problems.push({ path: at, message });
      }
      const { interchange = [] } = part;
      for (const each of supersessionsBy({ interchange, [field]: part[field] })) {
        const back = chain(each.older, each.newer, known);
        if (back === undefined) known.push(each);
        else problems.push({ path: at, message: inACircle([each.newer, ...back]) });
      }
    }
  }
  return problems;
}

type Lists = { readonly [K in keyof Grouped]?: readonly (string | undefined)[] | undefined };

/** The groups that a part names, without what could not be read. */
function listsOf(part: Lists): Grouped {
  const named = (['interchange', 'supersedes', 'supersededBy'] as const).flatMap((field) => {
    const list = part[field];
    return list === undefined ? [] : [[field, list.filter((each) => each !== undefined)]];
  });
  return Object.fromEntries(named);
}

/** The groups from one to another, each superseding the next; undefined if there is no such chain. */
function chain(
  from: string,
  to: string,
  known: readonly Supersession[],
): readonly string[] | undefined {
  const before = new Map<string, string | undefined>([[from, undefined]]);
  for (const group of before.keys()) {
    if (group === to) {
      const back: string[] = [];
      for (let at: string | undefined = to; at !== undefined; at = before.get(at)) back.push(at);
      return back.reverse();
    }
    for (const { newer, older } of known) {
      if (newer === group && !before.has(older)) before.set(older, group);
    }
  }
  return undefined;
}

/** `makes a circle: "late" supersedes "early", and "early" supersedes "late"`. */
function inACircle(groups: readonly string[]): string {
  const steps = groups
    .slice(1)
    .map((older, i) => `"${groups[i]}" supersedes "${older}"`)
    .join(', and ');
  return `makes a circle: ${steps}; one of these is the wrong way round`;
}
