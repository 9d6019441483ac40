import type { Batch } from './draft.js';
import { kindsIn } from './kinds-in.js';
import type { Stock } from './stock.js';

/** One batch for each interchange group; or, if each engine has its own cost limit, `single` batches of one engine. */
export function batchesOf(stock: Stock, single?: number): readonly Batch[] {
  const groups = new Set(kindsIn(stock).flatMap(({ interchange }) => interchange ?? []));
  const named = groups.size === 0 ? [undefined] : withoutContained([...groups], stock);
  const each = named.flatMap((group) => Array.from({ length: single ?? 1 }, () => group));
  return each.map((group, index) => ({
    index,
    ...(single !== undefined && { single: true }),
    ...(group !== undefined && { interchange: group }),
  }));
}

/** Drops each group whose parts all fit the engines of another one too. */
function withoutContained(groups: readonly string[], stock: Stock): readonly string[] {
  const kinds = kindsIn(stock);
  const fitting = new Map(
    groups.map((group) => [
      group,
      new Set(kinds.filter(({ interchange }) => interchange?.includes(group))),
    ]),
  );
  const isIn = (group: string, other: string) =>
    [...(fitting.get(group) ?? [])].every((kind) => fitting.get(other)?.has(kind));
  return groups.filter((group, i) =>
    groups.every(
      (other, j) => other === group || !isIn(group, other) || (isIn(other, group) && i < j),
    ),
  );
}
