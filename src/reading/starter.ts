import { diameter, guardText } from '../judging/internal.js';
import { parseLength, RebuildInputError, type UnitSystem } from '../quantities/index.js';

/** The unit of lengths in a file, as one writes it. */
export const UNIT_OF: Readonly<Record<UnitSystem, string>> = { inch: 'in', metric: 'mm' };

/** What parts the two ends of a span: `1.6245 in to 1.6250 in`. A dash does too, but for that of `2-1/8`. */
const BETWEEN = /\s+to\s+|\s*[–—]\s*|\s*\.{2,3}\s*|\s*…\s*|\s+-\s+/;

/** A span in a file, with each end as text. */
export interface SpanText {
  readonly min: string;
  readonly max: string;
}

/** Reads the maker's span of a standard size from text; an end without a unit has that of the file. */
export function standardIn(parameter: string, text: string, units: UnitSystem): SpanText {
  const ends = guardText(parameter, text).trim().split(BETWEEN);
  const unit = UNIT_OF[units];
  const withUnit = (end: string) => (/[a-z"″'′]\s*$/i.test(end) ? end : `${end} ${unit}`);
  const [min = '', max = min] = ends.map(withUnit);
  if (ends.length === 2 && !isLess(min, max) && isLess(max, min)) {
    throw new RebuildInputError({
      parameter,
      value: text,
      expected: 'the smallest and then the largest size of a new one',
      problem: 'has the two sizes the wrong way round',
      hint: `Write the smaller one first: "${max} to ${min}".`,
    });
  }
  if (ends.length <= 2 && isLess(min, max)) {
    for (const end of [min, max]) diameter(parameter, parseLength(end));
    return { min, max };
  }
  throw new RebuildInputError({
    parameter,
    value: text,
    expected: 'the smallest and the largest size of a new one',
    hint: `Write both with "to" between them, e.g. "${EXAMPLE[units]}".`,
  });
}

const EXAMPLE: Readonly<Record<UnitSystem, string>> = {
  inch: '1.6245 in to 1.6250 in',
  metric: '41.985 mm to 42.000 mm',
};

/** Whether both are lengths, the first no larger than the second. */
function isLess(min: string, max: string): boolean {
  try {
    return parseLength(min) <= parseLength(max);
  } catch (error) {
    if (error instanceof RebuildInputError) return false;
    throw error;
  }
}

/** The value of a new file: plain JSON. */
export type StarterFile = Readonly<Record<string, unknown>>;

/** Names of places: `cylinder 1`, `cylinder 2`. */
export const numbered = (word: string, count: number): readonly { readonly name: string }[] =>
  Array.from({ length: count }, (_, i) => ({ name: `${word} ${i + 1}` }));

/** The least and the most cylinders, and mains with shells, that an engine has. */
export const CYLINDERS = [1, 24] as const;
export const MAINS = [0, 25] as const;
