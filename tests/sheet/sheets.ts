import { readFileSync } from 'node:fs';

/** A value that JSON can hold, to be spoilt in tests. */
export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };

type Fields = { [key: string]: Json };

/**
 * The pump set's sheet, as JSON text: the metric one of the examples; in inches that of the examples as it
 * was before its instruments were described, without the reading that does not fit.
 */
export function exampleText(name: 'inch' | 'metric'): string {
  const folder = name === 'inch' ? '.' : '../../examples';
  return readFileSync(new URL(`${folder}/pump-set-${name}.json`, import.meta.url), 'utf8');
}

/** A fresh copy of the inch sheet with values at paths replaced, or removed where undefined. */
export const spoilt = (changes: Readonly<Record<string, Json | undefined>>): Json =>
  changed(JSON.parse(exampleText('inch')), changes);

/** A value with those at paths replaced, or removed where undefined. */
export function changed<T extends Json>(
  json: T,
  changes: Readonly<Record<string, Json | undefined>>,
): T {
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
    const last = keys.pop() as string;
    const parent = keys.reduce((at, key) => at[key] as Fields, json as Fields);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }
  return json;
}
