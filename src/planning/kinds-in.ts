import type { Kind } from './kinds.js';
import type { Stock } from './stock.js';

/** Every kind of a stock, section by section. */
export const kindsIn = (stock: Stock): readonly Kind<unknown>[] => Object.values(stock).flat();

/** A stock of other kinds in the place of each kind. */
export function kindsFrom(
  stock: Stock,
  each: <K extends Kind<unknown>>(kind: K) => readonly K[],
): Stock {
  const sections = Object.entries(stock).map(
    ([section, kinds]: [string, readonly Kind<unknown>[]]) => [section, kinds.flatMap(each)],
  );
  return Object.fromEntries(sections);
}

/** A stock of those kinds only that pass a test. */
export const kindsWhere = (stock: Stock, test: (kind: Kind<unknown>) => boolean): Stock =>
  kindsFrom(stock, (kind) => (test(kind) ? [kind] : []));

/** How many parts of some kinds there are. */
export const partsCount = (kinds: readonly Kind<unknown>[]): number =>
  kinds.reduce((sum, { count }) => sum + count, 0);
