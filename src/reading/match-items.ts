import { isObject } from './given.js';

/** Something that tells an item of a list from the others; undefined where it tells nothing. */
type KeyOf = (item: unknown, place: number) => string | undefined;

/**
 * Which item of a list each item of another one is. The first key that two items share decides, and
 * every item is used once; one that shares none is new.
 */
export function matched(
  was: readonly unknown[],
  is: readonly unknown[],
  keys: readonly KeyOf[],
): readonly (number | undefined)[] {
  const free = new Set(was.keys());
  const found: (number | undefined)[] = is.map(() => undefined);
  for (const keyOf of keys) {
    const places = new Map<string, number[]>();
    for (const i of free) {
      const key = keyOf(was[i], i);
      if (key === undefined) continue;
      const same = places.get(key);
      if (same) same.push(i);
      else places.set(key, [i]);
    }
    is.forEach((item, i) => {
      const key = found[i] === undefined ? keyOf(item, i) : undefined;
      const place = key === undefined ? undefined : places.get(key)?.shift();
      if (place === undefined) return;
      found[i] = place;
      free.delete(place);
    });
  }
  return found;
}

/** The whole item. */
export const asJson: KeyOf = (item) => JSON.stringify(item);

/** The name of a part or place. */
export const byName: KeyOf = (item) => {
  const name = isObject(item) ? item['name'] : undefined;
  return typeof name === 'string' ? name.trim() : undefined;
};

/** All but its name, of a part that was renamed. */
export const butForName: KeyOf = (item) =>
  byName(item, 0) === undefined ? undefined : JSON.stringify({ ...(item as object), name: '' });

/** The place in lists of equal length. */
export const byPlace = (was: readonly unknown[], is: readonly unknown[]): readonly KeyOf[] =>
  was.length === is.length ? [(_, place) => String(place)] : [];
