import { coherentUnit, type Dimension } from 'crankwright';
import { choicesOf, fieldsOf, isDimension } from '../../src/mathjs/say-shape.js';
import type { Signature, ValueShape } from '../../src/mathjs/shapes.js';
import { coherentName } from '../../src/mathjs/unit-names.js';

/** How a quantity is written in an expression. */
export type WriteQuantity = (value: number, dimension: Dimension) => string;

/** In the unit that the number is kept in. */
export const inCoherent: WriteQuantity = (value, dimension) =>
  dimension === 'ratio' ? String(value) : `${value} ${coherentName(dimension)}`;

/** A call as it is typed: `oilClearance({journal: 0.053467 metre, …})`. */
export function callAsText(
  name: string,
  { takes }: Signature,
  args: readonly unknown[],
  write: WriteQuantity = inCoherent,
): string {
  const texts = args.map((arg, i) => asText(arg, takes[i]?.shape ?? 'anything', write, 'length'));
  return `${name}(${texts.join(', ')})`;
}

function asText(value: unknown, shape: ValueShape, write: WriteQuantity, open: Dimension): string {
  const choices = choicesOf(shape);
  if (typeof value === 'number') {
    const one = choices.find(isDimension) ?? (choices.includes('quantity') ? open : undefined);
    return one === undefined ? String(value) : write(value, one);
  }
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'undefined';
  if (Array.isArray(value)) {
    const list = choices.find((each) => typeof each === 'object' && 'list' in each);
    const item = typeof list === 'object' && 'list' in list ? list.list : 'anything';
    return `[${value.map((each) => asText(each, item, write, open)).join(', ')}]`;
  }
  const known = fieldsOf(shape);
  const told = (value as { readonly dimension?: string }).dimension ?? '';
  const own = Object.hasOwn(coherentUnit, told) ? (told as Dimension) : open;
  const fields = Object.entries(value).map(
    ([key, item]) =>
      `${JSON.stringify(key)}: ${asText(item, known[key] ?? known[`${key}?`] ?? 'anything', write, own)}`,
  );
  return `{${fields.join(', ')}}`;
}
