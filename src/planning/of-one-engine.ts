import { type Assembly, partsTaken } from './assembly.js';
import type { Kind, Member } from './kinds.js';
import type { Taken } from './pile.js';

/**
 * The parts of engines, with parts that are not known and are all alike to a plan exchanged among themselves, so that as
 * many as may be of each engine come from one donor. Which of them to measure is free: what ran together fits together.
 */
export function ofOneEngine(assemblies: readonly Assembly[]): readonly Taken<Kind<unknown>>[] {
  const engines = assemblies.map(partsTaken);
  const taken = new Set(engines.flat().map(({ member }) => member));
  return engines.flatMap((parts) => {
    const free = ({ kind, member }: Taken<Kind<unknown>>): readonly Member[] => {
      // What is missing has no origin yet.
      if (kind.lacking) return [];
      const isAlone = parts.filter((other) => other.kind === kind).length === 1;
      return kind.unknown !== undefined && isAlone
        ? [member, ...kind.members.filter((other) => !taken.has(other))]
        : [member];
    };
    const origin = mostCommon(
      parts.flatMap((each) => [...new Set(free(each).flatMap(({ from }) => from ?? []))]),
    );
    return parts.map((each) => {
      const member = free(each).find(({ from }) => from !== undefined && from === origin);
      if (member === undefined) return each;
      taken.delete(each.member);
      taken.add(member);
      return { ...each, member };
    });
  });
}

/** The text that is there most often, the first of several. */
function mostCommon(all: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const each of all) counts.set(each, (counts.get(each) ?? 0) + 1);
  return [...counts].reduce<readonly [string | undefined, number]>(
    (best, each) => (each[1] > best[1] ? each : best),
    [undefined, 0],
  )[0];
}
