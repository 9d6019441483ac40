/** For each key, the first key that is like it. */
export type Alike = ReadonlyMap<string, string>;

/**
 * Groups rows that are equal in every cell, and then columns. To a plan, different sizes are the
 * same if they fit the same parts in the same way.
 */
export function alike<R, C>(
  rows: ReadonlyMap<string, R>,
  columns: ReadonlyMap<string, C>,
  cell: (row: R, column: C) => string,
): { readonly rows: Alike; readonly columns: Alike } {
  const cells = [...rows.values()].map((row) =>
    [...columns.values()].map((column) => cell(row, column)),
  );
  const sameRows = firstOf([...rows.keys()], cells);
  const kept = cells.filter((_, i) => isFirst(sameRows, [...rows.keys()][i]));
  const across = [...columns.keys()].map((_, j) => kept.map((row) => row[j] ?? ''));
  return { rows: sameRows, columns: firstOf([...columns.keys()], across) };
}

/** The keys that represent a group. */
export const firsts = (all: Alike): readonly string[] =>
  [...all.keys()].filter((key) => isFirst(all, key));

const isFirst = (all: Alike, key: string | undefined) => key !== undefined && all.get(key) === key;

function firstOf(keys: readonly string[], cells: readonly (readonly string[])[]): Alike {
  const first = new Map<string, string>();
  return new Map(
    keys.map((key, i) => {
      const signature = JSON.stringify(cells[i]);
      if (!first.has(signature)) first.set(signature, key);
      return [key, first.get(signature) as string];
    }),
  );
}
