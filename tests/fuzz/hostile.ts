/** A value that has no business anywhere, by name, made afresh each time. */
export interface Hostile {
  readonly name: string;
  readonly make: () => unknown;
}

const nested = (depth: number): unknown =>
  depth === 0 ? Number.NaN : { deeper: nested(depth - 1) };

export const hostiles: readonly Hostile[] = [
  { name: 'NaN', make: () => Number.NaN },
  { name: 'Infinity', make: () => Number.POSITIVE_INFINITY },
  { name: '-Infinity', make: () => Number.NEGATIVE_INFINITY },
  { name: '-1', make: () => -1 },
  { name: '0', make: () => 0 },
  { name: '-0', make: () => -0 },
  { name: '1e308', make: () => 1e308 },
  { name: '-1e308', make: () => -1e308 },
  { name: '5e-324', make: () => 5e-324 },
  { name: '1e-9', make: () => 1e-9 },
  { name: '"2.125"', make: () => '2.125' },
  { name: '"0.05"', make: () => '0.05' },
  { name: '""', make: () => '' },
  { name: '" "', make: () => ' ' },
  { name: '"__proto__"', make: () => '__proto__' },
  { name: '"constructor"', make: () => 'constructor' },
  { name: '"toString"', make: () => 'toString' },
  { name: 'long text', make: () => 'x'.repeat(10_000) },
  { name: 'null', make: () => null },
  { name: 'undefined', make: () => undefined },
  { name: 'true', make: () => true },
  { name: 'false', make: () => false },
  { name: '[]', make: () => [] },
  { name: '[0.05]', make: () => [0.05] },
  { name: '[null]', make: () => [null] },
  { name: 'a list with holes', make: () => new Array(3) },
  { name: '{}', make: () => ({}) },
  { name: '{ min: undefined, max: undefined }', make: () => ({ min: undefined, max: undefined }) },
  { name: '{ valueOf }', make: () => ({ valueOf: () => 0.05 }) },
  { name: 'Object(0.05)', make: () => Object(0.05) },
  { name: 'Object("inch")', make: () => Object('inch') },
  { name: 'Symbol()', make: () => Symbol('hostile') },
  { name: '10n', make: () => 10n },
  { name: 'a function', make: () => () => 0.05 },
  { name: 'a class', make: () => class Hostile {} },
  { name: 'a deep object', make: () => nested(40) },
  { name: 'a Date', make: () => new Date(0) },
  { name: 'a Map', make: () => new Map([['min', 1]]) },
  { name: 'Object.create(null)', make: () => Object.create(null) },
  { name: 'own __proto__', make: () => JSON.parse('{ "__proto__": { "min": 1 } }') },
];

/** A place inside arguments: indices and keys from the outside in. */
export type Path = readonly (string | number)[];

/** Every place inside a value, itself not among them. */
export function pathsIn(value: unknown, at: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [];
  const keys: Path = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return keys.flatMap((key) => {
    const path = [...at, key];
    return [path, ...pathsIn((value as Record<string | number, unknown>)[key], path)];
  });
}

/** Every plain object inside a value, by its place. */
export const objectsIn = (value: unknown): readonly Path[] =>
  pathsIn(value).filter((path) => {
    const inner = valueAt(value, path);
    return (
      typeof inner === 'object' &&
      inner !== null &&
      Object.getPrototypeOf(inner) === Object.prototype
    );
  });

/** What stands at a place inside a value. */
export const valueAt = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((outer, key) => (outer as Record<string | number, unknown>)[key], value);

/** A copy with the value at one place replaced. A place that an earlier change removed stays removed. */
export function replaced(value: unknown, path: Path, by: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return by;
  if (typeof value !== 'object' || value === null) return value;
  // A field of an object that was itself replaced by a list: `length` cannot be anything.
  if (Array.isArray(value) && typeof key === 'string') return value;
  const copy = copyOf(value);
  copy[key] = replaced(copy[key], rest, by);
  return copy;
}

/** A copy without the field or item at one place. */
export function without(value: unknown, path: Path): unknown {
  const [key, ...rest] = path;
  if (key === undefined || typeof value !== 'object' || value === null) return value;
  if (rest.length === 0 && Array.isArray(value)) return value.filter((_, i) => i !== key);
  const copy = copyOf(value);
  if (rest.length === 0) delete copy[key];
  else copy[key] = without(copy[key], rest);
  return copy;
}

/** Every list with something in it inside a value, by its place. */
export const listsIn = (
  value: unknown,
): readonly { readonly path: Path; readonly length: number }[] =>
  pathsIn(value).flatMap((path) => {
    const list = valueAt(value, path);
    return Array.isArray(list) && list.length > 0 ? [{ path, length: list.length }] : [];
  });

/** A copy with a hole in a list, where an item was. */
export function holed(value: unknown, item: Path): unknown {
  const list = item.slice(0, -1);
  const copy = [...(valueAt(value, list) as readonly unknown[])];
  delete copy[item.at(-1) as number];
  return replaced(value, list, copy);
}

const copyOf = (value: object): Record<string | number, unknown> =>
  (Array.isArray(value) ? [...value] : { ...value }) as Record<string | number, unknown>;

/** Freezes plain objects and lists all the way down; units, dates and the like are left alone. */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const inner of Object.values(value)) frozen(inner);
  return Object.freeze(value);
}

export const showPath = (path: Path): string =>
  path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`)).join('');
