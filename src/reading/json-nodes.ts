import { tokenAt, WHITE_SPACE } from './json-walk.js';

/** A value in JSON text, and where it stands. */
export interface JsonNode {
  readonly start: number;
  readonly end: number;
  readonly value: unknown;
  /** The fields of an object or the items of a list, in the order of the text; none of other values. */
  readonly children: readonly JsonChild[];
}

/** A field of an object, which begins at its name, or an item of a list. */
export interface JsonChild {
  readonly name?: string;
  readonly start: number;
  readonly node: JsonNode;
}

/** Where every value of a text stands. The text must be JSON: `walkJson` has found nothing wrong. */
export function nodesOf(text: string): JsonNode {
  return valueFrom(text, afterBlank(text, 0));
}

function valueFrom(text: string, start: number): JsonNode {
  const token = tokenAt(text, start);
  if (token === '{' || token === '[') return containerFrom(text, start, token === '{');
  return { start, end: start + token.length, value: JSON.parse(token), children: [] };
}

function containerFrom(text: string, start: number, isObject: boolean): JsonNode {
  const children: JsonChild[] = [];
  let at = afterBlank(text, start + 1);
  while (text[at] !== (isObject ? '}' : ']')) {
    if (children.length > 0) at = afterBlank(text, at + 1);
    const child = isObject ? fieldFrom(text, at) : { start: at, node: valueFrom(text, at) };
    children.push(child);
    at = afterBlank(text, child.node.end);
  }
  const items = children.map(({ node }) => node.value);
  const value = isObject
    ? Object.fromEntries(children.map(({ name = '' }, i) => [name, items[i]]))
    : items;
  return { start, end: at + 1, value, children };
}

function fieldFrom(text: string, start: number): JsonChild {
  const token = tokenAt(text, start);
  const colon = afterBlank(text, start + token.length);
  const node = valueFrom(text, afterBlank(text, colon + 1));
  return { name: JSON.parse(token) as string, start, node };
}

function afterBlank(text: string, at: number): number {
  WHITE_SPACE.lastIndex = at;
  return at + (WHITE_SPACE.exec(text)?.[0].length ?? 0);
}
