/** What each key is one with: the first of all that are alike. */
export type Alike = ReadonlyMap<string, string>;

/**
 * Puts rows together that are alike in every cell, and then columns: sizes that
 * differ are one to a plan if they go with the same things in the same way.
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

/** The keys that stand for others or for themselves. */
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
