import { parse, RebuildInputError } from '../quantities/index.js';

/** A number alone, as `parse` reads numbers: decimals, fractions and mixed numbers. */
const NUMBER = /^[+\-−]?\s*(?:\d+(?:-| +)\d+\/\d+|\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)$/;

/** Whether a value is a number alone, or text of one. */
export const isBare = (value: unknown): boolean =>
  typeof value === 'number' || (typeof value === 'string' && NUMBER.test(value.trim()));

/** A number alone with the unit that stands elsewhere for all; any other text as it is, its own unit with it. */
export const withUnit = (text: string, unit: string | undefined): string =>
  unit !== undefined && isBare(text) ? `${text.trim()} ${unit}` : text;

/** Whether a text is the name of a unit, and nothing else. */
export function isUnitOf(text: string, dimension: 'length' | 'angle'): boolean {
  // "20 under" is a length, but under is no unit to measure in.
  if (!/^[\p{L}µ°'"″′]+$/u.test(text) || /^(?:under|over)/i.test(text)) return false;
  try {
    parse(`1 ${text}`, dimension);
    return true;
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    return false;
  }
}
