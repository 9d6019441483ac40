/** A raw file, or an object in it: its fields may be anything. */
export type Given = Readonly<Record<string, unknown>>;

/** Whether a value is an object with named fields. */
export function isObject(value: unknown): value is Given {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The items of a raw list, valid or not; one that is not an object becomes an empty one. */
export function rawItems(list: unknown): readonly Given[] {
  const each: readonly unknown[] = Array.isArray(list) ? list : [];
  return each.map((item) => (isObject(item) ? item : {}));
}
