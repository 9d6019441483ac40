import { unitByName } from '../../mathjs/internal.js';
import { rewriteText } from './rewrite-text.js';
import { sayIn } from './show-quantity.js';

/** One number with its unit, and the unit that it is wanted in. */
const CONVERSION =
  /^\s*([+-]?)(?:\((\d+)\/(\d+)\)|(\d+\.?\d*|\.\d+)(?![\d.]))\s*([A-Za-z]\w*)\s+to\s+([A-Za-z]\w*)\s*$/;

/**
 * Works out a plain conversion, such as `2-1/8 in to mm`, which needs no mathjs and not the time to load it. Anything
 * else, and whatever is wrong in any way, is left to a session: undefined.
 */
export function plainConversion(
  typed: string,
): { readonly said: string; readonly notes: readonly string[] } | undefined {
  try {
    const { text, notes } = rewriteText(typed);
    const [, sign, over, under, decimal, from = '', to = ''] = CONVERSION.exec(text) ?? [];
    const [own, wanted] = [unitByName.get(from), unitByName.get(to)];
    if (!own || own.dimension !== wanted?.dimension) return undefined;
    const size = decimal === undefined ? Number(over) / Number(under) : Number(decimal);
    return { said: sayIn(own(sign === '-' ? -size : size), wanted), notes };
  } catch {
    return undefined;
  }
}
