/**
 * Gives each bearing one pair of shells from a shelf with so many of each, so
 * that as many bearings as possible are served and each gets its best where it
 * can: every bearing in turn takes its best, and one served earlier moves to
 * its next best where that lets another be served (augmenting paths).
 *
 * @param wanted - for each bearing what fits it, best first
 * @param nameOf - what it is called on the shelf
 * @param pairs - how many pairs the shelf has of each
 * @returns for each bearing what it gets, or nothing
 */
export function handOutShells<M>(
  wanted: readonly (readonly M[])[],
  nameOf: (match: M) => string,
  pairs: ReadonlyMap<string, number>,
): readonly (M | undefined)[] {
  const given: (M | undefined)[] = wanted.map(() => undefined);

  const serve = (bearing: number, tried: Set<string>): boolean => {
    for (const match of wanted[bearing] ?? []) {
      const name = nameOf(match);
      if (tried.has(name)) continue;
      tried.add(name);
      const holders = given.flatMap((held, i) => (held && nameOf(held) === name ? [i] : []));
      const free = holders.length < (pairs.get(name) ?? 0);
      if (free || holders.some((holder) => serve(holder, tried))) {
        given[bearing] = match;
        return true;
      }
    }
    return false;
  };

  wanted.forEach((_, bearing) => {
    serve(bearing, new Set());
  });
  return given;
}
