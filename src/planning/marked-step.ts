import { inch, type Length, mm, thou } from '../quantities/index.js';
import { sameStep } from '../reading/index.js';

/** `10`, `.010`, `-10`, `U/S20`, `0.25mm`, `10"`: a number that may be a size, and its unit if it is written to it. */
const SIZE = /^(?:[uo]\/?s)?[-+]?(\d+\.?\d*|\.\d+)(thou|inch|in|"|mm)?(?:[uo]\/?s)?$/i;
const STANDARD = /^(?:std|standard)$/i;
/** Words before a number that make it no size of this part: `no. 10`, `not 20`. */
const BEFORE_OTHERS = /^(?:no|nr|not|number)$/i;
/** Words after a number that make it no size: `10 GBP`. */
const AFTER_OTHERS = /^(?:GBP|EUR|USD)$/i;

/**
 * The step that a mark names, if its text names just one of these: `20`, `U/S 20`, `20 stamped on the web`. A number is
 * taken for thou, inches or millimetres, whichever makes it a step, unless its unit is written. A mark is evidence of
 * what a part was once machined to, and nothing is counted on it.
 */
export function stepMarked(mark: string, steps: readonly Length[]): Length | undefined {
  // What is in doubt names nothing.
  if (mark.includes('?')) return undefined;
  const words = mark
    .split(/[\s,;:()]+/)
    .map((word) => word.replace(/\.+$/, ''))
    .filter((word) => word !== '');
  const named = words.flatMap((word, i) => {
    if (STANDARD.test(word)) return steps.filter((step) => step === 0);
    const [, number, unit = words[i + 1] ?? ''] = SIZE.exec(word) ?? [];
    const isOther = BEFORE_OTHERS.test(words[i - 1] ?? '') || AFTER_OTHERS.test(unit);
    if (number === undefined || isOther) return [];
    const sizes = sizesOf(Number(number), unit);
    return steps.filter((step) => step > 0 && sizes.some((size) => sameStep(size, step)));
  });
  const [one, ...others] = new Set(named);
  return others.length === 0 ? one : undefined;
}

/** What a number may be: in its unit, or in any if none is written. */
function sizesOf(value: number, unit: string): readonly Length[] {
  switch (unit.toLowerCase()) {
    case 'thou':
      return [thou(value)];
    case 'inch':
    case '"':
      return [inch(value)];
    case 'mm':
      return [mm(value)];
    // The word in is a unit, or as in `20 in the web`.
    default:
      return [thou(value), inch(value), mm(value)];
  }
}
