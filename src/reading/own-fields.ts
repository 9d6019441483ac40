/** A field that belongs to the owner of a file: kept in the file, never read. */
const isOwn = (key: string) => key.startsWith('x-');

/** No file is nested as deep; what lies deeper is refused by whoever reads it. */
const DEEPEST = 50;

/**
 * A raw file without the fields whose names begin with `x-`, however deep. What has none is given back as it is; nothing
 * is changed in place.
 */
export function withoutOwnFields(file: unknown): unknown {
  // A value that is no JSON may hold itself, or one thing many times.
  const seen = new Map<object, unknown>();
  const strip = (value: unknown, depth: number): unknown => {
    if (typeof value !== 'object' || value === null || depth > DEEPEST) return value;
    if (seen.has(value)) return seen.get(value);
    seen.set(value, value);
    const stripped = Array.isArray(value)
      ? stripItems(value, (item) => strip(item, depth + 1))
      : stripFields(value, (field) => strip(field, depth + 1));
    seen.set(value, stripped);
    return stripped;
  };
  return strip(file, 0);
}

function stripItems(items: readonly unknown[], strip: (value: unknown) => unknown) {
  const stripped = items.map(strip);
  return stripped.some((item, i) => item !== items[i]) ? stripped : items;
}

function stripFields(of: object, strip: (value: unknown) => unknown): object {
  const fields = Object.entries(of);
  const kept = fields.filter(([key]) => !isOwn(key));
  const stripped = kept.map(([key, value]) => [key, strip(value)] as const);
  const isSame =
    kept.length === fields.length && stripped.every(([, value], i) => value === kept[i]?.[1]);
  return isSame ? of : Object.fromEntries(stripped);
}
