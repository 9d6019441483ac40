import { isRuleFraction } from './spelled-units.js';

const NUMBER = /(?<![\w.])(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?(?![\w.])/g;
/** A mixed number without a unit, and the sign before it. */
const MIXED = /([+-]?)\s*(?<![\w.])(\d+-\d+\/\d+)(?![\w./])(?!\s*[A-Za-z"″”µ])/g;

/**
 * A part of a statement as it was typed: mathjs writes `2 - 1 / 8` for `2-1/8`, and 3 for `3.00`. Of `20 thou + 2-1/8`
 * it adds the 2 first, which is the mixed number to whoever typed it.
 */
export function partAsTyped(part: string, typed: string): string {
  const close = part.replace(/\s/g, '');
  const mixed = [...typed.matchAll(MIXED)].filter(([, , number = '']) => isRuleFraction(number));
  const whole = mixed.find(
    ([, sign, number = '']) => number === close || (sign && number.startsWith(`${close}-`)),
  );
  if (whole?.[2] !== undefined) return whole[2];
  if (/^[\d.]+$/.test(close)) {
    return typed.match(NUMBER)?.find((each) => Number(each) === Number(close)) ?? part;
  }
  return part.replace(/(\d) \/ (\d)/g, '$1/$2');
}
