import type { Section } from '../shed/index.js';
import { named } from '../shed/internal.js';
import type { BuildPart, Plan } from './plan-types.js';

/** The sections of which two things are judged: face and guides of a head, margin and stems of valves, gaps and side clearance of rings. */
const TWO_THINGS: readonly Section[] = ['heads', 'valveSets', 'ringSets'];

/** The parts of which no size decides: they are complete by being there. */
const isUnjudged = ({ section, notJudged = [] }: BuildPart): boolean =>
  section === 'otherParts'
    ? notJudged.length > 0
    : TWO_THINGS.includes(section) &&
      notJudged.filter(({ why }) => why === 'not measured').length >= 2;

/** What the proof of a plan rests on, and the parts that count as complete by being there. */
export function sayUnjudged({ builds }: Plan): readonly string[] {
  if (builds.length === 0) return [];
  const counts = new Map<string, number>();
  for (const { name, count } of builds.flatMap(({ parts }) => parts.filter(isUnjudged))) {
    counts.set(name, (counts.get(name) ?? 0) + count);
  }
  const names = [...counts].map(([name, count]) => named(name, count));
  return names.length === 0
    ? []
    : [`Proven by the sizes that were measured; not judged at all: ${names.join('; ')}.`];
}
