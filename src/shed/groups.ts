import type { Part } from './part.js';
import { SECTIONS, type Section } from './sections.js';
import type { Shed } from './shed.js';

/** The groups of engines that a part fits; undefined if it fits all. */
type GroupsOf = (section: Section, part: Grouped) => readonly string[] | undefined;

/** What says which groups a part fits. */
export type Grouped = Pick<Part, 'interchange' | 'supersedes' | 'supersededBy'> & {
  readonly kind?: string;
};

/** One group that supersedes another. */
export interface Supersession {
  readonly newer: string;
  readonly older: string;
}

/**
 * Which groups each part of a shed fits: its own, and all that these supersede, over any number of steps. What one
 * part says holds for every part of its section, or of its kind of other part, and for no other: that a later block
 * replaces an earlier one does not say that a later crankshaft does.
 */
export function groupsIn(shed: Pick<Shed, Section | 'toBuy'>): GroupsOf {
  const older = new Map<string, Map<string, Set<string>>>();
  for (const section of SECTIONS) {
    const parts: readonly Grouped[] = [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])];
    for (const part of parts) {
      const key = sort(section, part);
      const its = older.get(key) ?? new Map<string, Set<string>>();
      older.set(key, its);
      for (const { newer, older: old } of supersessionsBy(part)) {
        its.set(newer, (its.get(newer) ?? new Set()).add(old));
      }
    }
  }
  return (section, part) => {
    if (part.interchange === undefined) return undefined;
    const its = older.get(sort(section, part));
    const all = new Set(part.interchange);
    // A set also visits what is added while it is walked through.
    for (const group of all) for (const old of its?.get(group) ?? []) all.add(old);
    return [...all];
  };
}

/** Parts that stand for each other: those of a section, and of other parts those of a kind. */
const sort = (section: Section, { kind }: Grouped) => `${section} ${kind ?? ''}`;

/** What one part says of which group supersedes which. */
export function supersessionsBy({
  interchange = [],
  supersedes = [],
  supersededBy = [],
}: Grouped): readonly Supersession[] {
  return interchange.flatMap((own) => [
    ...supersedes.map((older) => ({ newer: own, older })),
    ...supersededBy.map((newer) => ({ newer, older: own })),
  ]);
}
