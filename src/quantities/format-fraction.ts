import type { Length } from './dimensions.js';
import { RebuildInputError } from './error.js';
import { format } from './format.js';
import { greatestCommonDivisor } from './fractions.js';
import { valueIn } from './unit.js';
import { inch } from './units.js';

/**
 * Prints a length as a fraction of an inch, as drills, bolts and bar are named: the nearest fraction, and what the
 * length is off it where that shows in tenths of a thou. `parseLength` reads the fraction back.
 *
 * @param length - any length [m]
 * @param finest - the finest fraction, a half to a 128th: 2, 4, 8, 16, 32, 64 or 128; by default 64ths [-]
 * @returns whole inches and fraction with a hyphen between, and the symbol
 * @throws {RebuildInputError} when the length is not finite, or the finest fraction is none of those
 * @example
 * ```ts
 * formatFraction(inch(2.125)); // "2-1/8 in"
 * formatFraction(mm(11.1125)); // "7/16 in"
 * formatFraction(inch(2.1248)); // "2-1/8 in - 0.0002 in"
 * formatFraction(mm(11), 16); // "7/16 in - 0.0044 in"
 * ```
 */
export function formatFraction(length: Length, finest = 64): string {
  if (!Number.isFinite(length)) {
    throw new RebuildInputError({
      parameter: 'length',
      value: length,
      expected: 'a finite number',
      hint: 'Lengths are metres here; wrap it in its unit, e.g. inch(2.125).',
    });
  }
  const inches = valueIn(length, inch);
  if (!FINEST.includes(finest)) {
    throw new RebuildInputError({
      parameter: 'finest',
      value: finest,
      expected: 'one of 2, 4, 8, 16, 32, 64 and 128',
      hint: 'Rules and drills are divided by halving: 64 for sixty-fourths.',
    });
  }
  const parts = Math.round(Math.abs(inches) * finest);
  const off = Math.abs(inches) - parts / finest;
  const sign = inches < 0 && parts > 0 ? '-' : '';
  const nearest = `${sign}${mixed(parts, finest)} in`;
  if (Math.abs(off) < SHOWN) return nearest;
  const isMore = off > 0 === inches > 0;
  return `${nearest} ${isMore ? '+' : '-'} ${format(inch(Math.abs(off)), inch)}`;
}

const FINEST: readonly number[] = [2, 4, 8, 16, 32, 64, 128];

/** From here on a difference prints as more than nothing [in]. */
const SHOWN = 0.00005;

/** `2-1/8`, `7/16`, `2`. */
function mixed(parts: number, finest: number): string {
  const [whole, over] = [Math.floor(parts / finest), parts % finest];
  if (over === 0) return String(whole);
  const common = greatestCommonDivisor(over, finest);
  const fraction = `${over / common}/${finest / common}`;
  return whole === 0 ? fraction : `${whole}-${fraction}`;
}
