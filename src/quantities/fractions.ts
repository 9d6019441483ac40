/**
 * An exact fraction of whole numbers in lowest terms. Every unit's factor is
 * one, built from definitions; tests recompute them all with BigInt.
 */
export type Fraction = readonly [numerator: number, denominator: number];

/** Greatest common divisor of two positive whole numbers. */
export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** The product of fractions, reduced before multiplying so that no step outgrows a double. */
export function product(...fractions: readonly Fraction[]): Fraction {
  let numerator = 1;
  let denominator = 1;
  for (const fraction of fractions) {
    const first = greatestCommonDivisor(numerator, fraction[1]);
    const second = greatestCommonDivisor(fraction[0], denominator);
    numerator = (numerator / first) * (fraction[0] / second);
    denominator = (denominator / second) * (fraction[1] / first);
  }
  return [numerator, denominator];
}

/** One fraction over another. */
export function quotient(over: Fraction, under: Fraction): Fraction {
  return product(over, [under[1], under[0]]);
}
