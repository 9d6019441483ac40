import { escapedMarkup } from '../pages/index.js';

/** Attributes of an element. Numbers are rounded to a hundredth of a pixel; what is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element with what is inside it, which is markup already. */
export function element(
  name: string,
  attributes: Attributes,
  ...inside: readonly string[]
): string {
  const given = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined
      ? []
      : [` ${key}="${typeof value === 'number' ? pixel(value) : escapedMarkup(value)}"`],
  );
  const start = `<${name}${given.join('')}`;
  return inside.length === 0 ? `${start}/>` : `${start}>${inside.join('')}</${name}>`;
}

/** A number of pixels, to a hundredth. Every place in a picture goes through here, so none is NaN. */
export function pixel(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a place in a picture came out as ${value}`);
  return String(Math.round(value * 100) / 100 + 0);
}

/** A line of text. */
export const words = (text: string, x: number, y: number, attributes: Attributes = {}): string =>
  element('text', { x, y, ...attributes }, escapedMarkup(text));

/** A straight line. */
export const stroke = (
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  attributes: Attributes,
): string => element('line', { x1, y1, x2, y2, ...attributes });
