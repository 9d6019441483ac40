import { inch, metre, mm, valueIn } from '../quantities/index.js';

/** What was typed, in quotation marks; or a length that a check tells, but no example of a step. */
const TYPED_OR_LENGTH =
  /"(?:[^"\\]|\\.)*"|(?<![\w.])(-?\d+(?:\.\d+)?) (mm|m)\b(?![/²³·]| under| over)/g;

/** What a size of a file can be: far from any size that matters to the last digit. */
const BOUNDS_OF_A_DOMAIN = /(?<= is not a length of )[\d.]+ m?m … [\d.]+ m?m(?=\. )/;

/**
 * A message with the lengths that a check tells in inches, and what was typed as it was typed: what stands in quotation
 * marks, and every length in the text `typed`.
 */
export function inInches(message: string, typed = ''): string {
  const own: readonly string[] = typed.match(TYPED_OR_LENGTH) ?? [];
  const converted = (text: string, round: (inches: number) => string) =>
    text.replace(TYPED_OR_LENGTH, (found, number?: string, unit?: string) => {
      if (number === undefined || own.includes(found)) return found;
      const length = unit === 'm' ? metre(Number(number)) : mm(Number(number));
      return `${round(valueIn(length, inch))} in`;
    });
  const bounds = message.replace(BOUNDS_OF_A_DOMAIN, (found) =>
    converted(found, (inches) =>
      Math.abs(inches) < 0.001 ? rounded(inches) : String(Number(inches.toPrecision(3))),
    ),
  );
  return converted(bounds, rounded);
}

/** To a tenth of a thou, which a micrometer reads; less than a thou to three digits. */
const rounded = (inches: number): string =>
  Math.abs(inches) < 0.001
    ? Number(inches.toPrecision(3))
        .toFixed(8)
        .replace(/\.?0+$/, '')
    : String(Number(inches.toFixed(4)));
