/**
 * The assignment of least cost: every row gets a column of its own. By shortest augmenting paths (Kuhn and Munkres, in
 * the form of Jonker and Volgenant): a price for each row and column proves that no other assignment costs less. Costs are
 * whole numbers of any length, so that several aims, one before the other, can be written as the digits
 * of one cost.
 *
 * @param costs - for each row the cost of every column; at least as many columns as rows
 * @returns for each row its column
 */
export function leastAssignment(costs: readonly (readonly bigint[])[]): readonly number[] {
  const columns = costs[0]?.length ?? 0;
  const rowPrices = costs.map(() => 0n);
  const columnPrices = Array.from({ length: columns }, () => 0n);
  const holder: (number | undefined)[] = Array.from({ length: columns }, () => undefined);

  for (const first of costs.keys()) {
    // How far every column is from the new row along a path of swaps, and which column comes before it.
    const away: (bigint | undefined)[] = columnPrices.map(() => undefined);
    const before: (number | undefined)[] = columnPrices.map(() => undefined);
    const reached = new Map<number, bigint>();
    let [row, column, so]: [number, number | undefined, bigint] = [first, undefined, 0n];
    for (;;) {
      const onto = nearest(row, column, so);
      reached.set(onto.column, onto.away);
      [column, so] = [onto.column, onto.away];
      const held = holder[column];
      if (held === undefined) break;
      row = held;
    }
    // The prices that make every step of the path free.
    rowPrices[first] = (rowPrices[first] as bigint) + so;
    for (const [met, distance] of reached) {
      const held = holder[met];
      if (held !== undefined) rowPrices[held] = (rowPrices[held] as bigint) + so - distance;
      columnPrices[met] = (columnPrices[met] as bigint) - so + distance;
    }
    for (let at: number | undefined = column; at !== undefined; ) {
      const from: number | undefined = before[at];
      holder[at] = from === undefined ? first : holder[from];
      at = from;
    }

    function nearest(from: number, through: number | undefined, far: bigint) {
      let best: { readonly column: number; readonly away: bigint } | undefined;
      for (const [to, cost] of (costs[from] as readonly bigint[]).entries()) {
        if (reached.has(to)) continue;
        const length = far + cost - (rowPrices[from] as bigint) - (columnPrices[to] as bigint);
        const known = away[to];
        if (known === undefined || length < known) {
          away[to] = length;
          before[to] = through;
        }
        const least = away[to] as bigint;
        if (best === undefined || least < best.away) best = { column: to, away: least };
      }
      return best as { readonly column: number; readonly away: bigint };
    }
  }
  const given = costs.map(() => 0);
  for (const [column, row] of holder.entries()) if (row !== undefined) given[row] = column;
  return given;
}
