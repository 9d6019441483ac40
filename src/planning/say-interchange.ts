import type { Build } from './plan-types.js';

/** The group of an engine: `Interchange: late, which takes parts of early too.`; nothing if its parts fit all. */
export function sayInterchange({ interchange, blockGroups }: Build): string | undefined {
  if (interchange === undefined) return undefined;
  const { own = [interchange], older = [] } = blockGroups ?? {};
  // A block of several groups is built as one of them; a later block stays one, whatever it is built of.
  const groups = own.includes(interchange) ? [interchange] : own;
  const too = older.length === 0 ? '' : `, which takes parts of ${older.join(', ')} too`;
  return `Interchange: ${groups.join(', ')}${too}.`;
}
