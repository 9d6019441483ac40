import type { Dimension, UnitSystem } from '../quantities/index.js';
import type { Exact } from './exact.js';
import type { Call } from './read-value.js';
import { apart, apartIn, choicesOf, fieldsOf, isDimension } from './say-shape.js';
import type { ValueShape } from './shapes.js';

/** What a function of ours gave, with its numbers as units of mathjs. */
export function giveValue(
  exact: Exact,
  value: unknown,
  shape: ValueShape,
  system: UnitSystem,
  call: Call,
): unknown {
  const choices = choicesOf(shape);
  if (typeof value === 'number') {
    const dimension =
      choices.find(isDimension) ?? (choices.includes('quantity') ? call.dimension : undefined);
    return dimension === undefined ? value : exact.unit(value, dimension, system);
  }
  if (Array.isArray(value)) {
    const list = choices.find((each) => typeof each === 'object' && 'list' in each);
    const item = typeof list === 'object' && 'list' in list ? list.list : 'anything';
    return value.map((each) => giveValue(exact, each, item, system, call));
  }
  if (typeof value !== 'object' || value === null) return value;
  const each = choices.find((one) => typeof one === 'object' && 'each' in one);
  const known = fieldsOf({ either: choices.filter((one) => suits(one, value)) });
  const told = (value as { readonly dimension?: Dimension }).dimension;
  const own: Call = told === undefined ? call : { dimension: told };
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => {
      const of =
        known[key] ??
        known[`${key}?`] ??
        (typeof each === 'object' && 'each' in each ? each.each : 'anything');
      const inside = apartIn(key, own.dimension);
      const within = inside === own.dimension ? own : { dimension: inside };
      return [key, giveValue(exact, item, apart(key, of), system, within as Call)];
    }),
  );
}

/** Whether a value may be that one of several objects: every field it has is known, and every word is one of its own. */
function suits(shape: ValueShape, value: object): boolean {
  if (typeof shape !== 'object' || !('fields' in shape)) return false;
  return Object.entries(value).every(([key, item]) => {
    const of = shape.fields[key] ?? shape.fields[`${key}?`];
    if (of === undefined) return item === undefined;
    const choices = choicesOf(of);
    const words = choices.flatMap((one) =>
      typeof one === 'object' && 'oneOf' in one ? one.oneOf : [],
    );
    return (
      typeof item !== 'string' || choices.length > 1 || words.length === 0 || words.includes(item)
    );
  });
}
