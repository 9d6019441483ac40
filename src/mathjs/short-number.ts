import type { Dimension, Unit } from '../quantities/index.js';

/** A tenth of a thou: a micrometer reads no less, and in metric ones 0.001 mm. */
const TENTH = 2.54e-6;
const SIGNIFICANT = 5;
/** What ends within so many digits was typed, or is an exact factor of that. */
const ENDS_SOON = 10;

/**
 * A number in a unit as a person reads it: whole if it ends soon, as 53.96992 mm does; otherwise to five digits, and a
 * length at least to what a micrometer reads. The digits of a conversion that goes on for ever are no readings.
 */
export function shortNumber(value: number, unit: Unit<Dimension> | undefined): string {
  const ending = Number(value.toPrecision(ENDS_SOON));
  const noise = unit?.dimension === 'temperature' ? 1e-10 : 1e-13 * Math.abs(value);
  if (Math.abs(ending - value) <= noise) return text(ending);
  const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
  const decimals =
    unit?.dimension === 'length'
      ? Math.ceil(Math.log10(unit.numerator / unit.denominator / TENTH))
      : 0;
  return text(
    Number(value.toPrecision(Math.min(15, Math.max(SIGNIFICANT, whole, whole + decimals)))),
  );
}

const text = (value: number): string => String(Object.is(value, -0) ? 0 : value);
