/** A number to so many digits. */
export const toDigits = (value: number, digits: number): number =>
  Number(value.toPrecision(digits));

/** The place of the last of so many digits, as a power of ten. */
export const lastPlace = (value: number, digits: number): number =>
  10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - digits);

/** A number to the nearest step, without the noise of the last digits; a half goes up. */
export const stepped = (value: number, step: number): number =>
  Number((Math.round(toDigits(value / step, 12)) * step).toPrecision(12));
