import { RebuildInputError } from '../quantities/index.js';
import { isBare } from './with-unit.js';

/** What is written where nothing is known. */
const NOT_KNOWN = /^\s*(?:\?+|-+|–|n\/?a|none|tbd|unknown|not (?:known|measured))?\s*$/i;

/** What to do with a field of which nothing is known. */
export const LEAVE_OUT = 'leave the field out if it is not known';

/** Refuses what only says that a size is not known. */
export function refuseNotKnown(text: string, wanted: string): void {
  if (!NOT_KNOWN.test(text)) return;
  throw new RebuildInputError({
    parameter: 'text',
    value: text,
    expected: wanted,
    problem: 'has no number that can be read',
    hint: 'Leave the field out if it is not known; a reading needs its station, its angle and its size.',
  });
}

/** A fraction such as a rule shows: halves down to sixty-fourths. */
const OF_A_RULE = /(?:^|[\s\d-])\d+\s*\/\s*(?:2|4|8|16|32|64)(?!\d)/;

/** Refuses a fraction of an inch where a size was measured: it comes from a rule, which tells no fit and no wear. */
export function refuseFraction(text: string): void {
  if (!OF_A_RULE.test(text)) return;
  throw new RebuildInputError({
    parameter: 'text',
    value: text,
    expected: 'a size read with a micrometer or a gauge',
    problem: 'is a fraction, as a rule shows it, which is too coarse to judge by',
    hint: 'Read it with a micrometer or a gauge and write it in decimals, or leave the field out.',
  });
}

/** Refuses a number alone as an undersize or oversize: a whole one may be thou. */
export function refuseBareStep(text: string, way: 'under' | 'over'): void {
  if (!isBare(text)) return;
  const number = text.trim();
  throw new RebuildInputError({
    parameter: 'text',
    value: text,
    expected: `an ${way}size`,
    problem: `does not say in what it is ${way}`,
    hint: /^\d+$/.test(number)
      ? `Write "${number} ${way}" if it is in thou, or name the unit: "0.50 mm ${way}".`
      : `Name the unit: "${number} in ${way}" or "${number} mm ${way}".`,
  });
}
