/**
 * Maximum bipartite matching by augmenting paths (Kuhn). Each place gets one thing of those that fit it,
 * and there are so many of each thing. As many places as possible are served, and each gets its best where it
 * can: every place in turn takes its best, and one served earlier moves to its next best where that lets
 * another be served.
 *
 * @param wanted - for each place what fits it, best first
 * @param nameOf - what a thing is called
 * @param there - how many there are of each, by name
 * @returns for each place what it gets, or nothing
 */
export function maximumMatching<M>(
  wanted: readonly (readonly M[])[],
  nameOf: (match: M) => string,
  there: ReadonlyMap<string, number>,
): readonly (M | undefined)[] {
  const given: (M | undefined)[] = wanted.map(() => undefined);

  const serve = (place: number, tried: Set<string>): boolean => {
    for (const match of wanted[place] ?? []) {
      const name = nameOf(match);
      if (tried.has(name)) continue;
      tried.add(name);
      const holders = given.flatMap((held, i) => (held && nameOf(held) === name ? [i] : []));
      const free = holders.length < (there.get(name) ?? 0);
      if (free || holders.some((holder) => serve(holder, tried))) {
        given[place] = match;
        return true;
      }
    }
    return false;
  };

  wanted.forEach((_, place) => {
    serve(place, new Set());
  });
  return given;
}
