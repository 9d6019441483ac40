import { type Given, isObject } from './given.js';

/**
 * Whose a place of a file is, by the names of the parts on the way to it, the nearest first: `rod left of rods A`.
 * Undefined if none has a name.
 */
export function whose(path: string, file: Given): string | undefined {
  const names: string[] = [];
  let at: unknown = file;
  for (const step of path.match(/[^.[\]]+/g) ?? []) {
    const isItem = Array.isArray(at);
    at = isItem ? (at as readonly unknown[])[Number(step)] : fieldOf(at, step);
    const name = isItem ? fieldOf(at, 'name') : undefined;
    if (typeof name !== 'string' || !CAN_BE_SHOWN.test(name)) continue;
    // The one rod of a part that is called like it is named once.
    if (names[0] !== name.trim()) names.unshift(name.trim());
  }
  return names.length === 0 ? undefined : names.join(' of ');
}

const CAN_BE_SHOWN = /^(?=.*\S)[^\p{Cc}\u2028\u2029]{1,60}$/u;

function fieldOf(value: unknown, field: string): unknown {
  return isObject(value) && Object.hasOwn(value, field) ? value[field] : undefined;
}
