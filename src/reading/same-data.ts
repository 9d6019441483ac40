/** Whether plain data are the same. A field that is undefined counts as absent, as in JSON. */
export const isSameData = (one: unknown, other: unknown): boolean =>
  differenceIn(one, other) === undefined;

/** The path of the first difference between plain data; empty if they differ as a whole. */
export function differenceIn(one: unknown, other: unknown): string | undefined {
  if (one === other || Object.is(one, other)) return undefined;
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return '';
  if (Array.isArray(one) !== Array.isArray(other)) return '';
  const [mine, others] = [fieldsOf(one), fieldsOf(other)];
  for (const key of new Set([...mine.keys(), ...others.keys()])) {
    const within = differenceIn(mine.get(key), others.get(key));
    if (within !== undefined) return `${Array.isArray(one) ? `[${key}]` : `.${key}`}${within}`;
  }
  return undefined;
}

const fieldsOf = (of: object): ReadonlyMap<string, unknown> =>
  new Map(Object.entries(of).filter(([, value]) => value !== undefined));
