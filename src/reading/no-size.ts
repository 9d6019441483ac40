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
