import type { Batch } from './draft.js';
import type { Kind } from './kinds.js';
import type { Stock } from './stock.js';

/** One batch for each interchange group; or, if each engine has its own cost limit, `single` batches of one engine. */
export function batchesOf(stock: Stock, single?: number): readonly Batch[] {
  const groups = new Set(
    Object.values(stock).flatMap((kinds: readonly Kind<unknown>[]) =>
      kinds.flatMap(({ interchange }) => interchange ?? []),
    ),
  );
  const named = groups.size === 0 ? [undefined] : [...groups];
  const each = named.flatMap((group) => Array.from({ length: single ?? 1 }, () => group));
  return each.map((group, index) => ({
    index,
    ...(single !== undefined && { single: true }),
    ...(group !== undefined && { interchange: group }),
  }));
}
